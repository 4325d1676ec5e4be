package coldseam.envelope;

/**
 * A detail chosen for junctions.
 *
 * @param which junctions
 * @param detail id of a detail of the catalogue, or the path of a detail or section file beside the house file
 */
public record JunctionChoice(Selector which, String detail) {}
