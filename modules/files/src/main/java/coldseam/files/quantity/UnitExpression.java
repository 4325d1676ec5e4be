package coldseam.files.quantity;

import java.util.Optional;
import java.util.regex.Pattern;
import org.eclipse.collections.api.factory.Maps;
import org.eclipse.collections.api.map.MutableMap;

/**
 * Reads a unit as people write it: {@code W/(m·K)}, {@code W/mK}, {@code W/(m2.K)}, {@code W·m⁻²·K⁻¹},
 * {@code Btu/h-ft2-F}.
 *
 * <p>Everything after a slash up to the next one divides, so {@code W/m²K}, {@code W/m²·K} and {@code W/m²/K} all mean
 * W/(m²·K), as the trade writes them. A run of letters that is no unit is split into units, so {@code mK} is metre times
 * kelvin; no unit here is a millikelvin.
 */
final class UnitExpression {

    private static final Pattern PER = Pattern.compile("\\bper\\b");
    private static final Pattern AROUND_BARS = Pattern.compile("\\s*([/()])\\s*");
    private static final Pattern POINT = Pattern.compile("\\s*[·⋅∙•*×]\\s*");
    private static final Pattern AFTER_DEGREE = Pattern.compile("°\\s+");
    private static final Pattern SPACES = Pattern.compile("\\s+");
    private static final MutableMap<String, Measure> UNITS = units();
    private static final String SUPERSCRIPTS = "⁰¹²³⁴⁵⁶⁷⁸⁹";
    private static final int LONGEST_RUN = 24;

    private final String text;
    private int at;

    private UnitExpression(String text) {
        this.text = text;
    }

    /** Its measure; refuses what is no unit. */
    static Measure parse(String written) {
        return tryParse(written).orElseThrow(() -> new IllegalArgumentException("not a unit: " + written));
    }

    /** Its measure, or empty where it is no unit. */
    static Optional<Measure> tryParse(String written) {
        UnitExpression reader = new UnitExpression(normalised(written));
        try {
            Measure measure = reader.quotient();
            return reader.at == reader.text.length() ? Optional.of(measure) : Optional.empty();
        } catch (NotAUnit none) {
            return Optional.empty();
        }
    }

    private Measure quotient() {
        Measure result = product();
        while (take('/')) {
            result = result.times(product().power(-1));
        }
        return result;
    }

    private Measure product() {
        Measure result = factor();
        while (at < text.length() && text.charAt(at) != '/' && text.charAt(at) != ')') {
            take('·');
            result = result.times(factor());
        }
        return result;
    }

    private Measure factor() {
        if (take('(')) {
            Measure inner = quotient();
            if (!take(')')) {
                throw new NotAUnit();
            }
            return inner.power(exponent());
        }
        if (take('1')) {
            return Measure.ONE;
        }
        int start = at;
        while (at < text.length() && isUnitLetter(text.charAt(at))) {
            at++;
        }
        if (at == start || at - start > LONGEST_RUN) {
            throw new NotAUnit();
        }
        String run = text.substring(start, at);
        boolean[] splits = splits(run);
        // The exponent belongs to the last unit of a run: m2K is m²·K.
        for (int piece = run.length(); piece > 0; piece--) {
            Measure whole = UNITS.get(run.substring(0, piece));
            boolean all = piece == run.length();
            if (whole != null && (all || isSymbol(run.substring(0, piece)) && splits[piece])) {
                at = start + piece;
                return all ? whole.power(exponent()) : whole;
            }
        }
        throw new NotAUnit();
    }

    /** Words such as inch stand alone: inchs is a slip, not an inch times a second. */
    private static boolean isSymbol(String unit) {
        return unit.length() <= 3;
    }

    /** For each place of a run whether what follows it is a row of units; from the end, so that each is asked once. */
    private static boolean[] splits(String run) {
        boolean[] splits = new boolean[run.length() + 1];
        splits[run.length()] = true;
        for (int from = run.length() - 1; from > 0; from--) {
            for (int to = from + 1; to <= run.length() && !splits[from]; to++) {
                String unit = run.substring(from, to);
                splits[from] = splits[to] && isSymbol(unit) && UNITS.containsKey(unit);
            }
        }
        return splits;
    }

    private int exponent() {
        take('^');
        boolean negative = take('-');
        if (at < text.length() && text.charAt(at) >= '1' && text.charAt(at) <= '9') {
            int digit = text.charAt(at++) - '0';
            return negative ? -digit : digit;
        }
        if (negative) {
            throw new NotAUnit();
        }
        return 1;
    }

    private boolean take(char wanted) {
        if (at < text.length() && text.charAt(at) == wanted) {
            at++;
            return true;
        }
        return false;
    }

    private static boolean isUnitLetter(char c) {
        return Character.isLetter(c) || c == '°' || c == '%' || c == '\'' || c == '"';
    }

    /** Whether a unit is letters, digits and bars: so are nearly all, and patterns take their time. */
    private static boolean isPlain(String written) {
        for (int i = 0; i < written.length(); i++) {
            char c = written.charAt(i);
            if (c > 'z' || c != '/' && !Character.isLetterOrDigit(c)) {
                return false;
            }
        }
        return !written.contains("per");
    }

    private static String respelt(String text) {
        String barred = PER.matcher(text).replaceAll("/");
        String tight = AROUND_BARS.matcher(barred).replaceAll("$1");
        String pointed = POINT.matcher(tight)
                .replaceAll("·")
                .replace('′', '\'')
                .replace('″', '"')
                .replace('º', '°');
        return SPACES.matcher(AFTER_DEGREE.matcher(pointed).replaceAll("°")).replaceAll("·");
    }

