package coldseam.audit;

import coldseam.junctions.detail.Upkeep;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * What somebody looks after once the house stands.
 *
 * @param upkeep what to do, and when
 * @param sheets ids of the sheets whose chosen details ask for it
 */
public record UpkeepItem(Upkeep upkeep, ImmutableList<String> sheets) {}
