package coldseam.files;

import java.util.LinkedHashMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;

/** Things sorted by what they share. */
public final class Groups {

    private Groups() {}

    /** Those of one key together, groups and their members in the order in which they come. */
    public static <T, K> ImmutableList<ImmutableList<T>> by(ImmutableList<T> all, Function<? super T, K> key) {
        return Lists.immutable.withAll(all.castToList().stream()
                .collect(Collectors.groupingBy(
                        key,
                        LinkedHashMap::new,
                        Collectors.collectingAndThen(Collectors.toList(), Lists.immutable::withAll)))
                .values());
    }
}
