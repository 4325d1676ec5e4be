package coldseam.audit.rules;

import coldseam.audit.Breach.Evidence;
import coldseam.audit.Finding.Severity;
import coldseam.envelope.Control;
import coldseam.envelope.Exposure;
import coldseam.envelope.Layer;
import coldseam.envelope.shell.Surface;
import coldseam.files.Groups;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * A roof or terrace whose insulation lies over the sheet that keeps water out says how much rain runs under it: that water
 * carries heat away (ISO 6946:2017 annex F.4, from memory), which no layer's conductivity shows.
 */
public final class RainNotCountedRule implements Rule {

    /** An assembly without its rain. */
    public record Found(String assembly) implements Evidence {}

    @Override
    public ImmutableList<Draft> find(Facts facts) {
        return Groups.by(facts.shell().surfaces().select(RainNotCountedRule::isInverted), Facts::assembly)
                .collect(alike -> Draft.ofAssembly(
                        Severity.WEAK, new Found(Facts.assembly(alike.getFirst())), alike, Optional.empty()));
    }

    /** Whether it is nearly level, rained on, and its insulation lies over the outermost able water layer with nothing counted. */
    private static boolean isInverted(Surface surface) {
        if (!surface.faces(Exposure.Kind.OUTDOORS)
                || surface.normal().z() < LEVEL
                || surface.assembly().isEmpty()
                || surface.assembly().get().rain().isPresent()) {
            return false;
        }
        ImmutableList<Layer> layers = surface.assembly().get().layers();
        int tight = layers.detectLastIndex(layer ->
                layer.controls().contains(Control.WATER) && layer.material().canControl(Control.WATER));
        int outermost = layers.detectLastIndex(Layer::insulates);
        return tight >= 0 && outermost > tight;
    }

    /** Cosine of 20°: steeper roofs are covered (judgement). */
    private static final double LEVEL = 0.94;
}
