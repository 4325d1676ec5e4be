package coldseam.files;

import coldseam.files.quantity.Phrase;
import java.lang.reflect.Type;
import java.util.IdentityHashMap;
import java.util.Map;
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
 * {@code boolean}, {@code String}, enums and {@link OneOf} (their words), records, sealed interfaces (by {@link Marked}, {@link Positional},
 * {@link Short} or {@link Whole}), {@code ImmutableList}, {@code ImmutableSet}, {@code ImmutableMap} from names, a list of
 * {@link Named}, {@link Located}, {@link SourceNode} as it stands, and optional ones of all these. A component of type
 * {@link Position} is no key: it gets the place of the record. Annotations say the rest: {@link Unit}, {@link Bounds},
 * {@link Default}, {@link Size}, {@link Refers}, {@link Defines}, {@link Inline}. A constructor may throw a {@link BadValueException}, and a
 * {@link SelfChecking} record may add faults of its own. A {@link Vocabulary} may call keys otherwise, and read further types.
 */
public final class Binder {

    private final Faults faults;
    private final Vocabulary vocabulary;
    private final References references;
    private final ScalarBinder scalars;

    /** Of mappings from names some of which are faulty, those that are not: their record's checks need not wait for the others. */
    private final Map<SourceNode, ImmutableList<Named<Object>>> sound = new IdentityHashMap<>();

    private Binder(Faults faults, Vocabulary vocabulary) {
        this.faults = faults;
        this.vocabulary = vocabulary;
        this.references = new References(faults);
        this.scalars = new ScalarBinder(faults, references);
    }

    /** Binds without names from outside; see {@link #bind(SourceNode, Class, Faults, ImmutableMap)}. */
    public static <T> Optional<T> bind(SourceNode node, Class<T> type, Faults faults) {
        return bind(node, type, faults, Maps.immutable.empty());
    }

    /** Binds with names from outside; see {@link #bind(SourceNode, Class, Faults, Vocabulary)}. */
    public static <T> Optional<T> bind(
            SourceNode node, Class<T> type, Faults faults, ImmutableMap<String, KnownNames> known) {
        return bind(node, type, faults, Vocabulary.of(known));
    }

    /**
     * Binds a tree to a type.
     *
     * @param node root of the tree
     * @param type a record or sealed interface of records
     * @param faults to which every fault is added
     * @return the bound value; empty where there were faults in it
     */
    public static <T> Optional<T> bind(SourceNode node, Class<T> type, Faults faults, Vocabulary vocabulary) {
        Binder binder = new Binder(faults, vocabulary);
        int before = faults.count();
        Optional<Object> value = binder.value(node, type, null, Words.noun(type));
        boolean faulty = faults.count() > before;
        binder.references.check(vocabulary.names());
        return faulty ? Optional.empty() : value.map(type::cast);
    }

    private Optional<Object> value(SourceNode node, Type type, Shape.Part part, String what) {
        Class<?> raw = Shape.raw(type);
        if (node instanceof SourceNode.Scalar scalar && scalar.kind() == SourceNode.Kind.REFUSED) {
            return Optional.empty();
        }
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
        if (vocabulary.texts().containsKey(raw)) {
            return node instanceof SourceNode.Scalar scalar && scalar.kind() != SourceNode.Kind.EMPTY
                    ? vocabulary
                            .texts()
                            .get(raw)
                            .apply(new Located<>(scalar.text().strip(), scalar.place()))
                            .map(each -> each)
                    : wrongKind(node, part, what);
        }
        if (raw.isRecord()) {
            return record(node, raw, what).map(each -> each);
        }
        if (raw.isSealed()) {
            return alternative(node, raw, what);
        }
        return node instanceof SourceNode.Scalar scalar
                ? scalars.bind(scalar, raw, part, what)
                : wrongKind(node, part, what);
    }

    private Optional<Object> wrongKind(SourceNode node, Shape.Part part, String what) {
        Optional<String> named = Optional.ofNullable(part)
                .flatMap(each -> each.note(Refers.class))
                .map(refers -> "the name of one " + refers.value());
        faults.add(
                node,
                what + " is needed",
                named.orElse("one value"),
                named.isPresent() ? "write its name here" : "write one value here");
        return Optional.empty();
    }

