package coldseam.conduction.elements;

import coldseam.conduction.mesh.Mesh;
import coldseam.conduction.solve.Unknowns;
import java.util.Arrays;

/**
 * Quadratic triangles of a section turned about the axis r = 0; energies are per radian.
 *
 * <p>The stream function s is quadratic itself, with r q = (∂s/∂y, −∂s/∂r), so that an even flow through concentric
 * layers, s = a r² + b, is exact. The axis is the streamline s = 0. The complementary energy ∫ |∇s|²/(k r) is finite
 * there because every triangle with a side on the axis has s = α r² (the middles of its other two sides carry a quarter
 * of the opposite corner's value, see {@link Unknowns#quarter}) and because a triangle with one corner on the axis
 * narrows towards it.
 *
 * <p>Integrals with the weight r are of polynomials of degree five at most and exact by Radon's seven points (J. Radon,
 * Zur mechanischen Kubatur, Monatshefte für Mathematik 52, 1948, pp. 286–300). Integrals with 1/r are done in strips of
 * constant r: two Gauss points along a strip are exact, and n Gauss points across radii from a to b are enough where
 * ρ^(3 − 2n) is below 1e-15, ρ = z + √(z² − 1), z = (a + b)/(b − a), since a cubic over r is analytic but for r = 0; with
 * ten of them wider ranges than b = {@link #RANGE} a are divided. Where a strip begins on the axis the integrand is a
 * polynomial. All weights are positive. Places are kept from a triangle's first corner, so that the smallest triangle far
 * from the axis loses no digits.
 */
public final class AxisymmetricElements implements Elements {

    private static final double ROUNDING = 0x1p-53;

    private static final double[] WEIGHT = new double[7];
    private static final double[][] AT = new double[7][];

    static {
        double root = Math.sqrt(15);
        WEIGHT[0] = 9.0 / 40;
        AT[0] = new double[] {1.0 / 3, 1.0 / 3, 1.0 / 3};
        for (int i = 0; i < 3; i++) {
            double near = (6 - root) / 21;
            double far = (6 + root) / 21;
            WEIGHT[1 + i] = (155 - root) / 1200;
            WEIGHT[4 + i] = (155 + root) / 1200;
            AT[1 + i] = new double[] {near, near, near};
            AT[1 + i][i] = 1 - 2 * near;
            AT[4 + i] = new double[] {far, far, far};
            AT[4 + i][i] = 1 - 2 * far;
        }
    }

    /** Gauss points and weights on 0 to 1. */
    private static final double[] THREE = {0.5 - Math.sqrt(0.15), 0.5, 0.5 + Math.sqrt(0.15)};

    private static final double[] THREE_WEIGHT = {5.0 / 18, 8.0 / 18, 5.0 / 18};
    private static final double[] TWO = {0.5 - Math.sqrt(1.0 / 12), 0.5 + Math.sqrt(1.0 / 12)};
    /** The fewest points used, and the most. */
    private static final int FEWEST = 4;

    private static final int MOST = 10;

    /** Gauss points and weights on 0 to 1 of each number of points. */
    private static final double[][] POINTS = new double[MOST + 1][];

    private static final double[][] WEIGHTS = new double[MOST + 1][];
    /** The least z = (a + b)/(b − a) for which a number of points is enough. */
    private static final double[] ENOUGH = new double[MOST + 1];

    static {
        for (int n = FEWEST; n <= MOST; n++) {
            POINTS[n] = new double[n];
            WEIGHTS[n] = new double[n];
            gauss(n, POINTS[n], WEIGHTS[n]);
            ENOUGH[n] = Math.cosh(15 * Math.log(10) / (2 * n - 3));
        }
    }

    /** (Output) roots of the Legendre polynomial of degree n by Newton's method, and their weights. */
    private static void gauss(int n, double[] points, double[] weights) {
        for (int i = 0; i < n; i++) {
            double z = Math.cos(Math.PI * (i + 0.75) / (n + 0.5));
            double slope = 1;
            for (int pass = 0; pass < 20; pass++) {
                double p = 1;
                double before = 0;
                for (int j = 1; j <= n; j++) {
                    double older = before;
                    before = p;
                    p = ((2 * j - 1) * z * before - (j - 1) * older) / j;
                }
                slope = n * (z * p - before) / (z * z - 1);
                z -= p / slope;
            }
            points[i] = 0.5 * (1 - z);
            weights[i] = 1 / ((1 - z * z) * slope * slope);
        }
    }

