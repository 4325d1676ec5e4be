package coldseam.audit;

/**
 * What an audit is to solve, known before it begins.
 *
 * @param junctions different details of seams, in their setups, with those they are compared with
 * @param found likewise of seams as they were found
 * @param points likewise of points
 * @param corners different ones that are computed in three dimensions where their edges' details say how they are built; at
 *     most
 */
public record Work(int junctions, int found, int points, int corners) {

    /**
     * Unknowns of a junction: of the heat flow and of the surface temperatures. Means over the fixture houses, which hold
     * single ones of 400 to 28,000; no bound.
     */
    private static final double OF_JUNCTION = 8_000;

    /** The same of a point, of 1,000 to 140,000. */
    private static final double OF_POINT = 30_000;

    /** The same of a corner and its cut planes, of 18,000 to 330,000. */
    private static final double OF_CORNER = 100_000;

    /** Sections solved for a junction or a point, and bodies for a corner: heat flow and surface temperatures. */
    public static final int SOLVES = 2;

    /** How many unknowns are expected in sections, within some three times. */
    public double inSections() {
        return OF_JUNCTION * (junctions + found) + OF_POINT * points;
    }

    /** How many unknowns are expected in bodies, likewise. */
    public double inBodies() {
        return OF_CORNER * corners;
    }

    /** How many unknowns are expected in all, within some three times. */
    public double unknowns() {
        return inSections() + inBodies();
    }

    /** How many details are drawn. */
    public int details() {
        return junctions + found + points;
    }
}
