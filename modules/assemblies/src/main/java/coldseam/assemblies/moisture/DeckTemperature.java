package coldseam.assemblies.moisture;

import coldseam.assemblies.InterfaceTemperatures;
import coldseam.assemblies.LayerResistance;
import coldseam.assemblies.Transmittance;
import coldseam.envelope.Role;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * The temperature under a terrace's or roof's deck against the dew point of the room's air.
 *
 * <p>The deck is the outermost layer of structure, and its underside is meant; where that layer is framed, what lies on the framing
 * is the deck. Structure upon insulation that covers other structure without a break is no deck, since the room's air gets no
 * further than what is covered. Where no layer is structure, what lies on the outermost insulation is the deck. This is a worst
 * case, as if nothing inside the deck held air and vapour back and no ventilation dried it.
 *
 * @param deck material of the deck
 * @param temperature °C, of its underside, between the framing
 * @param dewPoint °C, of the room's air
 */
public record DeckTemperature(String deck, double temperature, double dewPoint) {

    /**
     * The deck of an assembly that lies over a heated room.
     *
     * @param u of the assembly, upwards
     * @param indoorTemperature °C
     * @param outdoorTemperature °C
     * @param indoorHumidity relative, more than 0, up to 1
     * @throws IllegalArgumentException where the humidity is outside its range
     */
    public static DeckTemperature of(
            Transmittance u, double indoorTemperature, double outdoorTemperature, double indoorHumidity) {
        InterfaceTemperatures.Interface underside = InterfaceTemperatures.of(u, indoorTemperature, outdoorTemperature)
                .interfaces()
                .get(plane(u.layers().select(layer -> layer.counted() > 0)));
        return new DeckTemperature(
                underside.outside(),
                underside.temperature(),
                SurfaceHumidity.dewPoint(indoorTemperature, indoorHumidity));
    }

    /** Which interface the underside is, 0 for the inner surface. */
    private static int plane(ImmutableList<LayerResistance> layers) {
        int insulation = layers.detectLastIndex(layer -> layer.layer().insulates());
        boolean unbroken = insulation >= 0 && layers.get(insulation).framing().isEmpty();
        int covered = unbroken ? structure(layers.take(insulation)) : -1;
        int structure = covered >= 0 ? covered : structure(layers);
        if (structure < 0) {
            return insulation + 1;
        }
        return layers.get(structure).framing().isPresent() ? structure + 1 : structure;
    }

    private static int structure(ImmutableList<LayerResistance> layers) {
        return layers.detectLastIndex(layer -> layer.layer().role() == Role.STRUCTURE);
    }
}
