package coldseam.audit.rules;

import coldseam.assemblies.HeatFlow;
import coldseam.envelope.Assembly;
import coldseam.envelope.Control;
import coldseam.envelope.Duty;
import coldseam.envelope.Exposure;
import coldseam.envelope.Layer;
import coldseam.envelope.shell.Surface;
import coldseam.junctions.plan.SectionPlan.Zone;
import coldseam.junctions.section.Band;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * A layer that an assembly names for a control.
 *
 * @param layer as the house has it
 * @param zone where it lies in respect of the assembly's thickest run of insulation
 * @param aired whether it is a ventilated air layer, or lies outside a well-ventilated one
 * @param able whether its material insulates, or a source says that it can do the other controls, and it is not aired; water in
 *     the ground is kept out only by what is tight to vapour as well, or insulates in the ground
 */
record ControlLayer(Layer layer, Zone zone, boolean aired, boolean able) {

    /** Those of a surface, from the inside; none where it has no assembly. */
    static ImmutableList<ControlLayer> of(Surface surface, Control control) {
        return surface.assembly()
                .map(assembly -> of(assembly, surface.exposure(), control))
                .orElse(Lists.immutable.empty());
    }

    private static ImmutableList<ControlLayer> of(Assembly assembly, Exposure exposure, Control control) {
        // The direction of heat flow changes resistances only, not which layer lies where.
        Band band = Band.of(assembly.name(), assembly, exposure, HeatFlow.HORIZONTAL);
        int aired = assembly.layers().detectIndex(Layer::isWellVentilated);
        return band.strata()
                .zipWithIndex()
                .select(each -> each.getOne().layer().layer().controls().contains(control))
                .collect(each -> {
                    Layer layer = each.getOne().layer().layer();
                    boolean outside = aired >= 0 && each.getTwo() >= aired
                            || layer.air()
                                    .filter(air -> air.ventilation() != Layer.Ventilation.UNVENTILATED)
                                    .isPresent();
                    return new ControlLayer(
                            layer,
                            band.zoneOf(each.getOne()),
                            outside,
                            !outside
                                    && (control == Control.HEAT
                                            ? layer.insulates()
                                            : layer.material().canControl(control)
                                                    && !(control == Control.WATER && shedsOnly(layer, exposure))));
                });
    }

    /** In the ground water stands and presses: what only sheds it, like a render or a breather, does not keep it out. */
    private static boolean shedsOnly(Layer layer, Exposure exposure) {
        return exposure.kind() == Exposure.Kind.GROUND
                && !layer.material().canControl(Control.VAPOUR)
                && !layer.material().canBear(Duty.GROUND);
    }
}
