package coldseam.envelope.shell;

/** The six sides of a house. */
public enum Side {
    BELOW,
    NORTH,
    EAST,
    SOUTH,
    WEST,
    ABOVE
}
