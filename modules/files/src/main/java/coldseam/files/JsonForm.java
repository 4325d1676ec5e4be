package coldseam.files;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.Function;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;

/**
 * How things of one sort are written as a JSON object: each key once, with what it says and where its value comes from, so that
 * data and schema cannot part.
 *
 * @param <T> what is written
 */
public final class JsonForm<T> implements JsonType<T> {

    private final String name;
    private final ImmutableList<Key<T>> keys;

    /**
     * A key.
     *
     * @param says in a schema, empty where its name says all
     * @param always whether every object has it
     */
    private record Key<T>(
            String name, String says, boolean always, JsonType<?> type, Function<T, Optional<Object>> value) {}

    private JsonForm(String name, ImmutableList<Key<T>> keys) {
        this.name = name;
        this.keys = keys;
    }

    /**
     * An object without keys yet.
     *
     * @param name in a schema
     */
    public static <T> JsonForm<T> of(String name) {
        return new JsonForm<>(name, Lists.immutable.empty());
    }

    /** With a key that every object has. */
    public <V> JsonForm<T> with(String key, JsonType<V> type, Function<? super T, ? extends V> value) {
        return with(new Key<>(key, "", true, type, thing -> Optional.of(type.written(value.apply(thing)))));
    }

    /** With a key that is left out where there is no value. */
    public <V> JsonForm<T> maybe(
            String key, JsonType<V> type, Function<? super T, ? extends Optional<? extends V>> value) {
        return with(new Key<>(key, "", false, type, thing -> value.apply(thing).map(type::written)));
    }

    /** With a number that is left out where there is none. */
    public JsonForm<T> maybeNumber(String key, Function<? super T, OptionalDouble> value) {
        return maybe(key, NUMBER, thing -> value.apply(thing).stream().boxed().findFirst());
    }

    /** With what the last key says, such as its range or how it is measured; its unit stands in its name. */
    public JsonForm<T> says(String text) {
        Key<T> last = keys.getLast();
        return new JsonForm<>(
                name,
                keys.take(keys.size() - 1)
                        .newWith(new Key<>(last.name(), text, last.always(), last.type(), last.value())));
    }

    /** With all keys of another form, which writes a part of the thing. */
    public <U> JsonForm<T> all(JsonForm<U> other, Function<? super T, U> part) {
        return new JsonForm<>(
                name,
                keys.newWithAll(other.keys.collect(key -> new Key<T>(
                        key.name(),
                        key.says(),
                        key.always(),
                        key.type(),
                        thing -> key.value().apply(part.apply(thing))))));
    }

    private JsonForm<T> with(Key<T> key) {
        return new JsonForm<>(name, keys.newWith(key));
    }

    @Override
    public Object written(T thing) {
        Map<String, Object> object = new LinkedHashMap<>();
        keys.forEach(key -> key.value().apply(thing).ifPresent(value -> object.put(key.name(), value)));
        return object;
    }

    @Override
    public Map<String, Object> schema(Map<String, Object> definitions) {
        definitions.computeIfAbsent(name, none -> Map.of());
        definitions.put(name, object(definitions));
        return JsonText.object("$ref", "#/$defs/" + name);
    }

    private Map<String, Object> object(Map<String, Object> definitions) {
        Map<String, Object> properties = new LinkedHashMap<>();
        keys.forEach(key -> {
            Map<String, Object> schema = key.type().schema(definitions);
            if (!key.says().isEmpty()) {
                schema.put("description", key.says());
            }
            properties.put(key.name(), schema);
        });
        return object(properties, keys.select(Key::always).collect(Key::name));
    }

    /** What a schema says of an object that has no other keys than these. */
    static Map<String, Object> object(Map<String, Object> properties, ImmutableList<String> required) {
        return JsonText.object(
                "type", "object", "properties", properties, "required", required, "additionalProperties", false);
    }

    /** A thing as a document. */
    public String text(T thing) {
        return JsonText.write(written(thing));
    }

    /** The JSON schema of such documents. */
    public String schema(String title) {
        Map<String, Object> definitions = new TreeMap<>();
        Map<String, Object> out = JsonText.object(
                "$schema",
                "https://json-schema.org/draft/2020-12/schema",
                "title",
                title,
                "$comment",
                "Units stand in the names of keys; intervals are proven bounds and not rounded.");
        out.putAll(object(definitions));
        out.put("$defs", new LinkedHashMap<>(definitions));
        return JsonText.write(out);
    }
}
