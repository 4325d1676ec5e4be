package coldseam.files;

import java.util.function.Predicate;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * Names that are known outside the file, such as the ids of a catalogue's details.
 *
 * @param has whether this is one
 * @param listed those to suggest from
 */
public record KnownNames(Predicate<String> has, ImmutableList<String> listed) {

    /** Exactly these. */
    public static KnownNames of(Iterable<String> names) {
        ImmutableList<String> list = Lists.immutable.withAll(names);
        return new KnownNames(list.toSet()::contains, list);
    }

    /** These, and any other that passes; for ids or paths of files. */
    public KnownNames or(Predicate<String> other) {
        return new KnownNames(has.or(other), listed);
    }
}
