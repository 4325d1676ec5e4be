package coldseam.audit.engine;

import coldseam.assemblies.moisture.DeckTemperature;
import coldseam.audit.TerraceLine;
import coldseam.envelope.Body;
import coldseam.envelope.House;
import coldseam.envelope.Site;
import org.eclipse.collections.api.list.ImmutableList;

/** Terrace decks over heated rooms: how cold their undersides get, against the dew point of the room. */
final class Terraces {

    private Terraces() {}

    /** One line for each terrace with an assembly, in the shell's order. */
    static ImmutableList<TerraceLine> of(House house, ImmutableList<SurfaceHeat> heats) {
        return heats.select(heat ->
                        heat.surface().use() == Body.Use.TERRACE && heat.build().isPresent())
                .collect(heat -> line(house.site(), heat));
    }

    private static TerraceLine line(Site site, SurfaceHeat heat) {
        DeckTemperature deck = DeckTemperature.of(
                heat.build().orElseThrow(), site.indoorTemperature(), site.outdoorTemperature(), site.indoorHumidity());
        return new TerraceLine(heat.surface(), site, deck.deck(), deck.temperature(), deck.dewPoint());
    }
}
