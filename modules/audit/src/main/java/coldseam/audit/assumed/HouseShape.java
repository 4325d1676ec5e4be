package coldseam.audit.assumed;

import coldseam.audit.Audit;
import coldseam.audit.JunctionRow;
import coldseam.envelope.Body;
import coldseam.envelope.Exposure;
import coldseam.envelope.Point3;
import coldseam.envelope.Vectors;
import coldseam.envelope.shell.Spans;
import coldseam.envelope.shell.Surface;
import coldseam.files.Groups;
import java.util.Optional;
import org.eclipse.collections.api.block.function.primitive.DoubleFunction;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.factory.primitive.DoubleLists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.primitive.ImmutableDoubleList;
import org.eclipse.collections.impl.collector.Collectors2;

/** What is said of the house's shape, and seldom is built so. */
public final class HouseShape {

    /** m; slabs are seldom cast so high over the ground (judgement). */
    private static final double FILL = 0.3;

    /** m; floors lie so little under the ground where one steps down to them, and no wall is said to be in it (judgement). */
    private static final double STEP = 0.05;

    /** m between a floor's top and what is over it; rooms of one storey are seldom higher (judgement). */
    private static final double ONE_STOREY = 4.2;

    /** m; solid floors of one room's span begin here (common practice, no source). */
    private static final double THIN = 0.12;

    /** m; those with ducts and beams end here (judgement). */
    private static final double THICK = 0.7;

    /** m; guards of roofs and balconies are 1.0 to 1.1 high (common practice, no source). */
    private static final double GUARD = 1.2;

    /** m; longer ones are several houses, or a slip of the pen (judgement). */
    private static final double FAR = 40;

    /** m between two walls outdoors; in less nobody stands who builds, plasters or mends them (judgement). */
    private static final double SLOT = 0.6;

    /** m², of what two walls have face to face; less is no slot (judgement). */
    private static final double SLOT_FACE = 0.5;

    /** m by which the ground may lie off what is drawn: soil is raked no truer (judgement). */
    private static final double AS_DRAWN = 0.01;

    /** m; water stands so deep in many grounds, for some weeks at least (judgement). */
    private static final double DEEP = 1;

    /** Floors on the ground that lie over all the ground beside them, so that fill must bear them. */
    public static final Assumption<Raised> RAISED = audit -> OfHouse.surfaces(
                    audit, surface -> surface.use() == Body.Use.FLOOR && surface.faces(Exposure.Kind.GROUND))
            .collect(floor ->
                    new Raised(floor, floor.foot() - ground(audit.house().body(), floor)))
            .select(floor -> floor.height() > FILL);

    /** Floors so deep in the ground that water may stand there. */
    public static final Assumption<Sunk> IN_GROUND_WATER = audit -> OfHouse.surfaces(
                    audit, surface -> surface.use() == Body.Use.FLOOR && surface.faces(Exposure.Kind.GROUND))
            .collect(floor -> new Sunk(floor, ground(audit.house().body(), floor) - floor.foot()))
            .select(floor -> floor.depth() > DEEP);

    /** Walls said to face outdoors, though all ground beside the house stands over their floor. */
    public static final Assumption<Surface> BURIED = audit -> OfHouse.surfaces(
            audit,
            wall -> wall.use() == Body.Use.WALL
                    && wall.faces(Exposure.Kind.OUTDOORS)
                    && lowestGround(audit.house().body(), wall)
                            > wall.innerOutline().collectDouble(Point3::z).min() + STEP);

    /** Walls so high indoors that a floor is likely to meet them, and none does. */
    public static final Assumption<Surface> TALL = audit -> OfHouse.surfaces(audit, HouseShape::isTall);

    /** Walls outdoors that stand face to face, so near that nobody gets between them; each pair once. */
    public static final Assumption<Slot> SLOTS = audit -> {
        ImmutableList<Surface> walls =
                OfHouse.surfaces(audit, wall -> wall.use() == Body.Use.WALL && wall.faces(Exposure.Kind.OUTDOORS));
        return walls.flatCollect(wall -> walls.drop(walls.indexOf(wall) + 1).flatCollect(other -> slot(wall, other)));
    };

    /**
     * m, of internal floors, where hardly any is as thin or as thick: the edges of thin ones lose the less, and rooms that are not
     * said hide in thick ones.
     */
    public static final Assumption<Double> UNUSUAL_FLOORS =
            audit -> floors(audit.house().body())
                    .select(each -> each < THIN || each > THICK)
                    .distinct()
                    .toImmutableSortedList();

    /** m, of the highest parapet where it is higher than a guard: the wind's load on it bears on the seam. */
    public static final Assumption<Double> HIGH_PARAPET = audit -> OfHouse.over(
            GUARD,
            OfHouse.surfaces(audit, surface -> surface.use() == Body.Use.ROOF)
                    .collectDouble(roof -> audit.house().body().parapetHeight(roof.name(), roof.storey()))
                    .maxIfEmpty(0));

    /** m, the house's length from east to west or from south to north, where hardly any is as long. */
    public static final Assumption<Double> LONG =
            audit -> OfHouse.over(FAR, Math.max(length(audit, Point3::x), length(audit, Point3::y)));

