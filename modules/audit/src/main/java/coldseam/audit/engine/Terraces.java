package coldseam.audit.engine;

import coldseam.assemblies.LayerResistance;
import coldseam.assemblies.Transmittance;
import coldseam.assemblies.moisture.SurfaceHumidity;
import coldseam.audit.TerraceLine;
import coldseam.envelope.Body;
import coldseam.envelope.Control;
import coldseam.envelope.House;
import coldseam.envelope.Role;
import coldseam.envelope.Site;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * Terrace decks over heated rooms: how cold the structure under the insulation gets, against the dew point of the room.
 *
 * <p>Steady state through the layers: θ = θi − (θi − θe)·(Rsi + R up to there)/RT, with bridged layers levelled out as in the
 * lower limit of ISO 6946. Of all structure layers under the outermost insulation the coldest inner face counts, since that
 * is where the room's air condenses first if it gets there.
 */
final class Terraces {

    private Terraces() {}

    /** One line for each terrace with an assembly, in the shell's order. */
    static ImmutableList<TerraceLine> of(House house, ImmutableList<SurfaceHeat> heats) {
        return heats.select(heat ->
                        heat.surface().use() == Body.Use.TERRACE && heat.build().isPresent())
                .collect(heat -> new TerraceLine(
                        heat.surface(),
                        house.site(),
                        underside(house.site(), heat.build().get()),
                        dewPoint(house.site())));
    }

    private static double dewPoint(Site site) {
        return SurfaceHumidity.dewPoint(site.indoorTemperature(), site.indoorHumidity());
    }

    /** °C. */
    static double underside(Site site, Transmittance build) {
        int outermost = outermostInsulation(build);
        double total = build.interiorSurfaceResistance() + build.exteriorSurfaceResistance();
        for (LayerResistance layer : build.layers()) {
            total += layer.combined() * layer.counted();
        }
        double passed = build.interiorSurfaceResistance();
        double most = passed;
        for (int i = 0; i < outermost; i++) {
            LayerResistance layer = build.layers().get(i);
            if (layer.layer().role() == Role.STRUCTURE) {
                most = passed;
            }
            passed += layer.combined() * layer.counted();
        }
        return site.indoorTemperature() - (site.indoorTemperature() - site.outdoorTemperature()) * most / total;
    }

    /** Index of the outermost layer that controls heat; all layers where none does. */
    private static int outermostInsulation(Transmittance build) {
        for (int i = build.layers().size() - 1; i >= 0; i--) {
            if (build.layers().get(i).layer().controls().contains(Control.HEAT)) {
                return i;
            }
        }
        return build.layers().size();
    }
}
