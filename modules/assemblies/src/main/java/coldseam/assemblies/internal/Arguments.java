package coldseam.assemblies.internal;

import coldseam.files.quantity.Format;

/** Guards that name what was asked, the value with its unit and what is allowed. Each is written so that NaN fails. */
public final class Arguments {

    private Arguments() {}

    /**
     * A finite number greater than zero.
     *
     * @throws IllegalArgumentException otherwise
     */
    public static double positive(String what, double value, String unit) {
        if (value > 0 && value < Double.POSITIVE_INFINITY) {
            return value;
        }
        throw refused(what, value, unit, "a finite value greater than 0");
    }

    /**
     * A finite number, zero or more.
     *
     * @throws IllegalArgumentException otherwise
     */
    public static double notNegative(String what, double value, String unit) {
        if (value >= 0 && value < Double.POSITIVE_INFINITY) {
            return value;
        }
        throw refused(what, value, unit, "a finite value of 0 or more");
    }

    /**
     * A number within limits, both allowed.
     *
     * @throws IllegalArgumentException otherwise
     */
    public static double within(String what, double value, double least, double most, String unit) {
        if (value >= least && value <= most) {
            return value;
        }
        throw refused(
                what, value, unit, Format.of("%s to %s %s", least, most, unit).strip());
    }

    /**
     * A number strictly between two limits.
     *
     * @throws IllegalArgumentException otherwise
     */
    public static double between(String what, double value, double low, double high, String unit) {
        if (value > low && value < high) {
            return value;
        }
        throw refused(
                what,
                value,
                unit,
                Format.of("more than %s and less than %s %s", low, high, unit).strip());
    }

    private static IllegalArgumentException refused(String what, double value, String unit, String allowed) {
        String shown = Format.of("%s %s", value, unit).strip();
        return new IllegalArgumentException(what + " is " + shown + "; allowed is " + allowed + ". Correct the input.");
    }
}
