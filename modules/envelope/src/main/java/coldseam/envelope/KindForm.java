package coldseam.envelope;

import coldseam.files.Default;
import coldseam.files.Doc;
import coldseam.files.Noun;

/**
 * The form of a kind's section: how its bands lie on paper and what else stands in it.
 *
 * @param meeting how the bands meet
 * @param second what the second band is
 * @param page how the section lies on the page
 * @param floorLines whether an internal floor has lines across the first band
 * @param ground whether the section stands in the ground
 */
@Noun("the form of a section")
public record KindForm(
        @Doc("How its bands meet.") @Default("crossing") Meeting meeting,

        @Doc("What the second band is.") @Default("surface") Second second,

        @Doc("How it lies on the page.") Page page,

        @Doc("Whether an internal floor has lines across the first band.") @Default("false")
        boolean floorLines,

        @Doc("Whether it stands in the ground.") @Default("false")
        boolean ground) {

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
    public enum Page {
        /** The second band goes up, outdoors is on the right; in the ground the first lies level, however the second leans. */
        SECOND_UP,
        /** The second band goes down, outdoors is on the right. */
        SECOND_DOWN,
        /** The first band goes down, outdoors is on the right. */
        FIRST_DOWN,
        /** The first band goes up, outdoors is on the right. */
        FIRST_UP,
        /** The first band goes left, outdoors is up. */
        FIRST_LEFT,
        /** The first band goes right, outdoors is down. */
        FIRST_RIGHT,
        /** The second band goes level to the right, outdoors is up. */
        SECOND_RIGHT,
        /** Both bands fall alike to left and right, outdoors is up. */
        ASTRIDE
    }

    /** Whether both bands are surfaces of the shell. */
    public boolean twoSurfaces() {
        return second == Second.SURFACE;
    }

    /** Whether a window or door frame stands in the section. */
    public boolean framed() {
        return second == Second.FRAME || second == Second.DOOR;
    }

    /** Whether both bands are build-ups: two surfaces, or one and the wall in whose place a door stands. */
    public boolean twoBuildUps() {
        return second == Second.SURFACE || second == Second.DOOR;
    }
}
