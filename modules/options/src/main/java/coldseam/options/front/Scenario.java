package coldseam.options.front;

import java.util.function.BiPredicate;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * What is decided together, with what is fixed meanwhile.
 *
 * @param fixed cost and loss of all that no group decides; its id names the scenario
 * @param groups each with its items; a group without items makes the scenario impossible
 */
public record Scenario(Item fixed, ImmutableList<ImmutableList<Item>> groups) {

    /** The same with only those items that pass. */
    public Scenario only(BiPredicate<Integer, Item> allowed) {
        return new Scenario(
                fixed, groups.collectWithIndex((items, group) -> items.select(item -> allowed.test(group, item))));
    }
}
