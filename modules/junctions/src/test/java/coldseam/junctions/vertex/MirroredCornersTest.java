package coldseam.junctions.vertex;

import static org.junit.jupiter.api.Assertions.assertEquals;

import coldseam.junctions.BuiltIn;
import coldseam.junctions.DetailDoesNotFit;
import coldseam.junctions.TypicalBuild;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.vertex.VertexSetup.EdgeEnd;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.set.MutableSet;
import org.eclipse.collections.impl.factory.Lists;
import org.eclipse.collections.impl.factory.Sets;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A corner and its mirror image are filled alike, whichever of its walls the house names first. */
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
                    lower("parapet", "step between heights"), lower("terrace edge over a room", "wall to terrace")));

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
            return Optional.of(new VertexCells(setup, new VertexSections(setup, Optional.empty(), BuiltIn.LIBRARY)));
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
