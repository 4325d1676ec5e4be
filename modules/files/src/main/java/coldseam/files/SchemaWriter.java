package coldseam.files;

import coldseam.files.quantity.Dimension;
import java.lang.reflect.Type;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * Writes the JSON Schema (draft 2020-12) of the files a type is bound from.
 *
 * <p>The schema follows from the same declarations as the {@link Binder}. It is what editors need to complete and check
 * a file as it is typed; what only the binder can check, such as names that must be defined, is not in it.
 */
public final class SchemaWriter {

    /** A quantity as text: an R- or U-value, or a number and something after it. */
    private static final String QUANTITY = "^\\s*(?:[RU](?:SI)?[- ]?[0-9.]+.*|[-+−]?[0-9.½¼¾⅛⅜⅝⅞⅓⅔].*[^0-9.\\s].*)$";

    private final Map<String, Object> definitions = new LinkedHashMap<>();

    private SchemaWriter() {}

    /** The schema as JSON text. */
    public static String of(Class<?> type, String title) {
        SchemaWriter writer = new SchemaWriter();
        Map<String, Object> schema =
                JsonText.object("$schema", "https://json-schema.org/draft/2020-12/schema", "title", title);
        schema.putAll(writer.schema(type, Optional.empty()));
        schema.put("$defs", new LinkedHashMap<>(new java.util.TreeMap<>(writer.definitions)));
        return JsonText.write(schema);
    }

    private Map<String, Object> schema(Type type, Optional<Shape.Part> part) {
        Class<?> raw = Shape.raw(type);
        Map<String, Object> schema = new LinkedHashMap<>();
        if (raw == Located.class) {
            return schema(Shape.argument(type, 0), part);
        }
        if (raw == ImmutableList.class || raw == org.eclipse.collections.api.set.ImmutableSet.class) {
            Type item = Shape.argument(type, 0);
            return Shape.raw(item) == Named.class ? names(Shape.argument(item, 0), part) : list(item, part);
        }
        if (raw == org.eclipse.collections.api.map.ImmutableMap.class) {
            return names(Shape.argument(type, 1), part);
        }
        if (raw.isRecord() || raw.isSealed()) {
            return JsonText.object("$ref", "#/$defs/" + define(raw));
        }
        if (raw == double.class || raw == Double.class || raw == int.class || raw == Integer.class) {
            return number(raw, part);
        }
        if (raw == boolean.class || raw == Boolean.class) {
            schema.put("type", "boolean");
        } else if (Words.isListed(raw)) {
            schema.put("enum", Words.words(raw));
        } else if (raw == String.class) {
            schema.put("type", "string");
            schema.put("minLength", 1);
        }
        return schema;
    }

    private Map<String, Object> number(Class<?> raw, Optional<Shape.Part> part) {
        Optional<Dimension> dimension = part.flatMap(Shape.Part::unit);
        Optional<Range> range = part.flatMap(Shape.Part::range);
        Map<String, Object> schema = new LinkedHashMap<>();
        if (dimension.isEmpty()) {
            schema.put("type", raw == int.class || raw == Integer.class ? "integer" : "number");
            range.ifPresent(each -> bound(schema, each));
            return schema;
        }
        Map<String, Object> text = JsonText.object(
                "type",
                "string",
                "pattern",
                QUANTITY,
                "examples",
                dimension.get().examples());
        if (dimension.get().allowsBareNumber()) {
            schema.put("type", "number");
            range.ifPresent(each -> bound(schema, each));
        } else if (dimension.get() == Dimension.LENGTH
                && range.filter(each -> !each.holds(0)).isEmpty()) {
            schema.put("const", 0);
        } else {
            return text;
        }
        return JsonText.object("anyOf", Lists.immutable.with(text, schema));
    }

    private static void bound(Map<String, Object> schema, Range range) {
        if (!Double.isNaN(range.least())) {
            schema.put(range.leastIsIn() ? "minimum" : "exclusiveMinimum", range.least());
        }
        if (!Double.isNaN(range.most())) {
            schema.put(range.mostIsIn() ? "maximum" : "exclusiveMaximum", range.most());
        }
    }

