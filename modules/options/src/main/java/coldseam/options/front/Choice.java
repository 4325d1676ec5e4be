package coldseam.options.front;

import org.eclipse.collections.api.list.primitive.ImmutableIntList;

/**
 * A whole set: a scenario and one item of each of its groups.
 *
 * @param scenario id of its fixed item
 * @param items ids, in the groups' order
 * @param cost sum of all costs
 * @param lower bound of the loss, µW/K
 * @param upper bound of the loss, µW/K
 */
public record Choice(int scenario, ImmutableIntList items, long cost, long lower, long upper) {}
