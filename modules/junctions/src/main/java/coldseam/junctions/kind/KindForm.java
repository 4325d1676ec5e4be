package coldseam.junctions.kind;

import coldseam.assemblies.HeatFlow;
import coldseam.envelope.JunctionKind;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;

/**
 * The form of a kind's section: how its bands lie on paper and what else stands in it.
 *
 * @param meeting how the bands meet
 * @param second what the second band is
 * @param page how the section lies on the page
 * @param floorLines whether an internal floor has lines across the first band
 * @param ground whether the section stands in the ground
 */
public record KindForm(Meeting meeting, Second second, Page page, boolean floorLines, boolean ground) {

    /** How two bands meet. */
    public enum Meeting {
        /** They cross: a place is the meeting of a line of one and a line of the other. */
        CROSSING,
        /** They go on from one another: a place is a line across and a distance along. */
        END_TO_END
    }

    /** What the second band is. */
    public enum Second {
        /** Another surface of the shell. */
        SURFACE,
        /** The frame of a window or door, in the plane of the first band. */
        FRAME,
        /** A door that stands where a wall would. */
        DOOR,
        /** A floor, partition, ledger or slab that meets the one surface. */
        THING
    }

    /** How the section lies on the page. */
    enum Page {
        /** The second band goes up, outdoors is on the right. */
        SECOND_UP,
        /** The second band goes down, outdoors is on the right. */
        SECOND_DOWN,
        /** The first band goes down, outdoors is on the right. */
        FIRST_DOWN,
        /** The first band goes up, outdoors is on the right. */
        FIRST_UP,
        /** The first band goes left, outdoors is up. */
        FIRST_LEFT,
        /** Both bands fall alike to left and right, outdoors is up. */
        ASTRIDE
    }

    /** The names of what is in the plane of a frame: one band across, the frame's lines along. */
    public static final String FRAME = "frame";

    /** The band in whose place a door stands. */
    public static final String WALL = "wall";

    public static KindForm of(JunctionKind kind) {
        return switch (kind) {
            case SLAB_EDGE, EXISTING_SLAB_EDGE, PORCH_SLAB, CELLAR_SLAB_EDGE, STEPPED_FOOTING ->
                crossing(Second.SURFACE, Page.SECOND_UP, false, true);
            case SLAB_THRESHOLD -> crossing(Second.DOOR, Page.SECOND_UP, false, true);
            case BEARING_WALL_THROUGH_SLAB -> crossing(Second.THING, Page.SECOND_UP, false, true);
            case UNHEATED_BELOW_EDGE, CRAWL_SPACE_EDGE -> crossing(Second.SURFACE, Page.SECOND_UP, false, false);
            case OVERHANG_EDGE, WALL_TO_TERRACE, ROOF_STEP, DORMER_CHEEK ->
                crossing(Second.SURFACE, Page.SECOND_UP, true, false);
            case TERRACE_THRESHOLD -> crossing(Second.DOOR, Page.SECOND_UP, true, false);
            case WALL_UNDER_OVERHANG -> crossing(Second.SURFACE, Page.SECOND_DOWN, true, false);
            case OUTSIDE_CORNER,
                    INSIDE_CORNER,
                    PARTY_WALL,
                    EAVES,
                    EAVES_COLD_LOFT,
                    VERGE,
                    GABLE_COLD_LOFT,
                    FLAT_ROOF_EDGE,
                    PARAPET,
                    TERRACE_EDGE,
                    KNEE_WALL -> crossing(Second.SURFACE, Page.SECOND_DOWN, false, false);
            case INTERMEDIATE_FLOOR, VENEER_LEDGE, LEDGER, CANOPY, BALCONY ->
                crossing(Second.THING, Page.FIRST_DOWN, false, false);
            case PARTITION -> crossing(Second.THING, Page.FIRST_LEFT, false, false);
            case SILL -> crossing(Second.FRAME, Page.FIRST_DOWN, false, false);
            case HEAD, SHUTTER_BOX -> crossing(Second.FRAME, Page.FIRST_UP, false, false);
            case JAMB, ROOFLIGHT -> crossing(Second.FRAME, Page.FIRST_LEFT, false, false);
            case RIDGE, HIP, VALLEY -> endToEnd(Page.ASTRIDE);
            case TERRACE_TO_ROOF, WALL_THICKNESS_CHANGE, UNHEATED_NEIGHBOUR -> endToEnd(Page.FIRST_LEFT);
            case FOUNDATION_WALL_TOP -> endToEnd(Page.FIRST_DOWN);
        };
    }

    private static KindForm crossing(Second second, Page page, boolean floorLines, boolean ground) {
        return new KindForm(Meeting.CROSSING, second, page, floorLines, ground);
    }

    private static KindForm endToEnd(Page page) {
        return new KindForm(Meeting.END_TO_END, Second.SURFACE, page, false, false);
    }

    /** Whether both bands are surfaces of the shell. */
    public boolean twoSurfaces() {
        return second == Second.SURFACE;
    }

    /** Whether a window or door frame stands in the section. */
    public boolean framed() {
        return second == Second.FRAME || second == Second.DOOR;
    }

    /** The bands whose layers a drawing may paint, by name: those with an assembly. */
    public static ImmutableList<String> bands(JunctionKind kind) {
        return switch (of(kind).second()) {
            case SURFACE -> Lists.immutable.of(kind.first(), kind.second());
            case DOOR -> Lists.immutable.of(kind.first(), WALL);
            default -> Lists.immutable.of(kind.first());
        };
    }

    /** The keys of ranges, first axis first. */
    public static ImmutableList<String> axes(JunctionKind kind) {
        if (of(kind).meeting() == Meeting.END_TO_END) {
            return Lists.immutable.of("across", "along");
        }
        return Lists.immutable.of(kind.first(), of(kind).second() == Second.DOOR ? WALL : kind.second());
    }

    /** Which way heat leaves through a band, by its name. */
    public static HeatFlow heatFlow(String band) {
        return switch (band) {
            case "roof", "other roof", "deck", "ceiling" -> HeatFlow.UPWARDS;
            case "floor" -> HeatFlow.DOWNWARDS;
            default -> HeatFlow.HORIZONTAL;
        };
    }
}
