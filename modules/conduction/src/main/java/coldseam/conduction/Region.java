package coldseam.conduction;

/**
 * A painted region; a later region covers an earlier one.
 *
 * @param material name, for drawings and messages
 * @param conductivity W/(m·K), greater than zero
 * @param outline where it is painted
 */
public record Region(String material, double conductivity, Polygon outline) {}
