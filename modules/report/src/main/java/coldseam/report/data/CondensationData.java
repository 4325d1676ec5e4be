package coldseam.report.data;

import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.list.ImmutableList;

/** Condensation inside an assembly over a year, ISO 13788 (diffusion alone). */
record CondensationData(
        boolean checked,
        @Says("left out where it was checked") Optional<String> why,
        @Says("stays-dry, dries-out or accumulates") Optional<String> verdict,

        @Says("the greatest amount in all planes together, at the end of a month")
        OptionalDouble most_kg_per_m2,

        @Says("of the greatest amount; left out where nothing condenses")
        Optional<String> wettestMonth,

        @Says("between which layers most is held then") Optional<String> wettestPlane,
        @Says("after twelve months") OptionalDouble left_kg_per_m2,
        @Says("from the first month that condenses") ImmutableList<MonthData> months) {

    record MonthData(
            String month,
            double indoorVapourPressure_Pa,
            double outdoorVapourPressure_Pa,
            double gain_kg_per_m2,
            double amount_kg_per_m2) {}
}
