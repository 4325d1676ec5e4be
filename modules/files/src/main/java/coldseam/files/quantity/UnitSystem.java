package coldseam.files.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The unit systems reports are printed in. */
public enum UnitSystem {
    /** Metres, watts, kelvins. */
    SI,
    /** Feet and inches, Btu, degrees Fahrenheit. */
    US;

    /** Most digits an interval may have beyond the dimension's own. */
    private static final int MORE_DIGITS = 3;

    /** Below this length, m, SI shows millimetres. */
    private static final double SHOWN_IN_MILLIMETRES = 1;

    private static final int SIXTEENTHS = 16;
    private static final double WHOLE_MILLIMETRES = 1000;
    private static final double INCH = 0.0254;

    /** m, 100 ft: a length of so much is a sum, which nobody reads off a tape to the sixteenth. */
    private static final double SUMMED = 1200 * INCH;

    /** Of an inch. */
    private static final int MILS = 1000;

    /** Of a length in a sentence: how far the even measure that a trade would say may be from it. */
    private static final double EVEN = 0.02;

    /** Not in braces: what a file is to say stands there. */
    private static final Pattern MEASURE_IN_WORDS = Pattern.compile(
            "(?<![\\w.])(?:(-?\\d+(?:\\.\\d+)?) (m²·K/W|m²|mm|m)(?![\\w²³·/])|(half )?a metre\\b)(?![^{]*\\})");

    /** Before a number that is new there: an 8, an 11, an 18 and an 80, and a of any other. */
    private static final Pattern ARTICLE = Pattern.compile("\\b([Aa])n? $");

    private static final Pattern BEGINS_WITH_A_VOWEL = Pattern.compile("(8|1[18](?!\\d)).*");

    /** The unit as printed, such as {@code W/(m²·K)}; empty for plain numbers. */
    public String label(Dimension dimension) {
        return dimension.display(this).label();
    }

    /**
     * The value in {@link #label}, not rounded.
     *
     * @param inside in the dimension's inside unit
     */
    public double value(double inside, Dimension dimension) {
        double value = inside / dimension.display(this).factor();
        return dimension == Dimension.TEMPERATURE && this == US ? 1.8 * inside + 32 : value;
    }

    /** What {@link #value} is of: the value in the dimension's inside unit. */
    public double inside(double value, Dimension dimension) {
        return dimension == Dimension.TEMPERATURE && this == US
                ? (value - 32) / 1.8
                : value * dimension.display(this).factor();
    }

    /** The number alone, for a column headed by {@link #label}. */
    public String number(double inside, Dimension dimension) {
        return number(inside, dimension, dimension.display(this).decimals());
    }

    /** The number alone with so many digits after the point. */
    public String number(double inside, Dimension dimension, int decimals) {
        return rounded(value(inside, dimension), decimals, RoundingMode.HALF_EVEN);
    }

    /**
     * Number and unit. Lengths come as people read them: {@code 240 mm}, {@code 12.30 m}, {@code 9 ft 2 in},
     * {@code 3 1/2 in}, and below the half of a sixteenth {@code 8 mil}.
     */
    public String format(double inside, Dimension dimension) {
        if (!Double.isFinite(inside)) {
            return number(inside, dimension);
        }
        if (this == SI && dimension == Dimension.LENGTH && Math.abs(inside) < SHOWN_IN_MILLIMETRES) {
            return format(inside, Dimension.THICKNESS);
        }
        if (this == SI && dimension == Dimension.THICKNESS) {
            // 12.5 mm boards and 0.2 mm foils keep what a whole number would hide.
            return number(inside, dimension, leastDecimals(value(inside, dimension), 2)) + " mm";
        }
        if (this == US && (dimension == Dimension.LENGTH || dimension == Dimension.THICKNESS)) {
            return feetAndInches(inside, dimension == Dimension.LENGTH);
        }
        return withUnit(number(inside, dimension), dimension);
    }

    /** Number and unit, the number with as many more digits as it takes to be told from another beside it, at most three. */
    public String apart(double inside, double other, Dimension dimension) {
        int own = dimension.display(this).decimals();
        for (int more = 0; more < MORE_DIGITS; more++) {
            String told = number(inside, dimension, own + more);
            if (!told.equals(number(other, dimension, own + more))) {
                return withUnit(told, dimension);
            }
        }
        return withUnit(number(inside, dimension, own + MORE_DIGITS), dimension);
    }

