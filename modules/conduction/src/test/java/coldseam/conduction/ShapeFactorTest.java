package coldseam.conduction;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Shape factors with closed forms; unit conductivity, prescribed face temperatures. */
class ShapeFactorTest {

    /**
     * Exact values by elliptic integrals; W/w = 2 has the closed form 8 K(√3/2)/K(1/2). The hole faces an environment, so
     * the stream function jumps across a cut.
     */
    @ParameterizedTest
    @CsvSource({
        "1.25, 34.2349151987734",
        "1.5, 18.2349136637414",
        "2, 10.2340925693681",
        "2.5, 7.56153153981058",
        "3, 6.21554728485894",
        "5, 4.13448702423409"
    })
    void squareInSquare(double ratio, double exact) {
        double w = 500;
        double o = 500 * ratio;
        Interval s = Rings.between(
                new double[] {-o, -o, o, -o, o, o, -o, o}, new double[] {-w, -w, w, -w, w, w, -w, w}, 1e-5);
        assertTrue(s.contains(exact), s + " should hold " + exact);
    }

    /**
     * S = 2π/arccosh((D² + d² − 4e²)/(2Dd)), F. P. Incropera and D. P. DeWitt, Fundamentals of Heat and Mass Transfer,
     * table 4.1. The circles are drawn as polygons; with prescribed temperatures less material conducts more, so the
     * exact value lies between a polygon ring around both gaps and one inside it. At 96 corners these differ by 0.3 %.
     */
    @ParameterizedTest
    @CsvSource({"1000, 500, 0, 9.0647203", "1000, 500, 100, 9.8600388", "2000, 1000, 250, 10.4166526923237"})
    void eccentricCylinders(double outer, double inner, double offset, double exact) {
        int n = 96;
        double out = 1 / Math.cos(Math.PI / n);
        Interval more =
                Rings.between(Rings.circle(0, 0, outer / 2, n), Rings.circle(offset, 0, inner / 2 * out, n), 1e-3);
        Interval less =
                Rings.between(Rings.circle(0, 0, outer / 2 * out, n), Rings.circle(offset, 0, inner / 2, n), 1e-3);
        assertTrue(less.lower() < exact && exact < more.upper(), less + " to " + more + " should hold " + exact);
        assertTrue(more.upper() - less.lower() < 0.005 * exact, less + " to " + more);
    }

    /**
     * A strip of half-width a on a slab of thickness h, its bottom isothermal, the rest of its top adiabatic: S = 2
     * K(k)/K(k'), k = tanh(πa/2h), by conformal mapping. Cut off 15 h beyond the strip, where the rest is below e^−40.
     */
    @ParameterizedTest
    @CsvSource({"0.1, 0.969823348976217", "0.5, 1.8755407775236", "1, 2.88224496214024", "2, 4.88254184558205"})
    void stripOnSlab(double a, double exact) {
        double end = 1000 * a + 15_000;
        Interval s = Sketch.of("strip")
                .rectangle(1, -end, 0, end, 1000)
                .environment("strip", 1, 0)
                .environment("bottom", 0, 0)
                .boundary("strip", -1000 * a, 1000, 1000 * a, 1000)
                .boundary("bottom", -end, 0, end, 0)
                .solve(1e-5)
                .coupling("strip", "bottom");
        assertTrue(s.contains(exact), s + " should hold " + exact);
    }

    /** A unit square, one side at 1 and the others at 0, by Fourier series (separation of variables). */
    @ParameterizedTest
    @CsvSource({
        "0.5, 0.5, 0.25",
        "0.5, 0.75, 0.540529",
        "0.25, 0.5, 0.182028",
        "0.5, 0.25, 0.095414",
        "0.25, 0.25, 0.067972",
        "0.25, 0.75, 0.432028"
    })
    void fourierPlate(double x, double y, double exact) {
        double computed = Sketch.of("plate")
                .metres()
                .rectangle(1, 0, 0, 1, 1)
                .environment("one", 1, 0)
                .environment("zero", 0, 0)
                .boundary("one", 0, 1, 1, 1)
                .boundary("zero", 0, 1, 0, 0, 1, 0, 1, 1)
                .solve(1e-4)
                .field()
                .temperatureAt(x, y);
        // Six printed digits, and a field error of about the square root of the width times the distance to the jumps.
        assertEquals(exact, computed, 2e-4);
    }

    /**
     * A plate fin with an adiabatic tip: q = √(2hkt) tanh(mL), m = √(2h/kt), standard fin theory. It neglects the
     * temperature drop across the fin, of relative size Bi/3 = h t/(6k) = 1/300, which counts as so much less h: hence 0.34 %.
     */
    @Test
    void fin() {
        double h = 10;
        double k = 50;
        double t = 0.1;
        double length = 0.4;
        double m = Math.sqrt(2 * h / (k * t));
        double theory = Math.sqrt(2 * h * k * t) * Math.tanh(m * length);
        Interval l = Sketch.of("fin")
                .metres()
                .rectangle(k, 0, 0, length, t)
                .environment("base", 1, 0)
                .environment("air", 0, 1 / h)
                .boundary("base", 0, 0, 0, t)
                .boundary("air", 0, t, length, t)
                .boundary("air", length, 0, 0, 0)
                .solve(1e-4)
                .coupling("base", "air");
        assertEquals(theory, l.middle(), 0.0034 * theory);
    }
}
