package coldseam.junctions.vertex;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.conduction.solid.BodySolver;
import coldseam.envelope.BridgeKind;
import coldseam.envelope.JunctionKind;
import coldseam.junctions.BuiltIn;
import coldseam.junctions.DetailDoesNotFit;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.TypicalBuild;
import coldseam.junctions.TypicalSetups;
import coldseam.junctions.catalogue.CatalogueFile;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.vertex.VertexSetup.EdgeEnd;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.set.MutableSet;
import org.eclipse.collections.impl.factory.Lists;
import org.eclipse.collections.impl.factory.Sets;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Every right-angled corner that the catalogue's details can meet in. */
@Tag("slow")
class CatalogueCornersTest {

    /** An edge of a corner: its kind, where it runs, and the axes of its bands. */
    record Spec(String kind, int along, boolean growing, int first, int second) {}

    record Shape(String name, int rooms, boolean upwards, ImmutableList<Spec> edges) {
        static Shape of(String name, int rooms, boolean upwards, Spec... edges) {
            return new Shape(name, rooms, upwards, Lists.immutable.with(edges));
        }
    }

    static final Spec CORNER = new Spec("outside corner", 2, false, 0, 1);

    static Shape outer(String kind, boolean upwards) {
        return Shape.of(
                kind + " at an outside corner",
                1,
                upwards,
                new Spec(kind, 0, false, 2, 1),
                new Spec(kind, 1, false, 2, 0),
                CORNER);
    }

    static Shape inner(String kind, boolean upwards) {
        return Shape.of(
                kind + " at an inside corner",
                0b0111,
                upwards,
                new Spec(kind, 0, true, 2, 1),
                new Spec(kind, 1, true, 2, 0),
                new Spec("inside corner", 2, false, 0, 1));
    }

    static final ImmutableList<Shape> SHAPES = Lists.immutable.of(
            outer("parapet", true),
            outer("flat roof edge", true),
            outer("terrace edge over a room", true),
            outer("slab edge", false),
            outer("existing slab edge", false),
            outer("overhang edge", false),
            inner("parapet", true),
            inner("flat roof edge", true),
            inner("terrace edge over a room", true),
            inner("overhang edge", false),
            inner("slab edge", false),
            Shape.of(
                    "intermediate floor at an outside corner",
                    0b0001_0001,
                    true,
                    new Spec("intermediate floor", 0, false, 1, 2),
                    new Spec("intermediate floor", 1, false, 0, 2),
                    CORNER,
                    new Spec("outside corner", 2, true, 0, 1)),
            Shape.of(
                    "terrace runs into a wall",
                    0b0001_0011,
                    true,
                    new Spec("intermediate floor", 0, false, 1, 2),
                    new Spec("terrace edge over a room", 0, true, 2, 1),
                    new Spec("wall to terrace", 1, false, 2, 0),
                    new Spec("outside corner", 2, true, 0, 1)),
            Shape.of(
                    "parapet runs into a step between heights",
                    0b0001_0011,
                    true,
                    new Spec("intermediate floor", 0, false, 1, 2),
                    new Spec("parapet", 0, true, 2, 1),
                    new Spec("step between heights", 1, false, 2, 0),
                    new Spec("outside corner", 2, true, 0, 1)));

    private static final Shape OVER_A_CRAWL_SPACE = outer("crawl space edge", false);

    /** None is refused; and a corner's own detail is asked only where the sections leave the corner open. */
    @ParameterizedTest
    @EnumSource(TypicalBuild.class)
    void eachIsSaidByItsSectionsOrByItsOwnDetail(TypicalBuild build) {
        // Framed floors and walls conduct alike where masonry leaves a corner open.
        assertEquals(
                build == TypicalBuild.MASONRY
                        ? CatalogueFile.builtIn().corners().collect(Detail::id).toSet()
                        : Sets.mutable.of(
                                "terrace-corner-structure-out",
                                "terrace-at-wall-timber-on-kerb",
                                "flat-roof-corner-overhang-on-one-side"),
                asked(SHAPES, build, build));
    }

    /**
     * A concrete deck on framed walls, and a joisted one on brick: where a deck's edge runs into a wall; and a floor over a crawl
     * space likewise.
     */
    @ParameterizedTest
    @EnumSource(TypicalBuild.class)
    void eachIsSaidWhereDecksAreOfTheOtherBuild(TypicalBuild walls) {
        ImmutableList<Shape> meeting = SHAPES.select(each -> each.name().equals("terrace runs into a wall"))
                .newWith(OVER_A_CRAWL_SPACE);
        assertEquals(Sets.mutable.of("terrace-at-wall-timber-on-kerb"), asked(meeting, walls, other(walls)));
    }

    private static TypicalBuild other(TypicalBuild build) {
        return TypicalBuild.values()[1 - build.ordinal()];
    }

