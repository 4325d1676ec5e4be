package coldseam.conduction.solid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.conduction.Accuracy;
import coldseam.conduction.Boundary;
import coldseam.conduction.Environment;
import coldseam.conduction.Interval;
import coldseam.conduction.Point;
import coldseam.conduction.Polygon;
import coldseam.conduction.Region;
import coldseam.conduction.Section;
import coldseam.conduction.Symmetry;
import coldseam.conduction.solve.Conduction;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.Test;

/** A section drawn 1 m long is solved by the other core, too: another mesh, other elements, another solver. */
class ExtrusionTest {

    /** Drawn as a section: an L of insulation and what lies in it. */
    private static Section section() {
        return new Section(
                "wall and flat roof",
                Symmetry.PLANAR,
                Lists.immutable.of(
                        new Region(
                                "insulation",
                                0.035,
                                new Polygon(path(0, 0, 0.38, 0, 0.38, 1.2, 1.58, 1.2, 1.58, 1.6, 0, 1.6))),
                        new Region("brick", 0.8, Polygon.rectangle(0.2, 0, 0.38, 1.2)),
                        new Region("concrete", 2.3, Polygon.rectangle(0.2, 1.2, 1.58, 1.35))),
                Lists.immutable.of(new Environment("indoor", 20, 0.13), new Environment("outdoor", -5, 0.04)),
                Lists.immutable.of(
                        new Boundary("outdoor", path(0, 0, 0, 1.6, 1.58, 1.6), OptionalDouble.empty()),
                        new Boundary("indoor", path(0.38, 0, 0.38, 1.2, 1.58, 1.2), OptionalDouble.empty())),
                Lists.immutable.empty());
    }

    private static org.eclipse.collections.api.list.ImmutableList<Point> path(double... xy) {
        org.eclipse.collections.api.list.MutableList<Point> points = Lists.mutable.empty();
        for (int i = 0; i < xy.length; i += 2) {
            points.add(new Point(xy[i], xy[i + 1]));
        }
        return points.toImmutable();
    }

    private static void meet(Interval a, Interval b) {
        assertTrue(a.lower() <= b.upper() && b.lower() <= a.upper(), () -> a + " and " + b);
        // Both are 1e-5 wide.
        assertEquals(a.middle(), b.middle(), 1e-5 * a.middle());
    }

    @Test
    void meetsTheSectionsInterval() {
        Accuracy accuracy = new Accuracy(1e-5, 400_000);
        Interval planar = Conduction.solve(section(), accuracy).coupling("indoor", "outdoor");
        meet(planar, SolidCases.ext().solve(1e-5).coupling("indoor", "outdoor"));
        meet(
                planar,
                Conduction.solve(CutPlanes.section(SolidCases.ext().body(), BoxSide.Y0), accuracy)
                        .coupling("indoor", "outdoor"));
    }

    /** The lines where cut planes meet are the plane parts' stacks; closed forms. */
    @Test
    void linesWhereCutPlanesMeetAreStacks() {
        SolidBody body = SolidCases.ext().body();
        assertEquals(
                1 / (0.04 + 0.2 / 0.035 + 0.18 / 0.8 + 0.13),
                CutPlanes.stack(body, BoxSide.Y1, BoxSide.Z0).orElseThrow().transmittance(),
                1e-12);
        assertEquals(
                1 / (0.13 + 0.15 / 2.3 + 0.25 / 0.035 + 0.04),
                CutPlanes.stack(body, BoxSide.X1, BoxSide.Y0).orElseThrow().transmittance(),
                1e-12);
        // Along the joist's floor there is indoor air on both sides.
        assertEquals(Optional.empty(), CutPlanes.stack(SolidCases.joist().body(), BoxSide.X0, BoxSide.Y1));
    }
}
