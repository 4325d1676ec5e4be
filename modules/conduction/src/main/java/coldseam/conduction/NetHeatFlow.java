package coldseam.conduction;

/**
 * The heat flow out of an environment into what is solved.
 *
 * @param environment its name
 * @param value W/m of a planar section, W of an axisymmetric one and of a body
 */
public record NetHeatFlow(String environment, Interval value) {}
