package coldseam.conduction.solve;

import coldseam.conduction.mesh.Mesh;
import coldseam.conduction.mesh.MeshedSection;

/**
 * What a temperature field leaves of heat conduction's equations, triangle by triangle, as energies that fall with its error's:
 * of heat that appears inside, that jumps across a side, and that an outline's side does not hand on to its environment.
 *
 * <p>η² = A k (h Δu)², h² the area A, + Σ l kᵢ/(k₁ + k₂)² ∫ [k ∂u/∂n]² over the sides that two triangles share, each taking its
 * part of what jumps, + Σ ∫ (k ∂u/∂n + (u − T)/R)² / (k/l + 1/R) over the sides that face an environment, + Σ l/k ∫
 * (k ∂u/∂n)² over the adiabatic ones; l is a side's length (R. Verfürth, A Posteriori Error Estimation Techniques for Finite
 * Element Methods, Oxford 2013, chapter 1, from memory; the weights for unlike conductivities are ours). By how much
 * it differs from the error's energy depends on the shape of triangles and on what is drawn, so it is to be compared with a gap.
 */
final class Residuals {

    /** Of each triangle. */
    double[] energy = new double[0];

    /** Of each side of a triangle at its two ends: k ∂u/∂n, the heat that comes in through it, times its length. */
    private double[] flux = new double[0];

    private final double[] gx = new double[3];
    private final double[] gy = new double[3];
    private MeshedSection drawing;
    private Mesh mesh;
    private boolean axisymmetric;

    /**
     * Computes them.
     *
     * @param round whether x is a radius, and an energy meant for a radian
     * @param u at each node
     * @param ambient of each environment, in the same unit
     */
    void compute(MeshedSection of, boolean round, double[] u, double[] ambient) {
        drawing = of;
        mesh = of.mesh;
        axisymmetric = round;
        if (energy.length < mesh.triangles) {
            energy = new double[mesh.triangles + mesh.triangles / 2];
            flux = new double[6 * energy.length];
        }
        for (int t = 0; t < mesh.triangles; t++) {
            energy[t] = inside(t, u);
        }
        for (int t = 0; t < mesh.triangles; t++) {
            for (int i = 0; i < 3; i++) {
                int across = mesh.neighbour[3 * t + i];
                energy[t] += radius(t, i) * (across < 0 ? outline(t, i, u, ambient) : jump(t, i, across));
            }
        }
    }

    /** Σ over the triangles. */
    double sum() {
        double sum = 0;
        for (int t = 0; t < mesh.triangles; t++) {
            sum += energy[t];
        }
        return sum;
    }

    /** The heat that appears in a triangle, as an energy; its sides' fluxes are left in {@code flux}. */
    private double inside(int t, double[] u) {
        int o = 6 * t;
        double x0 = mesh.x[mesh.node[o]];
        double y0 = mesh.y[mesh.node[o]];
        double x1 = mesh.x[mesh.node[o + 1]] - x0;
        double y1 = mesh.y[mesh.node[o + 1]] - y0;
        double x2 = mesh.x[mesh.node[o + 2]] - x0;
        double y2 = mesh.y[mesh.node[o + 2]] - y0;
        double area2 = x1 * y2 - x2 * y1;
        double k = drawing.conductivity[mesh.region[t]];
        double u0 = u[mesh.node[o]];
        double u1 = u[mesh.node[o + 1]] - u0;
        double u2 = u[mesh.node[o + 2]] - u0;
        double u3 = 4 * (u[mesh.node[o + 3]] - u0);
        double u4 = 4 * (u[mesh.node[o + 4]] - u0);
        double u5 = 4 * (u[mesh.node[o + 5]] - u0);
        // ∂u/∂λᵢ at corner j is 3uⱼ where i = j, else four times the middle between them less uᵢ; ∇u·2A as in the
        // elements.
        for (int j = 0; j < 3; j++) {
            double d0 = j == 0 ? 0 : j == 1 ? u5 : u4;
            double d1 = (j == 0 ? u5 - u1 : j == 1 ? 3 * u1 : u3 - u1) - d0;
            double d2 = (j == 0 ? u4 - u2 : j == 1 ? u3 - u2 : 3 * u2) - d0;
            gx[j] = (y2 * d1 - y1 * d2) / area2;
            gy[j] = (x1 * d2 - x2 * d1) / area2;
        }
        // A Δu: the gradient is linear, and ∇λ is a side's outward normal times −l/2A.
        double source = 0;
        for (int i = 0; i < 3; i++) {
            int from = (i + 1) % 3;
            int to = (i + 2) % 3;
            double nx = mesh.y[mesh.node[o + to]] - mesh.y[mesh.node[o + from]];
            double ny = mesh.x[mesh.node[o + from]] - mesh.x[mesh.node[o + to]];
            flux[o + 2 * i] = k * (gx[from] * nx + gy[from] * ny);
            flux[o + 2 * i + 1] = k * (gx[to] * nx + gy[to] * ny);
            source -= 0.5 * (gx[i] * nx + gy[i] * ny);
        }
        if (!axisymmetric) {
            return k * source * source;
        }
        double r = x0 + (x1 + x2) / 3;
        source += area2 * (gx[0] + gx[1] + gx[2]) / (6 * r);
        return drawing.lattice.step() * r * k * source * source;
    }

    /** What a side is weighed with: its middle's radius, m, or nothing. */
    private double radius(int t, int i) {
        return axisymmetric ? drawing.lattice.step() * mesh.x[mesh.node[6 * t + 3 + i]] : 1;
    }

    private double jump(int t, int i, int across) {
        int o = 3 * across;
        int j = 2 * (mesh.neighbour[o] == t ? o : mesh.neighbour[o + 1] == t ? o + 1 : o + 2);
        int own = 6 * t + 2 * i;
        double a = flux[own] + flux[j + 1];
        double b = flux[own + 1] + flux[j];
        double k = drawing.conductivity[mesh.region[t]];
        double both = k + drawing.conductivity[mesh.region[across]];
        return k / (both * both) * (a * a + a * b + b * b) / 3;
    }

    private double outline(int t, int i, double[] u, double[] ambient) {
        int tag = mesh.tag[3 * t + i];
        double k = drawing.conductivity[mesh.region[t]];
        double a = flux[6 * t + 2 * i];
        double b = flux[6 * t + 2 * i + 1];
        if (tag < 0) {
            return (a * a + a * b + b * b) / (3 * k);
        }
        if (!(drawing.resistance[tag] > 0)) {
            return 0;
        }
        int from = mesh.node[6 * t + (i + 1) % 3];
        int to = mesh.node[6 * t + (i + 2) % 3];
        double film = drawing.lattice.step() * mesh.length(t, i) / drawing.resistance[tag];
        double t0 = ambient[drawing.environment[tag]];
        double m = 0.5 * (a + b) + film * (u[mesh.node[6 * t + 3 + i]] - t0);
        a += film * (u[from] - t0);
        b += film * (u[to] - t0);
        return (4 * (a * a + b * b) + 16 * m * m + 4 * m * (a + b) - 2 * a * b) / (30 * (k + film));
    }
}
