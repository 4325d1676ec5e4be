package coldseam.conduction;

/**
 * What is wrong with a drawing, a section or a body.
 *
 * @param about which of its lists
 * @param index in that list; 0 for the drawing as a whole
 * @param text what was asked, the value with its unit, the allowed range, the next step
 */
public record DrawingFault(About about, int index, String text) {

    /** What a fault is about. */
    public enum About {
        WHOLE,
        PAINTED,
        ENVIRONMENT,
        BOUNDARY,
        PATCH,
        PROBE
    }
}
