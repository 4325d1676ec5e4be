package coldseam.junctions.kind;

import static org.junit.jupiter.api.Assertions.assertEquals;

import coldseam.conduction.Point;
import coldseam.envelope.JunctionKind;
import org.eclipse.collections.api.list.ImmutableList;
import org.junit.jupiter.api.Test;

/** How a section lies on the page. */
class ChartTest {

    /** A slope may come down on a slab at any angle: slab and ground lie level. */
    @Test
    void floorsOnTheGroundLieLevelWhateverTheAngle() {
        ImmutableList<JunctionKind> onGround =
                JunctionKind.all().select(kind -> kind.form().ground());
        for (JunctionKind kind : onGround) {
            for (double angle : new double[] {40, 60, 90, 120}) {
                Chart chart = Chart.of(kind.form(), angle);
                assertEquals(-1, chart.firstRun().x(), 1e-12, kind.label());
                assertEquals(-1, chart.firstNormal().y(), 1e-12, kind.label());
                // The second band leans in over the floor where the angle is less than 90°.
                assertEquals(-Math.cos(Math.toRadians(angle)), chart.secondRun().x(), 1e-12, kind.label());
                assertEquals(Math.sin(Math.toRadians(angle)), chart.secondRun().y(), 1e-12, kind.label());
            }
        }
    }

    /** What a drawing keeps level by {@code lean} is level on the page, however the roof before the wall falls. */
    @Test
    void leanKeepsLevelWhatStandsOffAWall() {
        for (double angle : new double[] {225, 270, 275, 305, 330}) {
            Chart chart = Chart.of(JunctionKind.ABUTMENT.form(), angle);
            Point atWall = chart.at(0.5, 0.4);
            Point off = chart.at(0.5 + chart.lean() * 0.25, 0.4 + 0.25);
            assertEquals(atWall.y(), off.y(), 1e-12, angle + " degrees");
            assertEquals(0.25, off.x() - atWall.x(), 1e-12, angle + " degrees");
        }
    }
}
