package coldseam.conduction.elements;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.conduction.Sketch;
import coldseam.conduction.mesh.Mesh;
import coldseam.conduction.mesh.MeshedSection;
import java.util.Arrays;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Every integral over a triangle and its sides against Gauss's rule with many points, worked out apart from the definitions in
 * {@link Elements}: q = curl s over the weight, which is 1 of a planar section and the radius of a turned one.
 */
class ElementsTest {

    /** Relative to the largest value of its kind: sums of a few hundred products; the rules with 1/r promise 1e-15 each. */
    private static final double ROUND_OFF = 1e-12;

    /** Points across a triangle: a quintic over r from 20 mm to 900 mm needs sixty of them for 1e-15. */
    private static final int POINTS = 60;

    /** What is drawn: corners, mm, of which the side from the first to the second faces indoors, the next outdoors. */
    private enum Shape {
        PLANAR(300, 0, 900, 100, 500, 700),
        TURNED(300, 0, 900, 100, 500, 700),
        NEAR_THE_AXIS(20, 0, 900, 100, 500, 700),
        UPRIGHT_INSIDE(40, 700, 40, 0, 800, 300),
        UPRIGHT_OUTSIDE(800, 0, 800, 600, 30, 200);

        private final double[] corners;

        Shape(double... corners) {
            this.corners = corners;
        }
    }

    /** Of matrices whose largest entries are some tens. */
    private static final double MATRIX = 50 * ROUND_OFF;

    private static final double CONDUCTIVITY = 1.7;

    private static final double[] AMBIENT = {21, -7};
    private static final double[] U = {3, -5, 8, 13, -2, 6};
    private static final double[] S = {-1.5, 4, 2.5, -3, 7, 0.5};

    private final double[] at = new double[POINTS];
    private final double[] weight = new double[POINTS];

    private MeshedSection drawing;
    private Elements elements;
    private boolean turned;

    // Of the point last gone to.
    private double radius;
    private final double[] f = new double[6];
    private final double[] fx = new double[6];
    private final double[] fy = new double[6];

    private void draw(Shape shape) {
        boolean axisymmetric = shape != Shape.PLANAR;
        turned = axisymmetric;
        double[] c = shape.corners;
        Sketch sketch = Sketch.of("triangle")
                .polygon(CONDUCTIVITY, c)
                .environment("indoor", 21, 0.13)
                .environment("outdoor", -7, 0.04)
                .boundary("indoor", c[0], c[1], c[2], c[3])
                .boundary("outdoor", c[2], c[3], c[4], c[5]);
        drawing = new MeshedSection((axisymmetric ? sketch.axisymmetric() : sketch).section());
        elements = elements(drawing.resistance);
        for (int i = 0; i < POINTS; i++) {
            legendre(i);
        }
    }

    private Elements elements(double[] resistance) {
        double step = drawing.lattice.step();
        return turned
                ? new AxisymmetricElements(drawing.mesh, step, drawing.conductivity, drawing.environment, resistance)
                : new PlanarElements(drawing.mesh, step, drawing.conductivity, drawing.environment, resistance);
    }

    /** Gauss's points and weights on 0 to 1, as roots of the Legendre polynomial. */
    private void legendre(int i) {
        double z = Math.cos(Math.PI * (i + 0.75) / (POINTS + 0.5));
        double slope = 0;
        for (int pass = 0; pass < 50; pass++) {
            double before = 1;
            double p = z;
            for (int n = 2; n <= POINTS; n++) {
                double next = ((2 * n - 1) * z * p - (n - 1) * before) / n;
                before = p;
                p = next;
            }
            slope = POINTS * (before - z * p) / (1 - z * z);
            z -= p / slope;
        }
        at[i] = (1 + z) / 2;
        weight[i] = 1 / ((1 - z * z) * slope * slope);
    }

    private double x(int t, int corner) {
        Mesh mesh = drawing.mesh;
        return drawing.lattice.step() * mesh.x[mesh.node[6 * t + corner]];
    }

