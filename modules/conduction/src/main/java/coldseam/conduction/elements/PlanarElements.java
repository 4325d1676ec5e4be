package coldseam.conduction.elements;

import coldseam.conduction.mesh.Mesh;
import java.util.Arrays;

/** Quadratic triangles of a planar section; all integrals are exact. */
public final class PlanarElements implements Elements {

    /** One rounding, relative. */
    private static final double ROUNDING = 0x1p-53;

    private static final double THIRD = 1.0 / 3;

    private final Mesh mesh;
    private final double[] conductivity;
    private final int[] environment;
    private final double[] resistance;
    private final double step;

    /** @param step lattice step, metres */
    public PlanarElements(Mesh mesh, double step, double[] conductivity, int[] environment, double[] resistance) {
        this.mesh = mesh;
        this.step = step;
        this.conductivity = conductivity;
        this.environment = environment;
        this.resistance = resistance;
    }

    @Override
    public double form() {
        return 1;
    }

    /** (Output) the 6 × 6 matrix of factor·∫ ∇φᵢ·∇φⱼ from the three products A ∇λᵢ·∇λⱼ. */
    private void laplace(int t, double factor, double[] m) {
        int o = 6 * t;
        double x0 = mesh.x[mesh.node[o]];
        double y0 = mesh.y[mesh.node[o]];
        double x1 = mesh.x[mesh.node[o + 1]] - x0;
        double y1 = mesh.y[mesh.node[o + 1]] - y0;
        double x2 = mesh.x[mesh.node[o + 2]] - x0;
        double y2 = mesh.y[mesh.node[o + 2]] - y0;
        double f = factor / (2 * (x1 * y2 - x2 * y1));
        // p = A ∇λ1·∇λ2, q = A ∇λ2·∇λ0, r = A ∇λ0·∇λ1; sides: e0 = p2 - p1, e1 = -p2, e2 = p1
        double p = -f * (x1 * x2 + y1 * y2);
        double q = f * (x1 * (x2 - x1) + y1 * (y2 - y1));
        double r = -f * (x2 * (x2 - x1) + y2 * (y2 - y1));
        double d0 = -(q + r);
        double d1 = -(r + p);
        double d2 = -(p + q);
        double e = 8 * THIRD * (d0 + d1 + d2) * 0.5;
        double p3 = p * THIRD;
        double q3 = q * THIRD;
        double r3 = r * THIRD;
        row(m, 0, d0, -r3, -q3, 0, 4 * q3, 4 * r3);
        row(m, 6, -r3, d1, -p3, 4 * p3, 0, 4 * r3);
        row(m, 12, -q3, -p3, d2, 4 * p3, 4 * q3, 0);
        row(m, 18, 0, 4 * p3, 4 * p3, e, 8 * r3, 8 * q3);
        row(m, 24, 4 * q3, 0, 4 * q3, 8 * r3, e, 8 * p3);
        row(m, 30, 4 * r3, 4 * r3, 0, 8 * q3, 8 * p3, e);
    }

    private static void row(double[] m, int o, double a, double b, double c, double d, double e, double f) {
        m[o] = a;
        m[o + 1] = b;
        m[o + 2] = c;
        m[o + 3] = d;
        m[o + 4] = e;
        m[o + 5] = f;
    }

    private double length(int t, int i) {
        return step * mesh.length(t, i);
    }

    @Override
    public void temperatureMatrix(int t, double[] out) {
        laplace(t, conductivity[mesh.region[t]], out);
        for (int i = 0; i < 3; i++) {
            int b = mesh.boundary(t, i);
            if (b >= 0 && resistance[b] > 0) {
                double f = length(t, i) / (30 * resistance[b]);
                side(out, i, 4 * f, -f, 2 * f, 16 * f);
            }
        }
    }

    @Override
    public void streamMatrix(int t, double[] out) {
        laplace(t, 1 / conductivity[mesh.region[t]], out);
        for (int i = 0; i < 3; i++) {
            int b = mesh.boundary(t, i);
            if (b >= 0 && resistance[b] > 0) {
                double f = resistance[b] / (3 * length(t, i));
                side(out, i, 7 * f, f, -8 * f, 16 * f);
            }
        }
    }

    /** Adds a side's 3 × 3 matrix: end with itself, with the other end, with the middle, middle with itself. */
    private static void side(double[] m, int i, double same, double other, double middle, double own) {
        int a = (i + 1) % 3;
        int b = (i + 2) % 3;
        int c = 3 + i;
        m[7 * a] += same;
        m[7 * b] += same;
        m[7 * c] += own;
        m[6 * a + b] += other;
        m[6 * b + a] += other;
        m[6 * a + c] += middle;
        m[6 * c + a] += middle;
        m[6 * b + c] += middle;
        m[6 * c + b] += middle;
    }

    @Override
    public void temperatureLoad(int t, int facing, double[] out) {
        Arrays.fill(out, 0, 6, 0);
        for (int i = 0; i < 3; i++) {
            int b = mesh.boundary(t, i);
            if (b >= 0 && resistance[b] > 0 && environment[b] == facing) {
                double f = length(t, i) / (6 * resistance[b]);
                out[(i + 1) % 3] += f;
                out[(i + 2) % 3] += f;
                out[3 + i] += 4 * f;
            }
        }
    }

