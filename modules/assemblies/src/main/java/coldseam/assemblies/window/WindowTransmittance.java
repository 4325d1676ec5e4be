package coldseam.assemblies.window;

import coldseam.assemblies.internal.Arguments;
import coldseam.envelope.Opening;
import java.util.Optional;
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
     * A rectangular window of lights side by side, with the same frame on all sides and between them.
     *
     * @param width m, of the frame's outside
     * @param height m, of the frame's outside
     * @param glazed its parts
     * @throws IllegalArgumentException where a value is outside its range or the frame leaves no glass
     */
    public static WindowTransmittance rectangular(double width, double height, Opening.Glazed glazed) {
        Arguments.positive("the width of a window", width, "m");
        Arguments.positive("the height of a window", height, "m");
        int lights = glazed.lights();
        double visible = Arguments.between(
                "the visible width of a frame",
                glazed.frameWidth(),
                0,
                Math.min(width / (lights + 1), height / 2),
                "m");
        double w = (width - (lights + 1) * visible) / lights;
        double h = height - 2 * visible;
        return new WindowTransmittance(
                Lists.immutable.of(new Pane(lights * w * h, glazed.glass(), lights * 2 * (w + h), glazed.edge())),
                Lists.immutable.of(new Frame(width * height - lights * w * h, glazed.frame())));
    }

    /** The parts of an opening that is described by them; empty where U of the whole is declared. */
    public static Optional<WindowTransmittance> of(Opening opening) {
        return opening.rating()
                .match(
                        declared -> Optional.empty(),
                        glazed -> Optional.of(rectangular(opening.width(), opening.height(), glazed)));
    }

    /** U of a window or door, W/(m²·K), declared or of its parts. */
    public static double transmittance(Opening opening) {
        return opening.rating()
                .match(
                        Opening.Declared::whole,
                        glazed -> rectangular(opening.width(), opening.height(), glazed)
                                .transmittance());
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
