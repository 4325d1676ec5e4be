package coldseam.files;

import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.factory.Maps;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;

/**
 * Names that are known outside the file, such as the ids of a catalogue's details.
 *
 * @param has whether this is one
 * @param listed those to suggest from
 * @param instead what people write instead of one, in small letters
 * @param otherwise what to do where none of them is near: what lists them all; may be empty
 */
public record KnownNames(
        Predicate<String> has, ImmutableList<String> listed, ImmutableMap<String, String> instead, String otherwise) {

    /** Exactly these. */
    public static KnownNames of(Iterable<String> names) {
        ImmutableList<String> list = Lists.immutable.withAll(names);
        return new KnownNames(list.toSet()::contains, list, Maps.immutable.empty(), "");
    }

    /** These, with what people write instead. */
    public KnownNames alsoCalled(ImmutableMap<String, String> words) {
        return new KnownNames(has, listed, words, otherwise);
    }

    /** These, and what to do where none of them is near. */
    public KnownNames otherwise(String next) {
        return new KnownNames(has, listed, instead, next);
    }

    /** The one that is meant by a word that is none. */
    Optional<String> meant(String word) {
        return Optional.ofNullable(instead.get(word.toLowerCase(Locale.ROOT).strip()));
    }

    /** These, and any other that passes; for ids or paths of files. */
    public KnownNames or(Predicate<String> other) {
        return new KnownNames(has.or(other), listed, instead, otherwise);
    }
}