    /** One spelling for points, powers, primes and spaces. */
    private static String normalised(String written) {
        StringBuilder out = new StringBuilder();
        String text = isPlain(written) ? written : respelt(written.strip());
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            int power = SUPERSCRIPTS.indexOf(c);
            boolean letterFollows = i + 1 < text.length() && isUnitLetter(text.charAt(i + 1));
            if (power >= 0) {
                out.append((char) ('0' + power));
            } else if (c == '⁻' || c == '−') {
                out.append('-');
            } else if ((c == '.' || c == '-') && i > 0 && letterFollows) {
                out.append('·');
            } else {
                out.append(c);
            }
        }
        return out.charAt(0) == '/' ? "1" + out : out.toString();
    }

    private static MutableMap<String, Measure> units() {
        MutableMap<String, Measure> map = Maps.mutable.empty();
        double inch = 0.0254;
        double foot = 0.3048;
        double pound = 0.45359237;
        double poundForce = 4.4482216152605;
        double btu = 1055.05585262;
        put(map, new Measure(1, 0, 1, 0, 0, 0), "m", "metre", "metres", "meter", "meters");
        put(map, new Measure(1e-3, 0, 1, 0, 0, 0), "mm", "millimetre", "millimetres", "millimeter", "millimeters");
        put(map, new Measure(1e-2, 0, 1, 0, 0, 0), "cm");
        put(map, new Measure(1e3, 0, 1, 0, 0, 0), "km");
        put(map, new Measure(1e-6, 0, 1, 0, 0, 0), "µm", "μm");
        put(map, new Measure(inch, 0, 1, 0, 0, 0), "in", "inch", "inches", "\"");
        put(map, new Measure(inch / 1000, 0, 1, 0, 0, 0), "mil", "mils");
        put(map, new Measure(foot, 0, 1, 0, 0, 0), "ft", "foot", "feet", "'");
        put(map, new Measure(3 * foot, 0, 1, 0, 0, 0), "yd");
        put(map, new Measure(5280 * foot, 0, 1, 0, 0, 0), "mi");
        put(map, new Measure(5280 * foot / 3600, 0, 1, -1, 0, 0), "mph");
        put(map, new Measure(1, 1, 0, 0, 0, 0), "kg");
        put(map, new Measure(1e-3, 1, 0, 0, 0, 0), "g");
        put(map, new Measure(pound, 1, 0, 0, 0, 0), "lb", "lbs");
        put(map, new Measure(1, 0, 0, 1, 0, 0), "s");
        put(map, new Measure(60, 0, 0, 1, 0, 0), "min");
        put(map, new Measure(3600, 0, 0, 1, 0, 0), "h", "hr", "hour", "hours");
        put(map, new Measure(86400, 0, 0, 1, 0, 0), "d", "day", "days");
        put(map, new Measure(1, 0, 0, 0, 1, 0), "K", "°C", "degC", "C");
        put(map, new Measure(5.0 / 9, 0, 0, 0, 1, 0), "°F", "degF", "F");
        put(map, new Measure(1, 1, 1, -2, 0, 0), "N");
        put(map, new Measure(1e3, 1, 1, -2, 0, 0), "kN");
        put(map, new Measure(poundForce, 1, 1, -2, 0, 0), "lbf");
        put(map, new Measure(1, 1, -1, -2, 0, 0), "Pa");
        put(map, new Measure(1e3, 1, -1, -2, 0, 0), "kPa");
        put(map, new Measure(1e6, 1, -1, -2, 0, 0), "MPa");
        put(map, new Measure(poundForce / (foot * foot), 1, -1, -2, 0, 0), "psf");
        put(map, new Measure(pound / (foot * foot * foot), 1, -3, 0, 0, 0), "pcf");
        put(map, new Measure(1, 1, 2, -2, 0, 0), "J");
        put(map, new Measure(1e3, 1, 2, -2, 0, 0), "kJ");
        put(map, new Measure(1e6, 1, 2, -2, 0, 0), "MJ");
        put(map, new Measure(1e9, 1, 2, -2, 0, 0), "GJ");
        put(map, new Measure(3600, 1, 2, -2, 0, 0), "Wh");
        put(map, new Measure(3.6e6, 1, 2, -2, 0, 0), "kWh");
        put(map, new Measure(3.6e9, 1, 2, -2, 0, 0), "MWh");
        put(map, new Measure(btu, 1, 2, -2, 0, 0), "Btu", "BTU", "btu");
        put(map, new Measure(1e3 * btu, 1, 2, -2, 0, 0), "kBtu");
        put(map, new Measure(1e6 * btu, 1, 2, -2, 0, 0), "MMBtu");
        put(map, new Measure(1e5 * btu, 1, 2, -2, 0, 0), "therm");
        put(map, new Measure(1, 1, 2, -3, 0, 0), "W");
        put(map, new Measure(1e3, 1, 2, -3, 0, 0), "kW");
        put(map, new Measure(1e-3, 1, 2, -3, 0, 0), "mW");
        put(map, new Measure(1, 0, 0, 0, 0, 1), "°", "deg", "degree", "degrees");
        put(map, new Measure(180 / Math.PI, 0, 0, 0, 0, 1), "rad");
        put(map, new Measure(0.01, 0, 0, 0, 0, 0), "%", "percent");
        return map;
    }

    private static void put(MutableMap<String, Measure> map, Measure measure, String... names) {
        for (String name : names) {
            map.put(name, measure);
        }
    }

    /** Ends the reading of what is no unit. */
    private static final class NotAUnit extends RuntimeException {
        NotAUnit() {
            super(null, null, false, false);
        }
    }
}
