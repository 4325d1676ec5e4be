package coldseam.report.words;

import coldseam.audit.Verdict;

/** What is said of the verdict. */
public final class VerdictWords {

    private VerdictWords() {}

    /** The word that stands above all. */
    public static String word(Verdict verdict) {
        return verdict.unbroken() ? "Unbroken" : "Not unbroken";
    }

    /** The whole sentence, the word first. */
    public static String sentence(Verdict verdict) {
        boolean weak = verdict.gaps() == 0 && verdict.weakSpots() > 0;
        return word(verdict) + (weak ? ", " : ": ") + rest(verdict) + ".";
    }

    /** The sentence for where the word stands above it already. */
    public static String below(Verdict verdict) {
        return Phrases.capital(rest(verdict)) + ".";
    }

    private static String rest(Verdict verdict) {
        int weak = verdict.weakSpots();
        String weakSpots = Phrases.count(weak, "weak spot", "weak spots");
        if (verdict.gaps() > 0) {
            return Phrases.count(verdict.gaps(), "gap", "gaps") + (weak > 0 ? " and " + weakSpots : "")
                    + " found in insulation, air, water or vapour control";
        }
        return weak > 0
                ? "with " + weakSpots + ": every layer passes everywhere, but not everywhere well"
                : "insulation, air, water and vapour control pass every seam that was described";
    }
}
