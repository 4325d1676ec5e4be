package coldseam.assemblies;

import coldseam.envelope.Layer;

/**
 * One layer as a junction's section draws it: homogeneous.
 *
 * @param layer of the assembly
 * @param thickness m, as drawn; a tapered layer's least
 * @param conductivity W/(m·K), with which the whole stack has the assembly's transmittance
 * @param part whether it is in the section at all
 */
public record EquivalentLayer(Layer layer, double thickness, double conductivity, Part part) {

    /** Whether a layer carries heat. */
    public enum Part {
        /** It resists the heat flow and is drawn. */
        CARRIES_HEAT,
        /** A membrane: its resistance is neglected. */
        NEGLIGIBLE,
        /** A well-ventilated air layer or anything outside it: as warm as outdoors, and left out. */
        VENTILATED
    }

    /** m²·K/W; meaningful where it carries heat. */
    public double resistance() {
        return thickness / conductivity;
    }
}
