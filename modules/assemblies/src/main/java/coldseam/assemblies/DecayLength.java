package coldseam.assemblies;

import org.eclipse.collections.api.list.ImmutableList;

/**
 * How far along a surface a disturbance of its heat flow reaches: it dies away with the distance d as exp(−d / λ).
 *
 * <p>λ = 1/μ, μ the least with (k v')' + μ² k v = 0 across the layers, k v' = v / Rsi on the inner face and k v' = −v / Rse on the
 * outer. A structure with insulation on one side is a fin: it carries a disturbance about twice as far as a thickness over π would.
 * Below the least μ, and only there, the v that starts as the inner face asks stays positive and its k v' + v / Rse too (Sturm), so
 * μ is halved in upon. Worked out apart.
 */
public final class DecayLength {

    /** Halvings of an interval that holds μ: all that a double has. */
    private static final int HALVINGS = 60;

    /** m²·K/W; a face that resists less is held by its air, and divides by nothing. */
    private static final double LEAST_RESISTANCE = 1e-6;

    /**
     * A layer.
     *
     * @param thickness m
     * @param conductivity W/(m·K)
     */
    public record Sheet(double thickness, double conductivity) {}

    private final ImmutableList<Sheet> layers;
    private final double rsi;
    private final double rse;

    private DecayLength(double rsi, ImmutableList<Sheet> layers, double rse) {
        this.layers = layers;
        this.rsi = Math.max(LEAST_RESISTANCE, rsi);
        this.rse = Math.max(LEAST_RESISTANCE, rse);
    }

    /** λ, m; zero where no layer carries heat. */
    public static double of(EquivalentLayers stack) {
        return of(
                stack.interiorSurfaceResistance(),
                stack.carrying().collect(each -> new Sheet(each.thickness(), each.conductivity())),
                stack.exteriorSurfaceResistance());
    }

    /**
     * λ, m, of layers between two faces, m²·K/W; zero where there are none.
     *
     * @param rsi of one face
     * @param layers from there on
     * @param rse of the other face
     */
    public static double of(double rsi, ImmutableList<Sheet> layers, double rse) {
        DecayLength decay = new DecayLength(rsi, layers, rse);
        return decay.layers.isEmpty() ? 0 : 1 / decay.least();
    }

    private double least() {
        double low = 0;
        double high = 1;
        while (isBelow(high)) {
            low = high;
            high *= 2;
        }
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (isBelow(middle)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    /** Whether a μ, 1/m, is less than the least. */
    private boolean isBelow(double mu) {
        double v = 1;
        double flux = 1 / rsi;
        for (Sheet layer : layers) {
            double k = layer.conductivity();
            double turn = mu * layer.thickness();
            if (turn - Math.atan2(flux / (k * mu), v) >= Math.PI / 2) {
                return false;
            }
            double next = v * Math.cos(turn) + flux / (k * mu) * Math.sin(turn);
            flux = flux * Math.cos(turn) - k * mu * v * Math.sin(turn);
            v = next;
        }
        return flux + v / rse > 0;
    }
}
