package coldseam.envelope;

/**
 * What the audit holds junctions to.
 *
 * @param neckShare least neck over the thinner neighbour's insulation thickness, 0 to 1; judgement, 0.5 by default
 * @param pathShare least ratio of the weakest path, 0 to 1; judgement, 0.5 by default
 * @param psi W/(m·K), largest psi with external dimensions; 0.01 by default
 * @param temperatureFactor least fRsi; 0.70 by default
 */
public record Limits(double neckShare, double pathShare, double psi, double temperatureFactor) {

    /** The defaults: trade rules, each explained at its component. */
    public static Limits defaults() {
        return new Limits(0.5, 0.5, 0.01, 0.70);
    }
}
