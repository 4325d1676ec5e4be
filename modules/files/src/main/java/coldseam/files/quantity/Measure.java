package coldseam.files.quantity;

/**
 * A factor to base units, with the powers of the base units.
 *
 * @param factor how many coherent base units one of this is
 * @param kilogram power
 * @param metre power
 * @param second power
 * @param kelvin power
 * @param degree power of the plane angle, kept apart so that 12 ° is no share
 */
record Measure(double factor, int kilogram, int metre, int second, int kelvin, int degree) {

    static final Measure ONE = new Measure(1, 0, 0, 0, 0, 0);

    Measure times(Measure other) {
        return new Measure(
                factor * other.factor,
                kilogram + other.kilogram,
                metre + other.metre,
                second + other.second,
                kelvin + other.kelvin,
                degree + other.degree);
    }

    Measure power(int exponent) {
        double scaled = exponent >= 0 ? Math.pow(factor, exponent) : 1 / Math.pow(factor, -exponent);
        return new Measure(
                scaled, kilogram * exponent, metre * exponent, second * exponent, kelvin * exponent, degree * exponent);
    }

    boolean sameKindAs(Measure other) {
        return kilogram == other.kilogram
                && metre == other.metre
                && second == other.second
                && kelvin == other.kelvin
                && degree == other.degree;
    }
}
