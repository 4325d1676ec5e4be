package coldseam.files;

import java.lang.reflect.InvocationTargetException;
import java.util.Locale;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/** How Java names read in files. */
final class Words {

    private Words() {}

    /** {@code surfaceResistance} → {@code surface-resistance}. */
    static String kebab(String name) {
        return name.replaceAll("([a-z0-9])([A-Z])", "$1-$2").toLowerCase(Locale.ROOT);
    }

    /** {@code FileEdgeInsulation} → {@code an edge insulation}. */
    static String noun(Class<?> type) {
        Noun given = type.getAnnotation(Noun.class);
        if (given != null) {
            return given.value();
        }
        String word = kebab(type.getSimpleName().replaceFirst("^File", "")).replace('-', ' ');
        return ("aeiou".indexOf(word.charAt(0)) >= 0 ? "an " : "a ") + word;
    }

    /** Whether the values of a type are the words of a closed list. */
    static boolean isListed(Class<?> type) {
        return type.isEnum() || OneOf.class.isAssignableFrom(type);
    }

    /** A listed type's values, in their order. */
    static ImmutableList<?> listed(Class<?> type) {
        if (type.isEnum()) {
            return Lists.immutable.with(type.getEnumConstants());
        }
        try {
            return Lists.immutable.withAll((Iterable<?>) type.getMethod("all").invoke(null));
        } catch (ReflectiveOperationException broken) {
            throw new IllegalStateException(type + " has no public static method all()", broken);
        }
    }

    /** The value's own {@code label()}, where its type has one, else its name in lower case with spaces. */
    static String word(Object value) {
        if (value instanceof OneOf one) {
            return one.label();
        }
        Enum<?> constant = (Enum<?>) value;
        try {
            var label = constant.getDeclaringClass().getMethod("label");
            label.setAccessible(true);
            return (String) label.invoke(constant);
        } catch (NoSuchMethodException plain) {
            return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
        } catch (IllegalAccessException | InvocationTargetException broken) {
            throw new IllegalStateException(broken);
        }
    }

    static ImmutableList<String> words(Class<?> type) {
        return listed(type).collect(Words::word);
    }
}