    private Optional<Object> collection(SourceNode node, Type type, Shape.Part part, String what) {
        Type item = Shape.argument(type, 0);
        if (Shape.raw(item) == Named.class) {
            return named(node, Shape.argument(item, 0), part, what).map(each -> each);
        }
        if (!(node instanceof SourceNode.Sequence sequence)) {
            faults.add(
                    node,
                    what + " is needed",
                    "a list",
                    node instanceof SourceNode.Scalar scalar && !scalar.text().isEmpty()
                            ? "write it as a list: [" + scalar.text() + "]"
                            : "write it as a list: [a, b], or one a line after \"- \"");
            return Optional.empty();
        }
        int count = sequence.items().size();
        boolean fits = fits(node.place(), count, part, what);
        Type bare = Shape.raw(item) == Located.class ? Shape.argument(item, 0) : item;
        String each = itemNoun(Shape.raw(bare), what);
        MutableList<Object> items = Lists.mutable.empty();
        for (SourceNode one : sequence.items()) {
            value(one, item, part, each).ifPresent(items::add);
        }
        if (!fits || items.size() < count) {
            return Optional.empty();
        }
        return Optional.of(Shape.raw(type) == ImmutableSet.class ? Sets.immutable.withAll(items) : items.toImmutable());
    }

    private boolean fits(Position place, int count, Shape.Part part, String what) {
        Size size = part == null ? null : part.note(Size.class).orElse(null);
        boolean fits = size == null || count >= size.min() && count <= size.max();
        if (!fits) {
            faults.add(
                    place,
                    what + " has too " + (count < size.min() ? "few" : "many") + " items",
                    String.valueOf(count),
                    span(size),
                    count < size.min() ? size.fewer() : "remove some");
        }
        return fits;
    }

    private static String itemNoun(Class<?> type, String listed) {
        return type.isRecord() || type.isSealed() ? Words.noun(type) : listed;
    }

    private static String span(Size size) {
        if (size.max() == Integer.MAX_VALUE) {
            return size.min() + " or more";
        }
        return size.min() == size.max() ? String.valueOf(size.min()) : size.min() + " to " + size.max();
    }

    private Optional<ImmutableList<Named<Object>>> named(SourceNode node, Type type, Shape.Part part, String what) {
        if (!(node instanceof SourceNode.Mapping mapping)) {
            faults.add(node, what + " is needed", "a mapping from names", "write \"name: …\" for each");
            return Optional.empty();
        }
        Optional<String> kind =
                part == null ? Optional.empty() : part.note(Defines.class).map(Defines::value);
        kind.ifPresent(references::open);
        MutableList<Named<Object>> items = Lists.mutable.empty();
        if (!fits(node.place(), mapping.entries().size(), part, what)) {
            return Optional.empty();
        }
        for (SourceNode.Entry entry : mapping.entries()) {
            kind.ifPresent(each -> references.define(each, entry.key(), entry.place()));
            String each = itemNoun(Shape.raw(type), what);
            value(entry.value(), type, null, each)
                    .ifPresent(v -> items.add(new Named<>(entry.key(), v, entry.place())));
        }
        if (items.size() < mapping.entries().size()) {
            sound.put(node, items.toImmutable());
            return Optional.empty();
        }
        return Optional.of(items.toImmutable());
    }

    private Optional<Object> alternative(SourceNode node, Class<?> sealed, String what) {
        ImmutableList<Class<?>> all = Shape.alternatives(sealed);
        if (node instanceof SourceNode.Sequence) {
            Optional<Class<?>> list =
                    all.detectOptional(each -> each.isAnnotationPresent(Positional.class) || Shape.isWholeList(each));
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
            ImmutableList<Class<?>> fitting = marked.select(each ->
                    mapping.entry(each.getAnnotation(Marked.class).value()).isPresent());
            // The mark of one may be a key of another, which is then meant.
            ImmutableList<String> marks =
                    fitting.collect(each -> each.getAnnotation(Marked.class).value());
            ImmutableList<Class<?>> meant =
                    fitting.select(each -> parts(each).collect(Shape.Part::key).containsAll(marks.castToList()));
            if (meant.size() == 1) {
                return record(node, meant.getOnly(), what).map(each -> each);
            }
            Optional<Class<?>> names = all.detectOptional(Shape::isWholeMapping);
            if (fitting.isEmpty() && names.isPresent()) {
                return record(node, names.get(), what).map(each -> each);
            }
            ImmutableList<String> keys =
                    marked.collect(each -> each.getAnnotation(Marked.class).value());
            String got = mapping.entries().collect(SourceNode.Entry::key).makeString(", ");
            Optional<String> near = mapping.entries()
                    .asLazy()
                    .collect(each -> Nearest.meant(each.key(), keys))
                    .detectOptional(Optional::isPresent)
                    .map(Optional::get);
            faults.add(
                    node.place(),
                    keys.size() == 1
                            ? what + " is needed"
                            : what + " needs exactly one of the keys " + keys.makeString(", "),
                    got.isEmpty() ? "no key" : "the keys " + got,
                    all.size() > keys.size() ? forms(all) : "",
                    fitting.isEmpty()
                            ? near.orElse(keys.size() == 1 ? "write it so" : "add one of them")
                            : "remove all but one of them");
            return Optional.empty();
        }
        faults.add(node, what + " is needed", forms(all), "write it so");
        return Optional.empty();
    }

