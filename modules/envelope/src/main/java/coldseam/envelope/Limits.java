package coldseam.envelope;

/**
 * What the audit holds junctions to.
 *
 * @param neckShare least neck over the thinner neighbour's insulation thickness, 0 to 1; judgement, 0.5 by default
 * @param pathShare least ratio of the weakest path, 0 to 1; judgement, 0.5 by default
 * @param psi W/(m·K), largest psi in the site's dimension system; 0.01 by default (from memory: what the trade calls free of
 *     bridges, with external dimensions)
 * @param temperatureFactor least fRsi; 0.70 by default
 * @param openingPsi W/(m·K), largest psi around windows, doors and rooflights, where a frame always costs something; 0.05
 *     by default (common practice, no source)
 * @param chi W/K, largest chi of one point; 0.05 by default (common practice, no source: what a post or a bracket with a
 *     thermal break is held to)
 * @param geometryPsi W/(m·K), largest psi where it is the larger of the two systems' because of geometry alone: with external
 *     dimensions where surfaces meet at more than 180° indoors, with internal ones at less; 0.10 by default (judgement)
 * @param meanShare least R of a surface over what it would have in proportion to the house's other surfaces, 0 to 1; judgement,
 *     0.5 by default
 * @param surfaces largest U of surfaces and openings
 */
public record Limits(
        double neckShare,
        double pathShare,
        double psi,
        double temperatureFactor,
        double openingPsi,
        double chi,
        double geometryPsi,
        double meanShare,
        SurfaceLimits surfaces) {

    /** Largest psi unless the house file says otherwise, W/(m·K). */
    public static final double PSI = 0.01;

    /** Largest psi where geometry alone makes it positive, unless the house file says otherwise, W/(m·K). */
    public static final double GEOMETRY_PSI = 0.10;

    /** Largest psi around windows and doors unless the house file says otherwise, W/(m·K). */
    public static final double OPENING_PSI = 0.05;

    /** Largest chi of a point unless the house file says otherwise, W/K. */
    public static final double CHI = 0.05;

    /** As a share of a limit: thicknesses add up in binary, and a neck of half a board may come to a hair's less than half. */
    private static final double ROUND_OFF = 1e-9;

    /** The defaults for a climate: trade rules, each explained at its component. */
    public static Limits defaults(Site site) {
        return new Limits(0.5, 0.5, PSI, 0.70, OPENING_PSI, CHI, GEOMETRY_PSI, 0.5, SurfaceLimits.usual(site));
    }

    /** Whether a value is less than a limit by more than round-off; what is no number is. */
    public static boolean under(double value, double limit) {
        return !(value >= limit - ROUND_OFF * Math.abs(limit));
    }

    /** Whether a value is more than a limit by more than round-off; what is no number is. */
    public static boolean over(double value, double limit) {
        return !(value <= limit + ROUND_OFF * Math.abs(limit));
    }
}
