package coldseam.junctions.pair;

/** Why two seams that touch are not solved in one section. */
public enum PairObstacle {
    /** They are aslant to each other. */
    ASLANT,
    /** Where one of them lies on its surface is not known. */
    PLACE,
    /** The surface is in the ground, where no layers say how far a seam reaches. */
    GROUND,
    /** So little of the surface lies between them that neither can be built as its detail draws it. */
    NARROW,
    /** The surface does not go on between them. */
    NOT_BETWEEN,
    /** A door stands on one of them. */
    THRESHOLD,
    /** A third one touches one of them at the same place. */
    THREE,
    /** The section of one of them is drawn by hand. */
    BY_HAND,
    /** What the section of one of them draws reaches into what the other's does. */
    REACHES,
    /** They are farther apart than both sections reach. */
    FAR,
    /** Their sections show other layers of the surface, or other air before it. */
    OTHER_LAYERS,
    /** The section of both cannot be solved. */
    UNSOLVABLE,
    /** Nobody asked for it. */
    NOT_ASKED
}
