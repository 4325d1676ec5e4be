package coldseam.report.words;

import coldseam.junctions.detail.Detail;
import coldseam.junctions.detail.Upkeep;
import coldseam.junctions.hand.HandDrawing;
import java.util.Locale;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/** What is said of upkeep. */
public final class UpkeepWords {

    /** Whose word it is. */
    public static final String SOURCE =
            "Common practice, no source; what the makers of the parts ask for goes before it.";

    private UpkeepWords() {}

    /** "Each year: press the outer seals …" */
    public static String says(Upkeep upkeep) {
        return Phrases.capital(upkeep.often()) + ": "
                + upkeep.look().substring(0, 1).toLowerCase(Locale.ROOT)
                + upkeep.look().substring(1);
    }

    /** What a detail asks for, or that it asks for nothing. */
    public static ImmutableList<String> of(Detail detail) {
        ImmutableList<Upkeep> asked = Upkeep.of(detail);
        if (asked.notEmpty()) {
            return asked.collect(UpkeepWords::says);
        }
        return Lists.immutable.of(
                detail.drawing() instanceof HandDrawing
                        ? "Not known: its section is drawn by hand."
                        : "None of its own: what is drawn lies covered.");
    }
}
