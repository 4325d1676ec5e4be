package coldseam.conduction.solid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Both functionals, the gap and its shares of fields that solve nothing, against plain sums: the same integrals by another rule
 * (Gauss, four points instead of three), of fields that are evaluated at each place from their definition.
 */
class BodyBoundsFieldsTest {

    /** Of sums of some ten thousand products. */
    private static final double ROUND_OFF = 1e-10;

    private static final double INNER = Math.sqrt(3.0 / 7 - 2.0 / 7 * Math.sqrt(1.2));
    private static final double OUTER = Math.sqrt(3.0 / 7 + 2.0 / 7 * Math.sqrt(1.2));
    private static final double[] POINT = {(1 - OUTER) / 2, (1 - INNER) / 2, (1 + INNER) / 2, (1 + OUTER) / 2};
    private static final double[] WEIGHT = {
        (18 - Math.sqrt(30)) / 72, (18 + Math.sqrt(30)) / 72, (18 + Math.sqrt(30)) / 72, (18 - Math.sqrt(30)) / 72
    };

    /** Boxes of other sizes in each direction, a hole in a corner, air that holds its surface with no resistance. */
    private static SolidBody body(int environments) {
        Blocks blocks = Blocks.of("any", 0, 0, 0, 70, 90, 130)
                .cut(BoxSide.X0, BoxSide.Y1)
                .solid(0.8, 0, 0, 0, 70, 90, 130)
                .solid(2.5, 0, 20, 0, 30, 90, 40)
                .air("indoor", 40, 60, 100, 70, 90, 130)
                .air("indoor", 0, 0, -10, 70, 90, 0)
                .air("outdoor", 70, 0, 0, 80, 90, 130)
                .environment("indoor", 20, 0.13)
                .environment("outdoor", -5, 0);
        return environments == 2
                ? blocks.body()
                : blocks.air("ground", 0, -10, 0, 70, 0, 130)
                        .environment("ground", 8, 0.4)
                        .body();
    }

    private final double[][] upper = new double[2][2];
    private final double[][] lower = new double[2][2];
    private final double[][] share = new double[3][];
    private final double[][] moment = new double[3][];
    private double gap;

    private Grid grid;
    private TemperatureSystem3 temperature;
    private FluxSystem flux;
    private double[][] u;
    private double[][][] q;

    private void fields(int environments, boolean free) {
        grid = new Grid(new PaintedGrid(body(environments), Lists.mutable.empty()));
        temperature = new TemperatureSystem3(grid);
        flux = new FluxSystem(grid);
        int units = environments - 1;
        u = new double[units][temperature.n];
        q = new double[units][][];
        for (int r = 0; r < units; r++) {
            for (int i = 0; i < temperature.n; i++) {
                u[r][i] = Math.sin(1 + i * (r + 1.3));
            }
            double[] potential = new double[flux.n];
            for (int i = 0; i < flux.n; i++) {
                potential[i] = Math.cos(i * (r + 0.7));
            }
            q[r] = flux.fluxes();
            double[] surplus = new double[flux.n];
            flux.flux(potential, r + 1, q[r], surplus);
            if (free) {
                new ConservationTree(flux, new Room()).push(q[r], surplus);
            }
        }
        for (int d = 0; d < 3; d++) {
            share[d] = new double[grid.n[d]];
            moment[d] = new double[grid.n[d]];
        }
        for (int cell = 0; cell < grid.cells; cell++) {
            volume(cell);
            for (int s = 0; s < 6; s++) {
                if (grid.surface(cell, s) >= 0) {
                    surface(cell, s);
                }
            }
        }
    }

    private static double[] slope(double x) {
        return new double[] {4 * x - 3, 4 - 8 * x, 4 * x - 1};
    }

    private static double[] edge(double x) {
        return new double[] {3 - 4 * x, 4 * x - 1};
    }

    /** A unit's temperature, or its slope in a direction, at a place of a cell. */
    private double temperature(int r, int cell, double[] at, int slopeOf) {
        double sum = 0;
        for (int c = 0; c < 3; c++) {
            for (int b = 0; b < 3; b++) {
                for (int a = 0; a < 3; a++) {
                    int[] node = {a, b, c};
                    double product = u[r][temperature.row[9 * cell + b + 3 * c] + a];
                    for (int d = 0; d < 3; d++) {
                        product *=
                                d == slopeOf ? slope(at[d])[node[d]] / grid.size(cell, d) : Basis.nodal(at[d])[node[d]];
                    }
                    sum += product;
                }
            }
        }
        return sum;
    }