    /**
     * A proven interval: {@code 0.0412…0.0413 W/(m·K)}. Rounded outwards, so that what is printed always holds what was
     * proven; it gets as many more digits as it takes not to be printed more than three times as wide, but at most three
     * more. One number where both bounds are equal.
     *
     * @param lower in the dimension's inside unit
     * @param upper not below it
     */
    public String interval(double lower, double upper, Dimension dimension) {
        return withUnit(intervalNumber(lower, upper, dimension), dimension);
    }

    /**
     * A proven interval as people read it: one number to the digits that inputs allow, where the interval is narrower than its
     * last digit; otherwise both bounds to these digits, rounded outwards. The interval itself stands in registers and data.
     *
     * @param lower in the dimension's inside unit
     * @param upper not below it
     */
    public String readable(double lower, double upper, Dimension dimension) {
        return withUnit(readableNumber(lower, upper, dimension), dimension);
    }

    /** What something is at least, with as many digits, rounded down. */
    public String atLeast(double value, Dimension dimension) {
        double least = value(value, dimension);
        return withUnit(rounded(least, readableDecimals(Math.abs(least), dimension), RoundingMode.FLOOR), dimension);
    }

    /** The same without its unit, for a column headed by {@link #label}. */
    public String readableNumber(double lower, double upper, Dimension dimension) {
        double low = value(lower, dimension);
        double high = value(upper, dimension);
        int decimals = readableDecimals(Math.max(Math.abs(low), Math.abs(high)), dimension);
        return high - low < Math.pow(10, -decimals)
                ? rounded((low + high) / 2, decimals, RoundingMode.HALF_EVEN)
                : rounded(low, decimals, RoundingMode.FLOOR) + "…" + rounded(high, decimals, RoundingMode.CEILING);
    }

    /**
     * A sentence as it is said in this system: "300 mm above the ground" becomes "12 in (300 mm) above the ground". Whole
     * millimetres and metres are a trade's: they come even, in whole inches where these are within two per cent. What has
     * decimals was measured and comes to the sixteenth. What was written stays beside. What stands in braces is to be written
     * to a file, and stays alone.
     */
    public String told(String sentence) {
        if (this == SI) {
            return sentence;
        }
        StringBuilder told = new StringBuilder();
        int done = 0;
        Matcher found = MEASURE_IN_WORDS.matcher(sentence);
        while (found.find()) {
            String inches = inInches(found);
            String article = BEGINS_WITH_A_VOWEL.matcher(inches).matches() ? "$1n " : "$1 ";
            told.append(ARTICLE.matcher(sentence.substring(done, found.start())).replaceFirst(article))
                    .append(inches)
                    .append(" (")
                    .append(found.group())
                    .append(')');
            done = found.end();
        }
        return told.append(sentence.substring(done)).toString();
    }

    /**
     * What a rule names, such as a code's 36 in or a trade's 150 mm, of which the plain conversion reads as if somebody had
     * measured it: here to the whole millimetre or the even inch, with what was written beside.
     *
     * @param inside a length or an area, in the dimension's inside unit
     * @param own the units that the rule is written in
     */
    public String rule(double inside, Dimension dimension, UnitSystem own) {
        String written = own.format(inside, dimension);
        if (this == own) {
            return written;
        }
        return this == US
                ? told(written)
                : format(Math.rint(inside * WHOLE_MILLIMETRES) / WHOLE_MILLIMETRES, dimension) + " (" + written + ")";
    }

    private static String inInches(MatchResult found) {
        if (found.group(1) == null) {
            return even(found.group(3) == null ? 1 : 0.5);
        }
        double value = Double.parseDouble(found.group(1));
        switch (found.group(2)) {
            case "m²·K/W":
                return US.format(value, Dimension.RESISTANCE);
            case "m²":
                return US.format(value, Dimension.AREA);
            default:
                double metres = found.group(2).equals("mm") ? value / 1000 : value;
                return found.group(1).contains(".") ? measured(metres) : even(metres);
        }
    }

    private static String even(double metres) {
        for (int parts : new int[] {1, 2, 4, 8}) {
            double even = Math.rint(metres / INCH * parts) / parts * INCH;
            if (Math.abs(even - metres) <= EVEN * metres) {
                return feetAndInches(even, false);
            }
        }
        return measured(metres);
    }

    private static String measured(double metres) {
        return 0 < metres && metres < INCH / SIXTEENTHS
                ? Math.round(metres / INCH * MILS) + " mil"
                : feetAndInches(metres, Math.abs(metres) >= 1);
    }

