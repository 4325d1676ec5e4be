package coldseam.audit.rules;

import coldseam.audit.Breach.Evidence;
import coldseam.audit.Finding.Severity;
import coldseam.envelope.Control;
import coldseam.envelope.file.house.MaterialLibrary;
import coldseam.envelope.shell.Surface;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * The layer that is named for air, water or vapour control is of a material that can do it, and no moving air is on its inner
 * side.
 */
public final class ControlLayerUnableRule extends SurfaceControlRule<ControlLayerUnableRule.Unable> {

    /** Why a layer cannot do what it is named for. */
    public enum Why {
        /** It is a ventilated air layer, or lies outside a well-ventilated one. */
        AIRED,
        /** Nothing says that its material can. */
        MATERIAL,
        /** Water stands where it lies, in the ground or on the level, and it sheds water only. */
        SHEDS,
        /** It is a coat that keeps rain off walls, on a slope. */
        UPRIGHT,
        /** It lies on the level, and is thinner than any covering of a roof. */
        THIN
    }

    /**
     * A layer that is named and cannot do it.
     *
     * @param thickness m
     * @param known whether it is known that it cannot: of a built-in material, and of heat, where the conductivity says so
     */
    public record Unable(Control control, String material, double thickness, Why why, boolean known) {}

    /** An assembly with such layers. */
    public record Found(String assembly, ImmutableList<Unable> layers) implements Evidence {}

    @Override
    Optional<Unable> fault(Facts facts, Surface surface, Control control) {
        ImmutableList<ControlLayer> named = ControlLayer.of(surface, control);
        if (named.isEmpty() || named.anySatisfy(ControlLayer::able)) {
            return Optional.empty();
        }
        ControlLayer first = named.getFirst();
        String material = first.layer().material().name();
        return Optional.of(new Unable(
                control,
                material,
                first.layer().thickness(),
                first.unable().orElseThrow(),
                control == Control.HEAT || MaterialLibrary.named(material).isPresent()));
    }

    /** Of a house's own material nobody may have said what it can do. */
    @Override
    Severity severity(Unable fault) {
        return fault.why() == Why.AIRED || fault.known() ? Severity.GAP : Severity.UNKNOWN;
    }

    @Override
    Evidence evidence(String assembly, ImmutableList<Unable> faults) {
        return new Found(assembly, faults);
    }
}