    /** Under brick between joists a course turns the corner, and round the rooms' side of it the board that stands inside it. */
    @Test
    void aCourseTurnsTheCornerRoundTheBoardInsideIt() {
        Detail boards = detail("crawl-space-edge-wall-boards-down");
        VertexSetup setup = setup(
                TypicalBuild.MASONRY,
                TypicalBuild.FRAME,
                OVER_A_CRAWL_SPACE,
                Lists.immutable.of(boards, boards, detail("outside-corner-unbroken")));
        VertexCells cells = new VertexCells(setup, new VertexSections(setup, Optional.empty(), BuiltIn::laid));
        MutableSet<String> crossing = Sets.mutable.empty();
        MutableSet<String> inside = Sets.mutable.empty();
        VertexSections sections = new VertexSections(setup, Optional.empty(), BuiltIn::laid);
        double under = sections.outside[2] + 0.05;
        cells.each(cell -> {
            double x = sections.middle(0, cell[0]);
            double y = sections.middle(1, cell[1]);
            if (Math.abs(sections.middle(2, cell[2]) - under) < 0.05 && y < 0) {
                (x > 0.1 && x < 0.15 ? crossing : inside).add(cells.at(cell).material());
            }
        });
        assertEquals(Sets.mutable.of("structural foam block"), crossing);
        assertTrue(inside.contains("mineral wool board"), inside.makeString());
        assertEquals(Sets.immutable.empty(), cells.inDoubt());
    }

    private static Detail detail(String id) {
        return CatalogueFile.builtIn().find(id).orElseThrow();
    }

    /** The corners' own details that are asked for; none of the corners is refused, and those can be solved. */
    private static MutableSet<String> asked(ImmutableList<Shape> shapes, TypicalBuild walls, TypicalBuild decks) {
        Map<String, Integer> refused = new TreeMap<>();
        MutableSet<String> asked = Sets.mutable.empty();
        ImmutableList<Detail> corners = CatalogueFile.builtIn().corners();
        for (Shape shape : shapes) {
            for (ImmutableList<Detail> details : choices(shape)) {
                VertexSetup bare = setup(walls, decks, shape, details);
                Optional<CornerDetail> found = CornerDetail.find(bare, corners, false);
                try {
                    VertexBody body = VertexBody.of("corner", bare.with(found), BuiltIn::laid);
                    // Composed without one, it is said by its sections.
                    assertEquals(found.isPresent() && open(bare), body.corner().isPresent(), shape.name());
                    body.corner().ifPresent(own -> {
                        asked.add(own.detail().id());
                        BodySolver.faults(body.heatFlow())
                                .forEach(fault -> refused.merge(
                                        own.detail().id() + ": "
                                                + details.collect(Detail::id).makeString(" ") + ": " + fault.text(),
                                        1,
                                        Integer::sum));
                    });
                } catch (DetailDoesNotFit no) {
                    refused.merge(
                            shape.name() + ": "
                                    + details.collect(Detail::id).distinct().makeString(" ") + ": " + no.getMessage(),
                            1,
                            Integer::sum);
                }
            }
        }
        assertEquals(Map.of(), refused);
        return asked;
    }

    private static boolean open(VertexSetup setup) {
        try {
            return VertexBody.of("corner", setup, BuiltIn::laid).inDoubt().notEmpty();
        } catch (DetailDoesNotFit open) {
            return true;
        }
    }

    static ImmutableList<ImmutableList<Detail>> choices(Shape shape) {
        ImmutableList<ImmutableList<Detail>> all = Lists.immutable.of(Lists.immutable.empty());
        for (Spec spec : shape.edges()) {
            ImmutableList<Detail> options = CatalogueFile.builtIn()
                    .options(JunctionKind.of(spec.kind()))
                    .select(TypicalSetups::usual);
            MutableList<ImmutableList<Detail>> longer = Lists.mutable.empty();
            all.forEach(before -> options.forEach(option -> longer.add(before.newWith(option))));
            all = longer.toImmutable();
        }
        return all;
    }

    static VertexSetup setup(TypicalBuild build, Shape shape, ImmutableList<Detail> details) {
        return setup(build, build, shape, details);
    }

    private static VertexSetup setup(
            TypicalBuild walls, TypicalBuild decks, Shape shape, ImmutableList<Detail> details) {
        MutableList<EdgeEnd> ends = Lists.mutable.empty();
        shape.edges().forEachWithIndex((spec, i) -> {
            JunctionKind kind = JunctionKind.of(spec.kind());
            JunctionSetup typical = walls.setup(kind);
            JunctionSetup setup = kind.faces().getFirst() == BridgeKind.Facing.SIDE
                    ? typical
                    : typical.between(decks.setup(kind).first(), typical.second());
            ends.add(new EdgeEnd(spec.along(), spec.growing(), spec.first(), spec.second(), details.get(i), setup));
        });
        return new VertexSetup(shape.rooms(), ends.toImmutable(), shape.upwards());
    }
}
