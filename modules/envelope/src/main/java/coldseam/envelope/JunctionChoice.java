package coldseam.envelope;

import org.eclipse.collections.api.map.ImmutableMap;

/**
 * A detail chosen for junctions.
 *
 * @param which junctions
 * @param detail id of a detail of the catalogue, or the path of a detail or section file beside the house file
 * @param parameters m, values of the detail's own lengths by their names; empty where its file's values stand
 */
public record JunctionChoice(Selector which, String detail, ImmutableMap<String, Double> parameters) {}