    private double density(int r, int cell, double[] at, int d) {
        int e = (d + 1) % 3;
        int f = (d + 2) % 3;
        double sum = 0;
        for (int t = 0; t < 3; t++) {
            for (int l = 0; l < 4; l++) {
                sum += Basis.nodal(at[d])[t]
                        * edge(at[e])[l % 2]
                        * edge(at[f])[l / 2]
                        * q[r][d][flux.fluxOf(cell, d) + 4 * t + l];
            }
        }
        return sum / (grid.size(cell, e) * grid.size(cell, f));
    }

    private static double legendre(double x) {
        return Math.sqrt(5) * (6 * x * x - 6 * x + 1);
    }

    private static double weight(int g) {
        return WEIGHT[g % 4] * WEIGHT[g / 4 % 4] * WEIGHT[g / 16];
    }

    private static double[] place(int g) {
        return new double[] {POINT[g % 4], POINT[g / 4 % 4], POINT[g / 16]};
    }

    private void volume(int cell) {
        int units = u.length;
        double k = grid.k[cell];
        double volume = grid.size(cell, 0) * grid.size(cell, 1) * grid.size(cell, 2);
        double[][][] slopes = new double[units][3][64];
        double[][][] flows = new double[units][3][64];
        for (int r = 0; r < units; r++) {
            for (int d = 0; d < 3; d++) {
                for (int g = 0; g < 64; g++) {
                    slopes[r][d][g] = temperature(r, cell, place(g), d);
                    flows[r][d][g] = density(r, cell, place(g), d);
                }
            }
        }
        for (int i = 0; i < units; i++) {
            for (int j = 0; j < units; j++) {
                for (int d = 0; d < 3; d++) {
                    for (int g = 0; g < 64; g++) {
                        upper[i][j] += volume * weight(g) * k * slopes[i][d][g] * slopes[j][d][g];
                        lower[i][j] -= volume * weight(g) / k * flows[i][d][g] * flows[j][d][g];
                    }
                }
            }
        }
        for (int part = units == 1 ? 1 : 0; part <= units; part++) {
            double[][] residual = new double[3][64];
            for (int r = 0; r < units; r++) {
                for (int d = 0; d < 3 && (part == 0 || part == r + 1); d++) {
                    for (int g = 0; g < 64; g++) {
                        residual[d][g] += k * slopes[r][d][g] + flows[r][d][g];
                    }
                }
            }
            shares(cell, (units == 1 ? 1 : 0.5) * volume / k, residual);
        }
    }

    private void shares(int cell, double factor, double[][] residual) {
        double whole = 0;
        double[] lean = new double[3];
        double[] mode = new double[3];
        for (int g = 0; g < 64; g++) {
            double here = 0;
            for (int d = 0; d < 3; d++) {
                here += weight(g) * residual[d][g] * residual[d][g];
            }
            whole += here;
            for (int d = 0; d < 3; d++) {
                lean[d] += here * (place(g)[d] - 0.5);
            }
        }
        int[] step = {1, 4, 16};
        for (int d = 0; d < 3; d++) {
            for (int g = 0; g < 64; g++) {
                if (g / step[d] % 4 == 0) {
                    for (double[] component : residual) {
                        double c = 0;
                        for (int p = 0; p < 4; p++) {
                            c += WEIGHT[p] * legendre(POINT[p]) * component[g + p * step[d]];
                        }
                        mode[d] += weight(g) / WEIGHT[0] * c * c;
                    }
                }
            }
        }
        gap += factor * whole;
        for (int d = 0; d < 3; d++) {
            double part = mode[d] / (mode[0] + mode[1] + mode[2]);
            share[d][grid.slab[d][cell]] += factor * part * whole;
            moment[d][grid.slab[d][cell]] += factor * part * lean[d];
        }
    }