    private Map<String, Object> list(Type item, Optional<Shape.Part> part) {
        Map<String, Object> schema = JsonText.object("type", "array", "items", schema(item, part));
        size(schema, part, "Items");
        return schema;
    }

    private Map<String, Object> names(Type value, Optional<Shape.Part> part) {
        Map<String, Object> schema = JsonText.object("type", "object", "additionalProperties", schema(value, part));
        size(schema, part, "Properties");
        return schema;
    }

    private static void size(Map<String, Object> schema, Optional<Shape.Part> part, String of) {
        part.flatMap(each -> each.note(Size.class)).ifPresent(size -> {
            if (size.min() > 0) {
                schema.put("min" + of, size.min());
            }
            if (size.max() < Integer.MAX_VALUE) {
                schema.put("max" + of, size.max());
            }
        });
    }

    private String define(Class<?> type) {
        String name = Words.kebab(type.getSimpleName().replaceFirst("^File", ""));
        if (!definitions.containsKey(name)) {
            definitions.put(name, new LinkedHashMap<>());
            Map<String, Object> body = type.isRecord() ? record(type) : alternatives(type);
            definitions.put(name, body);
        }
        return name;
    }

    private Map<String, Object> alternatives(Class<?> sealed) {
        Map<String, Object> schema = new LinkedHashMap<>();
        describe(schema, sealed.getAnnotation(Doc.class));
        schema.put("oneOf", Shape.alternatives(sealed).collect(each -> schema(each, Optional.empty())));
        return schema;
    }

    private Map<String, Object> record(Class<?> type) {
        ImmutableList<Shape.Part> parts = Shape.parts(type);
        Map<String, Object> schema = new LinkedHashMap<>();
        describe(schema, type.getAnnotation(Doc.class));
        if (type.isAnnotationPresent(Whole.class)) {
            schema.putAll(described(parts.getOnly()));
            return schema;
        }
        if (type.isAnnotationPresent(Positional.class)) {
            schema.putAll(JsonText.object(
                    "type",
                    "array",
                    "prefixItems",
                    parts.collect(this::described),
                    "items",
                    false,
                    "minItems",
                    parts.size()));
            return schema;
        }
        if (type.isAnnotationPresent(Short.class) && Shape.isUnmarkedAlternative(type)) {
            schema.putAll(described(parts.getFirst()));
            return schema;
        }
        Map<String, Object> properties = new LinkedHashMap<>();
        parts.forEach(part -> properties.put(part.key(), described(part)));
        Map<String, Object> mapping = JsonForm.object(
                properties, parts.reject(Shape.Part::mayBeMissing).collect(Shape.Part::key));
        if (!type.isAnnotationPresent(Short.class)) {
            schema.putAll(mapping);
            return schema;
        }
        schema.put("anyOf", Lists.immutable.with(described(parts.getFirst()), mapping));
        return schema;
    }

    private Map<String, Object> described(Shape.Part part) {
        Map<String, Object> schema = schema(part.type(), Optional.of(part));
        Map<String, Object> result = new LinkedHashMap<>();
        part.note(Doc.class).ifPresent(doc -> describe(result, doc));
        result.putAll(schema);
        part.defaultText()
                .filter(text -> !text.isEmpty())
                .ifPresent(text -> result.put("default", defaultValue(Shape.raw(part.type()), text)));
        return result;
    }

    private static Object defaultValue(Class<?> raw, String text) {
        if (raw == boolean.class) {
            return Boolean.valueOf(text);
        }
        boolean bare = text.matches("[-+]?[0-9.]+");
        return (raw == double.class || raw == int.class) && bare ? Double.valueOf(text) : text;
    }

    private static void describe(Map<String, Object> schema, Doc doc) {
        if (doc != null) {
            schema.put("description", doc.value());
        }
    }
}
