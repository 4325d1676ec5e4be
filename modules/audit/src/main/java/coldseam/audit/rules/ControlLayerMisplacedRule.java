package coldseam.audit.rules;

import coldseam.assemblies.moisture.Condensation;
import coldseam.assemblies.moisture.Condensation.Verdict;
import coldseam.audit.Finding.Severity;
import coldseam.envelope.Assembly;
import coldseam.envelope.Control;
import coldseam.envelope.Exposure;
import coldseam.envelope.shell.Surface;
import coldseam.junctions.plan.SectionPlan.Zone;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * Water control on the room side of insulation that must stay dry, or vapour control on the cold side only.
 *
 * <p>Insulation that can keep out water itself may lie outside (an inverted roof, boards in the ground), and in the ground
 * boards outside the sealing are usual. Vapour control may lie outside where the monthly balance of ISO 13788 carries it.
 */
final class ControlLayerMisplacedRule extends SurfaceControlRule {

    @Override
    public String id() {
        return "control-layer-misplaced";
    }

    @Override
    public String says() {
        return "Water control lies outside the insulation or is its surface; vapour control does not lie outside it alone.";
    }

    @Override
    public String closing() {
        return "Move the control to the right side of the insulation, or add a layer there.";
    }

    @Override
    public int gravity() {
        return 14;
    }

    @Override
    Optional<Fault> fault(Facts facts, Surface surface, Control control) {
        ImmutableList<ControlLayer> able = ControlLayer.of(surface, control).select(ControlLayer::able);
        if (able.isEmpty()) {
            return Optional.empty();
        }
        Assembly assembly = surface.assembly().orElseThrow();
        String material = able.getFirst().layer().material().name();
        if (control == Control.WATER
                && able.allSatisfy(layer -> layer.zone() == Zone.INSIDE)
                && surface.exposure().kind() == Exposure.Kind.OUTDOORS
                && !keepsDry(assembly)) {
            return Optional.of(new Fault(
                    Severity.GAP,
                    "lies inside the insulation",
                    "\"" + material + "\" keeps out water on the room side of the insulation only, which gets wet",
                    "put a layer that sheds water outside the insulation"));
        }
        if (control == Control.VAPOUR
                && able.allSatisfy(layer -> layer.zone() == Zone.OUTSIDE)
                && !driesByMonths(facts, assembly)) {
            return Optional.of(new Fault(
                    Severity.GAP,
                    "lies outside the insulation",
                    "\"" + material
                            + "\" holds vapour back on the cold side of the insulation only, where it condenses",
                    "put a layer that governs vapour on the warm side, or give the monthly climate and show that the build-up"
                            + " dries"));
        }
        return Optional.empty();
    }

    /** Whether all its insulation can keep out water itself. */
    private static boolean keepsDry(Assembly assembly) {
        return assembly.layers()
                .select(layer -> layer.material().insulates())
                .allSatisfy(layer -> layer.material().canControl(Control.WATER));
    }

    /** Whether a monthly balance was made and gathers no water worth speaking of. */
    private static boolean driesByMonths(Facts facts, Assembly assembly) {
        return facts.assemblies()
                .select(row -> row.assembly().equals(assembly))
                .allSatisfy(row -> row.moisture()
                        .year()
                        .filter(year -> year.verdict() != Verdict.ACCUMULATES && year.most() <= Condensation.MOST)
                        .isPresent());
    }
}