    private double y(int t, int corner) {
        Mesh mesh = drawing.mesh;
        return drawing.lattice.step() * mesh.y[mesh.node[6 * t + corner]];
    }

    private double twiceArea(int t) {
        return (x(t, 1) - x(t, 0)) * (y(t, 2) - y(t, 0)) - (x(t, 2) - x(t, 0)) * (y(t, 1) - y(t, 0));
    }

    /** The six shape functions and their gradients. */
    private void go(int t, double... l) {
        radius = turned ? l[0] * x(t, 0) + l[1] * x(t, 1) + l[2] * x(t, 2) : 1;
        double[] dx = new double[3];
        double[] dy = new double[3];
        for (int i = 0; i < 3; i++) {
            int j = (i + 1) % 3;
            int k = (i + 2) % 3;
            dx[i] = (y(t, j) - y(t, k)) / twiceArea(t);
            dy[i] = (x(t, k) - x(t, j)) / twiceArea(t);
        }
        for (int i = 0; i < 3; i++) {
            int j = (i + 1) % 3;
            int k = (i + 2) % 3;
            f[i] = l[i] * (2 * l[i] - 1);
            fx[i] = (4 * l[i] - 1) * dx[i];
            fy[i] = (4 * l[i] - 1) * dy[i];
            f[3 + i] = 4 * l[j] * l[k];
            fx[3 + i] = 4 * (l[j] * dx[k] + l[k] * dx[j]);
            fy[3 + i] = 4 * (l[j] * dy[k] + l[k] * dy[j]);
        }
    }

    private interface Integrand {
        double here();
    }

    private double over(int t, Integrand integrand) {
        double sum = 0;
        for (int i = 0; i < POINTS; i++) {
            for (int j = 0; j < POINTS; j++) {
                go(t, 1 - at[i], at[i] * (1 - at[j]), at[i] * at[j]);
                sum += twiceArea(t) * at[i] * weight[i] * weight[j] * integrand.here();
            }
        }
        return sum;
    }

    private double along(int t, int side, Integrand integrand) {
        int a = (side + 1) % 3;
        int b = (side + 2) % 3;
        double sum = 0;
        for (int i = 0; i < POINTS; i++) {
            double[] l = new double[3];
            l[a] = 1 - at[i];
            l[b] = at[i];
            go(t, l);
            sum += length(t, side) * weight[i] * integrand.here();
        }
        return sum;
    }

    private double length(int t, int side) {
        int a = (side + 1) % 3;
        int b = (side + 2) % 3;
        return Math.hypot(x(t, b) - x(t, a), y(t, b) - y(t, a));
    }

    /** The derivative of shape function i along a side. */
    private double slope(int t, int side, int i) {
        int a = (side + 1) % 3;
        int b = (side + 2) % 3;
        return (fx[i] * (x(t, b) - x(t, a)) + fy[i] * (y(t, b) - y(t, a))) / length(t, side);
    }

    private static double sum(double[] of, IntToDoubleFunction each) {
        double sum = 0;
        for (int i = 0; i < 6; i++) {
            sum += of[i] * each.applyAsDouble(i);
        }
        return sum;
    }

    private int boundary(int t, int side) {
        return drawing.mesh.neighbour[3 * t + side] < 0 ? Math.max(-1, drawing.mesh.tag[3 * t + side]) : -1;
    }

    private double resistance(int t, int side) {
        return boundary(t, side) < 0 ? 0 : drawing.resistance[boundary(t, side)];
    }

    private double ambient(int t, int side) {
        return AMBIENT[drawing.environment[boundary(t, side)]];
    }

    @ParameterizedTest
    @EnumSource
    void theMatricesAreTheIntegralsOfTheirShapeFunctions(Shape shape) {
        draw(shape);
        IntStream.range(0, drawing.mesh.triangles).forEach(t -> {
            double[] temperature = new double[36];
            double[] stream = new double[36];
            elements.temperatureMatrix(t, temperature);
            elements.streamMatrix(t, stream);
            for (int i = 0; i < 6; i++) {
                for (int j = 0; j < 6; j++) {
                    assertEquals(temperature(t, i, j), temperature[6 * i + j], MATRIX, i + ", " + j);
                    assertEquals(stream(t, i, j), stream[6 * i + j], MATRIX, i + ", " + j);
                }
            }
        });
    }

