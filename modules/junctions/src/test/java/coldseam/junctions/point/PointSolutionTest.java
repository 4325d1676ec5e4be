package coldseam.junctions.point;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.conduction.Accuracy;
import coldseam.conduction.solve.Conduction;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Pins through insulation against a closed form and an independent axisymmetric solver. */
class PointSolutionTest {

    /** m: a disc of 1 m². */
    private static final double DISC = 0.564190;

    private static PointSection pin(double radius, double conductivity, double rsi, double rse, double disc) {
        return new PointSection(
                "pin",
                Lists.immutable.of(new PointSection.Sheet("board", 0.035, 0.2)),
                Lists.immutable.of(new PointSection.Body("pin", conductivity, 0, radius, 0, 0.2)),
                rsi,
                rse,
                disc,
                20,
                0);
    }

    private static PointSolution solved(PointSection section, double width) {
        return PointSolution.of(section, new Accuracy(width, 400_000), Conduction::solve);
    }

    /** Faces at fixed temperatures leave the field linear: chi = (k1 − k2)·A/L, by hand. */
    @Test
    void pinBetweenFixedTemperaturesIsExact() {
        PointSolution result = solved(pin(0.004, 50, 0, 0, DISC), 1e-5);
        double exact = (50 - 0.035) * Math.PI * 0.004 * 0.004 / 0.2;
        assertEquals(0.01255758, exact, 1e-8);
        assertTrue(
                result.chi().lower() <= exact + 1e-12
                        && exact - 1e-12 <= result.chi().upper(),
                result.chi() + "");
        assertTrue(result.chi().width() < 1e-9, "a linear field is found at once: " + result.chi());
    }

    /**
     * Pin flush with both faces, Rsi 0.13 and Rse 0.04 m²·K/W on the bare insulation: an independent axisymmetric finite
     * element model, three meshes and extrapolation, to 1e-6 W/K.
     */
    @ParameterizedTest
    @CsvSource({"0.004, 17, 0.00146489", "0.010, 0.13, 0.00013566"})
    void flushPinHitsTheIndependentValue(double radius, double conductivity, double expected) {
        PointSolution result = solved(pin(radius, conductivity, 0.13, 0.04, DISC), 2e-6);
        assertTrue(result.solution().met(), result.solution().notes() + "");
        assertTrue(
                result.chi().lower() - 1e-6 <= expected
                        && expected <= result.chi().upper() + 1e-6,
                expected + " outside " + result.chi());
        assertTrue(result.chi().width() < 1e-6, result.chi() + "");
    }

    @Test
    void aLargerDiscChangesNothing() {
        PointSolution small = solved(pin(0.004, 17, 0.13, 0.04, DISC), 1e-5);
        PointSolution large = solved(pin(0.004, 17, 0.13, 0.04, 0.8), 1e-5);
        assertEquals(small.chi().middle(), large.chi().middle(), 5e-6);
    }

    @Test
    void whatStandsOutLosesMoreAndCoolsTheRoomMore() {
        PointSection flush = pin(0.02, 50, 0.13, 0.04, DISC);
        PointSection out = new PointSection(
                "post",
                flush.sheets(),
                Lists.immutable.of(
                        new PointSection.Body("post", 50, 0, 0.02, 0, 0.6),
                        new PointSection.Body("foot", 50, 0, 0.05, 0.2, 0.21)),
                0.13,
                0.04,
                DISC,
                20,
                0);
        PointSolution first = solved(flush, 1e-3);
        PointSolution second = solved(out, 1e-3);
        assertTrue(second.chi().lower() > first.chi().upper(), first.chi() + " then " + second.chi());
        assertTrue(second.temperatureFactor() < first.temperatureFactor() - 0.01);
        assertTrue(first.temperatureFactor() > 0 && first.temperatureFactor() < 1);
    }
}
