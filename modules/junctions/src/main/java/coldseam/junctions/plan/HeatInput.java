package coldseam.junctions.plan;

import coldseam.envelope.Layer;
import coldseam.envelope.Material;
import java.util.Comparator;

/** What a heat loss follows that somebody gave, and may have given a little wrong: one conductivity, or something else of its kind. */
public sealed interface HeatInput {

    /** Materials by name, those of one name by conductivity; then the others. */
    Comparator<HeatInput> ORDER = Comparator.comparing((HeatInput input) -> input instanceof Other)
            .thenComparing(input -> input instanceof OfMaterial of ? of.name() : "")
            .thenComparingDouble(input -> input instanceof OfMaterial of ? of.conductivity() : 0)
            .thenComparingInt(input -> input instanceof Other other ? other.ordinal() : 0)
            .thenComparing(input -> input instanceof OfFramed of ? of.layer().toString() : "")
            .thenComparing(input -> input instanceof OfSpace of ? of.name() : "");

    /** What a layer's resistance follows. */
    static HeatInput of(Layer layer) {
        if (layer.air().isPresent()) {
            return Other.AIR_LAYERS;
        }
        return layer.framing().isPresent() ? new OfFramed(layer) : of(layer.material());
    }

    /** What follows a material's conductivity. */
    static HeatInput of(Material material) {
        return material.isAir() ? Other.AIR_LAYERS : new OfMaterial(material.name(), material.conductivity());
    }

    /**
     * A material's conductivity. Whatever file says it, a product of one name that conducts alike is one product: what is wrong of
     * it is wrong of it everywhere.
     *
     * @param name as its file names it
     * @param conductivity W/(m·K)
     */
    record OfMaterial(String name, double conductivity) implements HeatInput {}

    /**
     * What a layer with members conducts as sections draw it, all in one; it follows its material, its members and, by the method
     * of ISO 6946, the rest of its assembly.
     *
     * @param layer that has members
     */
    record OfFramed(Layer layer) implements HeatInput {}

    /**
     * The temperature factor of an unheated space.
     *
     * @param name of the space
     */
    record OfSpace(String name) implements HeatInput {}

    /** What is no material's conductivity. */
    enum Other implements HeatInput {
        /** The ground's conductivity. */
        GROUND,
        /** Resistances of air layers. */
        AIR_LAYERS,
        /** U of windows and doors as it is declared. */
        OPENINGS,
        /** U of glass. */
        GLASS,
        /** psi of the glass's edges. */
        EDGES,
        /** U of frames and of doors' leaves. */
        FRAMES
    }
}
