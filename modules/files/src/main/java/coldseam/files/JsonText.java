package coldseam.files;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.OptionalLong;
import org.eclipse.collections.api.RichIterable;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ListIterable;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.map.MapIterable;
import org.eclipse.collections.api.map.OrderedMap;
import org.eclipse.collections.api.ordered.OrderedIterable;

/**
 * Writes records, maps, lists and numbers as pretty JSON; the same value gives the same bytes on every machine.
 *
 * <p>A record's components are its keys as they are named in Java, in their order; an empty optional is left out. Enums
 * are their words. The keys of a map and the items of a set that keep no order are sorted. Numbers are the shortest
 * decimals that read back as the same double.
 */
public final class JsonText {

    private static final JsonFactory FACTORY = new JsonFactory();

    /** Written as null. */
    private enum Null {
        NULL
    }

    private final JsonGenerator out;

    private JsonText(JsonGenerator out) {
        this.out = out;
    }

    /**
     * The JSON text, ending in a line feed.
     *
     * @throws IllegalArgumentException on a number that is not finite, on null and on types JSON has no form for, with
     *     its place
     */
    public static String write(Object value) {
        StringWriter text = new StringWriter();
        try (JsonGenerator out = FACTORY.createGenerator(text)) {
            DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
            DefaultPrettyPrinter printer = new DefaultPrettyPrinter(Separators.createDefaultInstance()
                    .withObjectFieldValueSpacing(Separators.Spacing.AFTER)
                    .withObjectEmptySeparator("")
                    .withArrayEmptySeparator(""));
            printer.indentObjectsWith(indenter);
            printer.indentArraysWith(indenter);
            out.setPrettyPrinter(printer);
            new JsonText(out).value(value, "$");
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return text.append('\n').toString();
    }

    /** A number where it is finite, else null: for a place where a number may be missing and the reason stands beside it. */
    public static Object orNull(double value) {
        return Double.isFinite(value) ? value : Null.NULL;
    }

    /** An object of keys and values in turn, to which more may be added. */
    static Map<String, Object> object(Object... keysAndValues) {
        Map<String, Object> object = new LinkedHashMap<>();
        for (int i = 0; i < keysAndValues.length; i += 2) {
            object.put((String) keysAndValues[i], keysAndValues[i + 1]);
        }
        return object;
    }

    private void value(Object value, String at) throws IOException {
        if (value instanceof Double || value instanceof Float) {
            number(((Number) value).doubleValue(), at);
        } else if (value instanceof Integer || value instanceof Long) {
            out.writeNumber(((Number) value).longValue());
        } else if (value == Null.NULL) {
            out.writeNull();
        } else if (value instanceof Boolean flag) {
            out.writeBoolean(flag);
        } else if (value instanceof CharSequence text) {
            out.writeString(text.toString());
        } else if (value instanceof Enum<?> || value instanceof OneOf) {
            out.writeString(Words.word(value));
        } else if (value instanceof Record) {
            record(value, at);
        } else if (value instanceof MapIterable<?, ?> || value instanceof Map<?, ?>) {
            map(value, at);
        } else if (value instanceof Iterable<?> items) {
            items(items, at);
        } else {
            throw new IllegalArgumentException("no JSON form for "
                    + (value == null ? "null" : value.getClass().getName()) + " at " + at);
        }
    }

    private void number(double value, String at) throws IOException {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("a finite number is needed at " + at + "; got " + value);
        }
        // A whole number needs no ".0"; a negative zero no sign.
        if (value == Math.rint(value) && Math.abs(value) < 1e15) {
            out.writeNumber((long) value);
        } else {
            out.writeNumber(value);
        }
    }

    private void record(Object record, String at) throws IOException {
        out.writeStartObject();
        RecordParts parts = RecordParts.of(record.getClass());
        for (int i = 0; i < parts.components().size(); i++) {
            Optional<?> present = present(parts.part(record, i));
            if (present.isPresent()) {
                String name = parts.components().get(i).getName();
                out.writeFieldName(name);
                value(present.get(), at + "." + name);
            }
        }
        out.writeEndObject();
    }

    private static Optional<?> present(Object value) {
        if (value instanceof OptionalDouble maybe) {
            return maybe.isPresent() ? Optional.of(maybe.getAsDouble()) : Optional.empty();
        }
        if (value instanceof OptionalInt maybe) {
            return maybe.isPresent() ? Optional.of(maybe.getAsInt()) : Optional.empty();
        }
        if (value instanceof OptionalLong maybe) {
            return maybe.isPresent() ? Optional.of(maybe.getAsLong()) : Optional.empty();
        }
        return value instanceof Optional<?> maybe ? maybe : Optional.ofNullable(value);
    }

    private void map(Object map, String at) throws IOException {
        MutableList<Map.Entry<String, Object>> entries = Lists.mutable.empty();
        boolean ordered = map instanceof OrderedMap<?, ?> || map instanceof java.util.LinkedHashMap<?, ?>;
        if (map instanceof MapIterable<?, ?> iterable) {
            iterable.forEachKeyValue((k, v) -> entries.add(Map.entry(key(k), v)));
        } else {
            ((Map<?, ?>) map).forEach((k, v) -> entries.add(Map.entry(key(k), v)));
        }
        if (!ordered) {
            entries.sort(Map.Entry.comparingByKey());
        }
        out.writeStartObject();
        for (Map.Entry<String, Object> entry : entries) {
            Optional<?> present = present(entry.getValue());
            if (present.isPresent()) {
                out.writeFieldName(entry.getKey());
                value(present.get(), at + "." + entry.getKey());
            }
        }
        out.writeEndObject();
    }

    private static String key(Object key) {
        return key instanceof Enum<?> || key instanceof OneOf ? Words.word(key) : String.valueOf(key);
    }

    private void items(Iterable<?> items, String at) throws IOException {
        out.writeStartArray();
        int index = 0;
        for (Object item : inOrder(items)) {
            value(item, at + "[" + index++ + "]");
        }
        out.writeEndArray();
    }

    /** A hashed set of enums or texts has no order of its own; an enum's hash even differs from run to run. */
    private static Iterable<?> inOrder(Iterable<?> items) {
        boolean ordered = items instanceof ListIterable<?>
                || items instanceof OrderedIterable<?>
                || items instanceof java.util.List<?>;
        if (ordered || !(items instanceof RichIterable<?> rich) || rich.isEmpty()) {
            return items;
        }
        if (!rich.allSatisfy(Comparable.class::isInstance)) {
            throw new IllegalArgumentException("a set of " + rich.getAny().getClass() + " has no order to write it in");
        }
        return rich.toSortedList();
    }
}
