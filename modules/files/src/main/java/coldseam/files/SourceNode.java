package coldseam.files;

import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;

/** A value of a YAML or JSON file with its place. */
public sealed interface SourceNode {

    /** Where it begins. */
    Position place();

    /** As messages name it, such as {@code "a list of 3"} or the scalar as written. */
    String shown();

    /** What a scalar is. */
    enum Kind {
        TEXT,
        NUMBER,
        BOOLEAN,
        EMPTY,
        /** Refused already, such as an alias; it binds to nothing and makes no further fault. */
        REFUSED
    }

    /**
     * One value.
     *
     * @param place where it begins
     * @param kind how the file's syntax reads it
     * @param text as written, without quotes
     */
    record Scalar(Position place, Kind kind, String text) implements SourceNode {
        /** Longest excerpt of a text in a message. */
        private static final int LONGEST = 60;

        @Override
        public String shown() {
            String line = text.strip().replaceAll("\\s+", " ");
            String cut = line.length() <= LONGEST ? line : line.substring(0, LONGEST) + "…";
            return switch (kind) {
                case EMPTY -> "nothing";
                case TEXT -> '"' + cut + '"';
                default -> cut;
            };
        }
    }

    /**
     * A list.
     *
     * @param place where it begins
     * @param items in order
     */
    record Sequence(Position place, ImmutableList<SourceNode> items) implements SourceNode {
        @Override
        public String shown() {
            return "a list of " + items.size();
        }
    }

    /**
     * Keys with values.
     *
     * @param place where it begins
     * @param entries in the file's order, no key twice
     */
    record Mapping(Position place, ImmutableList<Entry> entries) implements SourceNode {

        /** The value of a key. */
        public Optional<Entry> entry(String key) {
            return entries.detectOptional(each -> each.key().equals(key));
        }

        @Override
        public String shown() {
            return entries.isEmpty()
                    ? "an empty mapping"
                    : "a mapping with " + entries.collect(Entry::key).makeString(", ");
        }
    }

    /**
     * A key with its value.
     *
     * @param key as written
     * @param place of the key
     */
    record Entry(String key, Position place, SourceNode value) {}
}
