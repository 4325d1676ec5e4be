package coldseam.envelope.shell.lattice;

import java.util.function.BiPredicate;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;

/** What hangs together, over any number of others that touch one another. */
public final class Together {

    private Together() {}

    /**
     * The parts of some things, in the order of the first of each.
     *
     * @param touch whether two that hang together do so at once
     */
    public static <T> ImmutableList<ImmutableList<T>> parts(ImmutableList<T> all, BiPredicate<T, T> touch) {
        MutableList<T> waiting = all.toList();
        MutableList<ImmutableList<T>> parts = Lists.mutable.empty();
        while (waiting.notEmpty()) {
            MutableList<T> part = Lists.mutable.<T>empty().with(waiting.remove(0));
            for (int i = 0; i < part.size(); i++) {
                T here = part.get(i);
                MutableList<T> touching = waiting.select(other -> touch.test(here, other));
                part.addAll(touching);
                waiting.removeAll(touching);
            }
            parts.add(part.toImmutable());
        }
        return parts.toImmutable();
    }
}