    /** How many points the range between two radii needs; beginning on the axis it is a polynomial's. */
    private static int enough(double from, double to) {
        int n = FEWEST;
        double z = to > from ? (to + from) / (to - from) : Double.POSITIVE_INFINITY;
        while (from > 0 && n < MOST && z < ENOUGH[n]) {
            n++;
        }
        return n;
    }

    /** The widest range of radii one rule is used for. */
    private static final double RANGE = 1.6;

    private final Mesh mesh;
    private final double step;
    private final double[] conductivity;
    private final int[] environment;
    private final double[] resistance;

    // Of the triangle last looked at, in metres from its first corner, which has the radius base.
    private double base;
    private final double[] r = new double[3];
    private final double[] y = new double[3];
    private final double[] dr = new double[3];
    private final double[] dy = new double[3];
    private double area;
    private final int[] byRadius = new int[3];

    // Of the point last looked at: shape functions and their derivatives, radius.
    private final double[] f = new double[6];
    private final double[] fr = new double[6];
    private final double[] fy = new double[6];
    private final double[] l = new double[3];
    private double radius;

    // Moments of a weight over the triangle, and what its gradients' products are made of.
    private final double[][] moment = new double[3][3];
    private final double[][] product = new double[3][3];
    private final double[] first = new double[3];

    // Points and weights of the integral with 1/r.
    private int points;
    private double[] atR = new double[64];
    private double[] atY = new double[64];
    private double[] atWeight = new double[64];

    /** @param step lattice step, metres */
    public AxisymmetricElements(Mesh mesh, double step, double[] conductivity, int[] environment, double[] resistance) {
        this.mesh = mesh;
        this.step = step;
        this.conductivity = conductivity;
        this.environment = environment;
        this.resistance = resistance;
    }

    @Override
    public double form() {
        return 2 * Math.PI;
    }

    private void triangle(int t) {
        int o = 6 * t;
        int first = mesh.node[o];
        base = step * mesh.x[first];
        for (int i = 0; i < 3; i++) {
            int v = mesh.node[o + i];
            r[i] = step * (mesh.x[v] - mesh.x[first]);
            y[i] = step * (mesh.y[v] - mesh.y[first]);
            byRadius[i] = i;
        }
        double twice = (r[1] - r[0]) * (y[2] - y[0]) - (r[2] - r[0]) * (y[1] - y[0]);
        area = 0.5 * twice;
        for (int i = 0; i < 3; i++) {
            int j = (i + 1) % 3;
            int k = (i + 2) % 3;
            dr[i] = (y[j] - y[k]) / twice;
            dy[i] = (r[k] - r[j]) / twice;
        }
    }

    /** Evaluates the shape functions at barycentric coordinates. */
    private void point(double l0, double l1, double l2) {
        l[0] = l0;
        l[1] = l1;
        l[2] = l2;
        radius = base + l0 * r[0] + l1 * r[1] + l2 * r[2];
        for (int i = 0; i < 3; i++) {
            int j = (i + 1) % 3;
            int k = (i + 2) % 3;
            f[i] = l[i] * (2 * l[i] - 1);
            fr[i] = (4 * l[i] - 1) * dr[i];
            fy[i] = (4 * l[i] - 1) * dy[i];
            f[3 + i] = 4 * l[j] * l[k];
            fr[3 + i] = 4 * (l[j] * dr[k] + l[k] * dr[j]);
            fy[3 + i] = 4 * (l[j] * dy[k] + l[k] * dy[j]);
        }
    }

    /** Lays out the points of the integral with 1/r over the triangle last looked at; weights hold the 1/r. */
    private void strips() {
        for (int i = 1; i < 3; i++) {
            for (int j = i; j > 0 && r[byRadius[j]] < r[byRadius[j - 1]]; j--) {
                int swap = byRadius[j];
                byRadius[j] = byRadius[j - 1];
                byRadius[j - 1] = swap;
            }
        }
        int a = byRadius[0];
        int b = byRadius[1];
        int c = byRadius[2];
        points = 0;
        double yAtB = r[c] > r[a] ? y[a] + (y[c] - y[a]) * (r[b] - r[a]) / (r[c] - r[a]) : y[c];
        part(r[a], r[b], y[a], yAtB, y[a], y[b]);
        part(r[b], r[c], yAtB, y[c], y[b], y[c]);
    }

