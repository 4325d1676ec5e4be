package coldseam.envelope;

/**
 * A junction that the shell's geometry cannot show, or a set of like points.
 *
 * @param name unique
 * @param surface name of the surface it lies on
 * @param length m
 */
public record Seam(String name, JunctionKind kind, String surface, double length) {}
