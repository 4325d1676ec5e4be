package coldseam.options;

import coldseam.conduction.Interval;

/** How one house stands to another in heat, as far as the intervals can tell. */
public enum Standing {
    /** Surely loses less. */
    BETTER,
    /** The intervals cannot tell them apart. */
    AS_GOOD,
    /** Surely loses more. */
    WORSE;

    /** @param more W/K that the one loses more than the other */
    public static Standing of(Interval more) {
        if (more.upper() < 0) {
            return BETTER;
        }
        return more.lower() > 0 ? WORSE : AS_GOOD;
    }
}