    private String forms(ImmutableList<Class<?>> alternatives) {
        return alternatives
                .collect(each -> {
                    if (each.isAnnotationPresent(Positional.class)) {
                        return "a list " + positions(each);
                    }
                    if (each.isAnnotationPresent(Whole.class)) {
                        return Shape.isWholeList(each) ? listOf(each) : "a mapping from names";
                    }
                    return each.isAnnotationPresent(Marked.class)
                            ? "a mapping with the key "
                                    + each.getAnnotation(Marked.class).value()
                            : "one value";
                })
                .distinct()
                .makeString(", or ");
    }

    private String listOf(Class<?> whole) {
        Class<?> item = Shape.raw(Shape.argument(parts(whole).getOnly().type(), 0));
        return "a list" + (item.isAnnotationPresent(Positional.class) ? " [" + positions(item) + ", …]" : "");
    }

    /** The components that stand in the file, by the keys they have here. */
    private ImmutableList<Shape.Part> parts(Class<?> record) {
        return vocabulary.keys().isEmpty()
                ? Shape.parts(record)
                : Shape.parts(record)
                        .collect(part -> part.called(vocabulary.keys().getIfAbsentValue(part.key(), part.key())));
    }

    private String positions(Class<?> record) {
        return parts(record).collect(Shape.Part::key).makeString("[", ", ", "]");
    }

    private <T> Optional<T> record(SourceNode node, Class<T> type, String what) {
        ImmutableList<Shape.Part> parts = parts(type);
        RecordDraft<T> target = new RecordDraft<>(type, node.place());
        if (type.isAnnotationPresent(Whole.class)) {
            bindPart(target, parts.getOnly(), node, what);
        } else if (node instanceof SourceNode.Sequence sequence && type.isAnnotationPresent(Positional.class)) {
            if (sequence.items().size() != parts.size()) {
                faults.add(
                        node,
                        what + " is needed",
                        "a list " + positions(type),
                        sequence.items().size() < parts.size()
                                ? "write all of them"
                                : "write no more; a comma parts values, thousands and decimals have none");
                return Optional.empty();
            }
            parts.forEachWithIndex(
                    (part, i) -> bindPart(target, part, sequence.items().get(i)));
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
            faults.add(
                    node,
                    what + " is needed",
                    allowed,
                    type.isAnnotationPresent(Positional.class)
                            ? "write its values in brackets, a comma between them"
                            : writtenSo(node, parts));
            return Optional.empty();
        }
        return target.build(faults);
    }

    /** Where the value alone was written, it is told with its key; else what cannot be left out stands there. */
    private static String writtenSo(SourceNode node, ImmutableList<Shape.Part> parts) {
        return parts.select(part -> Words.isListed(Shape.raw(part.type())))
                .flatCollect(part ->
                        Nearest.to(node.shown().replace("\"", ""), Words.words(Shape.raw(part.type()))).stream()
                                .map(word -> "write it so: {" + part.key() + ": " + word + "}")
                                .toList())
                .getFirstOptional()
                .orElseGet(() -> "write it so: "
                        + parts.reject(part -> part.mayBeMissing()
                                        || part.defaultText().isPresent())
                                .collect(
                                        part -> part.key() + ": " + sample(part).orElse("…"))
                                .makeString("{", ", ", "}"));
    }

