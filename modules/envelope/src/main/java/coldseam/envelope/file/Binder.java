package coldseam.envelope.file;

import coldseam.envelope.quantity.Dimension;
import coldseam.envelope.quantity.QuantityException;
import coldseam.envelope.quantity.QuantityParser;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.factory.Maps;
import org.eclipse.collections.api.factory.Sets;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.map.ImmutableMap;
import org.eclipse.collections.api.set.ImmutableSet;
import org.eclipse.collections.api.set.MutableSet;

/**
 * Binds a tree to records, collecting every fault.
 *
 * <p>A record's components are its keys, in kebab-case. Types of components: {@code double}, {@code int},
 * {@code boolean}, {@code String}, enums (their words), records, sealed interfaces (by {@link Marked}, {@link Positional}
 * or {@link Short}), {@code ImmutableList}, {@code ImmutableSet}, {@code ImmutableMap} from names, a list of
 * {@link Named}, {@link Located}, {@link SourceNode} as it stands, and optional ones of all these. A component of type
 * {@link Position} is no key: it gets the place of the record. Annotations say the rest: {@link Unit}, {@link Bounds},
 * {@link Default}, {@link Size}, {@link Refers}, {@link Defines}.
 */
public final class Binder {

    private final Faults faults;
    private final ImmutableMap<String, KnownNames> known;
    private final References references;

    private Binder(Faults faults, ImmutableMap<String, KnownNames> known) {
        this.faults = faults;
        this.known = known;
        this.references = new References(faults);
    }

    /** Binds without names from outside; see {@link #bind(SourceNode, Class, Faults, ImmutableMap)}. */
    public static <T> Optional<T> bind(SourceNode node, Class<T> type, Faults faults) {
        return bind(node, type, faults, Maps.immutable.empty());
    }

    /**
     * Binds a tree to a type.
     *
     * @param node root of the tree
     * @param type a record or sealed interface of records
     * @param faults to which every fault is added
     * @param known names of each {@link Refers} kind that are known without being defined in the file
     * @return the bound value; empty where there were faults in it
     */
    public static <T> Optional<T> bind(
            SourceNode node, Class<T> type, Faults faults, ImmutableMap<String, KnownNames> known) {
        Binder binder = new Binder(faults, known);
        Optional<Object> value = binder.value(node, type, null, Words.noun(type));
        binder.references.check(known);
        return value.map(type::cast);
    }

    private Optional<Object> value(SourceNode node, Type type, Shape.Part part, String what) {
        Class<?> raw = Shape.raw(type);
        if (raw == SourceNode.class) {
            return Optional.of(node);
        }
        if (raw == Located.class) {
            return value(node, Shape.argument(type, 0), part, what).map(each -> new Located<>(each, node.place()));
        }
        if (raw == ImmutableList.class || raw == ImmutableSet.class) {
            return collection(node, type, part, what);
        }
        if (raw == ImmutableMap.class) {
            return named(node, Shape.argument(type, 1), part, what)
                    .map(list -> list.toImmutableMap(Named::name, Named::value));
        }
        if (raw.isRecord()) {
            return record(node, raw, what).map(each -> each);
        }
        if (raw.isSealed()) {
            return alternative(node, raw, what);
        }
        return node instanceof SourceNode.Scalar scalar ? scalar(scalar, raw, part, what) : wrongKind(node, what, raw);
    }

    private Optional<Object> wrongKind(SourceNode node, String what, Class<?> raw) {
        faults.add(node.place(), what + " is needed", node.shown(), "one value", "write one value here");
        return Optional.empty();
    }

