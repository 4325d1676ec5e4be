package coldseam.audit;

import coldseam.assemblies.moisture.DeckTemperature;
import coldseam.envelope.Site;
import coldseam.envelope.shell.Surface;

/**
 * A terrace deck over a heated room.
 *
 * @param surface of the shell
 * @param site at whose design state it is
 * @param deck how cold it gets there
 */
public record TerraceLine(Surface surface, Site site, DeckTemperature deck) {

    /** Whether the underside stays above the dew point. */
    public boolean safe() {
        return deck.temperature() > deck.dewPoint();
    }
}
