package coldseam.envelope.file.house;

import coldseam.envelope.DimensionSystem;
import coldseam.envelope.Site;
import coldseam.files.BadValueException;
import coldseam.files.Bounds;
import coldseam.files.Default;
import coldseam.files.Doc;
import coldseam.files.Noun;
import coldseam.files.Unit;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.UnitSystem;
import java.util.Optional;
import java.util.OptionalDouble;

@Noun("a site")
@Doc("Climate, ground and conventions.")
record FileSite(
        @Doc("Indoor design temperature.")
        @Unit(Dimension.TEMPERATURE)
        @Bounds(atLeast = "5 °C", atMost = "35 °C", usual = "20 to 22 °C")
        double indoorTemperature,

        @Doc("Outdoor design temperature in winter.")
        @Unit(Dimension.TEMPERATURE)
        @Bounds(atLeast = "-60 °C", atMost = "25 °C", usual = "-20 to 0 °C")
        double outdoorTemperature,

        @Doc("Relative humidity indoors at the design condition.")
        @Default("50 %")
        @Unit(Dimension.SHARE)
        @Bounds(above = "0 %", below = "100 %", usual = "40 to 60 %")
        double indoorHumidity,

        @Doc("Heating degree days of a year, to the indoor temperature the climate's source names.")
        @Unit(Dimension.DEGREE_DAYS)
        @Bounds(atLeast = "0 K·d", atMost = "15000 K·d", usual = "1500 to 6000 K·d")
        OptionalDouble heatingDegreeDays,

        @Doc("The ground under the house.") @Default("sand or gravel")
        FileGround ground,

        @Doc("To which faces areas and lengths are measured for psi values and the heat-loss coefficient.")
        @Default("external")
        DimensionSystem dimensions,

        @Doc("Ventilation heat-loss coefficient, where it is to be counted in.")
        @Unit(Dimension.HEAT_LOSS_COEFFICIENT)
        @Bounds(atLeast = "0 W/K", atMost = "5000 W/K", usual = "20 to 100 W/K")
        OptionalDouble ventilationHeatLoss,

        @Doc("The outdoor air month by month; without it condensation inside assemblies is not checked.")
        Optional<FileClimate> climate) {

    /** K; where winter is milder nobody asks for an audit of what a house loses (common practice, no source). */
    private static final double LEAST_DIFFERENCE = 5;

    FileSite {
        if (!(outdoorTemperature <= indoorTemperature - LEAST_DIFFERENCE)) {
            throw new BadValueException(
                    "outdoorTemperature",
                    "outdoor-temperature must be well below indoor-temperature",
                    UnitSystem.SI.format(outdoorTemperature, Dimension.TEMPERATURE),
                    "up to " + UnitSystem.SI.format(indoorTemperature - LEAST_DIFFERENCE, Dimension.TEMPERATURE),
                    "check both and their units");
        }
    }

    Site site() {
        return new Site(
                indoorTemperature,
                outdoorTemperature,
                indoorHumidity,
                heatingDegreeDays,
                ground.label(),
                ground.conductivity(),
                dimensions,
                ventilationHeatLoss,
                climate.map(FileClimate::climate));
    }
}
