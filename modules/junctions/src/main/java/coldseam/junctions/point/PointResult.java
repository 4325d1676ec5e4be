package coldseam.junctions.point;

import coldseam.conduction.Interval;
import coldseam.junctions.plan.SectionPlan.Piece;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * A point detail, computed for a surface.
 *
 * @param detail the option
 * @param setup what it was computed for
 * @param solved its section: x is the radius, y the height above the inner face
 * @param pieces what is drawn, in painting order
 * @param notes what was simplified, in plain words
 */
public record PointResult(
        PointDetail detail,
        PointSetup setup,
        PointSolution solved,
        ImmutableList<Piece> pieces,
        ImmutableList<String> notes) {

    /** W/K, for the whole difference between indoors and the far side. */
    public Interval chi() {
        return solved.chi();
    }

    /** fRsi between indoors and outdoors; towards an unheated space its factor is counted in. An estimate. */
    public double temperatureFactor() {
        double factor = setup.exposure().factor() > 0 ? setup.exposure().factor() : 1;
        return 1 - factor * (1 - solved.temperatureFactor());
    }

    /** W/(m²·K), of the surface as drawn. */
    public double transmittance() {
        return solved.section().transmittance();
    }
}
