package coldseam.cli;

import coldseam.files.Faults;
import coldseam.files.JsonText;
import coldseam.files.SourceDocument;
import coldseam.files.SourceNode;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;

/**
 * Makes files that are nearly right: parts of good ones, altered where the grammar leaves room.
 *
 * <p>The grammar is what the good files and the schema show: for each key the values that were seen under it, the words an
 * enumeration allows, the examples of its quantity. Each mutant depends on its number alone, so that a find is made again by
 * its number.
 */
final class Mutator {

    private static final List<String> ODD = List.of(
            "",
            " ",
            "none",
            "0",
            "0 mm",
            "-1 m",
            "1e-9 m",
            "1e9 m",
            "1/0 m",
            "nan",
            "R-0",
            "1e308 W/(m·K)",
            "100 %",
            "0 %",
            "-300 °C",
            "0:12",
            "../x.yaml",
            "a\u0000b.yaml",
            "C:\\x.yaml",
            "\u202e",
            "\ud83c\udfe0",
            "((((((((((1 m",
            "1 m + 1 m",
            "wall.inside - 1e9 m",
            "yes");
    private static final double[] FACTORS = {0, -1, 1e-6, 1e-3, 0.1, 0.5, 0.9, 0.999, 1.001, 1.1, 2, 3, 10, 1000, 1e6};
    private static final List<String> UNITS = List.of("mm", "m", "in", "ft", "cm", "W/(m·K)", "m²·K/W", "°C", "%", "");
    private static final int MOST_CHANGES = 4;
    private static final int MOST_NODES = 4000;

    private final List<Object> seeds = new ArrayList<>();
    private final Map<String, List<Object>> seen = new TreeMap<>();

    /** @param files contents of good files of one kind */
    Mutator(List<String> files) {
        files.forEach(each -> seeds.add(tree(each)));
        seeds.forEach(each -> collect("", each));
    }

    /** What an editor offers under each key, too. */
    Mutator withSchema(String schema) {
        offers(tree(schema));
        return this;
    }

    /** The mutant of this number, as JSON. */
    String mutant(long number) {
        Random random = new Random(number * 0x9E3779B97F4A7C15L);
        Object tree = copy(pick(seeds, random));
        int changes = 1 + random.nextInt(MOST_CHANGES);
        for (int i = 0; i < changes; i++) {
            tree = changed(tree, random);
        }
        return JsonText.write(tree);
    }

    /** A file's text altered in one to a few places, as JSON. */
    String mutant(String text, Random random) {
        Object tree = tree(text);
        for (int left = 1 + random.nextInt(MOST_CHANGES); left > 0; left--) {
            tree = changed(tree, random);
        }
        return JsonText.write(tree);
    }

    static Object tree(String text) {
        Faults faults = new Faults();
        SourceNode node = SourceDocument.read("seed", text.getBytes(StandardCharsets.UTF_8), faults)
                .orElseThrow(() -> new IllegalArgumentException(faults.sorted().toString()));
        return plain(node);
    }

    private static Object plain(SourceNode node) {
        if (node instanceof SourceNode.Mapping mapping) {
            Map<String, Object> map = new LinkedHashMap<>();
            mapping.entries().forEach(each -> map.put(each.key(), plain(each.value())));
            return map;
        }
        if (node instanceof SourceNode.Sequence sequence) {
            List<Object> list = new ArrayList<>();
            sequence.items().forEach(each -> list.add(plain(each)));
            return list;
        }
        SourceNode.Scalar scalar = (SourceNode.Scalar) node;
        return switch (scalar.kind()) {
            case NUMBER -> Double.parseDouble(scalar.text());
            case BOOLEAN -> scalar.text().equals("true");
            default -> scalar.text();
        };
    }

    private void collect(String key, Object node) {
        seen.computeIfAbsent(key, none -> new ArrayList<>()).add(node);
        if (node instanceof Map<?, ?> map) {
            map.forEach((each, value) -> collect((String) each, value));
        } else if (node instanceof List<?> list) {
            list.forEach(each -> collect(key + "[]", each));
        }
    }

    private void offers(Object schema) {
        if (schema instanceof Map<?, ?> map) {
            if (map.get("properties") instanceof Map<?, ?> properties) {
                properties.forEach((key, value) -> offers((String) key, value));
            }
            map.values().forEach(this::offers);
        } else if (schema instanceof List<?> list) {
            list.forEach(this::offers);
        }
    }

    private void offers(String key, Object schema) {
        if (schema instanceof Map<?, ?> map) {
            for (String words : List.of("enum", "examples")) {
                if (map.get(words) instanceof List<?> list) {
                    seen.computeIfAbsent(key, none -> new ArrayList<>()).addAll(list);
                }
            }
            map.values().forEach(each -> offers(key, each));
        } else if (schema instanceof List<?> list) {
            list.forEach(each -> offers(key, each));
        }
    }