    @Override
    public void energies(int t, double[] u, double[] s, double[] ambient, double[] out) {
        int o = 6 * t;
        double x0 = mesh.x[mesh.node[o]];
        double y0 = mesh.y[mesh.node[o]];
        double x1 = mesh.x[mesh.node[o + 1]] - x0;
        double y1 = mesh.y[mesh.node[o + 1]] - y0;
        double x2 = mesh.x[mesh.node[o + 2]] - x0;
        double y2 = mesh.y[mesh.node[o + 2]] - y0;
        double area2 = x1 * y2 - x2 * y1;
        double k = conductivity[mesh.region[t]];
        double upper = 0;
        double lower = 0;
        double gap = 0;
        double upperOff = 0;
        double lowerOff = 0;
        // Gradients are linear: their values at the three side middles integrate products exactly. ∇v·2A =
        // (y2 c1 - y1 c2, x1 c2 - x2 c1), c1 and c2 the coefficients of ∇λ1 and ∇λ2 less that of ∇λ0.
        double ua1 = u[1] - u[0];
        double ub1 = u[2] - u[0];
        double ud = 2 * (u[3] - u[0]);
        double ue = 2 * (u[4] - u[0]);
        double uf = 2 * (u[5] - u[0]);
        double sa1 = s[1] - s[0];
        double sb1 = s[2] - s[0];
        double sd = 2 * (s[3] - s[0]);
        double se = 2 * (s[4] - s[0]);
        double sf = 2 * (s[5] - s[0]);
        double du = 16 * ROUNDING * (Math.abs(ua1) + Math.abs(ub1) + Math.abs(ud) + Math.abs(ue) + Math.abs(uf));
        double ds = 16 * ROUNDING * (Math.abs(sa1) + Math.abs(sb1) + Math.abs(sd) + Math.abs(se) + Math.abs(sf));
        double wide = Math.abs(x1) + Math.abs(x2);
        double high = Math.abs(y1) + Math.abs(y2);
        for (int i = 0; i < 3; i++) {
            double u1 = i == 0 ? ua1 + ud - ue - uf : i == 1 ? ud - ue + uf - ua1 : ua1;
            double u2 = i == 0 ? ub1 + ud - ue - uf : i == 1 ? ub1 : ud + ue - uf - ub1;
            double s1 = i == 0 ? sa1 + sd - se - sf : i == 1 ? sd - se + sf - sa1 : sa1;
            double s2 = i == 0 ? sb1 + sd - se - sf : i == 1 ? sb1 : sd + se - sf - sb1;
            double ux = y2 * u1 - y1 * u2;
            double uy = x1 * u2 - x2 * u1;
            double sx = y2 * s1 - y1 * s2;
            double sy = x1 * s2 - x2 * s1;
            upper += ux * ux + uy * uy;
            lower += sx * sx + sy * sy;
            double gx = k * ux + sy;
            double gy = k * uy - sx;
            gap += gx * gx + gy * gy;
            upperOff += du * (high * (2 * Math.abs(ux) + du * high) + wide * (2 * Math.abs(uy) + du * wide));
            lowerOff += ds * (high * (2 * Math.abs(sx) + ds * high) + wide * (2 * Math.abs(sy) + ds * wide));
        }
        // area/3 · |∇|² with ∇ = (…)/(2 area)
        double f = 1 / (6 * area2);
        upper *= f * k;
        upperOff *= f * k;
        lower *= f / k;
        lowerOff *= f / k;
        gap *= f / k;
        for (int i = 0; i < 3; i++) {
            int b = mesh.boundary(t, i);
            if (b < 0 || !(resistance[b] > 0)) {
                continue;
            }
            double r = resistance[b];
            double l = length(t, i);
            double ta = ambient[environment[b]];
            double ua = u[(i + 1) % 3] - ta;
            double ub = u[(i + 2) % 3] - ta;
            double um = u[3 + i] - ta;
            double film = l / (30 * r) * (4 * (ua * ua + ub * ub) + 16 * um * um + 4 * um * (ua + ub) - 2 * ua * ub);
            upper += film;
            upperOff += 16 * ROUNDING * l / r * (ua * ua + ub * ub + um * um);
            // ∂s/∂t at both ends and the middle; linear along the side
            double sa = s[(i + 1) % 3];
            double sb = s[(i + 2) % 3];
            double sm = s[3 + i];
            double fa = (4 * (sm - sa) - (sb - sa)) / l;
            double fb = (4 * (sb - sm) - (sb - sa)) / l;
            lower += l * r * THIRD * (fa * fa + fa * fb + fb * fb);
            lowerOff += 80 * ROUNDING * r * (Math.abs(sm - sa) + Math.abs(sb - sm)) * (Math.abs(fa) + Math.abs(fb));
            gap += filmGap(r, l, fa, fb, ua, ub, um);
        }
        out[UPPER] = upper;
        out[LOWER] = lower;
        out[GAP] = gap;
        // The area's two products may nearly cancel in a sliver.
        double off = (32 + 4 * (Math.abs(x1 * y2) + Math.abs(x2 * y1)) / area2) * ROUNDING;
        out[UPPER_ALLOWANCE] = upperOff + off * upper;
        out[LOWER_ALLOWANCE] = lowerOff + off * lower;
    }

    /** ∫ R (q·n − (u − T)/R)² over a side; the bracket is quadratic along it. */
    private static double filmGap(double r, double l, double fa, double fb, double ua, double ub, double um) {
        double a = fa - ua / r;
        double b = fb - ub / r;
        double m = 0.5 * (fa + fb) - um / r;
        return l * r / 30 * (4 * (a * a + b * b) + 16 * m * m + 4 * m * (a + b) - 2 * a * b);
    }
}