    private Optional<Object> scalar(SourceNode.Scalar scalar, Class<?> raw, Shape.Part part, String what) {
        if (scalar.kind() == SourceNode.Kind.EMPTY) {
            faults.add(scalar.place(), what + " is needed", "nothing", "", "write a value, or leave the key out");
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
                return Optional.of(scalar.text().equalsIgnoreCase("true"));
            }
            faults.add(scalar.place(), what + " is needed", scalar.shown(), "true, false", "write one of them");
            return Optional.empty();
        }
        if (raw.isEnum()) {
            return word(scalar, raw, what);
        }
        return text(scalar, part, what).map(each -> each);
    }

    private Optional<String> text(SourceNode.Scalar scalar, Shape.Part part, String what) {
        if (scalar.kind() != SourceNode.Kind.TEXT) {
            faults.add(scalar.place(), what + " is needed", scalar.shown(), "a text", "put it in quotes");
            return Optional.empty();
        }
        String text = scalar.text().strip();
        if (text.isEmpty()) {
            faults.add(scalar.place(), what + " is needed", "an empty text", "a text", "write it, or leave the key out");
            return Optional.empty();
        }
        if (part != null) {
            part.note(Refers.class).ifPresent(each -> references.refer(each.value(), text, scalar.place()));
            part.note(Defines.class).ifPresent(each -> references.define(each.value(), text, scalar.place()));
        }
        return Optional.of(text);
    }

    private static Optional<Dimension> unit(Shape.Part part) {
        return part == null ? Optional.empty() : part.note(Unit.class).map(Unit::value);
    }

    private Optional<Double> quantity(SourceNode.Scalar scalar, Dimension dimension, Shape.Part part, String what) {
        try {
            double value = QuantityParser.parse(scalar.text(), dimension);
            return inBounds(scalar, value, Optional.of(dimension), part, what);
        } catch (QuantityException bad) {
            faults.add(scalar.place(), what + ": " + bad.asked(), bad.got(), bad.allowed(), bad.next());
            return Optional.empty();
        }
    }

    private Optional<Double> number(SourceNode.Scalar scalar, Shape.Part part, String what) {
        double value = scalar.kind() == SourceNode.Kind.NUMBER ? Double.parseDouble(scalar.text()) : Double.NaN;
        if (Double.isFinite(value)) {
            return inBounds(scalar, value, Optional.empty(), part, what);
        }
        faults.add(scalar.place(), what + " is needed", scalar.shown(), "a number without a unit", "write a number");
        return Optional.empty();
    }

    private Optional<Integer> whole(SourceNode.Scalar scalar, Shape.Part part, String what) {
        if (scalar.kind() == SourceNode.Kind.NUMBER && scalar.text().matches("[+-]?\\d{1,9}")) {
            int value = Integer.parseInt(scalar.text());
            return inBounds(scalar, value, Optional.empty(), part, what).map(Double::intValue);
        }
        faults.add(scalar.place(), what + " is needed", scalar.shown(), "a whole number", "write a whole number");
        return Optional.empty();
    }

    private Optional<Double> inBounds(
            SourceNode.Scalar scalar, double value, Optional<Dimension> dimension, Shape.Part part, String what) {
        Optional<Range> range = part == null ? Optional.empty() : part.note(Bounds.class).map(b -> Range.of(b, dimension));
        if (range.isEmpty() || range.get().holds(value)) {
            return Optional.of(value);
        }
        faults.add(scalar.place(), what + " is out of range", scalar.text(), range.get().shown(), "check value and unit");
        return Optional.empty();
    }

    private Optional<Object> word(SourceNode.Scalar scalar, Class<?> type, String what) {
        String asked = scalar.text().strip();
        for (Object constant : type.getEnumConstants()) {
            if (Words.word((Enum<?>) constant).equals(asked)) {
                return Optional.of(constant);
            }
        }
        ImmutableList<String> words = Words.words(type);
        faults.add(
                scalar.place(),
                what + " is needed",
                scalar.shown(),
                words.makeString(", "),
                meant(asked, words).orElse("write one of them"));
        return Optional.empty();
    }

    static Optional<String> meant(String word, Iterable<String> known) {
        return Nearest.to(word, known).map(each -> "did you mean \"" + each + "\"?");
    }

    private Optional<Object> collection(SourceNode node, Type type, Shape.Part part, String what) {
        Type item = Shape.argument(type, 0);
        if (Shape.raw(item) == Named.class) {
            return named(node, Shape.argument(item, 0), part, what).map(each -> each);
        }
        if (!(node instanceof SourceNode.Sequence sequence)) {
            faults.add(node.place(), what + " is needed", node.shown(), "a list", "write it as a list: [a, b], or one a line after \"- \"");
            return Optional.empty();
        }
        Size size = part == null ? null : part.note(Size.class).orElse(null);
        int count = sequence.items().size();
        boolean fits = size == null || count >= size.min() && count <= size.max();
        if (!fits) {
            faults.add(node.place(), what + " has too " + (count < size.min() ? "few" : "many") + " items",
                    String.valueOf(count), span(size), "add or remove some");
        }
        String each = Shape.raw(item).isRecord() ? Words.noun(Shape.raw(item)) : what;
        MutableList<Object> items = Lists.mutable.empty();
        for (SourceNode one : sequence.items()) {
            value(one, item, part, each).ifPresent(items::add);
        }
        if (!fits || items.size() < count) {
            return Optional.empty();
        }
        return Optional.of(Shape.raw(type) == ImmutableSet.class ? Sets.immutable.withAll(items) : items.toImmutable());
    }

    private static String span(Size size) {
        if (size.max() == Integer.MAX_VALUE) {
            return size.min() + " or more";
        }
        return size.min() == size.max() ? String.valueOf(size.min()) : size.min() + " to " + size.max();
    }

    private Optional<ImmutableList<Named<Object>>> named(SourceNode node, Type type, Shape.Part part, String what) {
        if (!(node instanceof SourceNode.Mapping mapping)) {
            faults.add(node.place(), what + " is needed", node.shown(), "a mapping from names", "write \"name: …\" for each");
            return Optional.empty();
        }
        Optional<String> kind = part == null ? Optional.empty() : part.note(Defines.class).map(Defines::value);
        MutableList<Named<Object>> items = Lists.mutable.empty();
        for (SourceNode.Entry entry : mapping.entries()) {
            kind.ifPresent(each -> references.define(each, entry.key(), entry.place()));
            String each = Shape.raw(type).isRecord() ? Words.noun(Shape.raw(type)) : what;
            value(entry.value(), type, null, each).ifPresent(v -> items.add(new Named<>(entry.key(), v, entry.place())));
        }
        return items.size() < mapping.entries().size() ? Optional.empty() : Optional.of(items.toImmutable());
    }

    private Optional<Object> alternative(SourceNode node, Class<?> sealed, String what) {
        ImmutableList<Class<?>> all = Shape.alternatives(sealed);
        if (node instanceof SourceNode.Sequence) {
            Optional<Class<?>> list = all.detectOptional(each -> each.isAnnotationPresent(Positional.class));
            if (list.isPresent()) {
                return record(node, list.get(), what).map(each -> each);
            }
        } else if (node instanceof SourceNode.Scalar) {
            Optional<Class<?>> one = all.detectOptional(each -> each.isAnnotationPresent(Short.class));
            if (one.isPresent()) {
                return record(node, one.get(), what).map(each -> each);
            }
        } else if (node instanceof SourceNode.Mapping mapping) {
            ImmutableList<Class<?>> marked = all.select(each -> each.isAnnotationPresent(Marked.class));
            ImmutableList<Class<?>> fitting = marked.select(
                    each -> mapping.entry(each.getAnnotation(Marked.class).value()).isPresent());
            if (fitting.size() == 1) {
                return record(node, fitting.getOnly(), what).map(each -> each);
            }
            ImmutableList<String> keys = marked.collect(each -> each.getAnnotation(Marked.class).value());
            String got = mapping.entries().collect(SourceNode.Entry::key).makeString(", ");
            Optional<String> near = mapping.entries()
                    .asLazy()
                    .collect(each -> meant(each.key(), keys))
                    .detectOptional(Optional::isPresent)
                    .map(Optional::get);
            faults.add(
                    node.place(),
                    what + " needs exactly one of the keys " + keys.makeString(", "),
                    got.isEmpty() ? "no key" : "the keys " + got,
                    "",
                    fitting.isEmpty() ? near.orElse("add one of them") : "remove all but one of them");
            return Optional.empty();
        }
        faults.add(node.place(), what + " is needed", node.shown(), forms(all), "write it so");
        return Optional.empty();
    }

    private static String forms(ImmutableList<Class<?>> alternatives) {
        return alternatives
                .collect(each -> {
                    if (each.isAnnotationPresent(Positional.class)) {
                        return "a list " + positions(each);
                    }
                    return each.isAnnotationPresent(Marked.class)
                            ? "a mapping with the key " + each.getAnnotation(Marked.class).value()
                            : "one value";
                })
                .distinct()
                .makeString(", or ");
    }

    private static String positions(Class<?> record) {
        return Shape.parts(record).collect(Shape.Part::key).makeString("[", ", ", "]");
    }

    private <T> Optional<T> record(SourceNode node, Class<T> type, String what) {
        ImmutableList<Shape.Part> parts = Shape.parts(type);
        MutableRecord<T> target = new MutableRecord<>(type, node.place());
        if (node instanceof SourceNode.Sequence sequence && type.isAnnotationPresent(Positional.class)) {
            if (sequence.items().size() != parts.size()) {
                faults.add(node.place(), what + " is needed", node.shown(), "a list " + positions(type), "write all of them");
                return Optional.empty();
            }
            parts.forEachWithIndex((part, i) -> bindPart(target, part, sequence.items().get(i)));
        } else if (node instanceof SourceNode.Scalar && type.isAnnotationPresent(Short.class)) {
            bindPart(target, parts.getFirst(), node);
            parts.drop(1).forEach(part -> missing(target, part, node.place(), type));
        } else if (node instanceof SourceNode.Mapping mapping && !type.isAnnotationPresent(Positional.class)) {
            bindKeys(target, parts, mapping, type);
        } else {
            String allowed = type.isAnnotationPresent(Positional.class)
                    ? "a list " + positions(type)
                    : "a mapping with keys such as "
                            + parts.take(3).collect(Shape.Part::key).makeString(", ");
            faults.add(node.place(), what + " is needed", node.shown(), allowed, "write it so");
            return Optional.empty();
        }
        return target.build(faults);
    }

    private <T> void bindKeys(
            MutableRecord<T> target, ImmutableList<Shape.Part> parts, SourceNode.Mapping mapping, Class<T> type) {
        ImmutableList<String> keys = parts.collect(Shape.Part::key);
        ImmutableList<String> unused = keys.reject(key -> mapping.entry(key).isPresent());
        MutableSet<String> meantKeys = Sets.mutable.empty();
        for (SourceNode.Entry entry : mapping.entries().reject(each -> keys.contains(each.key()))) {
            Optional<String> near = Nearest.to(entry.key(), unused);
            near.ifPresent(meantKeys::add);
            target.fail();
            faults.add(
                    entry.place(),
                    Words.noun(type) + " has no such key",
                    '"' + entry.key() + '"',
                    keys.makeString(", "),
                    meant(entry.key(), unused).orElse("remove it"));
        }
        for (Shape.Part part : parts) {
            Optional<SourceNode.Entry> entry = mapping.entry(part.key());
            if (entry.isPresent()) {
                bindPart(target, part, entry.get().value());
            } else if (meantKeys.contains(part.key())) {
                target.fail();
            } else {
                missing(target, part, mapping.place(), type);
            }
        }
    }

    private <T> void bindPart(MutableRecord<T> target, Shape.Part part, SourceNode node) {
        target.places.put(part.component().getName(), node.place());
        Optional<Object> value = value(node, part.type(), part, part.key());
        if (value.isPresent()) {
            target.set(part.component(), wrapped(part, value));
        } else {
            target.fail();
        }
    }

    private <T> void missing(MutableRecord<T> target, Shape.Part part, Position place, Class<T> type) {
        if (part.defaultText().isPresent()) {
            Optional<Object> value = value(defaultNode(part, place), part.type(), part, part.key());
            value.ifPresentOrElse(each -> target.set(part.component(), wrapped(part, value)), target::fail);
        } else if (part.mayBeMissing()) {
            target.set(part.component(), wrapped(part, Optional.empty()));
        } else {
            target.fail();
            faults.add(place, Words.noun(type) + " needs the key " + part.key(), "", "", "add it: " + example(part));
        }
    }

    private static String example(Shape.Part part) {
        Class<?> raw = Shape.raw(part.type());
        Class<?> inner = raw == Located.class ? Shape.raw(Shape.argument(part.type(), 0)) : raw;
        String sample = unit(part).map(each -> each.examples().getFirst()).orElseGet(() -> {
            if (inner.isEnum()) {
                return Words.words(inner).makeString(" or ");
            }
            return part.note(Doc.class).map(Doc::value).orElse("…");
        });
        return part.key() + ": " + sample;
    }

    private static SourceNode defaultNode(Shape.Part part, Position place) {
        String text = part.defaultText().orElseThrow();
        Class<?> raw = Shape.raw(part.type());
        if (raw == ImmutableList.class && Shape.raw(Shape.argument(part.type(), 0)) != Named.class
                || raw == ImmutableSet.class) {
            return new SourceNode.Sequence(place, Lists.immutable.empty());
        }
        if (raw == ImmutableList.class || raw == ImmutableMap.class || raw.isRecord() && text.isEmpty()) {
            return new SourceNode.Mapping(place, Lists.immutable.empty());
        }
        SourceNode.Kind kind = SourceNode.Kind.TEXT;
        if (raw == boolean.class) {
            kind = SourceNode.Kind.BOOLEAN;
        } else if (raw == int.class || raw == double.class) {
            kind = SourceNode.Kind.NUMBER;
        }
        return new SourceNode.Scalar(place, kind, text);
    }

    private static Object wrapped(Shape.Part part, Optional<Object> value) {
        Class<?> declared = part.component().getType();
        if (declared == OptionalDouble.class) {
            return value.isPresent() ? OptionalDouble.of((Double) value.get()) : OptionalDouble.empty();
        }
        if (declared == OptionalInt.class) {
            return value.isPresent() ? OptionalInt.of((Integer) value.get()) : OptionalInt.empty();
        }
        return declared == Optional.class ? value : value.orElse(null);
    }

    /** The values of a record while they are collected. */
    private static final class MutableRecord<T> {
        private final Class<T> type;
        private final Position place;
        private final java.util.Map<String, Object> values = Maps.mutable.empty();
        private final java.util.Map<String, Position> places = Maps.mutable.empty();
        private boolean failed;

        MutableRecord(Class<T> type, Position place) {
            this.type = type;
            this.place = place;
        }

        void set(RecordComponent component, Object value) {
            values.put(component.getName(), value);
        }

        void fail() {
            failed = true;
        }

        Optional<T> build(Faults faults) {
            if (failed) {
                return Optional.empty();
            }
            RecordComponent[] components = type.getRecordComponents();
            Object[] arguments = new Object[components.length];
            for (int i = 0; i < components.length; i++) {
                arguments[i] =
                        components[i].getType() == Position.class ? place : values.get(components[i].getName());
            }
            try {
                return Optional.of(Shape.construct(type, arguments));
            } catch (BadValueException bad) {
                faults.add(bad.at(places.getOrDefault(bad.component(), place)));
                return Optional.empty();
            }
        }
    }
}
