package coldseam.assemblies;

import coldseam.envelope.Layer;
import java.util.OptionalDouble;

/**
 * What one layer contributes, for the report's table.
 *
 * @param layer of the assembly
 * @param resistance m²·K/W, between the framing; of a tapered layer where it is thinnest; zero for membranes
 * @param framing m²·K/W, of the framing; empty where nothing bridges the layer
 * @param combined m²·K/W, both in parallel, as the lower limit takes it
 * @param counted share that counts: 1, or 0 from a well-ventilated air layer outwards, between for slightly ventilated ones
 */
public record LayerResistance(
        Layer layer, double resistance, OptionalDouble framing, double combined, double counted) {}
