package coldseam.files;

import java.util.Map;
import java.util.function.Function;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;

/**
 * A sort of values in JSON: how one is written, and what a schema says of it.
 *
 * @param <V> the values
 */
public interface JsonType<V> {

    JsonType<String> TEXT = plain("string");
    JsonType<Double> NUMBER = plain("number");
    JsonType<Integer> WHOLE = plain("integer");
    JsonType<Boolean> FLAG = plain("boolean");

    /** What {@link JsonText} writes of a value. */
    Object written(V value);

    /**
     * What a schema says of it, to which more may be added.
     *
     * @param definitions of objects by their names, to which its own are added
     */
    Map<String, Object> schema(Map<String, Object> definitions);

    private static <V> JsonType<V> plain(String word) {
        return of(value -> value, definitions -> JsonText.object("type", word));
    }

    private static <V> JsonType<V> of(
            Function<V, Object> written, Function<Map<String, Object>, Map<String, Object>> schema) {
        return new JsonType<>() {
            @Override
            public Object written(V value) {
                return written.apply(value);
            }

            @Override
            public Map<String, Object> schema(Map<String, Object> definitions) {
                return schema.apply(definitions);
            }
        };
    }

    /** A list of such values. */
    default JsonType<ImmutableList<V>> list() {
        return of(
                values -> values.collect(this::written),
                definitions -> JsonText.object("type", "array", "items", schema(definitions)));
    }

    /** Such values by names. */
    default JsonType<ImmutableMap<String, V>> byName() {
        return of(
                values -> values.collectValues((name, value) -> written(value)),
                definitions -> JsonText.object("type", "object", "additionalProperties", schema(definitions)));
    }

    /** Values of a closed list, by their words. */
    static <E extends Enum<E>> JsonType<E> words(Class<E> list) {
        return of(Words::word, definitions -> JsonText.object("enum", Words.words(list)));
    }

    /** What is written as another value is. */
    default <U> JsonType<U> from(Function<U, V> other) {
        return of(value -> written(other.apply(value)), this::schema);
    }
}
