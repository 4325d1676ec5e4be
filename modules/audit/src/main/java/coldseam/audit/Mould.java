package coldseam.audit;

import coldseam.assemblies.moisture.MonthlyTemperatureFactor;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * Mould on inner surfaces of junctions and corners: the temperature factor that keeps the air at a surface at or below 80 % relative humidity
 * (ISO 13788:2012 clause 5, from memory), at the design temperatures and by monthly means.
 *
 * <p>The standard means monthly means, since mould takes days to grow. The design temperature is a cold spell of a few days:
 * what it asks for is on the safe side, so a surface that misses it alone is pointed out and not held against the house.
 *
 * @param limit least fRsi by the house's limits
 * @param designNeed fRsi that the design temperatures ask for at the site's indoor humidity
 * @param monthly what the heated months ask for, at the wetter of the climate's rooms and the site's indoor humidity; empty
 *     without a monthly climate, or where no month is heated
 * @param surfaces one for each sheet, the coldest first
 */
public record Mould(
        double limit, double designNeed, Optional<MonthlyTemperatureFactor> monthly, ImmutableList<Surface> surfaces) {

    /**
     * The coldest inner surface of a junction or a corner.
     *
     * @param sheet of it
     * @param temperatureFactor fRsi
     * @param humidityAtDesign indoor relative humidity, 0 to 1, from which mould may grow there at the design temperatures
     * @param humidityInCriticalMonth the same in the month that asks for most; empty without months
     */
    public record Surface(
            Sheet sheet, double temperatureFactor, double humidityAtDesign, OptionalDouble humidityInCriticalMonth) {}

    /** fRsi that surfaces are held to: the limit, or what the months ask for where that is more. */
    public double need() {
        return monthly.map(months -> Math.max(limit, months.critical().temperatureFactor()))
                .orElse(limit);
    }

    /** Surfaces on which mould may grow at the site's own humidity while the design temperature lasts. */
    public ImmutableList<Surface> wetAtDesign() {
        return surfaces.select(surface -> surface.temperatureFactor() < designNeed);
    }

    /** Whether a sheet's surface is among some of these. */
    public static boolean among(ImmutableList<Surface> some, Sheet sheet) {
        return some.anySatisfy(surface -> surface.sheet().id().equals(sheet.id()));
    }

    /** Surfaces on which mould may grow in some month. */
    public ImmutableList<Surface> wetByMonth() {
        return monthly.map(need -> surfaces.select(
                        surface -> surface.temperatureFactor() < need.critical().temperatureFactor()))
                .orElse(Lists.immutable.empty());
    }
}
