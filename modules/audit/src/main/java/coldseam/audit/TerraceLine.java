package coldseam.audit;

import coldseam.envelope.Site;
import coldseam.envelope.shell.Surface;

/**
 * A terrace deck over a heated room.
 *
 * @param surface of the shell
 * @param site at whose design state it is
 * @param deck material of the deck: structure, or what lies on the outermost insulation where there is none
 * @param underside °C, of the deck, as {@link coldseam.assemblies.moisture.DeckTemperature} finds it
 * @param dewPoint °C, of the indoor air
 */
public record TerraceLine(Surface surface, Site site, String deck, double underside, double dewPoint) {

    /** Whether the underside stays above the dew point. */
    public boolean safe() {
        return underside > dewPoint;
    }
}
