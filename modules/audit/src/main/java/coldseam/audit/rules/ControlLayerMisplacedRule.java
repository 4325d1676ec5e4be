package coldseam.audit.rules;

import coldseam.assemblies.HeatFlow;
import coldseam.assemblies.moisture.Condensation;
import coldseam.assemblies.moisture.Condensation.Verdict;
import coldseam.audit.Breach.Evidence;
import coldseam.audit.Finding.Severity;
import coldseam.envelope.Assembly;
import coldseam.envelope.Control;
import coldseam.envelope.Exposure;
import coldseam.envelope.Layer;
import coldseam.envelope.shell.Surface;
import coldseam.junctions.plan.SectionPlan.Zone;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * Water control lies outside the insulation or is its surface; vapour control does not lie outside it alone.
 *
 * <p>Insulation that can keep out water itself may lie outside (an inverted roof, boards in the ground), and in the ground
 * boards outside the sealing are usual; so are drained boards behind the cladding of a wall, over a barrier on its sheathing (the
 * International Residential Code 2018, R703.2, from memory, asks for it there). Vapour control may lie outside where the monthly balance of ISO 13788 carries it.
 */
public final class ControlLayerMisplacedRule extends SurfaceControlRule<ControlLayerMisplacedRule.Misplaced> {

    /** The layer that controls on the wrong side: water on the room side, or vapour on the cold side. */
    public record Misplaced(Control control, String material) {}

    /** An assembly with such layers. */
    public record Found(String assembly, ImmutableList<Misplaced> layers) implements Evidence {}

    @Override
    public int gravity() {
        return 14;
    }

    @Override
    Optional<Misplaced> fault(Facts facts, Surface surface, Control control) {
        ImmutableList<ControlLayer> able = ControlLayer.of(surface, control).select(ControlLayer::able);
        if (able.isEmpty()) {
            return Optional.empty();
        }
        Assembly assembly = surface.assembly().orElseThrow();
        boolean wet = control == Control.WATER
                && able.allSatisfy(layer -> layer.zone() == Zone.INSIDE)
                && surface.exposure().kind() == Exposure.Kind.OUTDOORS
                && !keepsDry(assembly)
                && !(HeatFlow.through(surface.normal()) == HeatFlow.HORIZONTAL && assembly.keepsWaterOutBehindBoards());
        boolean cold = control == Control.VAPOUR
                && able.allSatisfy(layer -> layer.zone() == Zone.OUTSIDE)
                && !driesByMonths(facts, assembly);
        return wet || cold
                ? Optional.of(new Misplaced(
                        control, able.getFirst().layer().material().name()))
                : Optional.empty();
    }

    /** Whether all its insulation can keep out water itself. */
    private static boolean keepsDry(Assembly assembly) {
        return assembly.layers()
                .select(Layer::insulates)
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

    @Override
    Severity severity(Misplaced fault) {
        return Severity.GAP;
    }

    @Override
    Evidence evidence(String assembly, ImmutableList<Misplaced> faults) {
        return new Found(assembly, faults);
    }
}
