package coldseam.envelope.file.house;

import coldseam.envelope.DimensionSystem;
import coldseam.envelope.Site;
import coldseam.files.BadValueException;
import coldseam.files.Bounds;
import coldseam.files.Default;
import coldseam.files.Doc;
import coldseam.files.Noun;
import coldseam.files.Position;
import coldseam.files.Unit;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.Phrase;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.factory.Sets;
import org.eclipse.collections.api.set.MutableSet;

@Noun("a site")
@Doc("Climate, ground and conventions.")
record FileSite(
        @Doc("Indoor design temperature.")
        @Unit(Dimension.TEMPERATURE)
        @Bounds(atLeast = "15 °C", atMost = "26 °C", usual = "20 to 22 °C")
        double indoorTemperature,

        @Doc("Outdoor design temperature in winter.")
        @Unit(Dimension.TEMPERATURE)
        @Bounds(atLeast = "-60 °C", atMost = "10 °C", usual = "-20 to 0 °C")
        double outdoorTemperature,

        @Doc("Relative humidity indoors at the design condition; 50 % where it is missing.")
        @Unit(Dimension.SHARE)
        @Bounds(atLeast = "15 %", atMost = "75 %", usual = "40 to 60 %")
        OptionalDouble indoorHumidity,

        @Doc("Heating degree days of a year, to the indoor temperature the climate's source names.")
        @Unit(Dimension.DEGREE_DAYS)
        @Bounds(atLeast = "0 K·d", atMost = "15000 K·d", usual = "1500 to 6000 K·d")
        OptionalDouble heatingDegreeDays,

        @Doc("The ground under the house; sand or gravel where it is missing.")
        Optional<FileGround> ground,

        @Doc("To which faces areas and lengths are measured for psi values and the heat-loss coefficient.")
        @Default("external")
        DimensionSystem dimensions,

        @Doc("Ventilation heat-loss coefficient, where it is to be counted in.")
        @Unit(Dimension.HEAT_LOSS_COEFFICIENT)
        @Bounds(atLeast = "5 W/K", atMost = "2000 W/K", usual = "20 to 100 W/K")
        OptionalDouble ventilationHeatLoss,

        @Doc("Where the outdoor design temperature and the degree days come from, as the audit prints it.")
        Optional<String> source,

        @Doc("The outdoor air month by month; without it condensation inside assemblies is not checked.")
        Optional<FileClimate> climate,

        Position place) {

    private static final double USUAL_HUMIDITY = 0.5;

    private static final FileGround USUAL_GROUND = new FileGround.FileGroundKind(FileGround.Kind.SAND_OR_GRAVEL);

    private static final double DAYS_OF_A_YEAR = 365;

    /** K; the design temperature is that of a few days, no further below the coldest month's mean (common practice, no source). */
    private static final double COLDEST_MONTH_ABOVE = 25;

    /** °C; degree days are counted to no lower base (common practice, no source). */
    private static final double LOWEST_BASE = 12;

    /** Share by which degree days may lie outside what monthly means give: they are sums over days (judgement). */
    private static final double DAYS_OFF = 0.2;

    /**
     * Degree days for each K that the design temperature lies below 15 °C, at least: a frost of a few days in a mild winter gives
     * no fewer (judgement; a cold snap's -5 °C beside 1000 K·d has 50).
     */
    private static final double LEAST_DAYS = 30;

    private static final double MILD = 15;

    FileSite {
        SourceText.require("source", source);
        double least = LEAST_DAYS * (MILD - outdoorTemperature);
        if (heatingDegreeDays.isPresent() && heatingDegreeDays.getAsDouble() < least) {
            throw new BadValueException(
                    "heatingDegreeDays",
                    "the degree days go with outdoor-temperature",
                    Phrase.of(heatingDegreeDays.getAsDouble(), Dimension.DEGREE_DAYS),
                    Phrase.of("at least ").and(least, Dimension.DEGREE_DAYS),
                    "give both for one place, in their units");
        }
        double most = DAYS_OF_A_YEAR * (indoorTemperature + 2 - outdoorTemperature);
        if (heatingDegreeDays.isPresent() && heatingDegreeDays.getAsDouble() > most) {
            throw new BadValueException(
                    "heatingDegreeDays",
                    "no year has more degree days than 365 of its coldest",
                    Phrase.of(heatingDegreeDays.getAsDouble(), Dimension.DEGREE_DAYS),
                    Phrase.of("up to ").and(most, Dimension.DEGREE_DAYS),
                    "give them and outdoor-temperature for one place, in their units");
        }
        if (climate.isPresent()) {
            winter(climate.get().coldest(), outdoorTemperature);
            if (heatingDegreeDays.isPresent()) {
                days(
                        heatingDegreeDays.getAsDouble(),
                        (1 - DAYS_OFF) * climate.get().climate().degreeDays(LOWEST_BASE),
                        (1 + DAYS_OFF) * climate.get().climate().degreeDays(indoorTemperature + 2));
            }
        }
    }

    /** Refuses months of another winter than the design temperature's. */
    private static void winter(double coldestMonth, double outdoorTemperature) {
        if (coldestMonth < outdoorTemperature || coldestMonth > outdoorTemperature + COLDEST_MONTH_ABOVE) {
            throw new BadValueException(
                    "climate",
                    "the coldest month's mean goes with outdoor-temperature",
                    Phrase.of(coldestMonth, Dimension.TEMPERATURE),
                    Phrase.of(outdoorTemperature, Dimension.TEMPERATURE)
                            .and(" to ")
                            .and(outdoorTemperature + COLDEST_MONTH_ABOVE, Dimension.TEMPERATURE),
                    "give both for one place, in their units");
        }
    }

    /** Refuses degree days of another place than the months'. */
    private static void days(double given, double least, double most) {
        if (given < least || given > most) {
            throw new BadValueException(
                    "heatingDegreeDays",
                    "the degree days go with the climate's months",
                    Phrase.of(given, Dimension.DEGREE_DAYS),
                    Phrase.of(least, Dimension.DEGREE_DAYS).and(" to ").and(most, Dimension.DEGREE_DAYS),
                    "give both for one place, in their units");
        }
    }

    Site site() {
        FileGround under = ground.orElse(USUAL_GROUND);
        MutableSet<Site.Usual> usual = Sets.mutable.empty();
        if (indoorHumidity.isEmpty()) {
            usual.add(Site.Usual.INDOOR_HUMIDITY);
        }
        if (climate.filter(year -> year.indoors().isEmpty()).isPresent()) {
            usual.add(Site.Usual.HUMIDITY_BY_MONTHS);
        }
        if (ground.isEmpty()) {
            usual.add(Site.Usual.GROUND);
        }
        return new Site(
                indoorTemperature,
                outdoorTemperature,
                indoorHumidity.orElse(USUAL_HUMIDITY),
                heatingDegreeDays,
                under.label(),
                under.conductivity(),
                dimensions,
                ventilationHeatLoss,
                source,
                climate.map(FileClimate::climate),
                usual.toImmutable());
    }
}
