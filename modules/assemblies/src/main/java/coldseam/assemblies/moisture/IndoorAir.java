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
    double vapourPressure(Climate.Mean outdoors, double indoorTemperature);

    /**
     * A relative humidity that is kept all year.
     *
     * @param humidity relative, more than 0, up to 1
     */
    static IndoorAir constant(double humidity) {
        return (outdoors, indoorTemperature) -> SurfaceHumidity.vapourPressure(indoorTemperature, humidity);
    }

    /**
     * What a house file says of its rooms. Of each humidity class it is the upper limit by ISO 13788:2012 annex A (from memory); that
     * of pools has none, and this is its least.
     *
     * @param siteHumidity relative, more than 0, up to 1
     */
    static IndoorAir of(Climate.Indoors indoors, double siteHumidity) {
        return switch (indoors) {
            case STORAGE -> wetter(270);
            case WELL_VENTILATED -> wetter(540);
            case DWELLING -> wetter(810);
            case KITCHEN -> wetter(1080);
            case POOL -> wetter(1360);
            case SITE_HUMIDITY -> constant(siteHumidity);
        };
    }

    /** Wetter than the air outdoors by so many Pa up to 0 °C outdoors, less in a straight line to nothing at 20 °C. */
    private static IndoorAir wetter(double most) {
        return (outdoors, indoorTemperature) -> SurfaceHumidity.vapourPressure(outdoors)
                + most * Math.min(1, Math.max(0, 1 - outdoors.temperature() / 20));
    }

    /** The wetter of this and another, each month. */
    default IndoorAir or(IndoorAir other) {
        return (outdoors, indoorTemperature) -> Math.max(
                vapourPressure(outdoors, indoorTemperature), other.vapourPressure(outdoors, indoorTemperature));
    }
}
