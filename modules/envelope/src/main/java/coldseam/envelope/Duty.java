package coldseam.envelope;

/** What a place asks of insulation besides holding heat, and not every kind bears. */
public enum Duty {
    /** Lying in the ground, wet for years. */
    GROUND,
    /** Standing where rain splashes up from the ground: to {@link #SPLASH_HEIGHT} above it. */
    SPLASH,
    /** Carrying a slab, a screed or paving for good. */
    LOAD,
    /** Lying behind a cladding outside the layer that keeps out water, wetted by the rain that gets through. */
    RAIN;

    /** m above the ground (common practice, no source; the usual height of a plinth). */
    public static final double SPLASH_HEIGHT = 0.3;
}
