package coldseam.envelope.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;

import coldseam.envelope.Point3;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.junit.jupiter.api.Test;

/**
 * Level sections through a room of 6 m by 4 m, 1 m to 5 m high, under a ridge along its middle: 2 m high at both sides. It stands
 * far from the origin.
 */
class InnerSectionTest {

    private static final double ROUND_OFF = 1e-9;

    private static final ImmutableList<ImmutableList<Point3>> ROOM = Lists.immutable.of(
            points(0, 0, 1, 0, 4, 1, 6, 4, 1, 6, 0, 1),
            points(0, 0, 1, 6, 0, 1, 6, 0, 2, 0, 0, 2),
            points(6, 4, 1, 0, 4, 1, 0, 4, 2, 6, 4, 2),
            points(6, 0, 1, 6, 4, 1, 6, 4, 2, 6, 2, 5, 6, 0, 2),
            points(0, 4, 1, 0, 0, 1, 0, 0, 2, 0, 2, 5, 0, 4, 2),
            points(0, 0, 2, 6, 0, 2, 6, 2, 5, 0, 2, 5),
            points(6, 4, 2, 0, 4, 2, 0, 2, 5, 6, 2, 5));

    private static ImmutableList<Point3> points(double... xyz) {
        MutableList<Point3> points = Lists.mutable.empty();
        for (int i = 0; i < xyz.length; i += 3) {
            points.add(new Point3(xyz[i] + 30, xyz[i + 1] - 70, xyz[i + 2]));
        }
        return points.toImmutable();
    }

    @Test
    void betweenItsCornersItIsAsWideAsTheRoom() {
        assertEquals(0, InnerSection.area(ROOM, 0.9), ROUND_OFF);
        assertEquals(24, InnerSection.area(ROOM, 1.1), ROUND_OFF);
        assertEquals(24, InnerSection.area(ROOM, 1.9), ROUND_OFF);
        assertEquals(12, InnerSection.area(ROOM, 3.5), ROUND_OFF);
        assertEquals(6, InnerSection.area(ROOM, 4.25), ROUND_OFF);
        assertEquals(0, InnerSection.area(ROOM, 5.1), ROUND_OFF);
    }

    /** At corners it is that just under them: each is passed once or not at all. */
    @Test
    void atCornersItIsThatJustUnderThem() {
        assertEquals(0, InnerSection.area(ROOM, 1), ROUND_OFF);
        assertEquals(24, InnerSection.area(ROOM, 2), ROUND_OFF);
        assertEquals(0, InnerSection.area(ROOM, 5), ROUND_OFF);
    }
}
