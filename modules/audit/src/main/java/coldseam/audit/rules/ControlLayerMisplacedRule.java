package coldseam.audit.rules;

import coldseam.assemblies.EquivalentLayer;
import coldseam.assemblies.EquivalentLayers;
import coldseam.assemblies.HeatFlow;
import coldseam.assemblies.OuterSurface;
import coldseam.assemblies.moisture.Condensation;
import coldseam.assemblies.moisture.Condensation.Verdict;
import coldseam.assemblies.moisture.SaturationPressure;
import coldseam.audit.Breach.Evidence;
import coldseam.audit.Finding.Severity;
import coldseam.envelope.Assembly;
import coldseam.envelope.Control;
import coldseam.envelope.Exposure;
import coldseam.envelope.Layer;
import coldseam.envelope.Site;
import coldseam.envelope.shell.Surface;
import coldseam.junctions.plan.SectionPlan.Zone;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * Water control lies outside the insulation or is its surface; vapour control lies where it is warm.
 *
 * <p>Insulation that can keep out water itself may lie outside (an inverted roof, boards in the ground), and in the ground
 * boards outside the sealing are usual; so are drained boards behind the cladding of a wall, over a barrier on its sheathing (the
 * International Residential Code 2018, R703.2, from memory, asks for it there).
 *
 * <p>A fifth of what resists may lie on the warm side of what holds vapour back (DIN 4108-3, from memory, asks for no proof of
 * that); more where it stays above the dew point of the rooms at the design temperatures, or where the monthly balance of ISO 13788
 * carries it. The ground is never as cold, and some insulation outside it is enough there.
 */
public final class ControlLayerMisplacedRule extends SurfaceControlRule<ControlLayerMisplacedRule.Misplaced> {

    /** Of what resists, how much may lie on the warm side of what holds vapour back. */
    private static final double WARM = 0.2;

    /**
     * The layer that controls on the wrong side: water on the room side, or vapour on the cold side.
     *
     * @param warm share of the layers' resistance on its room side, 0 to 1
     * @param temperature °C, of its inner face at the design temperatures; none over the ground, which follows the year
     * @param dewPoint °C, of the rooms' air
     */
    public record Misplaced(
            Control control, String material, double warm, OptionalDouble temperature, double dewPoint) {

        /** Whether it holds vapour back where it is warm, or enough of the insulation lies outside it. */
        boolean warmEnough() {
            return warm <= WARM || temperature.orElse(Double.NEGATIVE_INFINITY) > dewPoint;
        }
    }

    /** An assembly with such layers. */
    public record Found(String assembly, ImmutableList<Misplaced> layers) implements Evidence {}

    @Override
    Optional<Misplaced> fault(Facts facts, Surface surface, Control control) {
        ImmutableList<ControlLayer> able = ControlLayer.of(surface, control).select(ControlLayer::able);
        if (able.isEmpty()) {
            return Optional.empty();
        }
        Assembly assembly = surface.assembly().orElseThrow();
        Misplaced layer = placed(facts, surface, control, able.getFirst().layer());
        boolean wet = control == Control.WATER
                && able.allSatisfy(each -> each.zone() == Zone.INSIDE)
                && surface.faces(Exposure.Kind.OUTDOORS)
                && !keepsDry(assembly)
                && !(HeatFlow.through(surface.normal()) == HeatFlow.HORIZONTAL && assembly.keepsWaterOutBehindBoards());
        boolean cold = control == Control.VAPOUR
                && (surface.faces(Exposure.Kind.GROUND)
                        ? able.allSatisfy(each -> each.zone() == Zone.OUTSIDE)
                        : !layer.warmEnough())
                && !driesByMonths(facts, assembly);
        return wet || cold ? Optional.of(layer) : Optional.empty();
    }

    private static Misplaced placed(Facts facts, Surface surface, Control control, Layer layer) {
        EquivalentLayers all = EquivalentLayers.of(
                surface.assembly().orElseThrow(),
                HeatFlow.through(surface.normal()),
                OuterSurface.of(surface.exposure()));
        double inside = resistance(
                all.layers().take(all.layers().detectIndex(each -> each.layer().equals(layer))));
        Site site = facts.house().site();
        double indoor = site.indoorTemperature();
        double drop = surface.exposure().factor() * (indoor - site.outdoorTemperature()) * all.transmittance();
        double temperature = indoor - drop * (all.interiorSurfaceResistance() + inside);
        return new Misplaced(
                control,
                layer.material().name(),
                inside / resistance(all.layers()),
                surface.faces(Exposure.Kind.GROUND) ? OptionalDouble.empty() : OptionalDouble.of(temperature),
                SaturationPressure.dewPoint(site.indoorHumidity() * SaturationPressure.at(indoor)));
    }

    private static double resistance(ImmutableList<EquivalentLayer> layers) {
        return layers.select(each -> each.part() == EquivalentLayer.Part.CARRIES_HEAT)
                .sumOfDouble(EquivalentLayer::resistance);
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
