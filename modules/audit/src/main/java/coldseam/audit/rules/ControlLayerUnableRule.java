package coldseam.audit.rules;

import coldseam.audit.Finding.Severity;
import coldseam.envelope.Control;
import coldseam.envelope.file.house.MaterialLibrary;
import coldseam.envelope.shell.Surface;
import java.util.Locale;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;

/** A layer that is named for air, water or vapour control and cannot do it, by its material or its place. */
final class ControlLayerUnableRule extends SurfaceControlRule {

    @Override
    public String id() {
        return "control-layer-unable";
    }

    @Override
    public String says() {
        return "The layer that is named for air, water or vapour control is of a material that can do it, and no moving air is"
                + " on its inner side.";
    }

    @Override
    public String closing() {
        return "Name a layer that can do it, add one, or give the source that says that this material can.";
    }

    @Override
    public int gravity() {
        return 13;
    }

    @Override
    Optional<Fault> fault(Facts facts, Surface surface, Control control) {
        ImmutableList<ControlLayer> named = ControlLayer.of(surface, control);
        if (named.isEmpty() || named.anySatisfy(ControlLayer::able)) {
            return Optional.empty();
        }
        ControlLayer layer = named.getFirst();
        String material = layer.layer().material().name();
        boolean known = MaterialLibrary.named(material).isPresent();
        String what = layer.aired()
                ? String.format(
                        Locale.ROOT,
                        "\"%s\" is named for %s control, but it is ventilated or lies outside a ventilated air layer",
                        material,
                        word(control))
                : String.format(
                        Locale.ROOT,
                        "\"%s\" is named for %s control; %s",
                        material,
                        word(control),
                        known ? "that material cannot do it" : "no source says that that material can do it");
        return Optional.of(new Fault(
                layer.aired() || known ? Severity.GAP : Severity.UNKNOWN,
                "is a name only",
                what,
                "name a layer that can do it, or add one; where this material can, give the source under controls of the"
                        + " material"));
    }
}
