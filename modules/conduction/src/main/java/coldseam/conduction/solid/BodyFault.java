package coldseam.conduction.solid;

/**
 * What is wrong with a body.
 *
 * @param about which of its lists
 * @param index in that list; 0 for the body as a whole
 * @param text what was asked, the value with its unit, the allowed range, the next step
 */
public record BodyFault(About about, int index, String text) {

    /** What a fault is about. */
    public enum About {
        BODY,
        PAINTED,
        ENVIRONMENT,
        PATCH,
        PROBE
    }
}
