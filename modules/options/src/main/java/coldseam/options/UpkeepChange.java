package coldseam.options;

import coldseam.audit.Audit;
import coldseam.audit.UpkeepItem;
import coldseam.junctions.detail.Upkeep;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * What one house asks to be looked after that another does not, each at some place where the other does not ask for it.
 *
 * @param besides what the second asks
 * @param noLonger what the first asks
 */
public record UpkeepChange(ImmutableList<Upkeep> besides, ImmutableList<Upkeep> noLonger) {

    /** From one house to another. */
    static UpkeepChange between(Audit first, Audit second) {
        return between(first.upkeep(), second.upkeep());
    }

    static UpkeepChange between(ImmutableList<UpkeepItem> first, ImmutableList<UpkeepItem> second) {
        return new UpkeepChange(beyond(first, second), beyond(second, first));
    }

    private static ImmutableList<Upkeep> beyond(ImmutableList<UpkeepItem> one, ImmutableList<UpkeepItem> other) {
        return other.reject(item -> one.anySatisfy(each -> each.upkeep().equals(item.upkeep())
                        && each.places().containsAll(item.places().castToList())))
                .collect(UpkeepItem::upkeep);
    }
}
