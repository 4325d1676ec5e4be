package coldseam.files.quantity;

import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * Words with values among them, which are said in the reader's own units.
 *
 * @param parts in their order
 */
public record Phrase(ImmutableList<Part> parts) {

    /** Words alone. */
    public static Phrase of(String words) {
        return new Phrase(Lists.immutable.empty()).and(words);
    }

    /**
     * A value alone.
     *
     * @param value in the dimension's inside unit
     */
    public static Phrase of(double value, Dimension dimension) {
        return new Phrase(Lists.immutable.empty()).and(value, dimension);
    }

    /** A value alone that SI says as it is written; see the other. */
    public static Phrase of(String written, double value, Dimension dimension) {
        return new Phrase(Lists.immutable.empty()).and(written, value, dimension);
    }

    /** A length alone that SI says in whole millimetres, as drawings do; m. */
    public static Phrase millimetres(double length) {
        return of(Format.of("%.0f mm", 1000 * length), length, Dimension.LENGTH);
    }

    /** What a file says, or is to say: it is written so whatever units the reader has. */
    public static Phrase quoted(String text) {
        return new Phrase(text.isEmpty() ? Lists.immutable.empty() : Lists.immutable.of(new Quoted(text)));
    }

    /** With words after it. */
    public Phrase and(String words) {
        return words.isEmpty() ? this : new Phrase(parts.newWith(new Words(words)));
    }

    /**
     * With a value after it.
     *
     * @param value in the dimension's inside unit
     */
    public Phrase and(double value, Dimension dimension) {
        return new Phrase(parts.newWith(new Value(value, dimension)));
    }

    /**
     * With a value after it that SI says as it is written, such as "up to 2 m".
     *
     * @param value in the dimension's inside unit
     */
    public Phrase and(String written, double value, Dimension dimension) {
        return new Phrase(parts.newWith(new Written(written, value, dimension)));
    }

    /** With a length after it that SI says in whole millimetres, as drawings do; m. */
    public Phrase andMillimetres(double length) {
        return and(millimetres(length));
    }

    /** With another after it. */
    public Phrase and(Phrase other) {
        return new Phrase(parts.newWithAll(other.parts));
    }

    /** Whether it says nothing. */
    public boolean isEmpty() {
        return parts.isEmpty();
    }

    /** As it is said in a unit system; measures that stand in its words are told as in any sentence. */
    public String in(UnitSystem units) {
        return parts.collect(each -> each.in(units)).makeString("");
    }

    @Override
    public String toString() {
        return in(UnitSystem.SI);
    }

    /** Words, or a value. */
    public sealed interface Part {

        /** As it is said in a unit system. */
        String in(UnitSystem units);
    }

    private record Words(String text) implements Part {

        @Override
        public String in(UnitSystem units) {
            return units.told(text);
        }
    }

    private record Quoted(String text) implements Part {

        @Override
        public String in(UnitSystem units) {
            return text;
        }
    }

    private record Written(String text, double value, Dimension dimension) implements Part {

        @Override
        public String in(UnitSystem units) {
            return units == UnitSystem.SI ? text : units.format(value, dimension);
        }
    }

    private record Value(double value, Dimension dimension) implements Part {

        @Override
        public String in(UnitSystem units) {
            return units.format(value, dimension);
        }
    }
}
