package coldseam.junctions;

/** Everything of a house that a detail's section depends on; bridges with equal details and setups have equal results. */
public sealed interface BridgeSetup permits JunctionSetup, PointSetup {

    /** °C. */
    double indoorTemperature();

    /** °C. */
    double outdoorTemperature();
}
