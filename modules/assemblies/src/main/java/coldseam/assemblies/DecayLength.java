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

    private final ImmutableList<EquivalentLayer> layers;
    private final double rsi;
    private final double rse;

    private DecayLength(EquivalentLayers stack) {
        this.layers = stack.layers().select(layer -> layer.part() == EquivalentLayer.Part.CARRIES_HEAT);
        this.rsi = stack.interiorSurfaceResistance();
        this.rse = stack.exteriorSurfaceResistance();
    }

    /** λ, m; zero where no layer carries heat. */
    public static double of(EquivalentLayers stack) {
        DecayLength decay = new DecayLength(stack);
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
        for (EquivalentLayer layer : layers) {
            double k = layer.thickness() / layer.resistance();
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
