package coldseam.files;

import coldseam.files.quantity.Dimension;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.concurrent.ConcurrentHashMap;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;

/** What reflection says about file records; shared by the binder and the schema, so that they cannot disagree. */
final class Shape {

    /** A component that stands in the file. */
    record Part(RecordComponent component, String key, Type type, boolean mayBeMissing) {

        /** The same under another key. */
        Part called(String other) {
            return new Part(component, other, type, mayBeMissing);
        }

        <A extends java.lang.annotation.Annotation> Optional<A> note(Class<A> annotation) {
            return Optional.ofNullable(component.getAnnotation(annotation));
        }

        Optional<Dimension> unit() {
            return note(Unit.class).map(Unit::value);
        }

        /** Of a number. */
        Optional<Range> range() {
            return RANGES.computeIfAbsent(component, each -> note(Bounds.class).map(of -> Range.of(of, unit())));
        }

        Optional<String> defaultText() {
            return note(Default.class).map(Default::value);
        }
    }

    /** Kept, since a file of many like rows asks for it at each. */
    private static final ClassValue<ImmutableList<Part>> PARTS = new ClassValue<>() {
        @Override
        protected ImmutableList<Part> computeValue(Class<?> record) {
            return RecordParts.of(record)
                    .components()
                    .reject(each -> each.getType() == Position.class)
                    .flatCollect(each -> each.isAnnotationPresent(Inline.class)
                            ? parts(each.getType())
                            : Lists.immutable.of(part(each)));
        }
    };

    /** Likewise: to read its ends takes as long as to read a number. */
    private static final Map<RecordComponent, Optional<Range>> RANGES = new ConcurrentHashMap<>();

    private static final ClassValue<ImmutableList<Class<?>>> ALTERNATIVES = new ClassValue<>() {
        @Override
        protected ImmutableList<Class<?>> computeValue(Class<?> sealed) {
            return Lists.immutable.with(sealed.getPermittedSubclasses());
        }
    };

    private Shape() {}

    /** The components that stand in the file, in order, those of an {@link Inline} one in its place. */
    static ImmutableList<Part> parts(Class<?> record) {
        return PARTS.get(record);
    }

    private static Part part(RecordComponent component) {
        Key key = component.getAnnotation(Key.class);
        Type declared = component.getGenericType();
        boolean optional = isOptional(declared);
        return new Part(
                component,
                key == null ? Words.kebab(component.getName()) : key.value(),
                optional ? insideOptional(declared) : declared,
                optional || component.isAnnotationPresent(Default.class));
    }

    static boolean isOptional(Type type) {
        Class<?> raw = raw(type);
        return raw == Optional.class || raw == OptionalDouble.class || raw == OptionalInt.class;
    }

    private static Type insideOptional(Type type) {
        if (type == OptionalDouble.class) {
            return double.class;
        }
        return type == OptionalInt.class ? int.class : argument(type, 0);
    }

    static Class<?> raw(Type type) {
        return (Class<?>) (type instanceof ParameterizedType generic ? generic.getRawType() : type);
    }

    static Type argument(Type type, int index) {
        return ((ParameterizedType) type).getActualTypeArguments()[index];
    }

    /** The alternatives of a sealed type. */
    static ImmutableList<Class<?>> alternatives(Class<?> sealed) {
        return ALTERNATIVES.get(sealed);
    }

    /** Whether this is an alternative of a sealed type that no key marks. */
    static boolean isUnmarkedAlternative(Class<?> type) {
        return !type.isAnnotationPresent(Marked.class)
                && Arrays.stream(type.getInterfaces()).anyMatch(Class::isSealed);
    }

    static boolean isWholeList(Class<?> type) {
        return type.isAnnotationPresent(Whole.class) && !isWholeMapping(type);
    }

    static boolean isWholeMapping(Class<?> type) {
        if (!type.isAnnotationPresent(Whole.class)) {
            return false;
        }
        Type only = parts(type).getOnly().type();
        return raw(only) == ImmutableMap.class
                || raw(only) == ImmutableList.class && raw(argument(only, 0)) == Named.class;
    }
}
