package coldseam.assemblies.ground;

/**
 * One step of a computation, for the report.
 *
 * @param symbol as the standard writes it, such as "B'"
 * @param meaning in words
 * @param value in the unit
 * @param unit such as "m"; empty for a plain number
 */
public record GroundValue(String symbol, String meaning, double value, String unit) {}
