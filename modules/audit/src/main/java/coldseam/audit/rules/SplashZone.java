package coldseam.audit.rules;

import coldseam.audit.rules.InsulationUnfitRule.Unfit;
import coldseam.conduction.Boundary;
import coldseam.conduction.Point;
import coldseam.envelope.Duty;
import coldseam.envelope.Exposure;
import coldseam.envelope.KindForm.Page;
import coldseam.envelope.Material;
import coldseam.envelope.Role;
import coldseam.envelope.file.house.MaterialLibrary;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.plan.PlanarSubdivision.Face;
import coldseam.junctions.plan.SectionPlan;
import coldseam.junctions.plan.SectionPlan.Origin;
import coldseam.junctions.plan.SectionPlan.Piece;
import coldseam.junctions.section.Surroundings;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;

/** What insulates in a section outside the wall's structure, under the ground or close above it. */
final class SplashZone {

    /** m, by which a piece may reach into a zone where it ends at it: coats, and what drawings round. */
    private static final double SLACK = 0.02;

    private SplashZone() {}

    /** What its kind does not bear there; empty for a section that stands not in the ground. */
    static ImmutableList<Unfit> of(JunctionResult junction, ImmutableMap<String, Material> materials) {
        var form = junction.setup().kind().form();
        Optional<Double> wall = structure(junction.plan());
        if (wall.isPresent() && stepInTheGround(junction)) {
            return pieces(junction)
                    .select(face -> left(face) >= wall.get() - SLACK)
                    .collect(face -> material(junction.plan().pieces().get(face.painted()), materials))
                    .reject(material -> material.canBear(Duty.GROUND))
                    .collect(material -> new Unfit(Duty.GROUND, material.name()))
                    .distinct();
        }
        if (!form.ground() || form.page() != Page.SECOND_UP || wall.isEmpty()) {
            return Lists.immutable.empty();
        }
        Optional<Double> ground = groundLevel(junction);
        if (ground.isEmpty()) {
            return Lists.immutable.empty();
        }
        return pieces(junction)
                .flatCollect(face -> unfit(
                        face,
                        material(junction.plan().pieces().get(face.painted()), materials),
                        ground.get(),
                        wall.get()))
                .distinct();
    }

    /** Whether all that lies outside is ground: a wall in it under the edge of a floor on it. */
    private static boolean stepInTheGround(JunctionResult junction) {
        JunctionSetup setup = junction.setup();
        return !setup.kind().form().ground()
                && setup.kind().form().twoSurfaces()
                && setup.firstExposure().kind() == Exposure.Kind.GROUND
                && setup.secondExposure().kind() == Exposure.Kind.GROUND;
    }

    private static ImmutableList<Face> pieces(JunctionResult junction) {
        return junction.plan()
                .seen()
                .faces()
                .select(face -> judges(junction.plan().pieces().get(face.painted())));
    }

    /** Layers of the floor are judged with their surface. */
    private static boolean judges(Piece piece) {
        boolean ofFloor = piece.origin() instanceof Origin.OfLayer layer && layer.first();
        return piece.material().insulates() && !ofFloor && !(piece.origin() instanceof Origin.OfFrame);
    }

    /** A drawing by hand knows materials by their names alone. */
    private static Material material(Piece piece, ImmutableMap<String, Material> materials) {
        return piece.origin() instanceof Origin.ByHand byHand
                ? Optional.ofNullable(materials.get(byHand.material()))
                        .or(() -> MaterialLibrary.named(byHand.material()))
                        .orElse(piece.material())
                : piece.material();
    }

    private static ImmutableList<Unfit> unfit(Face face, Material material, double ground, double wall) {
        ImmutableList<Point> outline = face.rings().getFirst();
        double low = outline.collectDouble(Point::y).min();
        if (left(face) < wall - SLACK) {
            return Lists.immutable.empty();
        }
        ImmutableList<Duty> duties = low < ground - SLACK
                ? Lists.immutable.of(Duty.GROUND, Duty.SPLASH)
                : low < ground + Duty.SPLASH_HEIGHT - SLACK ? Lists.immutable.of(Duty.SPLASH) : Lists.immutable.empty();
        return duties.reject(material::canBear).collect(duty -> new Unfit(duty, material.name()));
    }

    private static double left(Face face) {
        return face.rings().getFirst().collectDouble(Point::x).min();
    }

    /** y of the ground outdoors: the lowest that open air reaches. */
    private static Optional<Double> groundLevel(JunctionResult junction) {
        ImmutableList<Boundary> outdoors = junction.solution()
                .section()
                .boundaries()
                .select(each -> each.environment().equals(Surroundings.OUTDOOR));
        return outdoors.isEmpty()
                ? Optional.empty()
                : Optional.of(outdoors.flatCollect(Boundary::path)
                        .collectDouble(Point::y)
                        .min());
    }

    /** x of the outer face of what bears the wall, outdoors being on the right. */
    private static Optional<Double> structure(SectionPlan plan) {
        ImmutableList<Piece> bearing = plan.pieces()
                .select(piece -> piece.role() == Role.STRUCTURE
                        && piece.origin() instanceof Origin.OfLayer layer
                        && !layer.first());
        return bearing.isEmpty()
                ? Optional.empty()
                : Optional.of(bearing.flatCollect(piece -> piece.outline().corners())
                        .collectDouble(Point::x)
                        .max());
    }
}
