package coldseam.envelope;

import java.util.OptionalDouble;

/**
 * Prices for the money columns.
 *
 * @param heat per kWh of delivered heat
 * @param currency as printed, such as "EUR"
 * @param years over which a saving is counted
 */
public record Prices(OptionalDouble heat, String currency, double years) {}