    private static int readableDecimals(double size, Dimension dimension) {
        return switch (dimension) {
            case LINEAR_TRANSMITTANCE, POINT_TRANSMITTANCE -> 3;
            // Of a whole house a tenth; of one seam what would else be nothing.
            case HEAT_LOSS_COEFFICIENT -> size >= 1 ? 1 : 2;
            case POWER -> 0;
            default -> dimension.display(SI).decimals();
        };
    }

    /** The interval without its unit. */
    public String intervalNumber(double lower, double upper, Dimension dimension) {
        if (!(lower <= upper)) {
            throw new IllegalArgumentException("an interval needs lower <= upper; got " + lower + " and " + upper);
        }
        if (lower == upper) {
            return number(lower, dimension);
        }
        return outwards(
                value(lower, dimension),
                value(upper, dimension),
                dimension.display(this).decimals());
    }

    /**
     * A proven interval of a number that has no dimension of its own here, to as many significant digits at least, rounded
     * outwards as {@link #interval} is.
     *
     * @param lower may be infinite
     * @param upper not below it
     * @param digits significant ones of the larger bound, at least 1
     */
    public static String significant(double lower, double upper, int digits) {
        double size = Math.max(Math.abs(lower), Math.abs(upper));
        boolean finite = size > 0 && size < Double.POSITIVE_INFINITY;
        int decimals = finite ? Math.max(0, digits - 1 - (int) Math.floor(Math.log10(size))) : 0;
        return outwards(lower, upper, decimals);
    }

    private static String outwards(double from, double to, int least) {
        int decimals = least;
        while (decimals < least + MORE_DIGITS && 3 * (to - from) < width(from, to, decimals)) {
            decimals++;
        }
        String low = rounded(from, decimals, RoundingMode.FLOOR);
        String high = rounded(to, decimals, RoundingMode.CEILING);
        return low.equals(high) ? low : low + "…" + high;
    }

    private static double width(double from, double to, int decimals) {
        if (!Double.isFinite(to - from)) {
            return Double.POSITIVE_INFINITY;
        }
        return decimal(to)
                .setScale(decimals, RoundingMode.CEILING)
                .subtract(decimal(from).setScale(decimals, RoundingMode.FLOOR))
                .doubleValue();
    }

    private String withUnit(String number, Dimension dimension) {
        String label = label(dimension);
        return label.isEmpty() ? number : number + " " + label;
    }

    private static String rounded(double value, int decimals, RoundingMode mode) {
        if (!Double.isFinite(value)) {
            return Double.isNaN(value) ? "not known" : value > 0 ? "∞" : "-∞";
        }
        BigDecimal result = decimal(value).setScale(decimals, mode);
        return result.signum() == 0 ? result.abs().toPlainString() : result.toPlainString();
    }

    /** The shortest decimal that is this double: what a person would have typed. */
    private static BigDecimal decimal(double value) {
        return new BigDecimal(Double.toString(value));
    }

    private static int leastDecimals(double value, int most) {
        BigDecimal all = decimal(value).setScale(most, RoundingMode.HALF_EVEN);
        return Math.max(0, all.stripTrailingZeros().scale());
    }

    private static String feetAndInches(double metres, boolean withFeet) {
        long sixteenths = Math.abs(metres) < SUMMED
                ? Math.round(Math.abs(metres) / INCH * SIXTEENTHS)
                : Math.round(Math.abs(metres) / INCH) * SIXTEENTHS;
        if (sixteenths == 0 && Math.round(metres / INCH * MILS) != 0) {
            return Math.round(metres / INCH * MILS) + " mil";
        }
        long perFoot = 12L * SIXTEENTHS;
        long feet = withFeet ? sixteenths / perFoot : 0;
        long rest = sixteenths - feet * perFoot;
        long inches = rest / SIXTEENTHS;
        long part = rest % SIXTEENTHS;
        StringBuilder out = new StringBuilder(metres < 0 && sixteenths > 0 ? "-" : "");
        if (feet > 0) {
            out.append(feet).append(" ft");
        }
        if (inches > 0 || part > 0 || feet == 0) {
            out.append(feet > 0 ? " " : "");
            if (inches > 0 || part == 0) {
                out.append(inches);
            }
            if (part > 0) {
                long divisor = Math.min(Long.lowestOneBit(part), SIXTEENTHS);
                out.append(inches > 0 ? " " : "")
                        .append(part / divisor)
                        .append('/')
                        .append(SIXTEENTHS / divisor);
            }
            out.append(" in");
        }
        return out.toString();
    }
}
