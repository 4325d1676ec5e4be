package coldseam.report.words;

import coldseam.audit.TerraceLine;
import coldseam.envelope.Site;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.Format;
import coldseam.files.quantity.UnitSystem;

/** What is said of a terrace deck. */
public final class TerraceWords {

    private TerraceWords() {}

    /** How cold it gets under the deck, without a capital and a full stop. */
    public static String brief(TerraceLine terrace, UnitSystem units) {
        return brief(terrace, new Phrases(units));
    }

    static String brief(TerraceLine terrace, Phrases say) {
        Site site = terrace.site();
        return Format.of(
                "the underside of the %s of %s is %s at %s outdoors, %s the dew point %s of air of %s and %s",
                terrace.deck().deck(),
                terrace.surface().name(),
                say.say(terrace.deck().temperature(), Dimension.TEMPERATURE),
                say.say(site.outdoorTemperature(), Dimension.TEMPERATURE),
                terrace.safe() ? "above" : "not above",
                say.say(terrace.deck().dewPoint(), Dimension.TEMPERATURE),
                say.say(site.indoorTemperature(), Dimension.TEMPERATURE),
                say.say(site.indoorHumidity(), Dimension.SHARE));
    }
}
