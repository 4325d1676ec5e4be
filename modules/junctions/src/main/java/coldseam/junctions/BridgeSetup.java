package coldseam.junctions;

import coldseam.envelope.Assembly;
import org.eclipse.collections.api.list.ImmutableList;

/** Everything of a house that a detail's section depends on; bridges with equal details and setups have equal results. */
public sealed interface BridgeSetup permits JunctionSetup, PointSetup {

    /** Build-ups it joins or goes through: one or two, that of the first band first. */
    ImmutableList<Assembly> assemblies();

    /** °C. */
    double indoorTemperature();

    /** °C. */
    double outdoorTemperature();
}
