package coldseam.assemblies.moisture;

import java.util.Arrays;

/**
 * Vapour pressure across a stack in steady state.
 *
 * <p>Between planes that are wet the pressure is the greatest convex line that stays under the saturation pressure: it is straight
 * where nothing condenses and touches saturation where something does. That is Glaser's construction with any number of planes. A
 * plane that is wet already keeps saturation and may give its water off.
 */
final class VapourProfile {

    /** kg/(m·s·Pa), of still air (ISO 13788:2012, from memory). */
    static final double AIR_PERMEABILITY = 2.0e-10;

    private final double[] gain;
    private final double[] pressure;

    private VapourProfile(double[] pressure, double[] gain) {
        this.pressure = pressure;
        this.gain = gain;
    }

    /**
     * The profile.
     *
     * @param x sd from the inner surface, m, increasing
     * @param saturation Pa at each plane
     * @param wet whether a plane holds water; the two surfaces never do
     * @param indoor pi, Pa
     * @param outdoor pe, Pa
     */
    static VapourProfile of(double[] x, double[] saturation, boolean[] wet, double indoor, double outdoor) {
        int n = x.length;
        double[] most = saturation.clone();
        // Air that is wetter than its surface bears condenses on that surface, not inside.
        most[0] = Math.min(indoor, saturation[0]);
        most[n - 1] = Math.min(outdoor, saturation[n - 1]);
        int[] touching = touching(x, most, wet);
        double[] pressure = new double[n];
        double[] gain = new double[n];
        for (int k = 0; touching[k] < n - 1; k++) {
            int a = touching[k];
            int b = touching[k + 1];
            for (int i = a; i <= b; i++) {
                pressure[i] = most[a] + (most[b] - most[a]) * (x[i] - x[a]) / (x[b] - x[a]);
            }
            double flow = AIR_PERMEABILITY * (most[a] - most[b]) / (x[b] - x[a]);
            gain[a] -= flow;
            gain[b] += flow;
        }
        gain[0] = 0;
        gain[n - 1] = 0;
        return new VapourProfile(pressure, gain);
    }

    /** The planes at which the line bends, from the first to the last. */
    private static int[] touching(double[] x, double[] p, boolean[] wet) {
        int n = x.length;
        int[] stack = new int[n];
        int size = 0;
        int floor = 0;
        for (int i = 0; i < n; i++) {
            // Drop planes that lie on or above the line from the one before them; wet ones hold.
            while (size - floor >= 2 && above(x, p, stack[size - 2], stack[size - 1], i)) {
                size--;
            }
            stack[size++] = i;
            if (wet[i]) {
                floor = size - 1;
            }
        }
        return Arrays.copyOf(stack, size);
    }

    private static boolean above(double[] x, double[] p, int a, int b, int c) {
        return p[b] * (x[c] - x[a]) >= p[a] * (x[c] - x[b]) + p[c] * (x[b] - x[a]);
    }

    /** Pa at a plane. */
    double pressure(int plane) {
        return pressure[plane];
    }

    /** kg/(m²·s) that a plane gains, negative where it dries; zero at the surfaces. */
    double gain(int plane) {
        return gain[plane];
    }
}
