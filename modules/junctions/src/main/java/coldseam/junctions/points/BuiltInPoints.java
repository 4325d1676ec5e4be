package coldseam.junctions.points;

import coldseam.assemblies.HeatFlow;
import coldseam.assemblies.OuterSurface;
import coldseam.envelope.Material;
import coldseam.envelope.file.house.MaterialLibrary;
import coldseam.junctions.Rank;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;

/** Posts, columns and brackets a house has; measures are common practice, no source. */
final class BuiltInPoints {

    private static final double DISC = 0.5642;

    /** m: how far a guard post or a bracket's arm stands out before its far end stops mattering. */
    private static final double STANDS_OUT = 0.6;

    private static final String GUARD_POST = "guard post on a terrace";
    private static final String COLUMN = "column under a floor over open air";
    private static final String BRACKET = "ledger bracket on a wall";

    private static final String TUBE =
            "Square tube 60 mm × 4 mm drawn as a round one of the same girth and the same area of"
                    + " steel, still air inside; its bolts to the deck are left out.";
    private static final String SQUARE_COLUMN = "Square column 300 mm drawn round with the same area; its top metre is"
            + " in the wind, the ground beyond it is not drawn.";
    private static final String PLATE =
            "Bracket plate 150 mm × 10 mm drawn as a round bar of the same area, and its back"
                    + " plate 150 mm × 150 mm as a disc of the same area; the bar has less surface in the wind than the plate.";

    private BuiltInPoints() {}

    private static Material named(String name) {
        return MaterialLibrary.named(name).orElseThrow();
    }

    private static PointSection.Sheet sheet(String material, double millimetres) {
        return new PointSection.Sheet(material, named(material).conductivity(), millimetres / 1000);
    }

    /** Measures in mm, from the inner face. */
    private static PointSection.Body body(String material, double inner, double outer, double from, double to) {
        return new PointSection.Body(
                material, named(material).conductivity(), inner / 1000, outer / 1000, from / 1000, to / 1000);
    }

    private static PointSection section(
            String name,
            HeatFlow direction,
            ImmutableList<PointSection.Sheet> sheets,
            ImmutableList<PointSection.Body> bodies) {
        return new PointSection(
                name,
                sheets,
                bodies,
                direction.interiorSurfaceResistance(),
                OuterSurface.OUTDOORS.resistance(direction),
                DISC);
    }

    static ImmutableList<PointDetail> all() {
        return Lists.immutable
                .of(guardPostThrough(), guardPostOnPad(), guardPostOnKerb())
                .newWithAll(Lists.immutable.of(columnThrough(), columnWrapped(), columnOnBlock()))
                .newWithAll(Lists.immutable.of(bracketThrough(), bracketStainless(), bracketOnPad()));
    }

    // Guard posts: plaster, concrete deck, board, cover; the face of the deck is at 215 mm, of the board at 375 mm.

    private static final ImmutableList<PointSection.Sheet> DECK = Lists.immutable.of(
            sheet("gypsum plaster", 15),
            sheet("reinforced concrete", 200),
            sheet("polyisocyanurate board", 160),
            sheet("bitumen sheet", 10));

    /** A tube on a foot plate: girth 240 mm, so 38.2 mm; 896 mm² of steel, so 34.26 mm inside. */
    private static ImmutableList<PointSection.Body> tube(String steel, double foot) {
        double top = 385 + 1000 * STANDS_OUT;
        return Lists.immutable.of(
                body(steel, 0, 84.6, foot, foot + 12),
                body("air", 0, 34.26, foot + 12, top),
                body(steel, 34.26, 38.2, foot + 12, top));
    }

    private static PointDetail guardPostThrough() {
        return new PointDetail(
                "guard-post-through",
                GUARD_POST,
                "Steel tube bolted to the deck, through the boards",
                Rank.WORST,
                TUBE,
                "Cold ceiling spot below each post, and a membrane collar that moves with the rail.",
                section("guard post through the boards", HeatFlow.UPWARDS, DECK, tube("steel", 215)));
    }

    private static PointDetail guardPostOnPad() {
        return new PointDetail(
                "guard-post-on-pad",
                GUARD_POST,
                "Steel tube on a 25 mm reinforced plastic pad under its foot",
                Rank.MIDDLE,
                TUBE + " Stainless bolts through the pad are left out; they take back a part of what the pad saves.",
                "Pad left out, or bolted through with plain steel.",
                section(
                        "guard post on a pad",
                        HeatFlow.UPWARDS,
                        DECK,
                        Lists.immutable
                                .of(body("glass-fibre reinforced polyamide", 0, 84.6, 215, 240))
                                .newWithAll(tube("steel", 240))));
    }

