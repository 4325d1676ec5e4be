package coldseam.files.quantity;

import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.eclipse.collections.api.factory.Lists;

/**
 * Reads quantities as people write them: {@code 8 in}, {@code 3 1/2 in}, {@code 9 ft 2 in}, {@code 5'6"}, {@code 200 mm},
 * {@code 0.035 W/(m·K)}, {@code R-30}, {@code 72 °F}, {@code 40 %}, {@code 8:12}.
 */
public final class QuantityParser {

    static final String DIGITS = "(?:\\d+(?:\\.\\d*)?|\\.\\d+)(?:[eE][+-]?\\d+)?";
    private static final String NUMBER = "[+-]?(?:\\d+[ -]+\\d+/\\d+|\\d+/\\d+|" + DIGITS + ")";
    private static final Pattern PLAIN = Pattern.compile("(" + NUMBER + ")\\s*(.*)");
    private static final String FEET_AND =
            "([+-]?" + DIGITS + ")\\s*(?:ft|feet|foot|['′])\\s*-?\\s*(" + NUMBER + ")\\s*";
    private static final Pattern FEET_INCHES = Pattern.compile(FEET_AND + "(?:in|inch|inches|[\"″]|'')");
    /** Whose inches have no mark, such as 26'3. */
    private static final Pattern FEET_AND_MORE = Pattern.compile(FEET_AND);

    private static final Pattern R_VALUE = Pattern.compile("(R|RSI)\\s*[- ]?\\s*(" + DIGITS + ")\\s*(.*)");
    private static final Pattern U_VALUE = Pattern.compile("U\\s*[- ]?\\s*(" + DIGITS + ")\\s*(.*)");
    private static final Pattern PITCH =
            Pattern.compile("(" + NUMBER + ")\\s*:\\s*(" + DIGITS + ")|(" + DIGITS + ")\\s*/\\s*(" + DIGITS + ")");
    private static final Pattern MIXED = Pattern.compile("([+-]?)(?:(\\d+)[ -]+)?(\\d+)/(\\d+)");
    private static final Pattern IMPROPER = Pattern.compile("\\d[ -]+(\\d+)/(\\d+)");
    private static final Pattern GROUPED = Pattern.compile("[+-]?[1-9]\\d{0,2}(?:[, ']\\d{3})+(?!\\d|[ -]*\\d*/).*");
    /** Read by half of the world as thousands, such as 1.200. */
    private static final Pattern POINTED = Pattern.compile("([+-]?[1-9]\\d{0,2})\\.(\\d{3})");

    /** 1/8 in, thousandths of a millimetre. */
    private static final int EIGHTH = 3175;

    private static final Pattern DECIMAL_COMMA = Pattern.compile(".*\\d,\\d.*");
    private static final Pattern SPACE = Pattern.compile("[\\p{Zs}\\p{Cf}]");
    private static final Pattern DASH_FIRST = Pattern.compile("^[−–]\\s*");
    private static final Pattern INCHES = Pattern.compile("''|[“”]");

    private static final String VULGAR = "½¼¾⅛⅜⅝⅞⅓⅔";
    private static final String[] VULGAR_AS = {"1/2", "1/4", "3/4", "1/8", "3/8", "5/8", "7/8", "1/3", "2/3"};

    /** Signs from ! to ~ as wide as a kanji. */
    private static final char FULL_WIDTH = '\uff01';

    private static final char FULL_WIDTH_END = '\uff5e';
    private static final double ZERO_CELSIUS = 273.15;
    private static final double US_RESISTANCE = 0.1761101836823058;
    private static final double US_TRANSMITTANCE = 5.678263341113487;
    private static final double INCH = 0.0254;

    /** Longest quantity, characters. The longest that makes sense has about forty. */
    private static final int LONGEST = 100;

    private QuantityParser() {}