    /** The part between two radii, bounded by a line through one pair of heights and one through another. */
    private void part(double from, double to, double y0, double y1, double z0, double z1) {
        double low = from;
        while (low < to) {
            double high = base + low > 0 ? Math.min(to, RANGE * low + (RANGE - 1) * base) : to;
            int n = enough(base + low, base + high);
            for (int i = 0; i < n; i++) {
                double at = low + POINTS[n][i] * (high - low);
                double share = (at - from) / (to - from);
                double one = y0 + share * (y1 - y0);
                double two = z0 + share * (z1 - z0);
                double w = 0.5 * Math.abs(two - one) * WEIGHTS[n][i] * (high - low) / (base + at);
                if (points + 2 > atR.length) {
                    atR = Arrays.copyOf(atR, 2 * points + 2);
                    atY = Arrays.copyOf(atY, 2 * points + 2);
                    atWeight = Arrays.copyOf(atWeight, 2 * points + 2);
                }
                for (double along : TWO) {
                    atR[points] = at;
                    atY[points] = one + along * (two - one);
                    atWeight[points++] = w;
                }
            }
            low = high;
        }
    }

    private void strip(int p) {
        double l1 = (atR[p] - r[0]) * dr[1] + (atY[p] - y[0]) * dy[1];
        double l2 = (atR[p] - r[0]) * dr[2] + (atY[p] - y[0]) * dy[2];
        point(1 - l1 - l2, l1, l2);
    }

    /** Lays out ∫ …/r along the side opposite corner i: atR is the place from 0 to 1, atWeight holds length/r. */
    private void side(int i) {
        double from = r[(i + 1) % 3];
        double to = r[(i + 2) % 3];
        double length = Math.hypot(to - from, y[(i + 2) % 3] - y[(i + 1) % 3]);
        points = 0;
        double least = Math.min(from, to);
        double most = Math.max(from, to);
        double low = least;
        do {
            double high = base + low > 0 ? Math.min(most, RANGE * low + (RANGE - 1) * base) : most;
            double share = most > least ? (high - low) / (most - least) : 1;
            double begin = most > least ? (low - least) / (most - least) : 0;
            int n = enough(base + low, base + high);
            for (int g = 0; g < n; g++) {
                double at = begin + POINTS[n][g] * share;
                if (points == atR.length) {
                    atR = Arrays.copyOf(atR, 2 * points);
                    atY = Arrays.copyOf(atY, 2 * points);
                    atWeight = Arrays.copyOf(atWeight, 2 * points);
                }
                atR[points] = from <= to ? at : 1 - at;
                atWeight[points++] = length * share * WEIGHTS[n][g] / (base + least + at * (most - least));
            }
            low = high;
        } while (low < most);
    }

    /** Goes to Gauss point g of three on the side opposite corner i; returns the length times the weight. */
    private double sidePoint(int i, int g) {
        int a = (i + 1) % 3;
        int b = (i + 2) % 3;
        double at = THREE[g];
        double l0 = i == 0 ? 0 : a == 0 ? 1 - at : at;
        double l1 = i == 1 ? 0 : a == 1 ? 1 - at : at;
        double l2 = i == 2 ? 0 : a == 2 ? 1 - at : at;
        point(l0, l1, l2);
        return Math.hypot(r[b] - r[a], y[b] - y[a]) * THREE_WEIGHT[g];
    }

