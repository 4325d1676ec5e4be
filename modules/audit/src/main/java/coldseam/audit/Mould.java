package coldseam.audit;

import coldseam.assemblies.moisture.MonthlyTemperatureFactor;
import coldseam.assemblies.moisture.SurfaceHumidity;
import coldseam.envelope.Limits;
import coldseam.envelope.Site;
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
 * @param humid what rooms ask for that are humid, where there are no months; empty for others
 * @param surfaces one for each sheet, the coldest first
 */
public record Mould(
        double limit,
        double designNeed,
        Optional<MonthlyTemperatureFactor> monthly,
        Optional<Humid> humid,
        ImmutableList<Surface> surfaces) {

    /**
     * Rooms more humid than the usual limit of fRsi stands for, where no months say more: 0.70 is what 20 °C and 50 %
     * indoors ask for at -5 °C outdoors (DIN 4108-2:2013 clause 6, from memory).
     *
     * @param humidity indoors, relative, 0 to 1
     * @param outdoors °C: -5, or the design temperature where that is higher, since no month is colder
     * @param temperatureFactor fRsi that they ask for; above 1 no surface is warm enough
     */
    public record Humid(double humidity, double outdoors, double temperatureFactor) {

        private static final double STANDS_FOR = 0.5;

        private static final double COLD_MONTH = -5;

        /** Of a site without months; empty where its rooms are no more humid than that. */
        public static Optional<Humid> of(Site site) {
            if (site.climate().isPresent() || !Limits.over(site.indoorHumidity(), STANDS_FOR)) {
                return Optional.empty();
            }
            double outdoors = Math.max(COLD_MONTH, site.outdoorTemperature());
            return Optional.of(new Humid(
                    site.indoorHumidity(),
                    outdoors,
                    SurfaceHumidity.temperatureFactorNeeded(
                            site.indoorTemperature(), outdoors, site.indoorHumidity(), SurfaceHumidity.MOULD_LIMIT)));
        }
    }

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

    /** fRsi that surfaces are held to: the limit, or what the months or humid rooms ask for where that is more. */
    public double need() {
        double asked = monthly.map(months -> months.critical().temperatureFactor())
                .or(() -> humid.map(Humid::temperatureFactor))
                .orElse(limit);
        return Math.max(limit, asked);
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