    /**
     * The value in the dimension's inside unit.
     *
     * @param written with its unit
     * @param dimension asked for
     * @throws UnreadableException where it is no number, lacks its unit or is of another dimension
     */
    public static double parse(String written, Dimension dimension) {
        refuseLong(written, dimension.noun(), dimension::allowed);
        String text = plain(written);
        refuseImproper(text, written, dimension);
        double value = special(text, written, dimension).orElseGet(() -> ordinary(text, written, dimension));
        if (Double.isFinite(value)) {
            return value;
        }
        throw refused(dimension, written, "the number is too large or divides by zero: write a finite number");
    }

    /** Refuses a whole number with a fraction of one or more beside it, such as 7 9/8: one of the digits is a slip. */
    private static void refuseImproper(String text, String written, Dimension dimension) {
        if (text.indexOf('/') < 0) {
            return;
        }
        Matcher match = IMPROPER.matcher(text);
        while (match.find()) {
            if (Double.parseDouble(match.group(1)) >= Double.parseDouble(match.group(2))) {
                throw refused(dimension, written, "a fraction beside a whole number is less than 1: check its digits");
            }
        }
    }

    /**
     * Refuses three digits after a point where nobody means thousandths: a metre was meant, and a millimetre would be read.
     *
     * @param number without its unit
     */
    static void refusePointed(String number, String written, String noun, Supplier<String> allowed) {
        Matcher match = POINTED.matcher(number);
        if (match.matches()) {
            throw new UnreadableException(noun + " is needed", written, allowed.get(), pointed(match));
        }
    }

    /**
     * What to write instead of a number that half of the world reads as thousands, such as 50.000; empty for any other.
     *
     * @param number without a unit
     */
    public static Optional<String> pointed(String number) {
        Matcher match = POINTED.matcher(number);
        return match.matches() ? Optional.of(pointed(match)) : Optional.empty();
    }

    private static String pointed(Matcher match) {
        String digits = match.group(2).replaceAll("0+$", "");
        return "three digits after a point are thousands to some: write " + match.group(1) + match.group(2) + " or "
                + match.group(1)
                + (digits.isEmpty() ? "" : "." + digits + (digits.length() < 3 ? "" : "0"));
    }

    /** Whether so many millimetres are an odd number of eighths of an inch, which have three digits by nature. */
    private static boolean isOddEighth(String millimetres) {
        Matcher match = POINTED.matcher(millimetres);
        int thousandths = match.matches() ? Integer.parseInt(match.group(1) + match.group(2)) : 0;
        return thousandths % EIGHTH == 0 && thousandths / EIGHTH % 2 != 0;
    }

    /** Patterns and units are read in time that grows faster than the text, so the text is bounded. */
    static void refuseLong(String written, String noun, Supplier<String> allowed) {
        if (written.length() > LONGEST) {
            throw new UnreadableException(
                    noun + " is needed",
                    "a text of " + written.length() + " characters",
                    allowed.get(),
                    "write it in at most " + LONGEST + " characters");
        }
    }

    private static Optional<Double> special(String text, String written, Dimension dimension) {
        switch (dimension) {
            case LENGTH, THICKNESS:
                return feetAndInches(text, written, dimension);
            case RESISTANCE:
                return resistance(text);
            case CONDUCTIVITY:
                return resistancePerInch(text);
            case TRANSMITTANCE:
                Matcher rated = U_VALUE.matcher(text);
                return rated.matches() && rated.group(2).isEmpty()
                        ? Optional.of(Double.parseDouble(rated.group(1)) * US_TRANSMITTANCE)
                        : Optional.empty();
            case ANGLE:
                Matcher pitch = PITCH.matcher(text);
                return pitch.matches()
                        ? Optional.of(
                                pitch.group(1) == null
                                        ? degrees(number(pitch.group(3)), number(pitch.group(4)))
                                        : degrees(number(pitch.group(1)), number(pitch.group(2))))
                        : slope(text);
            case TEMPERATURE:
                return temperature(text);
            default:
                return Optional.empty();
        }
    }

    /** A rise on a run of any length, such as 1/4 in/ft or 2 %. */
    private static Optional<Double> slope(String text) {
        Matcher match = PLAIN.matcher(text);
        return match.matches() && !match.group(2).isEmpty()
                ? UnitExpression.tryParse(match.group(2))
                        .filter(unit -> unit.sameKindAs(Measure.ONE))
                        .map(unit -> degrees(number(match.group(1)) * unit.factor(), 1))
                : Optional.empty();
    }