    private <T> void bindKeys(
            RecordDraft<T> target, ImmutableList<Shape.Part> parts, SourceNode.Mapping mapping, Class<T> type) {
        ImmutableList<String> keys = parts.collect(Shape.Part::key);
        ImmutableList<String> unused = keys.reject(key -> mapping.entry(key).isPresent());
        MutableSet<String> meantKeys = Sets.mutable.empty();
        for (SourceNode.Entry entry : mapping.entries().reject(each -> keys.contains(each.key()))) {
            Optional<String> symbol = Symbols.meant(entry.key(), parts.select(part -> unused.contains(part.key())));
            Optional<String> near = run(entry, unused).or(() -> symbol).or(() -> Nearest.to(entry.key(), unused));
            near.ifPresent(meantKeys::add);
            Optional<Shape.Part> meant =
                    near.flatMap(key -> parts.detectOptional(part -> part.key().equals(key)));
            meant.ifPresent(part -> part.note(Defines.class).ifPresent(each -> references.ignore(each.value())));
            target.fail();
            faults.add(
                    entry.place(),
                    Words.noun(type) + " has no such key",
                    Phrase.quoted('"' + entry.key() + '"'),
                    Phrase.of(keys.makeString(", ")),
                    nextFor(entry, unused, symbol));
            // What stands under a key that is nearly right is read as its own, so that its faults are told as well.
            if (!(entry.value() instanceof SourceNode.Scalar)) {
                meant.ifPresent(part -> value(entry.value(), part.type(), part, part.key()));
            }
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

    /** The key that runs on into its value, where no space follows the colon. */
    private static Optional<String> run(SourceNode.Entry entry, ImmutableList<String> unused) {
        return unused.detectOptional(key -> entry.key().startsWith(key + ":"));
    }

    private static String nextFor(SourceNode.Entry entry, ImmutableList<String> unused, Optional<String> symbol) {
        boolean cutNumber = entry.key().matches("\\d.*")
                && entry.value() instanceof SourceNode.Scalar scalar
                && scalar.kind() == SourceNode.Kind.EMPTY;
        if (cutNumber) {
            return "a comma ends the value before it: write decimals after a point, and thousands without a mark";
        }
        Optional<String> run = run(entry, unused);
        return run.map(key -> "write a space after the colon: " + key + ": "
                        + entry.key().substring(key.length() + 1))
                .or(() -> symbol.map(Nearest::question))
                .or(() -> Nearest.meant(entry.key(), unused))
                .orElse("write the key that is meant, or remove it");
    }

    private <T> void bindPart(RecordDraft<T> target, Shape.Part part, SourceNode node) {
        bindPart(target, part, node, part.key());
    }

    private <T> void bindPart(RecordDraft<T> target, Shape.Part part, SourceNode node, String what) {
        target.place(part.component(), node.place());
        Optional<Object> value = value(node, part.type(), part, what);
        if (value.isPresent()) {
            target.set(part.component(), wrapped(part, value));
        } else {
            target.fail();
            if (part.component().getType() == ImmutableList.class && sound.containsKey(node)) {
                target.set(part.component(), sound.get(node));
            }
        }
    }

    private <T> void missing(RecordDraft<T> target, Shape.Part part, Position place, Class<T> type) {
        if (part.defaultText().isPresent()) {
            Optional<Object> value = value(defaultNode(part, place), part.type(), part, part.key());
            value.ifPresentOrElse(each -> target.set(part.component(), wrapped(part, value)), target::fail);
        } else if (part.mayBeMissing()) {
            target.set(part.component(), wrapped(part, Optional.empty()));
        } else {
            target.fail();
            faults.add(place, Words.noun(type) + " needs the key " + part.key(), "", "add it: " + example(part));
        }
    }

    private String example(Shape.Part part) {
        ImmutableList<String> words = words(part);
        Class<?> raw = Shape.raw(part.type());
        if (raw.isAnnotationPresent(Positional.class)) {
            return part.key() + ": " + positions(raw);
        }
        return part.key() + ": "
                + (words.notEmpty()
                        ? words.makeString(" or ")
                        : sample(part)
                                .orElseGet(() -> part.note(Doc.class)
                                        .map(doc -> doc.value().replaceFirst("^Such as (.*)\\.$", "$1"))
                                        .orElse("…")));
    }

    /** A value that a part may have; empty of texts and of what is made of several. */
    private static Optional<String> sample(Shape.Part part) {
        return ScalarBinder.unit(part)
                .map(each -> each.examples().getFirst())
                .or(() -> words(part).getFirstOptional());
    }

    private static ImmutableList<String> words(Shape.Part part) {
        Class<?> raw = Shape.raw(part.type());
        Class<?> inner = raw == Located.class ? Shape.raw(Shape.argument(part.type(), 0)) : raw;
        return Words.isListed(inner) ? Words.words(inner) : Lists.immutable.empty();
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
}
