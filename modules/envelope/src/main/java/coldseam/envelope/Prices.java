package coldseam.envelope;

import java.util.OptionalDouble;
import org.eclipse.collections.api.map.ImmutableMap;

/**
 * Prices for the money columns.
 *
 * @param heat per kWh of delivered heat
 * @param currency as printed, such as "EUR"
 * @param years over which a saving is counted
 * @param details of junctions built by a detail, by the detail's id
 */
public record Prices(OptionalDouble heat, String currency, double years, ImmutableMap<String, OfDetail> details) {

    /**
     * What a detail costs.
     *
     * @param perMetre for each metre of junction
     * @param source such as "quotation of 3 October"
     */
    public record OfDetail(double perMetre, String source) {}
}
