package coldseam.files;

import java.util.Optional;
import java.util.function.Function;
import org.eclipse.collections.api.factory.Maps;
import org.eclipse.collections.api.map.ImmutableMap;

/**
 * What the reader of a file knows that its records cannot say.
 *
 * @param names of each {@link Refers} kind that are known without being defined in the file
 * @param keys what keys are called in this file, by what their records call them
 * @param texts readers of types that are written as one text; each adds a fault where it returns nothing
 */
public record Vocabulary(
        ImmutableMap<String, KnownNames> names,
        ImmutableMap<String, String> keys,
        ImmutableMap<Class<?>, Function<Located<String>, Optional<?>>> texts) {

    /** Names alone. */
    static Vocabulary of(ImmutableMap<String, KnownNames> names) {
        return new Vocabulary(names, Maps.immutable.empty(), Maps.immutable.empty());
    }
}
