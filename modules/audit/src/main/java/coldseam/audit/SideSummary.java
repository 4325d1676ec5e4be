package coldseam.audit;

import coldseam.envelope.shell.Side;

/**
 * One of the six sides.
 *
 * @param side which
 * @param area m², gross, in the site's dimension system
 * @param openings m²
 * @param missing m², of holes where nothing closes the envelope
 * @param insulatedShare of its opaque area, what is missing counted in, that has an insulation layer, 0 to 1
 * @param meanTransmittance W/(m²·K), area-weighted, openings counted in
 */
public record SideSummary(
        Side side, double area, double openings, double missing, double insulatedShare, double meanTransmittance) {}