    private static double degrees(double rise, double run) {
        return Math.toDegrees(Math.atan2(rise, run));
    }

    private static Optional<Double> feetAndInches(String text, String written, Dimension dimension) {
        Matcher match = FEET_INCHES.matcher(text);
        if (!match.matches()) {
            Matcher unmarked = FEET_AND_MORE.matcher(text);
            if (unmarked.matches() && number(unmarked.group(2)) < 12) {
                throw refused(
                        dimension,
                        written,
                        "write the inches with their mark, " + unmarked.group(1) + " ft " + unmarked.group(2) + " in");
            }
            return Optional.empty();
        }
        double more = number(match.group(2));
        if (more >= 12 || match.group(1).contains(".")) {
            throw refused(dimension, written, "beside inches feet are whole, and inches less than 12");
        }
        double feet = Double.parseDouble(match.group(1));
        double inches = 12 * Math.abs(feet) + more;
        return Optional.of((match.group(1).startsWith("-") ? -inches : inches) * INCH);
    }

    private static Optional<Double> resistance(String text) {
        Matcher match = R_VALUE.matcher(text);
        if (!match.matches()) {
            return Optional.empty();
        }
        double value = Double.parseDouble(match.group(2));
        if (match.group(3).isEmpty()) {
            return Optional.of(match.group(1).equals("R") ? value * US_RESISTANCE : value);
        }
        return UnitExpression.tryParse(match.group(3))
                .filter(unit -> unit.sameKindAs(Dimension.RESISTANCE.inside()))
                .map(unit -> value * unit.factor());
    }

    private static Optional<Double> resistancePerInch(String text) {
        Matcher match = R_VALUE.matcher(text);
        if (!match.matches() || !match.group(3).matches("(/|per)\\s*(in|inch)")) {
            return Optional.empty();
        }
        return Optional.of(INCH / (Double.parseDouble(match.group(2)) * US_RESISTANCE));
    }

    private static Optional<Double> temperature(String text) {
        Matcher match = PLAIN.matcher(text);
        if (!match.matches()) {
            return Optional.empty();
        }
        double value = number(match.group(1));
        return switch (match.group(2).replaceAll("\\s|º", "")) {
            case "°C", "C", "degC" -> Optional.of(value);
            case "°F", "F", "degF" -> Optional.of((value - 32) / 1.8);
            case "K" -> Optional.of(value - ZERO_CELSIUS);
            default -> Optional.empty();
        };
    }

    private static double ordinary(String text, String written, Dimension dimension) {
        if (GROUPED.matcher(text).matches()) {
            throw refused(dimension, written, "write thousands without a mark or space, and decimals after a point");
        }
        if (text.indexOf(',') >= 0 && DECIMAL_COMMA.matcher(text).matches()) {
            throw refused(dimension, written, "write the decimals after a point, not after a comma");
        }
        Matcher match = PLAIN.matcher(text);
        if (!match.matches()) {
            throw refused(
                    dimension,
                    written,
                    kindOf(text)
                            .map(kind -> "this is " + kind + instead(kind, dimension))
                            .orElse("write a number first"));
        }
        String unitText = match.group(2);
        if (unitText.isEmpty()) {
            if (dimension.allowsBareNumber()) {
                return number(match.group(1));
            }
            if (dimension == Dimension.LENGTH && number(match.group(1)) == 0) {
                return 0; // in whatever unit
            }
            throw refused(dimension, written + " without a unit", "write the unit after the number");
        }
        if (unitText.equals("psi")) {
            throw refused(
                    dimension,
                    written,
                    "psi means the linear thermal transmittance here: write lbf/in² for a pressure");
        }
        Measure unit = UnitExpression.tryParse(unitText)
                .orElseThrow(() -> refused(
                        dimension, written, "\"" + unitText + "\" is no unit known here" + small(unitText, dimension)));
        Measure inside = dimension.inside();
        if (!unit.sameKindAs(inside)) {
            throw refused(
                    dimension,
                    written,
                    kindOf(text).map(kind -> "this is " + kind).orElse("write such a unit"));
        }
        boolean length = dimension.inside().sameKindAs(Dimension.LENGTH.inside());
        if (dimension.isWhole(unit) && !(length && isOddEighth(match.group(1)))) {
            refusePointed(match.group(1), written, dimension.noun(), dimension::allowed);
        }
        return inside.factor() == unit.factor()
                ? number(match.group(1))
                : number(match.group(1)) * unit.factor() / inside.factor();
    }

