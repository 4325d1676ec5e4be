package coldseam.audit;

import coldseam.envelope.shell.Side;

/**
 * One of the six sides.
 *
 * @param side which
 * @param area m², gross, in the site's dimension system
 * @param exposedArea m², of it what no heated neighbour is behind
 * @param openings m²
 * @param missing m², of holes where nothing closes the envelope
 * @param insulatedShare of its opaque exposed area, what is missing counted in, that has an insulation layer, 0 to 1
 * @param meanTransmittance W/(m²·K) of its exposed area, area-weighted, openings counted in
 */
public record SideSummary(
        Side side,
        double area,
        double exposedArea,
        double openings,
        double missing,
        double insulatedShare,
        double meanTransmittance) {

    /** Whether all of it stands beside heated neighbours, so that there is nothing to insulate. */
    public boolean isParty() {
        return area > 0 && exposedArea == 0 && missing == 0;
    }
}
