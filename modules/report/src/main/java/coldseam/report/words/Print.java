package coldseam.report.words;

import coldseam.conduction.Interval;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.Format;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.PenLine;
import java.math.BigDecimal;
import java.math.MathContext;

/**
 * Numbers as reports and the terminal print them: always with their unit, intervals as people read them or with both bounds.
 *
 * @param units to print in
 */
public record Print(UnitSystem units) {

    /** In the unit that is printed: the last digit that one seam's loss is read to. */
    private static final double LEAST_LOSS = 0.01;

    /** A number with its unit. */
    public String of(double value, Dimension dimension) {
        return units.format(value, dimension);
    }

    /** An interval as people read it, with its unit. */
    public String of(Interval interval, Dimension dimension) {
        return units.readable(interval.lower(), interval.upper(), dimension);
    }

    /** The head of a column, with the unit that its numbers go without. */
    public String head(String what, Dimension dimension) {
        return what + ", " + units.label(dimension);
    }

    /** An interval as people read it, in a column that names the unit. */
    public String readable(Interval interval, Dimension dimension) {
        return units.readableNumber(interval.lower(), interval.upper(), dimension);
    }

    /** An interval with both bounds, rounded outwards, with its unit. */
    public String bounds(Interval interval, Dimension dimension) {
        return units.interval(interval.lower(), interval.upper(), dimension);
    }

    /** An interval rounded outwards, in a column that names the unit. */
    public String number(Interval interval, Dimension dimension) {
        return units.intervalNumber(interval.lower(), interval.upper(), dimension);
    }

    /** A number in a column that names the unit. */
    public String number(double value, Dimension dimension) {
        return units.number(value, dimension);
    }

    /** What is lost, as people read it, with its unit; what would read as nothing is told from nothing. */
    public String lost(Interval loss) {
        double most = units.value(loss.upper(), Dimension.HEAT_LOSS_COEFFICIENT);
        if (most <= 0) {
            return "nothing";
        }
        return most < LEAST_LOSS / 2
                ? "under " + LEAST_LOSS + " " + units.label(Dimension.HEAT_LOSS_COEFFICIENT)
                : of(loss, Dimension.HEAT_LOSS_COEFFICIENT);
    }

    /** The length of a run: metres with two digits, or feet and inches. */
    public String length(double metres) {
        return units == UnitSystem.US
                ? units.format(metres, Dimension.LENGTH)
                : units.number(metres, Dimension.LENGTH) + " " + units.label(Dimension.LENGTH);
    }

    /** A pen line's neck, as is left of it at least, or that it is broken. */
    public String neck(PenLine line) {
        return line.unbroken() ? units.format(line.leastNeck(), Dimension.THICKNESS) : "broken";
    }

    /** A share in whole percent. */
    public static String percent(double share) {
        return Math.round(share * 100) + " %";
    }

    /** A share as an interval in percent, rounded outwards to tenths. */
    public static String percent(Interval share) {
        double low = Math.floor(share.lower() * 1000) / 10;
        double high = Math.ceil(share.upper() * 1000) / 10;
        return low == high ? Format.of("%.1f %%", low) : Format.of("%.1f…%.1f %%", low, high);
    }

    /** A size of which two digits matter, with its unit. */
    public String round(double value, Dimension dimension) {
        return units.number(units.inside(round(units.value(value, dimension)), dimension), dimension) + " "
                + units.label(dimension);
    }

    /** To two digits that count. */
    static double round(double value) {
        return new BigDecimal(value).round(new MathContext(2)).doubleValue();
    }

    /** A temperature factor. */
    public static String factor(double factor) {
        return Format.of("%.2f", factor);
    }

    /** An amount of money in whole units; what would read as none is told from none. */
    public static String money(double amount) {
        return money(amount, "%.0f");
    }

    /** Likewise, its thousands apart. */
    public static String spacedMoney(double amount) {
        return money(amount, "%,.0f").replace(',', '\u2009');
    }

    private static String money(double amount, String format) {
        return amount > 0 && amount < 0.5 ? "under 1" : Format.of(format, amount);
    }
}
