package coldseam.conduction;

/**
 * What a boundary faces.
 *
 * @param name unique in its section
 * @param temperature °C
 * @param surfaceResistance m²·K/W, zero or more; zero prescribes the temperature on the surface
 */
public record Environment(String name, double temperature, double surfaceResistance) {}
