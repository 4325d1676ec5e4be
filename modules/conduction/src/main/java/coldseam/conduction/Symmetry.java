package coldseam.conduction;

/** How a section continues out of its plane. */
public enum Symmetry {
    /** Unchanged along the third direction: couplings are W/(m·K). */
    PLANAR,
    /** Turned about the axis x = 0: couplings are W/K. */
    AXISYMMETRIC
}