    private static PointDetail guardPostOnKerb() {
        return new PointDetail(
                "guard-post-on-block",
                GUARD_POST,
                "Steel tube on a load-bearing insulating block as thick as the boards",
                Rank.BEST,
                "Block 200 mm × 200 mm drawn round with the same area; " + TUBE
                        + " Bolts through the block are left out: use stainless ones and count them.",
                "Block of a board that is too soft for the rail's load.",
                section(
                        "guard post on a block",
                        HeatFlow.UPWARDS,
                        DECK,
                        Lists.immutable
                                .of(body("structural foam block", 0, 112.8, 215, 375))
                                .newWithAll(tube("steel", 375))));
    }

    // Columns: screed, concrete floor, board below; the outer face is at 400 mm.

    private static final ImmutableList<PointSection.Sheet> FLOOR = Lists.immutable.of(
            sheet("cement screed", 60), sheet("reinforced concrete", 180), sheet("mineral wool board", 160));

    private static PointDetail columnThrough() {
        return new PointDetail(
                "column-through",
                COLUMN,
                "Concrete column through the boards under the floor",
                Rank.WORST,
                SQUARE_COLUMN,
                "Cold floor round the column's head; boards cut short of it.",
                section(
                        "column through the boards",
                        HeatFlow.DOWNWARDS,
                        FLOOR,
                        Lists.immutable.of(body("reinforced concrete", 0, 169.3, 240, 1400))));
    }

    private static PointDetail columnWrapped() {
        return new PointDetail(
                "column-wrapped",
                COLUMN,
                "Concrete column with 80 mm of board round its top metre",
                Rank.MIDDLE,
                SQUARE_COLUMN,
                "Wrap stops short of the boards under the floor.",
                section(
                        "column wrapped",
                        HeatFlow.DOWNWARDS,
                        FLOOR,
                        Lists.immutable.of(
                                body("mineral wool board", 0, 249.3, 400, 1400),
                                body("reinforced concrete", 0, 169.3, 240, 1400))));
    }

    private static PointDetail columnOnBlock() {
        return new PointDetail(
                "column-under-block",
                COLUMN,
                "Concrete column under a load-bearing insulating block as thick as the boards",
                Rank.BEST,
                SQUARE_COLUMN + " Reinforcement through the block is left out.",
                "Block of the wrong strength, or left out for want of an engineer's word.",
                section(
                        "column under a block",
                        HeatFlow.DOWNWARDS,
                        FLOOR,
                        Lists.immutable.of(
                                body("structural foam block", 0, 169.3, 240, 400),
                                body("reinforced concrete", 0, 169.3, 400, 1400))));
    }

    // Brackets: plaster, brick, board, render; the brick's face is at 255 mm, the render's at 465 mm.

    private static final ImmutableList<PointSection.Sheet> WALL = Lists.immutable.of(
            sheet("gypsum plaster", 15),
            sheet("clay brick", 240),
            sheet("mineral wool board", 200),
            sheet("thin-coat render", 10));

    private static ImmutableList<PointSection.Body> bracket(String metal, double from) {
        return Lists.immutable.of(body(metal, 0, 84.6, from, from + 10), body(metal, 0, 21.85, from + 10, 465 + 150));
    }

    private static PointDetail bracketThrough() {
        return new PointDetail(
                "bracket-steel",
                BRACKET,
                "Steel bracket bolted tight to the wall",
                Rank.WORST,
                PLATE,
                "More brackets than the plan counts.",
                section("steel bracket", HeatFlow.HORIZONTAL, WALL, bracket("steel", 255)));
    }

    private static PointDetail bracketStainless() {
        return new PointDetail(
                "bracket-stainless",
                BRACKET,
                "Stainless steel bracket bolted tight to the wall",
                Rank.MIDDLE,
                PLATE,
                "Plain steel delivered instead.",
                section("stainless bracket", HeatFlow.HORIZONTAL, WALL, bracket("stainless steel", 255)));
    }

    private static PointDetail bracketOnPad() {
        return new PointDetail(
                "bracket-stainless-on-pad",
                BRACKET,
                "Stainless steel bracket on a 20 mm reinforced plastic pad",
                Rank.BEST,
                PLATE + " Bolts through the pad are left out; they take back a part of what the pad saves.",
                "Pad left out, or crushed by an overtightened bolt.",
                section(
                        "stainless bracket on a pad",
                        HeatFlow.HORIZONTAL,
                        WALL,
                        Lists.immutable
                                .of(body("glass-fibre reinforced polyamide", 0, 84.6, 255, 275))
                                .newWithAll(bracket("stainless steel", 275))));
    }
}
