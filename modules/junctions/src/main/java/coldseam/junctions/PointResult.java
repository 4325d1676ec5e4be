package coldseam.junctions;

import coldseam.conduction.Finite;
import coldseam.conduction.Interval;
import coldseam.conduction.Point;
import coldseam.conduction.Solution;
import coldseam.conduction.solid.BodySolution;
import coldseam.envelope.DimensionSystem;
import coldseam.files.quantity.Dimension;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.plan.SectionPlan.Fill;
import coldseam.junctions.plan.SectionPlan.Piece;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * A point's detail, computed for a surface. In the section x is the radius, y the height above the inner face.
 *
 * @param setup what it was computed for
 * @param solution of the heat-flow section; of boxes what the plane through the axis shows of it
 * @param body what was solved where not all is round; empty for a body of revolution
 * @param pieces what is drawn, in painting order
 * @param fills what the section's regions are, in their order; of boxes what those of the body are, empty where air is
 * @param radius m, of the disc; half the side of the square where not all is round
 * @param transmittance W/(m²·K), of the surface as drawn
 * @param coupling L3D over disc or square, W/K
 * @param chi L3D − U·A, W/K, for the whole difference between indoors and the far side
 * @param temperatureFactor fRsi between indoors and outdoors; towards an unheated space its factor is counted in. An estimate
 * @param coldest where the inner surface is coldest: radius and height, m
 * @param notes what was simplified, in plain words
 */
public record PointResult(
        Detail detail,
        PointSetup setup,
        Solution solution,
        Optional<BodySolution> body,
        ImmutableList<Piece> pieces,
        ImmutableList<Optional<Fill>> fills,
        double radius,
        double transmittance,
        Interval coupling,
        Interval chi,
        double temperatureFactor,
        Point coldest,
        ImmutableList<String> notes)
        implements BridgeResult {

    /** @throws IllegalStateException where a result is no number, naming the detail */
    public PointResult {
        Finite.bounds(chi, "W/K", () -> "chi of " + detail.id());
        Finite.number(temperatureFactor, "", () -> "fRsi of " + detail.id());
    }

    @Override
    public Interval psiOrChi(DimensionSystem system) {
        return chi;
    }

    @Override
    public Dimension dimension() {
        return Dimension.POINT_TRANSMITTANCE;
    }

    /** m², of disc or square. */
    public double area() {
        return body.isPresent() ? 4 * radius * radius : Math.PI * radius * radius;
    }
}
