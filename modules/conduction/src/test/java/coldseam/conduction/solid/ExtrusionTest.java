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
import java.util.OptionalDouble;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.Test;

/** A section drawn 1 m long is solved by the other core, too: another mesh, other elements, another solver. */
class ExtrusionTest {

    private static Section section() {
        return new Section(
                "wall and flat roof",
                Symmetry.PLANAR,
                Lists.immutable.of(
                        new Region("insulation", 0.035, Polygon.rectangle(0, 0, 1.58, 1.6)),
                        new Region("brick", 0.8, Polygon.rectangle(0.2, 0, 0.38, 1.2)),
                        new Region("concrete", 2.3, Polygon.rectangle(0.2, 1.2, 1.58, 1.35)),
                        new Region("room", 1, Polygon.rectangle(0.38, 0, 1.58, 1.2))),
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

    @Test
    void meetsTheSectionsInterval() {
        Section whole = section();
        // The room is air, not a solid: draw the L of wall and roof instead of painting over it.
        Section section = new Section(
                whole.name(),
                whole.symmetry(),
                Lists.immutable.of(
                        new Region(
                                "insulation",
                                0.035,
                                new Polygon(path(0, 0, 0.38, 0, 0.38, 1.2, 1.58, 1.2, 1.58, 1.6, 0, 1.6))),
                        whole.regions().get(1),
                        whole.regions().get(2)),
                whole.environments(),
                whole.boundaries(),
                whole.probes());
        Interval planar = Conduction.solve(section, new Accuracy(1e-5, 400_000)).coupling("indoor", "outdoor");
        Interval solid = SolidCases.ext().solve(1e-5).coupling("indoor", "outdoor");
        assertTrue(planar.lower() <= solid.upper() && solid.lower() <= planar.upper(), () -> planar + " and " + solid);
        assertEquals(planar.middle(), solid.middle(), 1e-5);
    }
}
