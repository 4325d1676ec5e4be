package coldseam.report.words;

import coldseam.audit.BridgeSource;

/** Where a psi or a chi comes from, in words. */
public final class SourceWords {

    private SourceWords() {}

    /** Whole, for lists and data. */
    public static String of(BridgeSource source) {
        return source.match(
                computed -> "computed",
                standIn -> "computed; the worst option stands in for one not chosen",
                BridgeSource.Own::citation,
                none -> "not computed: " + why(none.reason()));
    }

    /** What kind of source it is, in a word. */
    public static String kind(BridgeSource source) {
        return source.match(computed -> "computed", standIn -> "stand-in", own -> "own", none -> "none");
    }

    /** Short, for a column. */
    public static String brief(BridgeSource source) {
        return source.match(
                computed -> "computed", standIn -> "computed, a stand-in", own -> of(own), none -> of(none));
    }

    private static String why(BridgeSource.Reason reason) {
        return switch (reason) {
            case NO_ASSEMBLY -> "a surface beside it has no assembly";
            case NO_DETAIL_OF_THE_KIND -> "the catalogue has no detail of this kind";
            case CHOSEN_DOES_NOT_FIT -> "the detail does not fit these layers";
            case NONE_FITS -> "no detail of the catalogue fits these layers";
        };
    }
}
