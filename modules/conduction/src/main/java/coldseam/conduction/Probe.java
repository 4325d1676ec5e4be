package coldseam.conduction;

/**
 * A point whose temperature is asked for.
 *
 * @param name unique in its section
 * @param at inside the section or on its outline
 */
public record Probe(String name, Point at) {}