    /** A place in the tree. */
    private record Spot(String key, Object parent, Object at) {
        @SuppressWarnings("unchecked")
        Object get() {
            return parent instanceof Map<?, ?> map ? map.get(at) : ((List<Object>) parent).get((Integer) at);
        }

        @SuppressWarnings("unchecked")
        void set(Object value) {
            if (parent instanceof Map<?, ?>) {
                ((Map<String, Object>) parent).put((String) at, value);
            } else {
                ((List<Object>) parent).set((Integer) at, value);
            }
        }

        void remove() {
            if (parent instanceof Map<?, ?> map) {
                map.remove(at);
            } else {
                ((List<?>) parent).remove((int) (Integer) at);
            }
        }
    }

    private static void spots(String key, Object node, List<Spot> into) {
        if (into.size() > MOST_NODES) {
            return;
        }
        if (node instanceof Map<?, ?> map) {
            map.forEach((each, value) -> {
                into.add(new Spot((String) each, map, each));
                spots((String) each, value, into);
            });
        } else if (node instanceof List<?> list) {
            for (int i = 0; i < list.size(); i++) {
                into.add(new Spot(key + "[]", list, i));
                spots(key + "[]", list.get(i), into);
            }
        }
    }

    @SuppressWarnings("unchecked")
    private Object changed(Object tree, Random random) {
        List<Spot> spots = new ArrayList<>();
        spots("", tree, spots);
        if (spots.isEmpty()) {
            return copy(pick(seeds, random));
        }
        Spot spot = pick(spots, random);
        Object value = spot.get();
        switch (random.nextInt(12)) {
            case 0 -> spot.remove();
            case 1, 2, 3 -> spot.set(copy(pick(seen.getOrDefault(spot.key(), List.of("none")), random)));
            case 4, 5, 6 -> spot.set(scaled(value, random));
            case 7 -> spot.set(pick(ODD, random));
            case 8 -> {
                Spot other = pick(spots, random);
                Object theirs = other.get();
                // A place inside the other would make a tree that holds itself.
                if (!holds(value, other.parent()) && !holds(theirs, spot.parent())) {
                    other.set(value);
                    spot.set(theirs);
                }
            }
            case 9 -> {
                if (spot.parent() instanceof List<?> list) {
                    ((List<Object>) list).add(random.nextInt(list.size() + 1), copy(value));
                } else {
                    ((Map<String, Object>) spot.parent()).put(spot.at() + " 2", copy(value));
                }
            }
            case 10 -> {
                if (value instanceof List<?> list) {
                    Collections.shuffle(list, random);
                } else if (value instanceof Map<?, ?> map) {
                    List<String> keys = new ArrayList<>(seen.keySet());
                    String key = pick(keys, random);
                    ((Map<String, Object>) map).put(key, copy(pick(seen.get(key), random)));
                } else {
                    spot.set(value + "x");
                }
            }
            default -> spot.set(copy(random.nextBoolean() ? List.of(value) : Map.of("x", value)));
        }
        return tree;
    }

    private static boolean holds(Object tree, Object part) {
        if (tree == part) {
            return true;
        }
        if (tree instanceof Map<?, ?> map) {
            return map.values().stream().anyMatch(each -> holds(each, part));
        }
        return tree instanceof List<?> list && list.stream().anyMatch(each -> holds(each, part));
    }

    /** A number, or the number a text begins with, times a factor; sometimes with another unit. */
    private static Object scaled(Object value, Random random) {
        double factor = FACTORS[random.nextInt(FACTORS.length)];
        if (value instanceof Double number) {
            return finite(number * factor);
        }
        if (value instanceof String text) {
            int end = 0;
            while (end < text.length() && "+-.0123456789".indexOf(text.charAt(end)) >= 0) {
                end++;
            }
            try {
                double scaled = finite(Double.parseDouble(text.substring(0, end)) * factor);
                String unit = random.nextInt(8) == 0 ? " " + pick(UNITS, random) : text.substring(end);
                String number = scaled == Math.rint(scaled) && Math.abs(scaled) < 1e9
                        ? String.valueOf((long) scaled)
                        : String.valueOf(scaled);
                return number + unit;
            } catch (NumberFormatException none) {
                return pick(ODD, random);
            }
        }
        return factor;
    }

    private static double finite(double value) {
        return Double.isFinite(value) ? value : 1e300;
    }

    private static Object copy(Object node) {
        if (node instanceof Map<?, ?> map) {
            Map<String, Object> copy = new LinkedHashMap<>();
            map.forEach((key, value) -> copy.put((String) key, copy(value)));
            return copy;
        }
        if (node instanceof List<?> list) {
            List<Object> copy = new ArrayList<>();
            list.forEach(each -> copy.add(copy(each)));
            return copy;
        }
        return node;
    }

    private static <T> T pick(List<T> of, Random random) {
        return of.get(random.nextInt(of.size()));
    }
}
