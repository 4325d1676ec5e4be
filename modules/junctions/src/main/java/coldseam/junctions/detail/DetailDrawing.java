package coldseam.junctions.detail;

import coldseam.envelope.JunctionKind;
import coldseam.envelope.Material;
import coldseam.junctions.language.DetailParameter;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;
import org.eclipse.collections.impl.factory.Lists;

/** How a detail's section is put together from layers; its own room decides. */
public interface DetailDrawing {

    /** Lengths of its own that a house may change; none where it has none. */
    default ImmutableList<DetailParameter> parameters() {
        return Lists.immutable.empty();
    }

    /** Names of what is drawn besides layers; none where the section is drawn by hand. */
    default ImmutableList<String> pieces() {
        return Lists.immutable.empty();
    }

    /** What it takes a material of this name for where the house says nothing of it; empty where it leaves that to the built-in list. */
    default Optional<Material> material(String name) {
        return Optional.empty();
    }

    /** Whether it is meant for any build, and not for one alone. */
    default boolean forAnyBuild() {
        return true;
    }

    /** The same drawing, which takes layers without insulation as well: as they are found, not as they should be built. */
    default DetailDrawing onBareLayers() {
        return this;
    }

    /**
     * The same drawing for another kind.
     *
     * @param kind of the same form and bands
     */
    default DetailDrawing of(JunctionKind kind) {
        throw new IllegalArgumentException("a drawing of one kind alone; got " + kind.label());
    }

    /**
     * The same drawing with other lengths.
     *
     * @param values m, each of one of {@link #parameters()} and in its range
     */
    default DetailDrawing with(ImmutableMap<String, Double> values) {
        throw new IllegalArgumentException("a drawing without parameters; got " + values.keysView());
    }
}
