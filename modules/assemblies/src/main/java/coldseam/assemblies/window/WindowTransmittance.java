package coldseam.assemblies.window;

import coldseam.assemblies.internal.Arguments;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;

/**
 * U of a window: Uw = (Σ Ag·Ug + Σ Af·Uf + Σ lg·ψg)/(Σ Ag + Σ Af).
 *
 * <p>Areas are as seen from the side on which they are larger for the frame and smaller for the glass. Source: ISO 10077-1:2017
 * clause 6 (from memory). The installation in the wall is a junction and not in here.
 *
 * @param panes glass, or opaque panels
 * @param frames sash and frame together, by profile
 */
public record WindowTransmittance(ImmutableList<Pane> panes, ImmutableList<Frame> frames) {

    /**
     * Checks that there is some area.
     *
     * @throws IllegalArgumentException where there is none
     */
    public WindowTransmittance {
        if (panes.isEmpty() && frames.isEmpty()) {
            throw new IllegalArgumentException("a window has neither pane nor frame; give at least one of them");
        }
    }

    /**
     * A pane.
     *
     * @param area Ag, m²
     * @param transmittance Ug, W/(m²·K), at its centre
     * @param perimeter lg, m, of its visible edge, the longer of both sides
     * @param edge ψg, W/(m·K), of spacer, glass and frame together
     */
    public record Pane(double area, double transmittance, double perimeter, double edge) {

        /**
         * Checks the values.
         *
         * @throws IllegalArgumentException where one is outside its range
         */
        public Pane {
            Arguments.positive("the area of a pane", area, "m²");
            Arguments.positive("the transmittance of a pane", transmittance, "W/(m²·K)");
            Arguments.notNegative("the perimeter of a pane", perimeter, "m");
            Arguments.notNegative("the linear transmittance of a pane's edge", edge, "W/(m·K)");
        }
    }

    /**
     * A part of the frame.
     *
     * @param area Af, m², the larger of its projections from indoors and outdoors
     * @param transmittance Uf, W/(m²·K)
     */
    public record Frame(double area, double transmittance) {

        /**
         * Checks the values.
         *
         * @throws IllegalArgumentException where one is outside its range
         */
        public Frame {
            Arguments.positive("the area of a frame", area, "m²");
            Arguments.positive("the transmittance of a frame", transmittance, "W/(m²·K)");
        }
    }

    /**
     * A rectangular window of one light with the same frame on all four sides.
     *
     * @param width m, of the frame's outside
     * @param height m, of the frame's outside
     * @param visible m, width of the frame as seen, less than half of either
     * @param glass Ug, W/(m²·K)
     * @param frame Uf, W/(m²·K)
     * @param edge ψg, W/(m·K)
     * @throws IllegalArgumentException where a value is outside its range
     */
    public static WindowTransmittance rectangular(
            double width, double height, double visible, double glass, double frame, double edge) {
        Arguments.positive("the width of a window", width, "m");
        Arguments.positive("the height of a window", height, "m");
        Arguments.between("the visible width of a frame", visible, 0, Math.min(width, height) / 2, "m");
        double w = width - 2 * visible;
        double h = height - 2 * visible;
        return new WindowTransmittance(
                Lists.immutable.of(new Pane(w * h, glass, 2 * (w + h), edge)),
                Lists.immutable.of(new Frame(width * height - w * h, frame)));
    }

    /** Aw, m². */
    public double area() {
        return panes.sumOfDouble(Pane::area) + frames.sumOfDouble(Frame::area);
    }

    /** Uw, W/(m²·K). */
    public double transmittance() {
        double heat = panes.sumOfDouble(pane -> pane.area() * pane.transmittance() + pane.perimeter() * pane.edge())
                + frames.sumOfDouble(frame -> frame.area() * frame.transmittance());
        return heat / area();
    }
}
