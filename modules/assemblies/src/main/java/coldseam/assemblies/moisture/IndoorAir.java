package coldseam.assemblies.moisture;

import coldseam.envelope.Climate;

/** How much vapour the air of the rooms holds while the outdoor air changes over the year. */
public interface IndoorAir {

    /**
     * The vapour pressure indoors.
     *
     * @param outdoors mean of a month
     * @param indoorTemperature °C
     * @return Pa
     */
    double vapourPressure(MonthlyClimate.Air outdoors, double indoorTemperature);

    /**
     * A relative humidity that is kept all year.
     *
     * @param humidity relative, more than 0, up to 1
     */
    static IndoorAir constant(double humidity) {
        return (outdoors, indoorTemperature) -> SurfaceHumidity.vapourPressure(indoorTemperature, humidity);
    }

    /**
     * What a house file says of its rooms.
     *
     * @param siteHumidity relative, more than 0, up to 1
     */
    static IndoorAir of(Climate.Indoors indoors, double siteHumidity) {
        return switch (indoors) {
            case STORAGE -> HumidityClass.STORAGE;
            case WELL_VENTILATED -> HumidityClass.WELL_VENTILATED;
            case DWELLING -> HumidityClass.DWELLING;
            case KITCHEN -> HumidityClass.KITCHEN;
            case POOL -> HumidityClass.POOL;
            case SITE_HUMIDITY -> constant(siteHumidity);
        };
    }

    /** The wetter of this and another, each month. */
    default IndoorAir or(IndoorAir other) {
        return (outdoors, indoorTemperature) -> Math.max(
                vapourPressure(outdoors, indoorTemperature), other.vapourPressure(outdoors, indoorTemperature));
    }
}
