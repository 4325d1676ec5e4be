package coldseam.junctions.vertex;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.junctions.BuiltIn;
import coldseam.junctions.DetailDoesNotFit;
import coldseam.junctions.TypicalBuild;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.vertex.VertexSetup.EdgeEnd;
import java.util.Arrays;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.set.MutableSet;
import org.eclipse.collections.impl.factory.Lists;
import org.eclipse.collections.impl.factory.Sets;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A corner and its mirror image are filled alike, whichever of its walls the house names first; like edges turn alike. */
@Tag("slow")
class MirroredCornersTest {

    private static CatalogueCornersTest.Shape lower(String edge, String foot) {
        return CatalogueCornersTest.Shape.of(
                edge + " runs into a higher wing",
                0b0101_0111,
                true,
                new CatalogueCornersTest.Spec(foot, 1, false, 2, 0),
                new CatalogueCornersTest.Spec(edge, 0, true, 2, 1),
                new CatalogueCornersTest.Spec("intermediate floor", 1, true, 0, 2),
                new CatalogueCornersTest.Spec("inside corner", 2, false, 0, 1));
    }

    private static final ImmutableList<CatalogueCornersTest.Shape> SHAPES =
            CatalogueCornersTest.SHAPES.newWithAll(Lists.immutable.of(
                    beside("wall to terrace", true),
                    beside("step between heights", true),
                    lower("parapet", "step between heights"),
                    lower("terrace edge over a room", "wall to terrace")));

    /** Where the rooms, or a deck beside them, go on round the corner: three of four quadrants have them. */
    private static final ImmutableList<CatalogueCornersTest.Shape> TURNING = Lists.immutable.of(
            CatalogueCornersTest.inner("parapet", true),
            CatalogueCornersTest.inner("flat roof edge", true),
            CatalogueCornersTest.inner("terrace edge over a room", true),
            CatalogueCornersTest.inner("overhang edge", false),
            CatalogueCornersTest.inner("slab edge", false),
            beside("wall to terrace", true),
            beside("step between heights", true),
            beside("wall under an overhang", false),
            CatalogueCornersTest.Shape.of(
                    "terrace in an inside corner",
                    0b0111_1111,
                    true,
                    new CatalogueCornersTest.Spec("wall to terrace", 0, true, 2, 1),
                    new CatalogueCornersTest.Spec("wall to terrace", 1, true, 2, 0),
                    new CatalogueCornersTest.Spec("inside corner", 2, true, 0, 1)));

    private static CatalogueCornersTest.Shape beside(String edge, boolean upwards) {
        return CatalogueCornersTest.Shape.of(
                edge + " on two sides of an outside corner",
                0b0001_1111,
                upwards,
                new CatalogueCornersTest.Spec(edge, 0, false, 2, 1),
                new CatalogueCornersTest.Spec(edge, 1, false, 2, 0),
                new CatalogueCornersTest.Spec("outside corner", 2, true, 0, 1));
    }

    /**
     * What one detail draws on both walls runs round the corner as it is drawn, at one distance from both: a kerb as a ring, not as
     * a cross. It is not asked where the upright edge has something of its own.
     */
    @ParameterizedTest
    @EnumSource(TypicalBuild.class)
    void whatBothEdgesDrawRunsRoundTheCorner(TypicalBuild build) {
        MutableSet<String> unlike = Sets.mutable.empty();
        for (CatalogueCornersTest.Shape shape : TURNING) {
            int side = shape.edges().getFirst().growing() ? 1 : 0;
            for (ImmutableList<Detail> details : CatalogueCornersTest.choices(shape)
                    .select(each -> each.get(0).equals(each.get(1)))) {
                VertexSetup setup = CatalogueCornersTest.setup(build, shape, details);
                VertexSections sections = new VertexSections(setup, Optional.empty(), BuiltIn::laid);
                if (!Arrays.equals(sections.line[0], sections.line[1])) {
                    // The upright edge's boards butt: it is not alike on both walls.
                    continue;
                }
                VertexCells cells = new VertexCells(setup, sections);
                int end = setup.edges().getLast().growing() ? cells.size(2) - 1 : 0;
                cells.each(cell -> {
                    int out = side == 1 ? Math.min(cell[0], cell[1]) : Math.max(cell[0], cell[1]);
                    Filling upright = cells.at(new int[] {cell[0], cell[1], end});
                    if (sections.of(0, new int[] {0, out, end}).conductsLike(upright)
                            && !sections.of(0, new int[] {0, out, cell[2]}).conductsLike(cells.at(cell))) {
                        unlike.add(shape.name() + ": "
                                + details.collect(Detail::id).makeString(" "));
                    }
                });
            }
        }
        assertEquals(Sets.mutable.empty(), unlike);
    }

