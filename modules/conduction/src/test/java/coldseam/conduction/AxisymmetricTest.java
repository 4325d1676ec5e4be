package coldseam.conduction;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Turned sections: pins through insulation, cylinders, spheres. */
class AxisymmetricTest {

    private static final double RIM = 564.190;
    private static final double AREA = Math.PI * RIM * RIM * 1e-6;

    private static Sketch pin(double radius, double conductivity, double inner, double outer) {
        return Sketch.of("pin")
                .axisymmetric()
                .rectangle(0.035, 0, 0, RIM, 200)
                .rectangle(conductivity, 0, 0, radius, 200)
                .environment("indoor", 20, inner)
                .environment("outdoor", 0, outer)
                .boundary("indoor", 0, 0, RIM, 0)
                .boundary("outdoor", 0, 200, RIM, 200);
    }

    /** With prescribed face temperatures the field stays linear: chi = (k1 − k2) A/L, exactly. */
    @Test
    void pinBetweenPrescribedFacesIsExact() {
        Interval l = pin(4, 50, 0, 0).solve(1e-4).coupling("indoor", "outdoor");
        double exact = 0.035 * AREA / 0.2 + (50 - 0.035) * Math.PI * 16e-6 / 0.2;
        assertTrue(l.contains(exact), l + " should hold " + exact);
        assertTrue(l.width() < 1e-11, () -> "width " + l.width());
    }

    /** Bare films on both faces; an independent axisymmetric model, three meshes, extrapolated, six digits. */
    @ParameterizedTest
    @CsvSource({"4, 17, 0.00146489", "10, 0.13, 0.00013566"})
    void pinWithFilms(double radius, double conductivity, double chi) {
        Interval l = pin(radius, conductivity, 0.13, 0.04).solve(3e-6).coupling("indoor", "outdoor");
        Interval computed = l.plus(-AREA / (0.17 + 0.2 / 0.035));
        assertTrue(computed.lower() - 5e-9 <= chi && chi <= computed.upper() + 5e-9, computed + " should hold " + chi);
    }

    /** Radial flow through a hollow cylinder: 2πkh/ln(b/a). */
    @Test
    void hollowCylinder() {
        Interval l = Sketch.of("cylinder")
                .axisymmetric()
                .rectangle(0.04, 50, 0, 150, 1000)
                .environment("inside", 1, 0)
                .environment("outside", 0, 0)
                .boundary("inside", 50, 0, 50, 1000)
                .boundary("outside", 150, 0, 150, 1000)
                .solve(1e-5)
                .coupling("inside", "outside");
        double exact = 2 * Math.PI * 0.04 / Math.log(3);
        assertTrue(l.contains(exact), l + " should hold " + exact);
    }

    /**
     * Between two spheres: 4π/(1/a − 1/b). Both are drawn as polygons of 64 sides; the two ways round (inside and
     * outside) hold the exact value between them. The flow crosses a cut between the two surfaces.
     */
    @Test
    void hollowSphere() {
        double exact = 4 * Math.PI / (1 / 0.5 - 1);
        int n = 64;
        double out = 1 / Math.cos(Math.PI / (2 * n));
        Interval more = sphere(500 * out, 1000, n);
        Interval less = sphere(500, 1000 * out, n);
        assertTrue(less.lower() < exact && exact < more.upper(), less + " to " + more + " should hold " + exact);
        assertTrue(more.upper() - less.lower() < 0.005 * exact, less + " to " + more);
    }

    private static Interval sphere(double inner, double outer, int n) {
        double[] a = arc(inner, n, false);
        double[] b = arc(outer, n, true);
        double[] both = java.util.Arrays.copyOf(b, a.length + b.length);
        System.arraycopy(a, 0, both, b.length, a.length);
        return Sketch.of("sphere")
                .axisymmetric()
                .polygon(1, both)
                .environment("inside", 1, 0)
                .environment("outside", 0, 0)
                .boundary("inside", a)
                .boundary("outside", b)
                .solve(1e-3)
                .coupling("inside", "outside");
    }

    private static double[] arc(double radius, int n, boolean up) {
        double[] c = new double[2 * (n + 1)];
        for (int i = 0; i <= n; i++) {
            double angle = (up ? 1 : -1) * Math.PI * (i - 0.5 * n) / n;
            c[2 * i] = i == 0 || i == n ? 0 : radius * Math.cos(angle);
            c[2 * i + 1] = radius * Math.sin(angle);
        }
        return c;
    }

    /** An adiabatic ring around a film: the stream function has an unknown constant away from the axis. */
    @Test
    void adiabaticRingBetweenTwoEnvironments() {
        Solution solution = Sketch.of("ring")
                .axisymmetric()
                .rectangle(1, 0, 0, 500, 200)
                .environment("centre", 20, 0.1)
                .environment("rim", 10, 0.1)
                .environment("above", 0, 0.1)
                .boundary("centre", 0, 0, 150, 0)
                .boundary("rim", 300, 0, 500, 0)
                .boundary("above", 0, 200, 500, 200)
                .solve(1e-5);
        assertTrue(solution.met());
        Interval sum = solution.heatFlows().injectInto(Interval.of(0), (total, flow) -> total.plus(flow.value()));
        assertTrue(sum.contains(0), sum + " should hold 0");
        assertEquals(0, sum.middle(), 1e-3);
    }
}
