package coldseam.junctions.detail;

/** How a control layer passes from one surface to the other. */
public enum Connection {
    CONTINUOUS,
    LAPPED,
    TAPED,
    SEALED,
    GASKETED,
    /** It stops. */
    BROKEN,
    /** The detail does not say; counts as unknown. */
    NOT_SHOWN;

    /** Whether the layer is carried across. */
    public boolean carriesAcross() {
        return this != BROKEN && this != NOT_SHOWN;
    }
}
