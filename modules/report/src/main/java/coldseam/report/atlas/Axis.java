package coldseam.report.atlas;

import coldseam.files.quantity.Format;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

/**
 * A scale with round numbers.
 *
 * @param least of the scale
 * @param most of the scale
 * @param step between numbers
 */
public record Axis(double least, double most, double step) {

    private static final double[] ROUND = {1, 2, 2.5, 5, 10};

    /** Around values, with about so many steps. */
    public static Axis around(double least, double most, int steps) {
        double span = Math.max(most - least, 1e-9);
        double rough = span / steps;
        double power = Math.pow(10, Math.floor(Math.log10(rough)));
        double step = power * 10;
        for (double round : ROUND) {
            if (round * power >= rough * (1 - 1e-9)) {
                step = round * power;
                break;
            }
        }
        return new Axis(step * Math.floor(least / step + 1e-9), step * Math.ceil(most / step - 1e-9), step);
    }

    /** Where a value lies, 0 to 1. */
    public double share(double value) {
        return (value - least) / (most - least);
    }

    public MutableList<Double> numbers() {
        MutableList<Double> out = Lists.mutable.empty();
        long count = Math.round((most - least) / step);
        for (long i = 0; i <= count; i++) {
            out.add(least + i * step);
        }
        return out;
    }

    /** A number with as many digits as the step needs. */
    public String text(double number) {
        int digits = 0;
        double left = step;
        while (digits < 6 && Math.abs(left - Math.rint(left)) > 1e-6) {
            left *= 10;
            digits++;
        }
        String text = Format.of("%." + digits + "f", number);
        return text.matches("-0(\\.0*)?") ? text.substring(1) : text;
    }
}
