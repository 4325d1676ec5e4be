package coldseam.envelope.file.house;

import coldseam.envelope.Climate;
import coldseam.files.BadValueException;
import coldseam.files.Bounds;
import coldseam.files.Doc;
import coldseam.files.Noun;
import coldseam.files.Positional;
import coldseam.files.Size;
import coldseam.files.Unit;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.Phrase;
import java.time.Month;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.primitive.ImmutableDoubleList;

@Noun("a climate")
@Doc("Monthly means of the outdoor air, for mould on surfaces and condensation inside assemblies.")
record FileClimate(
        @Doc("Where the values come from, as the audit prints it.")
        String source,

        @Doc(
                "How humid the rooms are: a humidity class, or the site's indoor humidity all year; dwelling where it is missing.")
        Optional<Climate.Indoors> indoors,

        @Doc("January to December: mean outdoor temperature and relative humidity.") @Size(min = 12, max = 12)
        ImmutableList<FileMonth> months) {

    @Positional
    @Noun("a month")
    @Doc("The means of a month.")
    record FileMonth(
            @Doc("Outdoor temperature.") @Unit(Dimension.TEMPERATURE) @Bounds(atLeast = "-60 °C", atMost = "45 °C")
            double temperature,

            @Doc("Relative humidity outdoors.")
            @Unit(Dimension.SHARE)
            @Bounds(atLeast = "15 %", atMost = "100 %", usual = "60 to 95 %")
            double humidity) {}

    /**
     * K; a year's means rise once and fall once, but where a rainy season cools the summer by some (judgement). What they go up and
     * down beyond that says that the months are not in their order.
     */
    private static final double BACK_AND_FORTH = 12;

    FileClimate {
        SourceText.require("source", source);
        double beyond = backAndForth(months.collectDouble(FileMonth::temperature));
        if (beyond > BACK_AND_FORTH) {
            throw new BadValueException(
                    "months",
                    "the months stand in their order, from January to December",
                    Phrase.of("means that rise and fall several times in a year, by ")
                            .and(beyond, Dimension.TEMPERATURE_DIFFERENCE)
                            .and(" more than from the coldest month to the warmest and back"),
                    "write them in order; check each sign");
        }
    }

    /** K, by which a year's means go up and down beyond once from the least to the most and back. */
    private static double backAndForth(ImmutableDoubleList means) {
        double all = 0;
        for (int i = 0; i < means.size(); i++) {
            all += Math.abs(means.get(i) - means.get((i + 1) % means.size()));
        }
        return all - 2 * (means.max() - means.min());
    }

    /** °C, of the coldest month. */
    double coldest() {
        return months.collectDouble(FileMonth::temperature).min();
    }

    Climate climate() {
        return new Climate(
                source,
                indoors.orElse(Climate.Indoors.DWELLING),
                months.collectWithIndex(
                        (month, i) -> new Climate.Mean(Month.of(i + 1), month.temperature, month.humidity)));
    }
}
