package coldseam.audit.rules;

import coldseam.assemblies.HeatFlow;
import coldseam.audit.rules.ControlLayerUnableRule.Why;
import coldseam.envelope.Assembly;
import coldseam.envelope.Control;
import coldseam.envelope.Duty;
import coldseam.envelope.Layer;
import coldseam.envelope.Material;
import coldseam.envelope.shell.Surface;
import coldseam.junctions.plan.SectionPlan.Zone;
import coldseam.junctions.section.Band;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * A layer that an assembly names for a control.
 *
 * @param layer as the house has it
 * @param zone where it lies in respect of the assembly's thickest run of insulation
 * @param unable why it cannot do it; empty where its material insulates, or a source says that it can do the other controls
 */
record ControlLayer(Layer layer, Zone zone, Optional<Why> unable) {

    /** Cosine of 10°; tiles, slates and the membranes under them want more of a fall (common practice, no source). */
    private static final double LEVEL = 0.985;

    /** Cosine of 75°; rain soaks into a render that lies flatter, and frost takes it off (common practice, no source). */
    private static final double STEEP = 0.26;

    /** m; sheets that are made to be a roof's covering are thicker (common practice, no source). */
    private static final double COVERING = 0.001;

    /** W/(m·K); sheets of metal are thin, and keep water out where their seams are closed. */
    private static final double METAL = 10;

    /** Those of a surface, from the inside; none where it has no assembly. */
    static ImmutableList<ControlLayer> of(Surface surface, Control control) {
        return surface.assembly()
                .map(assembly -> of(assembly, surface, control))
                .orElse(Lists.immutable.empty());
    }

    private static ImmutableList<ControlLayer> of(Assembly assembly, Surface surface, Control control) {
        // The direction of heat flow changes resistances only, not which layer lies where.
        Band band = Band.of(assembly.name(), assembly, surface.exposure(), HeatFlow.HORIZONTAL);
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
                            outside ? Optional.of(Why.AIRED) : why(layer, surface, control));
                });
    }

    private static Optional<Why> why(Layer layer, Surface surface, Control control) {
        if (control == Control.HEAT ? !layer.insulates() : !layer.material().canControl(control)) {
            return Optional.of(Why.MATERIAL);
        }
        if (control != Control.WATER) {
            return Optional.empty();
        }
        return switch (surface.exposure().kind()) {
            case GROUND ->
                shedsOnly(layer) && !layer.material().canBear(Duty.GROUND) ? Optional.of(Why.SHEDS) : Optional.empty();
            case OUTDOORS -> surface.normal().z() > LEVEL ? onTheLevel(layer) : onASlope(layer, surface);
            default -> Optional.empty();
        };
    }

    private static Optional<Why> onTheLevel(Layer layer) {
        if (shedsOnly(layer) || layer.material().insulates()) {
            return Optional.of(Why.SHEDS);
        }
        return layer.thickness() < COVERING && layer.material().conductivity() < METAL
                ? Optional.of(Why.THIN)
                : Optional.empty();
    }

    private static Optional<Why> onASlope(Layer layer, Surface surface) {
        return surface.normal().z() > STEEP
                        && shedsOnly(layer)
                        && layer.material().carries() == Material.Carries.COAT
                ? Optional.of(Why.UPRIGHT)
                : Optional.empty();
    }

    /** What sheds water, like a render or a breather, does not keep it out where it stands and presses. */
    private static boolean shedsOnly(Layer layer) {
        return !layer.material().canControl(Control.VAPOUR);
    }

    boolean able() {
        return unable.isEmpty();
    }
}
