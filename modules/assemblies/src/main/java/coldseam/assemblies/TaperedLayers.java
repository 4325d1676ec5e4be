package coldseam.assemblies;

import coldseam.assemblies.internal.Arguments;
import coldseam.envelope.Layer;
import coldseam.envelope.Layer.Taper.Shape;

/**
 * Transmittance of a field whose insulation is cut to falls.
 *
 * <p>With R0 the resistance of all else, surfaces included, R2 the greatest resistance of the tapered part and x = R2/R0:
 *
 * <ul>
 *   <li>rectangle: U = ln(1 + x)/R2
 *   <li>triangle thickest at the apex: U = (2/R2)·((1 + 1/x)·ln(1 + x) − 1)
 *   <li>triangle thinnest at the apex: U = (2/R2)·(1 − ln(1 + x)/x)
 * </ul>
 *
 * <p>Valid for slopes up to 5 %. Source: ISO 6946:2017 annex E (from memory); each is the mean of 1/(R0 + R) over the field, which
 * a test integrates.
 */
public final class TaperedLayers {

    /** Below this x the closed forms lose digits to cancellation and the series to the second order is exact to round-off. */
    private static final double SERIES_BELOW = 1e-5;

    private TaperedLayers() {}

    /**
     * U of a field that starts from no taper.
     *
     * @param shape in plan
     * @param rest R0, m²·K/W, greater than zero
     * @param greatest R2, m²·K/W, zero or more
     * @return W/(m²·K)
     * @throws IllegalArgumentException outside these ranges
     */
    public static double transmittance(Shape shape, double rest, double greatest) {
        Arguments.positive("the resistance beside a tapered layer", rest, "m²·K/W");
        Arguments.notNegative("the greatest resistance of a tapered layer", greatest, "m²·K/W");
        double x = greatest / rest;
        double log = Math.log1p(x);
        if (x < SERIES_BELOW) {
            return switch (shape) {
                case RECTANGLE -> (1 - x / 2 + x * x / 3) / rest;
                case TRIANGLE_THICKEST_AT_APEX -> (1 - x / 3 + x * x / 6) / rest;
                case TRIANGLE_THINNEST_AT_APEX -> (1 - 2 * x / 3 + x * x / 2) / rest;
            };
        }
        return switch (shape) {
            case RECTANGLE -> log / greatest;
            case TRIANGLE_THICKEST_AT_APEX -> 2 / greatest * ((1 + 1 / x) * log - 1);
            case TRIANGLE_THINNEST_AT_APEX -> 2 / greatest * (1 - log / x);
        };
    }

    /** The share of a field's greatest extra thickness that it has in the mean: the volume under the slope. */
    static double meanShare(Shape shape) {
        return switch (shape) {
            case RECTANGLE -> 0.5;
            case TRIANGLE_THICKEST_AT_APEX -> 1.0 / 3;
            case TRIANGLE_THINNEST_AT_APEX -> 2.0 / 3;
        };
    }

    /** m, of a layer on average: where it is cut to falls, what its volume comes to. */
    public static double meanThickness(Layer layer) {
        return layer.taper()
                .map(taper -> layer.thickness() + meanShare(taper.shape()) * (taper.thickest() - layer.thickness()))
                .orElse(layer.thickness());
    }
}
