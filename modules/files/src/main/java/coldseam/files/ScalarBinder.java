package coldseam.files;

import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.Phrase;
import coldseam.files.quantity.QuantityParser;
import coldseam.files.quantity.UnreadableException;
import java.util.Arrays;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;

/** Binds single values: quantities, numbers, words, texts. */
record ScalarBinder(Faults faults, References references) {

    /** By which a number with a point before three digits may be read as larger, where a most is said that holds either. */
    private static final double THOUSAND = 1000;

    /** From this many on, words are listed in full only where none is near. */
    private static final int MANY = 12;

    Optional<Object> bind(SourceNode.Scalar scalar, Class<?> raw, Shape.Part part, String what) {
        if (scalar.kind() == SourceNode.Kind.EMPTY) {
            faults.add(scalar.place(), what + " is needed", "nothing", "write a value, or leave the key out");
            return Optional.empty();
        }
        if (raw == double.class || raw == Double.class) {
            Optional<Dimension> dimension = unit(part);
            return dimension.isPresent()
                    ? quantity(scalar, dimension.get(), part, what).map(each -> each)
                    : number(scalar, part, what).map(each -> each);
        }
        if (raw == int.class || raw == Integer.class) {
            return whole(scalar, part, what).map(each -> each);
        }
        if (raw == boolean.class || raw == Boolean.class) {
            if (scalar.kind() == SourceNode.Kind.BOOLEAN) {
                return Optional.of(scalar.text().equals("true"));
            }
            faults.add(scalar, what + " is needed", "true, false", "write one of them");
            return Optional.empty();
        }
        if (Words.isListed(raw)) {
            return word(scalar, raw, what);
        }
        return text(scalar, part, what).map(each -> each);
    }

    private Optional<String> text(SourceNode.Scalar scalar, Shape.Part part, String what) {
        if (scalar.kind() != SourceNode.Kind.TEXT) {
            faults.add(scalar, what + " is needed", "a text", "put it in quotes");
            return Optional.empty();
        }
        String text = scalar.text().strip();
        if (part != null) {
            part.note(Refers.class).ifPresent(each -> references.refer(each, text, scalar.place()));
            part.note(Defines.class).ifPresent(each -> references.define(each.value(), text, scalar.place()));
        }
        return Optional.of(text);
    }

    static Optional<Dimension> unit(Shape.Part part) {
        return part == null ? Optional.empty() : part.unit();
    }

    private Optional<Double> quantity(SourceNode.Scalar scalar, Dimension dimension, Shape.Part part, String what) {
        try {
            double value = QuantityParser.parse(scalar.text(), dimension);
            return inBounds(scalar, value, Optional.of(dimension), part, what);
        } catch (UnreadableException bad) {
            faults.add(
                    scalar.place(),
                    what + ": " + bad.asked(),
                    Phrase.quoted(bad.got()),
                    Phrase.quoted(bad.allowed()),
                    bad.next());
            return Optional.empty();
        }
    }

    private Optional<Double> number(SourceNode.Scalar scalar, Shape.Part part, String what) {
        double value = scalar.kind() == SourceNode.Kind.NUMBER ? Double.parseDouble(scalar.text()) : Double.NaN;
        if (Double.isFinite(value)) {
            Optional<String> pointed = QuantityParser.pointed(scalar.text())
                    .filter(next -> part != null
                            && part.range()
                                    .filter(range -> range.holds(value) && value * THOUSAND <= range.most())
                                    .isPresent());
            if (pointed.isPresent()) {
                faults.add(scalar, what + " is needed", "a number without a unit", pointed.get());
                return Optional.empty();
            }
            return inBounds(scalar, value, Optional.empty(), part, what);
        }
        boolean leadingZero = scalar.text().matches("[+-]?0\\d+.*");
        faults.add(
                scalar,
                what + " is needed",
                "a number without a unit",
                leadingZero ? "write it without the leading zero" : "write a number");
        return Optional.empty();
    }

    private Optional<Integer> whole(SourceNode.Scalar scalar, Shape.Part part, String what) {
        if (scalar.kind() == SourceNode.Kind.NUMBER && scalar.text().matches("[+-]?\\d{1,9}")) {
            int value = Integer.parseInt(scalar.text());
            return inBounds(scalar, value, Optional.empty(), part, what).map(Double::intValue);
        }
        faults.add(scalar, what + " is needed", "a whole number", "write a whole number");
        return Optional.empty();
    }

    private Optional<Double> inBounds(
            SourceNode.Scalar scalar, double value, Optional<Dimension> dimension, Shape.Part part, String what) {
        Optional<Range> range = part == null ? Optional.empty() : part.range();
        if (range.isEmpty() || range.get().holds(value)) {
            return Optional.of(value);
        }
        String usual = part.note(Bounds.class).map(Bounds::usual).orElse("");
        Phrase said = dimension.map(each -> Range.usual(usual, each)).orElse(Phrase.quoted(usual));
        faults.add(new Fault(
                scalar.place(),
                what + " is out of range",
                Phrase.quoted(scalar.text()),
                range.get().shown(),
                (usual.isEmpty() ? said : Phrase.of("usual: ").and(said).and("; ")).and("check value and unit")));
        return Optional.empty();
    }

    private Optional<Object> word(SourceNode.Scalar scalar, Class<?> type, String what) {
        String asked = scalar.text().strip();
        Optional<Object> named = Words.named(type, asked);
        if (named.isPresent()) {
            return named;
        }
        ImmutableList<String> words = Words.words(type);
        Optional<String> near =
                Words.alsoCalled(type, asked).map(Nearest::question).or(() -> Nearest.meant(asked, words));
        faults.add(
                scalar,
                what + " is needed",
                near.isPresent() && words.size() > MANY
                        ? words.take(MANY).makeString(", ") + " and " + (words.size() - MANY) + " more"
                        : words.makeString(", "),
                near.orElse(several(asked, type) ? "write a comma between them" : "write one of them"));
        return Optional.empty();
    }

    private static boolean several(String asked, Class<?> type) {
        String[] parts = asked.split("\\s+");
        return parts.length > 1
                && Arrays.stream(parts).allMatch(part -> Words.named(type, part).isPresent());
    }
}
