package coldseam.envelope;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * A window or door.
 *
 * @param name unique
 * @param kind window or door
 * @param surface name of the surface it lies in
 * @param width m
 * @param height m
 * @param left m from the surface's left end seen from outdoors to the opening; centred where empty
 * @param sill m above the storey's floor
 * @param rating what is known of its thermal transmittance
 * @param frameDepth m, of the frame across the wall
 * @param setBack m, from the wall's outer face to the frame's outer face; in the middle of the insulation where empty
 * @param shutterBox whether a roller shutter's box sits over it
 * @param lightWell before it, where it states one
 * @param lintel what carries the masonry over it; empty where nobody says
 */
public record Opening(
        String name,
        Kind kind,
        String surface,
        double width,
        double height,
        OptionalDouble left,
        double sill,
        Rating rating,
        double frameDepth,
        OptionalDouble setBack,
        boolean shutterBox,
        Optional<LightWell> lightWell,
        Optional<Lintel> lintel) {

    /** Another in its place. */
    Opening with(Rating others, double itsDepth, OptionalDouble itsSetBack) {
        return with(others, itsDepth, itsSetBack, lintel);
    }

    /** The same under a lintel. */
    public Opening under(Optional<Lintel> one) {
        return with(rating, frameDepth, setBack, one);
    }

    private Opening with(Rating others, double itsDepth, OptionalDouble itsSetBack, Optional<Lintel> itsLintel) {
        return new Opening(
                name,
                kind,
                surface,
                width,
                height,
                left,
                sill,
                others,
                itsDepth,
                itsSetBack,
                shutterBox,
                lightWell,
                itsLintel);
    }

    /** The same, of which nobody says where its values are declared. */
    public Opening unsourced() {
        return with(
                rating.match(
                        it -> new Declared(it.whole(), it.frame()),
                        it -> new Glazed(it.glass(), it.frame(), it.frameWidth(), it.edge(), it.spacer(), it.lights())),
                frameDepth,
                setBack);
    }

    /** One without a shutter's box and a light well, of whose lintel nobody says anything. */
    public Opening(
            String name,
            Kind kind,
            String surface,
            double width,
            double height,
            OptionalDouble left,
            double sill,
            Rating rating,
            double frameDepth,
            OptionalDouble setBack) {
        this(
                name,
                kind,
                surface,
                width,
                height,
                left,
                sill,
                rating,
                frameDepth,
                setBack,
                false,
                Optional.empty(),
                Optional.empty());
    }

    /** What carries masonry over an opening. */
    public enum Lintel {
        CONCRETE,
        STEEL,
        TIMBER,
        /** Of the wall's own stone, brick or block. */
        ARCH
    }

    /** Kinds of opening. */
    public enum Kind {
        WINDOW,
        DOOR
    }

    /** Whether it is a window that is said to be in a gable, but not how high: nobody means the floor, which lies under the gable. */
    public boolean inGableWithoutSill() {
        return kind == Kind.WINDOW && sill == 0 && Body.Wall.isGable(surface);
    }

    /** U of the frame, W/(m²·K). */
    public double frameTransmittance() {
        return rating.frame();
    }

    /** What is known of an opening's thermal transmittance. */
    public sealed interface Rating {

        /** U of the frame, W/(m²·K). */
        double frame();

        /** Where its values are declared; empty where the house file does not say. */
        Optional<String> source();

        /** Whether the house file says where, and not that somebody guessed. */
        default boolean isSourced() {
            return source().filter(text -> !Provenance.isGuess(text)).isPresent();
        }

        /** One of both, by what is known. */
        default <T> T match(Function<Declared, T> declared, Function<Glazed, T> glazed) {
            return this instanceof Declared it ? declared.apply(it) : glazed.apply((Glazed) this);
        }
    }

    /**
     * U of the whole as its producer declares it.
     *
     * @param whole W/(m²·K), of frame and glass together
     * @param frame W/(m²·K), of the frame
     * @param source where both are declared, if it is said
     */
    public record Declared(double whole, double frame, Optional<String> source) implements Rating {

        /** One that nobody says where it is declared. */
        public Declared(double whole, double frame) {
            this(whole, frame, Optional.empty());
        }
    }

    /**
     * Glass, spacer and frame, of which U of the whole follows (ISO 10077-1).
     *
     * @param glass Ug, W/(m²·K), at its centre
     * @param frame Uf, W/(m²·K)
     * @param frameWidth m, of frame and sash together as seen, on all sides and between lights
     * @param edge psi of the glass edge, W/(m·K)
     * @param spacer the kind that edge was taken from; empty where the house file gives the value
     * @param lights of the same size side by side, at least one
     * @param source where they are declared, if it is said
     */
    public record Glazed(
            double glass,
            double frame,
            double frameWidth,
            double edge,
            Optional<Spacer> spacer,
            int lights,
            Optional<String> source)
            implements Rating {

        /** One that nobody says where it is declared. */
        public Glazed(double glass, double frame, double frameWidth, double edge, Optional<Spacer> spacer, int lights) {
            this(glass, frame, frameWidth, edge, spacer, lights, Optional.empty());
        }
    }

    /** Spacers with psi of the glass edge, for coated double or triple glass in a frame of wood or plastic. */
    public enum Spacer {
        /** Aluminium or steel: ISO 10077-1:2017 table G.1 (from memory). */
        METAL(0.08),
        /** With better thermal performance, such as plastic: ISO 10077-1:2017 table G.2 (from memory). */
        IMPROVED(0.06);

        private final double edge;

        Spacer(double edge) {
            this.edge = edge;
        }

        /** W/(m·K). */
        public double edge() {
            return edge;
        }
    }
}
