package coldseam.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.audit.HeatLoss;
import coldseam.conduction.Interval;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.UnitSystem;
import coldseam.report.words.PrintedLoss;
import org.eclipse.collections.api.list.ImmutableList;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Lines of the heat-loss table as a reviewer multiplies them. */
class PrintedLossTest {

    private static final double FOOT = 0.3048;

    /** W/(m²·K) of 1 Btu/(h·ft²·°F): the International Table Btu, 1055.05585262 J, exact by definition. */
    private static final double BTU = 1055.05585262 / 3600 / (FOOT * FOOT) * 1.8;

    /** A line of the sample with another size and transmittance, its loss rounded in W/K as audits round it. */
    private static HeatLoss.Line line(double size, Interval u) {
        HeatLoss.Line like = SampleAudit.create().heatLoss().lines().getFirst();
        Interval rounded =
                new Interval(Math.rint(size * u.lower() * 1000) / 1000, Math.rint(size * u.upper() * 1000) / 1000);
        return new HeatLoss.Line(like.group(), like.part(), size, u, 1, rounded);
    }

    @Test
    void aWallLosesItsSizeTimesItsTransmittance() {
        // 52.625 ft² x 0.0372274 Btu/(h·ft²·°F) = 1.95909; rounded to 1.033 W/K first it would be 1.958.
        PrintedLoss loss = PrintedLoss.of(line(52.625 * FOOT * FOOT, Interval.of(0.0372274 * BTU)), UnitSystem.US);
        assertEquals("1.959", loss.lower().toPlainString());
        assertEquals("1.959", loss.upper().toPlainString());
    }

    @Test
    void intervalsAreRoundedOutwards() {
        PrintedLoss loss = PrintedLoss.of(line(1, new Interval(0.10001, 0.10002)), UnitSystem.SI);
        assertEquals("0.100", loss.lower().toPlainString());
        assertEquals("0.101", loss.upper().toPlainString());
    }

    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void theSumIsThatOfTheLinesAsPrinted(UnitSystem units) {
        ImmutableList<HeatLoss.Line> lines = SampleAudit.create().heatLoss().lines();
        PrintedLoss sum = PrintedLoss.of(lines, units);
        double step = PrintedLoss.STEP.doubleValue();
        long thousandths = 0;
        long least = 0;
        for (HeatLoss.Line line : lines) {
            PrintedLoss loss = PrintedLoss.of(line, units);
            thousandths += Math.round(loss.upper().doubleValue() / step);
            least += Math.round(loss.lower().doubleValue() / step);
            double middle = units.value(line.unrounded().middle(), Dimension.HEAT_LOSS_COEFFICIENT);
            // Half a step, and half of the interval's own width, which is far less.
            assertTrue(
                    Math.abs(middle - loss.lower().doubleValue())
                            <= step + units.value(line.unrounded().width(), Dimension.HEAT_LOSS_COEFFICIENT),
                    () -> line + " is " + loss);
        }
        assertEquals(thousandths, Math.round(sum.upper().doubleValue() / step));
        assertEquals(least, Math.round(sum.lower().doubleValue() / step));
    }
}
