package coldseam.conduction.solid;

/**
 * A point whose temperature is asked for.
 *
 * @param name unique in its body
 * @param at inside the body or on its surface
 */
public record BodyProbe(String name, Place at) {}
