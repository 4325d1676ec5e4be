package coldseam.files;

import java.lang.reflect.InvocationTargetException;
import java.text.Normalizer;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/** How Java names read in files, and in whatever is said of what they say. */
public final class Words {

    private static final Pattern SHAPELESS = Pattern.compile("\\p{Cf}");

    private static final Pattern GAP = Pattern.compile("[\\s_-]+");

    private static final Pattern HUMP = Pattern.compile("([a-z0-9])([A-Z])");

    private Words() {}

    /** {@code surfaceResistance} → {@code surface-resistance}. */
    static String kebab(String name) {
        return HUMP.matcher(name).replaceAll("$1-$2").toLowerCase(Locale.ROOT);
    }

    /** {@code FileEdgeInsulation} → {@code an edge insulation}. */
    static String noun(Class<?> type) {
        return NOUN.get(type);
    }

    private static final ClassValue<String> NOUN = new ClassValue<>() {
        @Override
        protected String computeValue(Class<?> type) {
            Noun given = type.getAnnotation(Noun.class);
            if (given != null) {
                return given.value();
            }
            String word = kebab(type.getSimpleName().replaceFirst("^File", "")).replace('-', ' ');
            return ("aeiou".indexOf(word.charAt(0)) >= 0 ? "an " : "a ") + word;
        }
    };

    /** How a name reads: two that differ in capitals, gaps or what has no shape alone are one to whoever reads them. */
    public static String aloud(String name) {
        if (isOneWord(name)) {
            return name;
        }
        String shown = SHAPELESS
                .matcher(Normalizer.normalize(name, Normalizer.Form.NFKC))
                .replaceAll("");
        return GAP.matcher(shown.toLowerCase(Locale.ROOT)).replaceAll(" ").strip();
    }

    /** Small letters and digits alone: so are most names, and patterns take their time. */
    private static boolean isOneWord(String name) {
        for (int i = 0; i < name.length(); i++) {
            char c = name.charAt(i);
            if ((c < 'a' || c > 'z') && (c < '0' || c > '9')) {
                return false;
            }
        }
        return true;
    }

    /** Whether the values of a type are the words of a closed list. */
    static boolean isListed(Class<?> type) {
        return type.isEnum() || OneOf.class.isAssignableFrom(type);
    }

    /** A value of a listed type and how it reads. */
    private record Listed(Object value, String word) {}

    /** Kept, since a file asks for it at each of its words. */
    private static final ClassValue<ImmutableList<Listed>> LISTED = new ClassValue<>() {
        @Override
        protected ImmutableList<Listed> computeValue(Class<?> type) {
            return values(type).collect(each -> new Listed(each, read(each)));
        }
    };

    /** The value of a listed type that reads so; empty where none does. */
    static Optional<Object> named(Class<?> type, String word) {
        return LISTED.get(type).detectOptional(each -> each.word().equals(word)).map(Listed::value);
    }

    /** How the values of a listed type read, in their order. */
    static ImmutableList<String> words(Class<?> type) {
        return LISTED.get(type).collect(Listed::word);
    }

    /** The value's own {@code label()}, where its type has one, else its name in lower case with spaces. */
    public static String word(Object value) {
        return value instanceof Enum<?> constant
                ? LISTED.get(constant.getDeclaringClass())
                        .get(constant.ordinal())
                        .word()
                : read(value);
    }

    /** The word for what else is called so ({@link AlsoCalled}); empty where no value of the type is. */
    static Optional<String> alsoCalled(Class<?> type, String asked) {
        return type.isEnum()
                ? Lists.immutable
                        .with(type.getFields())
                        .select(field -> field.isAnnotationPresent(AlsoCalled.class))
                        .detectOptional(field -> Lists.immutable
                                .with(field.getAnnotation(AlsoCalled.class).value())
                                .contains(aloud(asked)))
                        .map(field -> words(type)
                                .get(Lists.immutable
                                        .with(type.getEnumConstants())
                                        .detectIndex(
                                                each -> ((Enum<?>) each).name().equals(field.getName()))))
                : Optional.empty();
    }

    private static ImmutableList<Object> values(Class<?> type) {
        if (type.isEnum()) {
            return Lists.immutable.with(type.getEnumConstants());
        }
        try {
            return Lists.immutable.withAll((Iterable<?>) type.getMethod("all").invoke(null));
        } catch (ReflectiveOperationException broken) {
            throw new IllegalStateException(type + " has no public static method all()", broken);
        }
    }

    private static String read(Object value) {
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
}