    /**
     * Seams whose section is drawn with the ground at another height under the floor than the house file has it; where the file
     * leaves it at the floor's own level, as files do that say nothing of it, none.
     */
    public static final Assumption<DrawnGround> DRAWN_GROUND = audit -> Groups.by(
                    audit.junctions().flatCollect(row -> drawnGround(audit, row)),
                    each -> Lists.immutable.of(Math.round(each.drawn() / AS_DRAWN), Math.round(each.said() / AS_DRAWN)))
            .collect(like -> new DrawnGround(
                    like.flatCollect(DrawnGround::sheets).distinct(),
                    like.getFirst().drawn(),
                    like.getFirst().said()));

    private HouseShape() {}

    /**
     * A floor that fill must bear.
     *
     * @param height m, of its underside over the highest ground beside the house
     */
    public record Raised(Surface floor, double height) {}

    /**
     * Two walls with a slot between them.
     *
     * @param width m, between their outer faces
     */
    public record Slot(Surface one, Surface other, double width) {}

    /**
     * A floor in the ground.
     *
     * @param depth m, of its underside under the highest ground beside the house
     */
    public record Sunk(Surface floor, double depth) {}

    /**
     * Seams whose section has the ground elsewhere than the house.
     *
     * @param sheets that show them
     * @param drawn m, of the ground under the floor's top in the section
     * @param said m, of it under the floor's top in the house; below zero where it lies over that, on a slope the nearest
     */
    public record DrawnGround(ImmutableList<String> sheets, double drawn, double said) {}

    /** One row's, on its own sheet. */
    private static ImmutableList<DrawnGround> drawnGround(Audit audit, JunctionRow row) {
        ImmutableList<Surface> walls = row.surfaces().select(surface -> surface.use() == Body.Use.WALL);
        return walls.isEmpty()
                ? Lists.immutable.empty()
                : row.sheet().stream()
                        .collect(Collectors2.toImmutableList())
                        .flatCollect(sheet -> Rain.plinths(sheet)
                                .flatCollect(drawn ->
                                        said(audit.house().body(), walls.maxBy(HouseShape::floor), sheet.id(), drawn)
                                                .stream()
                                                .toList()));
    }

    /** Empty where both agree, or the house leaves the ground at its floor, as files do that say nothing of it. */
    private static Optional<DrawnGround> said(Body body, Surface wall, String sheet, double drawn) {
        // On a slope the seam lies at some height of it; where that may be the drawn one, nothing is said.
        double nearest =
                Math.min(Math.max(drawn, floor(wall) - ground(body, wall)), floor(wall) - lowestGround(body, wall));
        boolean unsaid = Math.abs(nearest) < OfHouse.HAIR;
        return unsaid || Math.abs(nearest - drawn) < AS_DRAWN
                ? Optional.empty()
                : Optional.of(new DrawnGround(Lists.immutable.of(sheet), drawn, nearest));
    }

    /** m, z of the floor's top at a wall. */
    private static double floor(Surface wall) {
        return wall.innerOutline().collectDouble(Point3::z).min();
    }

    /** m, z of the highest ground beside the part of the house that a surface belongs to. */
    static double ground(Body body, Surface surface) {
        return heights(body, surface).max();
    }

    /** m, of the lowest. */
    static double lowestGround(Body body, Surface surface) {
        return heights(body, surface).min();
    }

    private static ImmutableDoubleList heights(Body body, Surface surface) {
        ImmutableList<Double> heights;
        double level = 0;
        if (body instanceof Body.Storeys storeys) {
            heights = storeys.stackOf(surface.storey()).ground();
        } else {
            Body.Explicit explicit = (Body.Explicit) body;
            heights = explicit.ground()
                    .collect(point -> explicit.points().get(point).z());
            level = explicit.groundLevel();
        }
        return heights.isEmpty() ? DoubleLists.immutable.of(level) : heights.collectDouble(each -> each);
    }

    private static ImmutableList<Slot> slot(Surface one, Surface other) {
        double width = Vectors.dot(
                one.normal(),
                Vectors.minus(other.outline().getFirst(), one.outline().getFirst()));
        if (Vectors.dot(one.normal(), other.normal()) > OfHouse.HAIR - 1 || width <= 0 || width >= SLOT) {
            return Lists.immutable.empty();
        }
        return Spans.before(one, other) < SLOT_FACE
                ? Lists.immutable.empty()
                : Lists.immutable.of(new Slot(one, other, width));
    }

    /** Gables and what else ends in a slope are as high as their roof. */
    private static boolean isTall(Surface surface) {
        double top = surface.innerOutline().collectDouble(Point3::z).max();
        double foot = surface.innerOutline().collectDouble(Point3::z).min();
        return surface.use() == Body.Use.WALL
                && !surface.faces(Exposure.Kind.PARTY)
                && top - foot > ONE_STOREY
                && surface.innerOutline()
                                .select(point -> top - point.z() < OfHouse.HAIR)
                                .distinct()
                                .size()
                        > 1;
    }

    private static ImmutableList<Double> floors(Body body) {
        return body instanceof Body.Storeys storeys
                ? storeys.stacks().flatCollect(stack -> stack.storeys().drop(1).collect(Body.Storey::floorThickness))
                : ((Body.Explicit) body).levels().drop(1).collect(Body.Level::floorThickness);
    }

    private static double length(Audit audit, DoubleFunction<Point3> along) {
        var places = audit.shell().surfaces().flatCollect(Surface::outline).collectDouble(along);
        return places.maxIfEmpty(0) - places.minIfEmpty(0);
    }
}
