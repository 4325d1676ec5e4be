package coldseam.conduction;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Slabs, whose coupling is a series or a sum of resistances, and corners with films. */
class LayersTest {

    @Test
    void homogeneousSlabIsExactToRounding() {
        Interval l = Sketch.of("slab").layers(0.5, 0.5).solve(1e-4).coupling("indoor", "outdoor");
        double exact = 1 / (0.13 + 0.2 / 0.5 + 0.04);
        assertTrue(l.contains(exact), l + " should hold " + exact);
        assertTrue(l.width() < 1e-12, () -> "width " + l.width());
    }

    /** A 0.1 mm foil, 20 m of ground and everything between, in series, are exact to rounding too. */
    @Test
    void layersOfAllThicknessesInSeries() {
        Interval l = Sketch.of("series")
                .rectangle(2, 0, -20_000, 5000, 0)
                .rectangle(0.035, 0, 0, 5000, 160)
                .rectangle(160, 0, 160, 5000, 160.1)
                .rectangle(0.13, 0, 160.1, 5000, 172.6)
                .environment("below", 10, 0)
                .environment("above", 0, 0.1)
                .boundary("below", 0, -20_000, 5000, -20_000)
                .boundary("above", 0, 172.6, 5000, 172.6)
                .solve(1e-4)
                .coupling("below", "above");
        double exact = 5 / (20 / 2.0 + 0.16 / 0.035 + 0.0001 / 160 + 0.0125 / 0.13 + 0.1);
        // The lattice holds tenths of a micrometre, so all thicknesses are met and rounding alone is left.
        assertEquals(exact, l.middle(), 1e-9 * exact);
        assertTrue(l.width() < 1e-9, () -> "width " + l.width());
    }

    @Test
    void layersSideBySideAddUp() {
        Interval l = Sketch.of("parallel")
                .rectangle(0.5, 0, 0, 300, 200)
                .rectangle(2, 300, 0, 1000, 200)
                .environment("indoor", 20, 0)
                .environment("outdoor", 0, 0)
                .boundary("indoor", 0, 0, 1000, 0)
                .boundary("outdoor", 0, 200, 1000, 200)
                .solve(1e-4)
                .coupling("indoor", "outdoor");
        double exact = 0.3 * 0.5 / 0.2 + 0.7 * 2 / 0.2;
        assertTrue(l.contains(exact) && l.width() < 1e-11, l + " should hold " + exact);
    }

    /**
     * A homogeneous corner with films 0.13 and 0.04, t = 0.3 m, arms 2 m beyond the inner corner; from an independent
     * graded finite-element model, extrapolated over three meshes, uncertain by about 1e-6.
     */
    @ParameterizedTest
    @CsvSource({"0.6, 6.164570, 0.659918", "0.1, 1.311408, 0.879032"})
    void cornerWithFilms(double conductivity, double coupling, double factor) {
        Solution solution = Sketch.of("corner with films")
                .polygon(conductivity, 0, 0, 2300, 0, 2300, 300, 300, 300, 300, 2300, 0, 2300)
                .environment("indoor", 1, 0.13)
                .environment("outdoor", 0, 0.04)
                .boundary("indoor", 2300, 300, 300, 300, 300, 2300)
                .boundary("outdoor", 0, 2300, 0, 0, 2300, 0)
                .solve(1e-7);
        Interval l = solution.coupling("indoor", "outdoor");
        assertEquals(coupling, l.middle(), 4e-6);
        // At this width the corner's temperature has settled to 2e-5; the value has six digits.
        assertEquals(factor, solution.surface("indoor").lowest(), 2e-5);
        assertEquals(new Point(0.3, 0.3), solution.surface("indoor").at());
    }
}
