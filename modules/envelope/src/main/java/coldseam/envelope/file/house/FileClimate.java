package coldseam.envelope.file.house;

import coldseam.envelope.Climate;
import coldseam.files.Bounds;
import coldseam.files.Default;
import coldseam.files.Doc;
import coldseam.files.Noun;
import coldseam.files.Positional;
import coldseam.files.Size;
import coldseam.files.Unit;
import coldseam.files.quantity.Dimension;
import org.eclipse.collections.api.list.ImmutableList;

@Noun("a climate")
@Doc("Monthly means of the outdoor air, for mould on surfaces and condensation inside assemblies.")
record FileClimate(
        @Doc("Where the values come from, as the audit prints it.")
        String source,

        @Doc("How humid the rooms are: a humidity class, or the site's indoor humidity all year.") @Default("dwelling")
        Climate.Indoors indoors,

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

    FileClimate {
        SourceText.require("source", source);
    }

    /** °C, of the coldest month. */
    double coldest() {
        return months.collectDouble(FileMonth::temperature).min();
    }

    /** K·d of a year by the months' means. */
    double degreeDays(double base) {
        return months.sumOfDouble(month -> Math.max(0, base - month.temperature)) * DAYS_OF_A_MONTH;
    }

    private static final double DAYS_OF_A_MONTH = 365.25 / 12;

    Climate climate() {
        return new Climate(
                source, indoors, months.collect(month -> new Climate.Mean(month.temperature, month.humidity)));
    }
}