    private void surface(int cell, int s) {
        int units = u.length;
        int d = s / 2;
        int surface = grid.surface(cell, s);
        int part = grid.painted.partOfSurface(surface);
        double resistance = grid.painted.resistance(surface);
        double area = grid.size(cell, (d + 1) % 3) * grid.size(cell, (d + 2) % 3);
        double[][] jump = new double[units][16];
        double[][] out = new double[units][16];
        for (int r = 0; r < units; r++) {
            double flow = 0;
            for (int g = 0; g < 16; g++) {
                double[] at = new double[3];
                at[d] = s % 2;
                at[(d + 1) % 3] = POINT[g % 4];
                at[(d + 2) % 3] = POINT[g / 4];
                out[r][g] = (s % 2 == 1 ? 1 : -1) * density(r, cell, at, d);
                jump[r][g] = temperature(r, cell, at, -1) - (part == r + 1 ? 1 : 0);
                flow += area * WEIGHT[g % 4] * WEIGHT[g / 4] * out[r][g];
            }
            if (part > 0) {
                lower[part - 1][r] -= flow;
                lower[r][part - 1] -= flow;
            }
        }
        if (resistance == 0) {
            return;
        }
        for (int g = 0; g < 16; g++) {
            double w = area * WEIGHT[g % 4] * WEIGHT[g / 4];
            for (int i = 0; i < units; i++) {
                for (int j = 0; j < units; j++) {
                    upper[i][j] += w / resistance * jump[i][g] * jump[j][g];
                    lower[i][j] -= w * resistance * out[i][g] * out[j][g];
                }
            }
        }
        for (int p = units == 1 ? 1 : 0; p <= units; p++) {
            double[] values = new double[16];
            for (int r = 0; r < units; r++) {
                for (int g = 0; g < 16 && (p == 0 || p == r + 1); g++) {
                    values[g] += out[r][g] - jump[r][g] / resistance;
                }
            }
            faceShares(cell, d, (units == 1 ? 1 : 0.5) * area * resistance, values);
        }
    }

    private void faceShares(int cell, int normal, double factor, double[] values) {
        double whole = 0;
        double[] lean = new double[2];
        double[] mode = new double[2];
        int[] step = {1, 4};
        for (int g = 0; g < 16; g++) {
            double here = WEIGHT[g % 4] * WEIGHT[g / 4] * values[g] * values[g];
            whole += here;
            lean[0] += here * (POINT[g % 4] - 0.5);
            lean[1] += here * (POINT[g / 4] - 0.5);
        }
        for (int m = 0; m < 2; m++) {
            for (int other = 0; other < 4; other++) {
                double c = 0;
                for (int p = 0; p < 4; p++) {
                    c += WEIGHT[p] * legendre(POINT[p]) * values[p * step[m] + other * step[1 - m]];
                }
                mode[m] += WEIGHT[other] * c * c;
            }
        }
        gap += factor * whole;
        for (int m = 0; m < 2; m++) {
            int d = (normal + 1 + m) % 3;
            double part = mode[m] / (mode[0] + mode[1]);
            share[d][grid.slab[d][cell]] += factor * part * whole;
            moment[d][grid.slab[d][cell]] += factor * part * lean[m];
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 3})
    void functionalsAndSharesArePlainSums(int environments) {
        fields(environments, true);
        BodyBounds bounds = new BodyBounds(grid, temperature, u, flux, q);
        for (int i = 0; i < environments - 1; i++) {
            for (int j = 0; j < environments - 1; j++) {
                assertEquals(upper[i][j], bounds.upper[i][j], ROUND_OFF * upper[i][i], "upper " + i + j);
                assertEquals(lower[i][j], bounds.lower[i][j], -ROUND_OFF * lower[i][i], "lower " + i + j);
            }
            assertTrue(bounds.upper[i][i] > upper[i][i], "rounding is added");
            assertTrue(bounds.lower[i][i] < lower[i][i], "rounding is taken off");
        }
        assertEquals(gap, bounds.gap, ROUND_OFF * gap);
        for (int d = 0; d < 3; d++) {
            assertTrue(grid.n[d] > 1);
            for (int i = 0; i < grid.n[d]; i++) {
                assertEquals(share[d][i], bounds.share[d][i], ROUND_OFF * gap, "share " + d + i);
                assertEquals(moment[d][i], bounds.moment[d][i], ROUND_OFF * gap, "moment " + d + i);
            }
        }
    }

    /** What a flux makes on its way, twice the most of any unit, is taken off the lower bound, once for each unit. */
    @ParameterizedTest
    @ValueSource(ints = {2, 3})
    void whatIsMadeOnTheWayIsTakenOff(int environments) {
        fields(environments, false);
        int units = environments - 1;
        BodyBounds bounds = new BodyBounds(grid, temperature, u, flux, q);
        double most = 0;
        for (double[][] each : q) {
            most = Math.max(most, ConservationTree.divergence(flux, each));
        }
        assertTrue(most > 1e-3);
        for (int i = 0; i < units; i++) {
            double due = lower[i][i] - 2 * units * most;
            assertEquals(due, bounds.lower[i][i], -ROUND_OFF * due);
            assertEquals(upper[i][i], bounds.upper[i][i], ROUND_OFF * upper[i][i]);
        }
    }
}
