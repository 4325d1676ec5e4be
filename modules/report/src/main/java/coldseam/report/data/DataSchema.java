package coldseam.report.data;

import coldseam.files.JsonText;
import coldseam.files.Words;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;

/** Makes a JSON Schema (draft 2020-12) from the records that are written as data. */
public final class DataSchema {

    private final Map<String, Object> definitions = new TreeMap<>();

    private DataSchema() {}

    /**
     * The schema as text.
     *
     * @param root the record that is the whole document
     * @param title of it
     */
    public static String text(Class<?> root, String title) {
        DataSchema schema = new DataSchema();
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        out.put("title", title);
        out.put("$comment", "Units stand in the names of keys; intervals are proven bounds and not rounded.");
        out.putAll(schema.object(root));
        out.put("$defs", new LinkedHashMap<>(schema.definitions));
        return JsonText.write(out);
    }

    private Map<String, Object> object(Class<?> type) {
        Map<String, Object> properties = new LinkedHashMap<>();
        List<String> required = new ArrayList<>();
        for (RecordComponent component : type.getRecordComponents()) {
            Map<String, Object> part = part(component.getGenericType());
            Says says = component.getAnnotation(Says.class);
            if (says != null) {
                part.put("description", says.value());
            }
            properties.put(component.getName(), part);
            if (component.getType() != Optional.class && component.getType() != OptionalDouble.class) {
                required.add(component.getName());
            }
        }
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("type", "object");
        out.put("properties", properties);
        out.put("required", required);
        out.put("additionalProperties", false);
        return out;
    }

    private Map<String, Object> part(Type type) {
        Map<String, Object> out = new LinkedHashMap<>();
        if (type instanceof ParameterizedType generic) {
            Type last = generic.getActualTypeArguments()[generic.getActualTypeArguments().length - 1];
            if (generic.getRawType() == ImmutableList.class) {
                out.put("type", "array");
                out.put("items", part(last));
                return out;
            }
            if (generic.getRawType() == ImmutableMap.class) {
                out.put("type", "object");
                out.put("additionalProperties", part(last));
                return out;
            }
            return part(last);
        }
        Class<?> raw = (Class<?>) type;
        if (raw.isRecord()) {
            if (!definitions.containsKey(raw.getSimpleName())) {
                definitions.put(raw.getSimpleName(), Map.of());
                definitions.put(raw.getSimpleName(), object(raw));
            }
            out.put("$ref", "#/$defs/" + raw.getSimpleName());
        } else if (raw.isEnum()) {
            List<String> words = new ArrayList<>();
            for (Object constant : raw.getEnumConstants()) {
                words.add(Words.word(constant));
            }
            out.put("enum", words);
        } else {
            out.put("type", word(raw));
        }
        return out;
    }

    private static String word(Class<?> raw) {
        if (raw == double.class || raw == Double.class || raw == OptionalDouble.class) {
            return "number";
        }
        if (raw == int.class) {
            return "integer";
        }
        if (raw == boolean.class) {
            return "boolean";
        }
        if (raw == String.class) {
            return "string";
        }
        throw new IllegalStateException("no schema for " + raw);
    }
}
