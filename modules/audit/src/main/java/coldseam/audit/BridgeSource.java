package coldseam.audit;

import java.util.function.Function;

/**
 * Where the psi of a junction or the chi of a point comes from. What is decided by it is decided by its type, never by
 * words.
 */
public sealed interface BridgeSource {

    /** The detail that somebody chose, computed. */
    record Computed() implements BridgeSource {}

    /** The worst option of the kind, computed: it stands in for a detail that nobody chose. */
    record StandIn() implements BridgeSource {}

    /**
     * The house file's own value.
     *
     * @param citation where it has it from, in its words
     */
    record Own(String citation) implements BridgeSource {}

    /** No value; what the kind's other options come to counts in the sum, or zero where none fits. */
    record None(Reason reason) implements BridgeSource {}

    /** Why there is no value. */
    enum Reason {
        /** A surface it meets has no assembly. */
        NO_ASSEMBLY,
        /** The catalogue has no detail of the kind. */
        NO_DETAIL_OF_THE_KIND,
        /** The chosen detail does not fit the layers. */
        CHOSEN_DOES_NOT_FIT,
        /** No detail of the kind fits the layers. */
        NONE_FITS
    }

    /** What its alternative makes of it. */
    default <T> T match(
            Function<Computed, T> computed,
            Function<StandIn, T> standIn,
            Function<Own, T> own,
            Function<None, T> none) {
        if (this instanceof Computed it) {
            return computed.apply(it);
        }
        if (this instanceof StandIn it) {
            return standIn.apply(it);
        }
        return this instanceof Own it ? own.apply(it) : none.apply((None) this);
    }

    /** Whether it comes from a section of ours, of a chosen detail or of one that stands in. */
    default boolean computed() {
        return match(chosen -> true, worst -> true, own -> false, none -> false);
    }

    /** Whether somebody chose or gave it; where nobody did the verdict cannot be unbroken. */
    default boolean known() {
        return match(chosen -> true, worst -> false, own -> true, none -> false);
    }
}
