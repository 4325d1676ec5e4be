package coldseam.assemblies;

import coldseam.envelope.Assembly;
import coldseam.envelope.Layer;
import coldseam.envelope.Role;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

/** The resistances of an assembly's layers and the states of its ventilated air layers. */
final class Stack {

    /** mm² per metre of length (or square metre) up to which an air layer counts as unventilated (ISO 6946:2017 6.9). */
    private static final double UNVENTILATED_UP_TO = 500;

    /** mm² over which slight ventilation becomes full ventilation. */
    private static final double SLIGHT_RANGE = 1000;

    private final ImmutableList<Layer> layers;
    private final HeatFlow direction;
    private final double[] main;
    private final double[] framing;

    Stack(Assembly assembly, HeatFlow direction) {
        this.layers = assembly.layers();
        this.direction = direction;
        this.main = new double[layers.size()];
        this.framing = new double[layers.size()];
        for (int i = 0; i < main.length; i++) {
            Layer layer = layers.get(i);
            main[i] = resistance(layer);
            framing[i] = layer.framing()
                    .map(members -> layer.thickness() / members.material().conductivity())
                    .orElse(Double.NaN);
        }
    }

    private double resistance(Layer layer) {
        if (layer.role() == Role.MEMBRANE) {
            return 0;
        }
        return layer.air()
                .map(air -> AirLayers.resistance(layer.thickness(), direction, air.lowEmissivity()))
                .orElseGet(() -> layer.thickness() / layer.material().conductivity());
    }

    int size() {
        return main.length;
    }

    /** m²·K/W of layer i between its framing. */
    double main(int i) {
        return main[i];
    }

    boolean bridged(int i) {
        return !Double.isNaN(framing[i]) && layers.get(i).role() != Role.MEMBRANE;
    }

    /** m²·K/W of layer i's framing. */
    double framing(int i) {
        return framing[i];
    }

    /** m²·K/W of layer i with its framing in parallel. */
    double levelled(int i) {
        if (!bridged(i)) {
            return main[i];
        }
        double share = layers.get(i).framing().orElseThrow().share();
        return 1 / (share / framing[i] + (1 - share) / main[i]);
    }

    /**
     * R'T of the innermost layers: the paths are walked depth first, each bridged layer splitting the area once more.
     *
     * @param count layers counted
     * @param surfaces Rsi + Rse
     */
    double upperLimit(int count, double surfaces) {
        return 1 / conductance(0, count, surfaces);
    }

    private double conductance(int i, int count, double soFar) {
        if (i == count) {
            return 1 / soFar;
        }
        double between = conductance(i + 1, count, soFar + main[i]);
        if (!bridged(i)) {
            return between;
        }
        double share = layers.get(i).framing().orElseThrow().share();
        return (1 - share) * between + share * conductance(i + 1, count, soFar + framing[i]);
    }

    /** R''T of the innermost layers. */
    double lowerLimit(int count, double surfaces) {
        double sum = surfaces;
        for (int i = 0; i < count; i++) {
            sum += levelled(i);
        }
        return sum;
    }

    /** RT,h of the innermost layers, bridging ignored and tapered layers with their mean thickness. */
    double unbridged(int count, double surfaces) {
        double sum = surfaces;
        for (int i = 0; i < count; i++) {
            Layer layer = layers.get(i);
            double more = TaperedLayers.meanThickness(layer) - layer.thickness();
            sum += main[i] + more / layer.material().conductivity();
        }
        return sum;
    }

    /** R2 of the tapered layers among the innermost ones, m²·K/W; zero where none is tapered. */
    double greatestTaper(int count) {
        double sum = 0;
        for (int i = 0; i < count; i++) {
            Layer layer = layers.get(i);
            if (layer.taper().isPresent()) {
                sum += (layer.taper().get().thickest() - layer.thickness())
                        / layer.material().conductivity();
            }
        }
        return sum;
    }

    /** Whether layer i vents, 0 not at all to 1 fully. */
    private double ventilated(int i) {
        return layers.get(i)
                .air()
                .map(air -> switch (air.ventilation()) {
                    case UNVENTILATED -> 0.0;
                    case WELL_VENTILATED -> 1.0;
                    case SLIGHTLY_VENTILATED ->
                        Math.min(1, Math.max(0, (air.openings() - UNVENTILATED_UP_TO) / SLIGHT_RANGE));
                })
                .orElse(0.0);
    }

    /**
     * The totals between which ventilation weighs.
     *
     * @param still Rse where no air layer vents fully
     * @return one state where every air layer is either closed or fully ventilated; the weights add up to 1
     */
    ImmutableList<State> states(double still) {
        MutableList<State> states = Lists.mutable.empty();
        double remaining = 1;
        for (int i = 0; i < size() && remaining > 0; i++) {
            double vented = ventilated(i);
            if (vented > 0) {
                states.add(new State(remaining * vented, i, direction.interiorSurfaceResistance()));
                remaining *= 1 - vented;
            }
        }
        if (remaining > 0) {
            states.add(new State(remaining, size(), still));
        }
        return states.toImmutable();
    }

    /**
     * One way to count.
     *
     * @param weight of its resistance in the total
     * @param layers how many layers count, from inside
     * @param exterior Rse, m²·K/W
     */
    record State(double weight, int layers, double exterior) {}
}
