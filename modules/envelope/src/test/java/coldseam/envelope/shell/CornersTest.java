package coldseam.envelope.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.envelope.Body;
import coldseam.envelope.Exposure;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Point2;
import coldseam.envelope.shell.corners.Corner;
import coldseam.envelope.shell.corners.CornerFrame;
import coldseam.envelope.shell.corners.Corners;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.Test;

/** Vertices of the shell: where they are, and where the rooms lie about them. */
class CornersTest {

    private static final Body.Storey BOX = Houses.storey("ground floor", Houses.rectangle(0, 0, 10, 8), 3, "wall");

    private static Shell build(Body body) {
        return ShellBuilder.build(Houses.house(body));
    }

    /** How many octants about each right-angled vertex are rooms, sorted. */
    private static ImmutableList<Integer> rooms(ImmutableList<Corner> corners) {
        return corners.flatCollect(corner -> CornerFrame.of(corner).stream().toList())
                .collect(frame -> Integer.bitCount(frame.rooms()))
                .toSortedList()
                .toImmutable();
    }

    @Test
    void aBoxHasEight() {
        ImmutableList<Corner> corners = Corners.of(build(Houses.body(Houses.flat(), BOX)));
        assertEquals(8, corners.size());
        assertEquals(8, corners.collect(Corner::name).distinct().size());
        corners.forEach(corner -> {
            assertEquals(Lists.immutable.of(90.0, 90.0, 90.0), corner.angles(), corner.name());
            assertEquals(3, corner.surfaces().size());
        });
        corners.forEach(corner -> {
            boolean east = corner.at().x() > 5;
            boolean north = corner.at().y() > 4;
            String way = (north ? "north" : "south") + (east ? "-east" : "-west");
            assertEquals(way + " corner, at the " + (corner.at().z() > 1 ? "roof" : "lowest floor"), corner.place());
        });
        assertEquals(Lists.immutable.of(1, 1, 1, 1, 1, 1, 1, 1), rooms(corners));
        assertEquals(
                4, corners.count(corner -> CornerFrame.of(corner).orElseThrow().upwards()));
    }

    /** Two of the twelve stand in an inside corner of the walls, under the roof and on the slab. */
    @Test
    void anInsideCornerHasThreeOctantsOfRoom() {
        ImmutableList<Point2> outline = Houses.points(0, 0, 10, 0, 10, 4, 6, 4, 6, 9, 0, 9);
        ImmutableList<Corner> corners =
                Corners.of(build(Houses.body(Houses.flat(), Houses.storey("ground floor", outline, 3, "wall"))));
        assertEquals(12, corners.size());
        assertEquals(Lists.immutable.of(1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 3, 3), rooms(corners));
    }

    /**
     * A storey set back on three sides: two corners of it stand on the terrace (five octants of room), two meet the lower
     * walls, with the floor's edge behind at another height.
     */
    @Test
    void aFloorBehindATerraceBelongsToItsVertex() {
        Body.Storey upper = Houses.storey("upper floor", Houses.rectangle(2, 3, 6, 5), 2.8, "wall");
        ImmutableList<Corner> corners = Corners.of(build(Houses.body(Houses.flat(), BOX, upper)));
        ImmutableList<Corner> behind = corners.select(corner -> corner.ends().size() == 4);
        assertEquals(2, behind.size());
        behind.forEach(corner -> {
            assertEquals(
                    1, corner.ends().count(end -> end.edge().kind() == JunctionKind.INTERMEDIATE_FLOOR), corner.name());
            assertEquals(
                    3, Integer.bitCount(CornerFrame.of(corner).orElseThrow().rooms()));
        });
        assertEquals(2, rooms(corners).count(each -> each == 5));
        // Eight of the lower box, four on top of the upper, two on the terrace, two at its back.
        assertEquals(16, corners.size());
    }

    /** Floors between storeys of one wall make vertices of four edges, whose rooms lie above and below. */
    @Test
    void aFloorBetweenStoreysMakesFour() {
        Body.Storey upper = Houses.storey("upper floor", Houses.rectangle(0, 0, 10, 8), 2.8, "wall");
        ImmutableList<Corner> corners = Corners.of(build(Houses.body(Houses.flat(), BOX, upper)));
        assertEquals(12, corners.size());
        assertEquals(4, corners.count(corner -> corner.ends().size() == 4));
        assertEquals(4, rooms(corners).count(each -> each == 2));
    }

