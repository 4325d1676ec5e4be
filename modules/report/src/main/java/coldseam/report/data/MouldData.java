package coldseam.report.data;

import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.list.ImmutableList;

/** Mould on the junctions' and corners' inner surfaces, ISO 13788. */
record MouldData(
        @Says("least fRsi by the house's limits") double limit,

        @Says("fRsi that the design temperatures ask for at the site's indoor humidity")
        double designNeed,

        @Says("left out without a monthly climate") Optional<MonthlyData> monthly,
        @Says("the coldest first") ImmutableList<SurfaceData> surfaces) {

    record MonthlyData(
            @Says("that asks for most, in English") String criticalMonth,
            @Says("fRsi that it asks for") double need,
            @Says("relative indoor humidity then") double indoorHumidity,
            @Says("heated months alone") ImmutableList<NeedData> months) {}

    record NeedData(String month, double indoorVapourPressure_Pa, double leastTemperature_degC, double need) {}

    record SurfaceData(
            @Says("left out for a corner") Optional<String> junctionSheet,
            @Says("left out for a junction") Optional<String> vertexSheet,
            double temperatureFactor,

            @Says("relative indoor humidity from which mould may grow at the design temperatures")
            double humidityAtDesign,

            @Says("the same in the critical month") OptionalDouble humidityInCriticalMonth,

            @Says("whether the site's indoor humidity is enough for it at the design temperatures")
            boolean wetAtDesign,

            @Says("whether the months' humidity is enough for it")
            boolean wetByMonth) {}
}
