package coldseam.assemblies.moisture;

import coldseam.assemblies.HeatFlow;
import coldseam.assemblies.InterfaceTemperatures;
import coldseam.assemblies.LayerResistance;
import coldseam.assemblies.OuterSurface;
import coldseam.assemblies.Transmittance;
import coldseam.envelope.Assembly;
import coldseam.envelope.Role;
import java.util.Optional;

/**
 * The temperature under a terrace's or roof's deck against the dew point of the room's air.
 *
 * <p>The deck is the outermost layer of structure, and its underside is meant; where that layer is framed, what lies on the framing
 * is the deck. Where air from the room reaches the underside, water condenses from {@link #humidityAtDewPoint} on. This is a worst
 * case, as if nothing inside the deck held air and vapour back.
 *
 * @param deck material of the deck
 * @param temperature °C, of its underside, between the framing
 * @param dewPoint °C, of the room's air
 * @param humidityAtDewPoint indoor relative humidity, 0 to 1, from which the underside is wet
 */
public record DeckTemperature(String deck, double temperature, double dewPoint, double humidityAtDewPoint) {

    /**
     * The deck of an assembly that lies over a heated room.
     *
     * @param indoorHumidity relative, more than 0, up to 1
     * @return empty where no layer of the assembly is structure
     * @throws IllegalArgumentException where the assembly cannot be computed or the humidity is outside its range
     */
    public static Optional<DeckTemperature> of(
            Assembly assembly,
            OuterSurface outer,
            double indoorTemperature,
            double outdoorTemperature,
            double indoorHumidity) {
        Transmittance u = Transmittance.of(assembly, HeatFlow.UPWARDS, outer);
        int structure = u.layers()
                .detectLastIndex(layer -> layer.counted() > 0 && layer.layer().role() == Role.STRUCTURE);
        if (structure < 0) {
            return Optional.empty();
        }
        LayerResistance outermost = u.layers().get(structure);
        int plane = outermost.framing().isPresent() ? structure + 1 : structure;
        InterfaceTemperatures.Interface underside = InterfaceTemperatures.of(
                        assembly, HeatFlow.UPWARDS, outer, indoorTemperature, outdoorTemperature)
                .interfaces()
                .get(plane);
        double dewPoint = SurfaceHumidity.dewPoint(indoorTemperature, indoorHumidity);
        double wetFrom = SaturationPressure.at(underside.temperature()) / SaturationPressure.at(indoorTemperature);
        return Optional.of(
                new DeckTemperature(underside.outside(), underside.temperature(), dewPoint, Math.min(1, wetFrom)));
    }

    /** How much warmer the underside is than the dew point, K; negative where it is wet. */
    public double margin() {
        return temperature - dewPoint;
    }
}
