package coldseam.assemblies.moisture;

/**
 * How much more vapour a room's air holds than the air outdoors.
 *
 * <p>The excess applies up to 0 °C outdoors and falls in a straight line to none at 20 °C. Source: ISO 13788:2012 annex A (from
 * memory), the upper limit of each class.
 */
public enum HumidityClass implements IndoorAir {
    /** 1: storage. */
    STORAGE(270),
    /** 2: offices, shops, dwellings that are known to be well ventilated. */
    WELL_VENTILATED(540),
    /** 3: dwellings of unknown occupancy. */
    DWELLING(810),
    /** 4: sports halls, kitchens, canteens. */
    KITCHEN(1080),
    /** 5: laundries, breweries, swimming pools; the class has no upper limit and this is the least. */
    POOL(1360);

    private static final double NONE_FROM = 20;

    private final double most;

    HumidityClass(double most) {
        this.most = most;
    }

    @Override
    public double vapourPressure(MonthlyClimate.Air outdoors, double indoorTemperature) {
        return outdoors.vapourPressure() + excess(outdoors.temperature());
    }

    /**
     * The excess of vapour pressure indoors.
     *
     * @param outdoorTemperature °C
     * @return Δp, Pa
     */
    public double excess(double outdoorTemperature) {
        return most * Math.min(1, Math.max(0, 1 - outdoorTemperature / NONE_FROM));
    }
}
