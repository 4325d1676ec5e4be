package coldseam.envelope;

import coldseam.files.Default;
import coldseam.files.Noun;

/**
 * What lies on the far side of a surface.
 *
 * @param kind of neighbour
 * @param neighbour name of the unheated space or party; empty outdoors and in the ground
 * @param factor temperature factor b: 1 outdoors, 0 beside a heated neighbour, between for unheated spaces
 * @param source where the factor comes from; empty where nobody says
 */
@Noun("an exposure")
public record Exposure(
        Kind kind,
        @Default("") String neighbour,
        double factor,
        @Default("") String source) {

    /** Of a factor of which nobody says where it comes from. */
    public Exposure(Kind kind, String neighbour, double factor) {
        this(kind, neighbour, factor, "");
    }

    /** Kinds of neighbour. */
    public enum Kind {
        OUTDOORS,
        GROUND,
        /** A ventilated or closed crawl space under a suspended floor. */
        CRAWL_SPACE,
        UNHEATED,
        PARTY
    }

    /** Open air. */
    public static Exposure outdoors() {
        return new Exposure(Kind.OUTDOORS, "", 1);
    }

    public static Exposure ground() {
        return new Exposure(Kind.GROUND, "", 1);
    }
}