    /**
     * (Output) 6 × 6: ∫ w ∇φᵢ·∇φⱼ. The gradients are linear in the barycentric coordinates l, so that they need of the weight
     * w no more than its moments M[a][b] = ∫ w l_a l_b: ∇φᵢ = (4 lᵢ − 1) dᵢ at a corner, 4 (l_j d_k + l_k d_j) at the middle
     * between j and k, d the gradients of l.
     */
    private void gradients(double[] out) {
        double all = 0;
        for (int a = 0; a < 3; a++) {
            first[a] = moment[a][0] + moment[a][1] + moment[a][2];
            all += first[a];
            for (int b = 0; b < 3; b++) {
                product[a][b] = dr[a] * dr[b] + dy[a] * dy[b];
            }
        }
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                out[6 * i + j] = product[i][j] * (16 * moment[i][j] - 4 * first[i] - 4 * first[j] + all);
                int a = (j + 1) % 3;
                int b = (j + 2) % 3;
                double cross = 4
                        * ((4 * moment[i][a] - first[a]) * product[i][b]
                                + (4 * moment[i][b] - first[b]) * product[i][a]);
                out[6 * i + 3 + j] = cross;
                out[6 * (3 + j) + i] = cross;
                int c = (i + 1) % 3;
                int d = (i + 2) % 3;
                out[6 * (3 + i) + 3 + j] = 16
                        * (moment[c][a] * product[d][b]
                                + moment[c][b] * product[d][a]
                                + moment[d][a] * product[c][b]
                                + moment[d][b] * product[c][a]);
            }
        }
    }

    @Override
    public void temperatureMatrix(int t, double[] out) {
        triangle(t);
        double k = conductivity[mesh.region[t]];
        for (int a = 0; a < 3; a++) {
            for (int b = 0; b < 3; b++) {
                // ∫ l_a l_b r: area times 2·(the factorials of the powers) over 5!.
                double sum = 0;
                for (int c = 0; c < 3; c++) {
                    int powers = a == b ? a == c ? 6 : 2 : c == a || c == b ? 2 : 1;
                    sum += powers * (base + r[c]);
                }
                moment[a][b] = k * area * sum / 60;
            }
        }
        gradients(out);
        for (int s = 0; s < 3; s++) {
            int b = mesh.boundary(t, s);
            for (int g = 0; g < 3 && b >= 0 && resistance[b] > 0; g++) {
                double w = sidePoint(s, g) / resistance[b];
                for (int i = 0; i < 6; i++) {
                    for (int j = 0; j < 6; j++) {
                        out[6 * i + j] += w * radius * f[i] * f[j];
                    }
                }
            }
        }
    }

    @Override
    public void temperatureLoad(int t, int facing, double[] out) {
        triangle(t);
        Arrays.fill(out, 0, 6, 0);
        for (int s = 0; s < 3; s++) {
            int b = mesh.boundary(t, s);
            for (int g = 0; g < 3 && b >= 0 && resistance[b] > 0 && environment[b] == facing; g++) {
                double w = sidePoint(s, g) / resistance[b];
                for (int i = 0; i < 6; i++) {
                    out[i] += w * radius * f[i];
                }
            }
        }
    }

    @Override
    public void streamMatrix(int t, double[] out) {
        triangle(t);
        double k = conductivity[mesh.region[t]];
        strips();
        double m00 = 0;
        double m01 = 0;
        double m02 = 0;
        double m11 = 0;
        double m12 = 0;
        double m22 = 0;
        for (int p = 0; p < points; p++) {
            double l1 = (atR[p] - r[0]) * dr[1] + (atY[p] - y[0]) * dy[1];
            double l2 = (atR[p] - r[0]) * dr[2] + (atY[p] - y[0]) * dy[2];
            double l0 = 1 - l1 - l2;
            double w = atWeight[p] / k;
            m00 += w * l0 * l0;
            m01 += w * l0 * l1;
            m02 += w * l0 * l2;
            m11 += w * l1 * l1;
            m12 += w * l1 * l2;
            m22 += w * l2 * l2;
        }
        moment[0][0] = m00;
        moment[1][1] = m11;
        moment[2][2] = m22;
        moment[0][1] = m01;
        moment[1][0] = m01;
        moment[0][2] = m02;
        moment[2][0] = m02;
        moment[1][2] = m12;
        moment[2][1] = m12;
        gradients(out);
        for (int s = 0; s < 3; s++) {
            int b = mesh.boundary(t, s);
            if (b < 0 || !(resistance[b] > 0)) {
                continue;
            }
            int from = (s + 1) % 3;
            int to = (s + 2) % 3;
            double length2 = Math.pow(r[to] - r[from], 2) + Math.pow(y[to] - y[from], 2);
            side(s);
            for (int p = 0; p < points; p++) {
                // slopes of the three shape functions along the side, times its length
                double z = atR[p];
                double w = resistance[b] * atWeight[p] / length2;
                double[] slope = l;
                slope[0] = 4 * z - 3;
                slope[1] = 4 * z - 1;
                slope[2] = 4 - 8 * z;
                for (int i = 0; i < 3; i++) {
                    int row = i == 0 ? from : i == 1 ? to : 3 + s;
                    for (int j = 0; j < 3; j++) {
                        int column = j == 0 ? from : j == 1 ? to : 3 + s;
                        out[6 * row + column] += w * slope[i] * slope[j];
                    }
                }
            }
        }
    }

    @Override
    public void energies(int t, double[] u, double[] s, double[] ambient, double[] out) {
        triangle(t);
        double k = conductivity[mesh.region[t]];
        double upper = 0;
        double lower = 0;
        double gap = 0;
        double upperOff = 0;
        double lowerOff = 0;
        for (int q = 0; q < 7; q++) {
            point(AT[q][0], AT[q][1], AT[q][2]);
            double w = k * area * WEIGHT[q] * radius;
            double ur = 0;
            double uy = 0;
            double size = 0;
            for (int i = 0; i < 6; i++) {
                double d = u[i] - u[0];
                ur += d * fr[i];
                uy += d * fy[i];
                size += Math.abs(d) * (Math.abs(fr[i]) + Math.abs(fy[i]));
            }
            size *= 64 * ROUNDING;
            upper += w * (ur * ur + uy * uy);
            upperOff += w * size * (2 * Math.abs(ur) + 2 * Math.abs(uy) + size);
        }
        strips();
        for (int p = 0; p < points; p++) {
            strip(p);
            double w = atWeight[p] / k;
            double sr = 0;
            double sy = 0;
            double ur = 0;
            double uy = 0;
            double size = 0;
            for (int i = 0; i < 6; i++) {
                double d = s[i] - s[0];
                sr += d * fr[i];
                sy += d * fy[i];
                size += Math.abs(d) * (Math.abs(fr[i]) + Math.abs(fy[i]));
                ur += (u[i] - u[0]) * fr[i];
                uy += (u[i] - u[0]) * fy[i];
            }
            size *= 64 * ROUNDING;
            lower += w * (sr * sr + sy * sy);
            lowerOff += w * size * (2 * Math.abs(sr) + 2 * Math.abs(sy) + size);
            double er = k * radius * ur + sy;
            double ey = k * radius * uy - sr;
            gap += w * (er * er + ey * ey);
        }
        for (int i = 0; i < 3; i++) {
            int b = mesh.boundary(t, i);
            if (b < 0 || !(resistance[b] > 0)) {
                continue;
            }
            double film = resistance[b];
            double ta = ambient[environment[b]];
            double ua = u[(i + 1) % 3] - ta;
            double ub = u[(i + 2) % 3] - ta;
            double um = u[3 + i] - ta;
            for (int g = 0; g < 3; g++) {
                double w = sidePoint(i, g) * radius / film;
                double z = THREE[g];
                double d = (1 - z) * (1 - 2 * z) * ua + z * (2 * z - 1) * ub + 4 * z * (1 - z) * um;
                upper += w * d * d;
                upperOff += 64 * ROUNDING * w * (ua * ua + ub * ub + um * um);
            }
            double sa = s[(i + 1) % 3];
            double sb = s[(i + 2) % 3];
            double sm = s[3 + i];
            int from = (i + 1) % 3;
            int to = (i + 2) % 3;
            double length = Math.hypot(r[to] - r[from], y[to] - y[from]);
            double start = 4 * (sm - sa) - (sb - sa);
            double end = 4 * (sb - sm) - (sb - sa);
            double size = 64 * ROUNDING * (Math.abs(sm - sa) + Math.abs(sb - sm)) / length;
            side(i);
            for (int p = 0; p < points; p++) {
                double z = atR[p];
                double flow = (start + z * (end - start)) / length;
                lower += film * atWeight[p] * flow * flow;
                lowerOff += film * atWeight[p] * size * (2 * Math.abs(flow) + size);
                double d = (1 - z) * (1 - 2 * z) * ua + z * (2 * z - 1) * ub + 4 * z * (1 - z) * um;
                double at = base + r[from] + z * (r[to] - r[from]);
                double e = flow - at * d / film;
                gap += film * atWeight[p] * e * e;
            }
        }
        out[UPPER] = upper;
        out[LOWER] = lower;
        out[GAP] = gap;
        // The area's two products may nearly cancel in a sliver.
        double products = Math.abs(r[1] * y[2]) + Math.abs(r[2] * y[1]);
        double off = (64 + 4 * products / area) * ROUNDING;
        out[UPPER_ALLOWANCE] = upperOff + off * upper;
        out[LOWER_ALLOWANCE] = lowerOff + off * lower;
    }
}
