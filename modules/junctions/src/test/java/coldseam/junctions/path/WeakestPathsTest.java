package coldseam.junctions.path;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.conduction.Boundary;
import coldseam.conduction.Point;
import coldseam.conduction.Polygon;
import coldseam.conduction.Region;
import coldseam.junctions.WeakestPath;
import coldseam.junctions.section.Composition;
import coldseam.junctions.section.Shapes;
import java.util.OptionalDouble;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.Test;

/** Weakest paths with a closed form. */
class WeakestPathsTest {

    /** Relative: the way is a real one, at most a few hundred-thousandths more than the least. */
    private static final double CLOSE = 1e-4;

    private static WeakestPath path(
            ImmutableList<Region> regions, ImmutableList<Point> indoor, ImmutableList<Point> outdoor) {
        return path(
                regions,
                Lists.immutable.of(
                        new Boundary("indoor", indoor, OptionalDouble.empty()),
                        new Boundary("outdoor", outdoor, OptionalDouble.empty())));
    }

    private static WeakestPath path(ImmutableList<Region> regions, ImmutableList<Boundary> boundaries) {
        return WeakestPaths.of(new PathQuestion(
                regions.collect(
                        each -> new Composition.Face(Shapes.of(each.outline().corners()), each.conductivity(), false)),
                boundaries,
                Lists.immutable.of("outdoor"),
                1));
    }

    private static Region region(double conductivity, double x0, double y0, double x1, double y1) {
        return new Region("r", conductivity, Polygon.rectangle(x0, y0, x1, y1));
    }

    @Test
    void straightThroughALayeredWall() {
        WeakestPath found = path(
                Lists.immutable.of(region(0.8, 0, 0, 0.2, 1), region(0.04, 0.2, 0, 0.3, 1)),
                Lists.immutable.of(new Point(0, 0), new Point(0, 1)),
                Lists.immutable.of(new Point(0.3, 0), new Point(0.3, 1)));
        assertEquals(0.25 + 2.5, found.resistance(), 1e-9);
        assertEquals(2, found.path().size() - (found.path().size() == 3 ? 1 : 0));
    }

    /** A plain wall with a block: each way through is as weak as the next, and hashed sets must not choose among them. */
    @Test
    void theSameWayEachTime() {
        ImmutableList<WeakestPath> found = Lists.immutable
                .fromStream(java.util.stream.IntStream.range(0, 20).boxed())
                .collect(each -> path(
                        Lists.immutable.of(
                                region(0.8, 0, 0, 0.2, 1),
                                region(0.8, 0, 1, 0.2, 2),
                                region(0.04, 0.2, 0, 0.3, 1),
                                region(0.04, 0.2, 1, 0.3, 2)),
                        Lists.immutable.of(new Point(0, 0), new Point(0, 2)),
                        Lists.immutable.of(new Point(0.3, 0), new Point(0.3, 2))));
        assertEquals(1, found.distinct().size(), found::toString);
    }

    /** From a point-like window at one side to one at the other, 1 m along: the way bends at the interface as light does. */
    @Test
    void bendsByTheLawOfRefraction() {
        double window = 1e-4;
        WeakestPath found = path(
                Lists.immutable.of(region(1, 0, 0, 0.5, 1), region(0.25, 0.5, 0, 1, 1)),
                Lists.immutable.of(new Point(0, 0), new Point(0, window)),
                Lists.immutable.of(new Point(1, 1 - window), new Point(1, 1)));
        double rise = 1 - 2 * window;
        double bent = refracted(rise);
        double least = Math.hypot(0.5, bent) + 4 * Math.hypot(0.5, rise - bent);
        assertTrue(found.resistance() >= least - 1e-12);
        assertEquals(least, found.resistance(), CLOSE * least);
        Point bend = found.path().detect(each -> Math.abs(each.x() - 0.5) < 1e-9);
        // At a flat minimum the place is known to the root of the value's accuracy.
        assertEquals(bent + window, bend.y(), 0.01);
    }

    /** Where √(0.25 + y²)/1 + √(0.25 + (rise − y)²)/0.25 is least, by bisection on its derivative. */
    private static double refracted(double rise) {
        double low = 0;
        double high = rise;
        for (int i = 0; i < 100; i++) {
            double y = (low + high) / 2;
            if (y / Math.hypot(0.5, y) > 4 * (rise - y) / Math.hypot(0.5, rise - y)) {
                high = y;
            } else {
                low = y;
            }
        }
        return low;
    }

    /**
     * A bent way beside a straight one that is longer by less than the coarse points can tell: where the search begins on the
     * straight one alone, that is what it finds.
     */
    @Test
    void theLesserOfTwoWaysThatAreNearlyAlike() {
        double window = 1e-4;
        double rise = 1 - 2 * window;
        double bent = refracted(rise);
        double least = Math.hypot(0.5, bent) + 4 * Math.hypot(0.5, rise - bent);
        double straight = 1.0008 * least;
        WeakestPath found = path(
                Lists.immutable.of(
                        region(1, 0, 0, 0.5, 1), region(0.25, 0.5, 0, 1, 1), region(1 / straight, 0, 2, 1, 2.3)),
                Lists.immutable.of(
                        boundary("indoor", 0, 0, window),
                        boundary("indoor", 0, 2, 2.3),
                        boundary("outdoor", 1, 1 - window, 1),
                        boundary("outdoor", 1, 2, 2.3)));
        assertEquals(least, found.resistance(), CLOSE * least);
    }

    private static Boundary boundary(String environment, double x, double y0, double y1) {
        return new Boundary(
                environment, Lists.immutable.of(new Point(x, y0), new Point(x, y1)), OptionalDouble.empty());
    }

    /** Around the end of a resisting strip: two straight pieces that meet at its corner cost less than going through. */
    @Test
    void goesAroundWhatResists() {
        WeakestPath found = path(
                Lists.immutable.of(
                        region(1, 0, 0, 0.4, 1),
                        region(0.001, 0.4, 0, 0.6, 0.8),
                        region(1, 0.4, 0.8, 0.6, 1),
                        region(1, 0.6, 0, 1, 1)),
                Lists.immutable.of(new Point(0, 0), new Point(0, 1e-4)),
                Lists.immutable.of(new Point(1, 0), new Point(1, 1e-4)));
        double expected = 2 * Math.hypot(0.4, 0.8 - 1e-4) + 0.2;
        assertEquals(expected, found.resistance(), CLOSE * expected);
    }

    /** A good conductor is followed along its edge: in at once, along, out at once. */
    @Test
    void followsAConductor() {
        WeakestPath found = path(
                Lists.immutable.of(
                        region(0.04, 0, 0, 0.5, 0.2), region(50, 0, 0.2, 0.5, 0.21), region(0.04, 0, 0.21, 0.5, 0.4)),
                Lists.immutable.of(new Point(0, 0), new Point(0, 0.4)),
                Lists.immutable.of(new Point(0.5, 0), new Point(0.5, 0.4)));
        assertEquals(0.5 / 50, found.resistance(), 1e-9);
    }
}
