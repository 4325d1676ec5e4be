package coldseam.envelope;

/** To which faces areas and lengths are measured. */
public enum DimensionSystem {
    /** Outer faces. */
    EXTERNAL,
    /** Inner faces, internal floors and partitions counted in (overall internal). */
    INTERNAL;

    /** The one of the two that this is not. */
    public DimensionSystem other() {
        return this == EXTERNAL ? INTERNAL : EXTERNAL;
    }
}
