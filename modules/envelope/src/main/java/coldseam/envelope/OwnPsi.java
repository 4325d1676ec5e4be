package coldseam.envelope;

/**
 * A psi value the house brings along.
 *
 * @param which junctions
 * @param psi W/(m·K), in the site's dimension system
 * @param source where it comes from
 */
public record OwnPsi(Selector which, double psi, String source) {}
