package coldseam.envelope;

import coldseam.files.Noun;
import coldseam.files.Positional;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * A kind of right-angled corner where three or more edges meet, for which a detail may be drawn: all that it decides, read from
 * its file.
 *
 * <p>Its three surfaces are named, each standing for the axis of its outward normal; the third is level, or an internal floor,
 * whose axis runs upwards.
 */
public final class CornerKind extends BridgeKind {

    private static final ImmutableList<CornerKind> ALL =
            KindFile.all("corners", KindFile.OfCorner.class).collect(CornerKind::new);

    private final KindFile.OfCorner file;

    private CornerKind(KindFile.OfCorner file) {
        super(file);
        this.file = file;
    }

    /** The side of a surface's inner face. */
    public enum Side {
        /** Where the rooms lie behind it. */
        BEHIND,
        /** Where its layers and outdoors are; of an internal floor, above. */
        BEFORE
    }

    /**
     * An edge that ends in such a corner.
     *
     * @param runs to which side of a surface it runs
     * @param surface along whose normal it runs
     */
    @Noun("an edge of a corner")
    public record Edge(JunctionKind kind, Side runs, String surface) {}

    /** An eighth of the space about a corner, by the side of each surface. */
    @Positional
    public record Room(Side first, Side second, Side third) {}

    /** Every kind, in its order. */
    public static ImmutableList<CornerKind> all() {
        return ALL;
    }

    /** Names of its three surfaces. */
    public ImmutableList<String> surfaces() {
        return file.surfaces();
    }

    /** The edges that meet in it. */
    public ImmutableList<Edge> edges() {
        return file.edges();
    }

    /** The eighths of the space that are rooms. */
    public ImmutableList<Room> rooms() {
        return file.rooms();
    }

    /** Whether the third surface looks up, or is a floor. */
    public boolean upwards() {
        return file.faces() == Facing.UP;
    }
}
