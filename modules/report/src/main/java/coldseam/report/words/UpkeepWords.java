package coldseam.report.words;

import coldseam.junctions.detail.Detail;
import coldseam.junctions.detail.Upkeep;
import coldseam.options.UpkeepChange;
import java.util.Locale;
import org.eclipse.collections.api.list.ImmutableList;

/** What is said of upkeep. */
public final class UpkeepWords {

    /** Over what a detail asks for, with whose word it is. */
    public static final String HEADING = "Upkeep (common practice, no source)";

    /** Whose word it is. */
    public static final String SOURCE =
            "Common practice, no source; what the makers of the parts and the local code ask for goes before it.";

    /** How nobody gets hurt. */
    public static final String CAUTION =
            "What cannot be reached from the ground, a window or behind a guard is for people of the trade with fall protection:"
                    + " no ladder on a gutter, nobody alone, wet or frosty on a roof, nobody on a rooflight. Lines at a mast are the"
                    + " network's alone.";

    private UpkeepWords() {}

    /** "Each year: press the outer seals …" */
    public static String says(Upkeep upkeep) {
        return Phrases.capital(upkeep.often()) + ": " + look(upkeep);
    }

    /** What a detail asks for, or that it asks for nothing. */
    public static ImmutableList<String> of(Detail detail, ImmutableList<Upkeep> asked) {
        ImmutableList<String> said = asked.collect(UpkeepWords::says);
        if (detail.own()) {
            return said.newWith((said.isEmpty() ? "Not known" : "What else it asks for is not known")
                    + ": it is not of the catalogue.");
        }
        return said.isEmpty() ? said.newWith("None of its own: what is drawn lies covered.") : said;
    }

    /** "besides each year: …; no longer always: …", or "the same". */
    public static String of(UpkeepChange change) {
        String said = change.besides()
                .collect(each -> "besides " + told(each))
                .newWithAll(change.noLonger().collect(each -> "no longer " + told(each)))
                .makeString("; ");
        return said.isEmpty() ? "the same" : said;
    }

    private static String told(Upkeep upkeep) {
        return "(" + upkeep.often() + ") " + Phrases.bare(look(upkeep));
    }

    private static String look(Upkeep upkeep) {
        return upkeep.look().substring(0, 1).toLowerCase(Locale.ROOT)
                + upkeep.look().substring(1);
    }
}
