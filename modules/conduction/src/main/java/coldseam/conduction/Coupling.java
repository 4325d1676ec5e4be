package coldseam.conduction;

/**
 * The thermal coupling coefficient between two environments.
 *
 * @param first environment
 * @param second environment
 * @param value W/(m·K) of a planar section, W/K of an axisymmetric one and of a body
 */
public record Coupling(String first, String second, Interval value) {

    /** The interval's width over its middle; 0 where it has no width, infinite where the coupling is. */
    public double relativeWidth() {
        double width = value.width();
        return width == 0 ? 0 : width == Double.POSITIVE_INFINITY ? width : width / value.middle();
    }
}
