package coldseam.audit;

/**
 * A terrace deck over a heated room.
 *
 * @param surface name
 * @param underside °C, at the inner face of the coldest structure layer under the deck's insulation, at design temperatures
 * @param dewPoint °C, of the indoor air at its design humidity
 * @param safe whether the underside stays above the dew point
 * @param sentence in plain words
 */
public record TerraceLine(String surface, double underside, double dewPoint, boolean safe, String sentence) {}