    /** A side whose middle has a corner of its own, where what it faces changes: three edges meet there, and nothing is aslant. */
    @Test
    void aFlatWallPartedInTwoIsNoCornerButSquare() {
        ImmutableList<Point2> parted = Houses.points(0, 0, 5, 0, 10, 0, 10, 8, 0, 8);
        Body.Storey lower = Houses.facing(
                Houses.storey("ground floor", parted, 3, "wall"),
                1,
                new Exposure(Exposure.Kind.UNHEATED, "conservatory", 0.7));
        ImmutableList<Corner> corners = Corners.of(build(Houses.body(Houses.flat(), lower)));
        ImmutableList<Corner> flat =
                corners.select(corner -> CornerFrame.of(corner).isEmpty());
        assertTrue(flat.notEmpty());
        flat.forEach(corner -> assertFalse(CornerFrame.aslant(corner), corner.name()));
    }

    @Test
    void aSlopeHasNoFrame() {
        ImmutableList<Corner> corners =
                Corners.of(build(Houses.body(Houses.roof(Body.Roof.Form.GABLE, 45, 0, false), BOX)));
        // Four on the slab; four at the eaves and two at the ridge's ends are aslant.
        assertEquals(10, corners.size());
        assertEquals(4, corners.count(corner -> CornerFrame.of(corner).isPresent()));
        assertEquals(6, corners.count(CornerFrame::aslant));
    }

    /** The frame turns with the house: rooms are counted in its own axes. */
    @Test
    void aTurnedHouseHasTheSameFrames() {
        double c = Math.cos(0.4);
        double s = Math.sin(0.4);
        ImmutableList<Point2> outline = Houses.points(0, 0, 10, 0, 10, 4, 6, 4, 6, 9, 0, 9)
                .collect(p -> new Point2(c * p.x() - s * p.y(), s * p.x() + c * p.y()));
        ImmutableList<Corner> corners =
                Corners.of(build(Houses.body(Houses.flat(), Houses.storey("ground floor", outline, 3, "wall"))));
        assertEquals(Lists.immutable.of(1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 3, 3), rooms(corners));
        assertTrue(corners.allSatisfy(corner -> corner.ends().size() == 3));
    }

    /** A step between two walls of one storey: where it begins and ends the floor's two edges and the step's meet. */
    @Test
    void aStepOfTheWallsIsOneVertex() {
        Body.Storey ground = Houses.storey(
                "ground floor",
                Houses.points(0, 0, 4, 0, 10, 0, 10, 8, 0, 8),
                3,
                Lists.immutable.of("thin", "wall", "wall", "wall", "wall"));
        ImmutableList<Corner> corners = Corners.of(build(Houses.storeys(
                Body.FootprintLine.INNER_FACE, Lists.immutable.of(ground), Houses.slab(), Houses.flat())));
        assertEquals(10, corners.size());
        ImmutableList<Corner> steps = corners.select(
                corner -> corner.ends().anySatisfy(end -> end.edge().kind() == JunctionKind.WALL_THICKNESS_CHANGE));
        assertEquals(2, steps.size());
        steps.forEach(corner -> assertEquals(3, corner.ends().size(), corner.name()));
    }

    /** Thinner walls above: at each corner of the house the edges of the step meet those of both storeys. */
    @Test
    void aStepBetweenStoreysIsOneVertexAtEachCorner() {
        Body.Storey upper = Houses.storey("upper floor", Houses.rectangle(0, 0, 10, 8), 2.8, "thin");
        ImmutableList<Corner> corners = Corners.of(build(Houses.storeys(
                Body.FootprintLine.INNER_FACE, Lists.immutable.of(BOX, upper), Houses.slab(), Houses.flat())));
        assertEquals(12, corners.size());
        assertEquals(4, corners.count(corner -> corner.ends().size() == 4));
    }
}
