package coldseam.envelope.shell.surfaces;

import static org.junit.jupiter.api.Assertions.assertEquals;

import coldseam.envelope.Body;
import coldseam.envelope.Exposure;
import coldseam.envelope.Point3;
import coldseam.envelope.shell.lattice.Vertex;
import coldseam.envelope.shell.mesh.Facet;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.junit.jupiter.api.Test;

/** How much of all directions surfaces take up, seen from a point. */
class SolidAngleTest {

    private static Facet facet(Point3... corners) {
        return new Facet(
                "f",
                Body.Use.WALL,
                Optional.empty(),
                Exposure.outdoors(),
                Lists.immutable.of(corners).collect(Vertex::of),
                new Facet.Traits("", 0, 0, Facet.Mark.NONE));
    }

    /** A rectangle of 2a by 2b at a distance h before its middle takes up 4 atan(ab / (h √(a² + b² + h²))) of 4 π. */
    @Test
    void aRectangleSeenFromBeforeItsMiddle() {
        double a = 1.5;
        double b = 4;
        double h = 2;
        Facet wall = facet(
                new Point3(10 - a, 5, 3 - b),
                new Point3(10 + a, 5, 3 - b),
                new Point3(10 + a, 5, 3 + b),
                new Point3(10 - a, 5, 3 + b));
        double share = 4 * Math.atan(a * b / (h * Math.sqrt(a * a + b * b + h * h))) / (4 * Math.PI);
        assertEquals(share, SolidChecks.turns(Lists.immutable.of(wall), new Point3(10, 5 + h, 3)), 1e-9);
        assertEquals(-share, SolidChecks.turns(Lists.immutable.of(wall), new Point3(10, 5 - h, 3)), 1e-9);
        assertEquals(2 * share, SolidChecks.turns(Lists.immutable.of(wall, wall), new Point3(10, 5 + h, 3)), 1e-9);
    }

    /** From before a corner it is a quarter of what four of them are, and the rest of the whole is the rest. */
    @Test
    void aRectangleSeenFromBeforeItsCorner() {
        Facet wall = facet(new Point3(0, 0, 0), new Point3(3, 0, 0), new Point3(3, 0, 7), new Point3(0, 0, 7));
        double quarter = Math.atan(3 * 7 / (2 * Math.sqrt(9 + 49 + 4.0))) / (4 * Math.PI);
        for (Point3 before :
                new Point3[] {new Point3(0, 2, 0), new Point3(3, 2, 0), new Point3(3, 2, 7), new Point3(0, 2, 7)}) {
            assertEquals(quarter, SolidChecks.turns(Lists.immutable.of(wall), before), 1e-9);
        }
    }
}