    private double temperature(int t, int i, int j) {
        double sum = over(t, () -> CONDUCTIVITY * radius * (fx[i] * fx[j] + fy[i] * fy[j]));
        for (int side = 0; side < 3; side++) {
            double r = resistance(t, side);
            sum += r > 0 ? along(t, side, () -> radius * f[i] * f[j] / r) : 0;
        }
        return sum;
    }

    private double stream(int t, int i, int j) {
        double sum = over(t, () -> (fx[i] * fx[j] + fy[i] * fy[j]) / (CONDUCTIVITY * radius));
        for (int side = 0; side < 3; side++) {
            int of = side;
            double r = resistance(t, side);
            sum += r > 0 ? along(t, side, () -> r * slope(t, of, i) * slope(t, of, j) / radius) : 0;
        }
        return sum;
    }

    @ParameterizedTest
    @EnumSource
    void theLoadIsOfTheEnvironmentAskedFor(Shape shape) {
        draw(shape);
        for (int environment = 0; environment < 2; environment++) {
            double total = 0;
            for (int t = 0; t < drawing.mesh.triangles; t++) {
                double[] load = new double[6];
                // What stood there before is nobody's load.
                Arrays.fill(load, 7);
                elements.temperatureLoad(t, environment, load);
                for (int i = 0; i < 6; i++) {
                    int of = i;
                    double expected = 0;
                    for (int side = 0; side < 3; side++) {
                        double r = resistance(t, side);
                        expected += r > 0 && drawing.environment[boundary(t, side)] == environment
                                ? along(t, side, () -> radius * f[of] / r)
                                : 0;
                    }
                    assertEquals(expected, load[i], MATRIX);
                    total += load[i];
                }
            }
            // All of them together are the side over its film, times how far its middle is from the axis.
            double[] c = shape.corners;
            int from = environment == 0 ? 0 : 2;
            double length = 1e-3 * Math.hypot(c[from + 2] - c[from], c[from + 3] - c[from + 1]);
            double middle = turned ? 1e-3 * (c[from] + c[from + 2]) / 2 : 1;
            assertEquals(length * middle / (environment == 0 ? 0.13 : 0.04), total, 1e-4 * total);
        }
    }

    @ParameterizedTest
    @EnumSource
    void theEnergiesAreTheIntegralsOfTheirFields(Shape shape) {
        draw(shape);
        assertEquals(turned ? 2 * Math.PI : 1, elements.form(), 0);
        for (int t = 0; t < drawing.mesh.triangles; t++) {
            double[] out = new double[5];
            elements.energies(t, U, S, AMBIENT, out);
            double upper = upper(t);
            double lower = lower(t);
            assertEquals(upper, out[Elements.UPPER], ROUND_OFF * upper);
            assertEquals(lower, out[Elements.LOWER], ROUND_OFF * lower);
            double gap = gap(t);
            assertEquals(gap, out[Elements.GAP], ROUND_OFF * gap);
            // More than a rounding of the sum, less than would be seen.
            assertTrue(
                    out[Elements.UPPER_ALLOWANCE] > 0x1p-53 * upper && out[Elements.UPPER_ALLOWANCE] < 1e-12 * upper);
            assertTrue(
                    out[Elements.LOWER_ALLOWANCE] > 0x1p-53 * lower && out[Elements.LOWER_ALLOWANCE] < 1e-12 * lower);
        }
    }