    /** The floor of the rooms beside a terrace is thicker than the deck's structure; it ends at the wall, not in the deck's boards. */
    @ParameterizedTest
    @EnumSource(TypicalBuild.class)
    void aFloorBesideADeckDoesNotPierceItsInsulation(TypicalBuild build) {
        CatalogueCornersTest.Shape shape =
                CatalogueCornersTest.SHAPES.detect(each -> each.name().equals("terrace runs into a wall"));
        MutableSet<String> pierced = Sets.mutable.empty();
        int[] seen = new int[1];
        for (ImmutableList<Detail> details : CatalogueCornersTest.choices(shape)
                .select(each -> each.getLast().id().equals("outside-corner-unbroken"))) {
            VertexSetup setup = CatalogueCornersTest.setup(build, shape, details);
            VertexSections sections = new VertexSections(setup, Optional.empty(), BuiltIn::laid);
            cells(setup)
                    .ifPresent(cells -> cells.each(cell -> {
                        Filling edge = sections.of(1, cell);
                        boolean boards = edge.axis() == 2 && !edge.carries() && edge.same(sections.of(2, cell));
                        if (boards && sections.of(0, cell).block()) {
                            seen[0]++;
                            if (!cells.at(cell).same(edge)) {
                                pierced.add(details.collect(Detail::id).makeString(" "));
                            }
                        }
                    }));
        }
        assertTrue(seen[0] > 0);
        assertEquals(Sets.mutable.empty(), pierced);
    }

    @ParameterizedTest
    @EnumSource(TypicalBuild.class)
    void theMirrorImageOfACornerIsFilledAlike(TypicalBuild build) {
        MutableSet<String> unlike = Sets.mutable.empty();
        for (CatalogueCornersTest.Shape shape : SHAPES) {
            for (ImmutableList<Detail> details : CatalogueCornersTest.choices(shape)) {
                VertexSetup setup = CatalogueCornersTest.setup(build, shape, details);
                Optional<VertexCells> straight = cells(setup);
                Optional<VertexCells> mirrored = cells(mirrored(setup));
                String corner =
                        shape.name() + ": " + details.collect(Detail::id).makeString(" ");
                assertEquals(straight.isPresent(), mirrored.isPresent(), corner);
                straight.ifPresent(found -> found.each(cell -> {
                    int[] there = {cell[1], cell[0], cell[2]};
                    if (!found.at(cell).conductsLike(mirrored.orElseThrow().at(there))) {
                        unlike.add(corner);
                    }
                }));
            }
        }
        assertEquals(Sets.mutable.empty(), unlike);
    }

    /** Its cells; empty where its sections leave it open. */
    private static Optional<VertexCells> cells(VertexSetup setup) {
        try {
            return Optional.of(new VertexCells(setup, new VertexSections(setup, Optional.empty(), BuiltIn::laid)));
        } catch (DetailDoesNotFit open) {
            return Optional.empty();
        }
    }

    /** The same with the walls' axes changed over. */
    private static VertexSetup mirrored(VertexSetup setup) {
        int rooms = 0;
        for (int octant = 0; octant < 8; octant++) {
            if (setup.room(octant)) {
                rooms |= 1 << (octant >> 1 & 1 | (octant & 1) << 1 | octant & 4);
            }
        }
        return new VertexSetup(
                rooms,
                setup.edges()
                        .collect(end -> new EdgeEnd(
                                other(end.along()),
                                end.growing(),
                                other(end.first()),
                                other(end.second()),
                                end.detail(),
                                end.setup())),
                setup.upwards());
    }

    private static int other(int axis) {
        return axis == 2 ? 2 : 1 - axis;
    }
}