    /** What to write where a unit's letters are of the wrong size. */
    private static String small(String unit, Dimension dimension) {
        String small = unit.toLowerCase(Locale.ROOT);
        return UnitExpression.tryParse(small)
                .filter(known -> known.sameKindAs(dimension.inside()))
                .map(known -> ": write " + small)
                .orElse("");
    }

    /** A layer's thickness is mistaken for what it resists as often as not. */
    private static String instead(String kind, Dimension dimension) {
        return dimension == Dimension.THICKNESS && kind.equals(Dimension.RESISTANCE.noun())
                ? "; write how thick it is, and this after it under resistance"
                : "";
    }

    /** What the words would be, were that asked. */
    private static Optional<String> kindOf(String text) {
        if (resistancePerInch(text).isPresent()) {
            return Optional.of(Dimension.CONDUCTIVITY.noun());
        }
        if (R_VALUE.matcher(text).matches()) {
            return Optional.of(Dimension.RESISTANCE.noun());
        }
        Matcher match = PLAIN.matcher(text);
        if (!match.matches() || match.group(2).isEmpty()) {
            return Optional.empty();
        }
        return UnitExpression.tryParse(match.group(2))
                .flatMap(unit -> Lists.immutable
                        .with(Dimension.values())
                        .detectOptional(each -> each.inside().sameKindAs(unit)))
                .map(Dimension::noun);
    }

    private static double number(String text) {
        Matcher mixed = MIXED.matcher(text);
        if (text.indexOf('/') < 0 || !mixed.matches()) {
            return Double.parseDouble(text);
        }
        double whole = mixed.group(2) == null ? 0 : Double.parseDouble(mixed.group(2));
        double value = whole + Double.parseDouble(mixed.group(3)) / Double.parseDouble(mixed.group(4));
        return mixed.group(1).equals("-") ? -value : value;
    }

    static String plain(String written) {
        return isPlain(written) ? written.strip() : respelt(written);
    }

    /** Whether there is nothing to spell otherwise: so in nearly all texts, and patterns take their time. */
    private static boolean isPlain(String written) {
        for (int i = 0; i < written.length(); i++) {
            if (written.charAt(i) < ' ' || written.charAt(i) > '~') {
                return false;
            }
        }
        return !written.contains("''");
    }

    private static String respelt(String written) {
        StringBuilder one = new StringBuilder();
        for (char c : written.toCharArray()) {
            one.append(c >= FULL_WIDTH && c <= FULL_WIDTH_END ? (char) (c - FULL_WIDTH + '!') : c);
        }
        String spaced = SPACE.matcher(one).replaceAll(" ").strip();
        String signed =
                DASH_FIRST.matcher(spaced).replaceFirst("-").replace('−', '-').replace('⁄', '/');
        String text = INCHES.matcher(signed)
                .replaceAll("\"")
                .replace('‘', '\'')
                .replace('’', '\'')
                .replace("℃", "°C")
                .replace("℉", "°F")
                .replace("㎜", "mm");
        for (int i = 0; i < VULGAR_AS.length; i++) {
            text = text.replace(String.valueOf(VULGAR.charAt(i)), " " + VULGAR_AS[i]);
        }
        return text.strip();
    }

    private static UnreadableException refused(Dimension dimension, String got, String next) {
        return new UnreadableException(dimension.noun() + " is needed", got, dimension.allowed(), next);
    }
}