    /**
     * Whichever node alone is off, what is allowed for rounding is more than the sum's own roundings, which are given it in any
     * case, and less than would be seen; of twice the field it is four times as much, as the energies are.
     */
    @ParameterizedTest
    @EnumSource
    void everyNodesRoundingIsAllowedFor(Shape shape) {
        draw(shape);
        everyNodesRoundingIsAllowedFor();
        // Without films, whose own allowance is the larger.
        elements = elements(new double[drawing.resistance.length]);
        everyNodesRoundingIsAllowedFor();
    }

    private void everyNodesRoundingIsAllowedFor() {
        double own = (turned ? 64 : 32) * 0x1p-53;
        for (int t = 0; t < drawing.mesh.triangles; t++) {
            for (int i = 0; i < 6; i++) {
                double[] once = energies(t, unit(i, 3));
                double[] twice = energies(t, unit(i, 6));
                for (int each : new int[] {Elements.UPPER_ALLOWANCE, Elements.LOWER_ALLOWANCE}) {
                    double energy = once[each == Elements.UPPER_ALLOWANCE ? Elements.UPPER : Elements.LOWER];
                    assertTrue(energy > 0);
                    assertTrue(once[each] > own * energy, "too little: node " + i + ", " + once[each] / energy);
                    assertTrue(once[each] < 1e-12 * energy, "too much: node " + i + ", " + once[each] / energy);
                    assertEquals(4 * once[each], twice[each], 0);
                }
            }
        }
    }

    private static double[] unit(int node, double value) {
        double[] field = new double[6];
        field[node] = value;
        return field;
    }

    private double[] energies(int t, double[] field) {
        double[] out = new double[5];
        elements.energies(t, field, field, new double[2], out);
        return out;
    }

    /** Where all is as warm as the air on both sides nothing flows, and nothing is rounded; of a constant s likewise. */
    @ParameterizedTest
    @EnumSource
    void ofALevelFieldThereIsNothing(Shape shape) {
        draw(shape);
        double[] level = new double[6];
        Arrays.fill(level, 5);
        for (int t = 0; t < drawing.mesh.triangles; t++) {
            double[] out = new double[5];
            elements.energies(t, level, level, new double[] {5, 5}, out);
            assertEquals("[0.0, 0.0, 0.0, 0.0, 0.0]", Arrays.toString(out));
        }
    }

    private double upper(int t) {
        double sum = over(t, () -> CONDUCTIVITY * radius * (square(sum(U, i -> fx[i])) + square(sum(U, i -> fy[i]))));
        for (int side = 0; side < 3; side++) {
            double r = resistance(t, side);
            if (r > 0) {
                double ambient = ambient(t, side);
                sum += along(t, side, () -> radius * square(sum(U, i -> f[i]) - ambient) / r);
            }
        }
        return sum;
    }

    private double lower(int t) {
        double sum = over(t, () -> (square(sum(S, i -> fx[i])) + square(sum(S, i -> fy[i]))) / (CONDUCTIVITY * radius));
        for (int side = 0; side < 3; side++) {
            int of = side;
            double r = resistance(t, side);
            sum += r > 0 ? along(t, side, () -> r * square(sum(S, i -> slope(t, of, i))) / radius) : 0;
        }
        return sum;
    }

    /** q = (∂s/∂y, −∂s/∂x) over the weight, so that q·n is the slope of s along an outline that is walked anticlockwise. */
    private double gap(int t) {
        double sum = over(
                t,
                () -> radius
                        / CONDUCTIVITY
                        * (square(CONDUCTIVITY * sum(U, i -> fx[i]) + sum(S, i -> fy[i]) / radius)
                                + square(CONDUCTIVITY * sum(U, i -> fy[i]) - sum(S, i -> fx[i]) / radius)));
        for (int side = 0; side < 3; side++) {
            int of = side;
            double r = resistance(t, side);
            if (r > 0) {
                double ambient = ambient(t, side);
                sum += along(
                        t,
                        side,
                        () -> r
                                * radius
                                * square(sum(S, i -> slope(t, of, i)) / radius - (sum(U, i -> f[i]) - ambient) / r));
            }
        }
        return sum;
    }

    private static double square(double value) {
        return value * value;
    }
}
