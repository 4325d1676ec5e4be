package coldseam.conduction;

/**
 * The temperature at a probe; an estimate, not proven.
 *
 * @param name of the probe
 * @param temperature °C
 * @param change K, since the refinement before the last
 */
public record ProbeTemperature(String name, double temperature, double change) {}
