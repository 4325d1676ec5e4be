package coldseam.report;

import coldseam.conduction.Accuracy;
import coldseam.conduction.Boundary;
import coldseam.conduction.Environment;
import coldseam.conduction.Interval;
import coldseam.conduction.Point;
import coldseam.conduction.Polygon;
import coldseam.conduction.Region;
import coldseam.conduction.Section;
import coldseam.conduction.Solution;
import coldseam.conduction.Symmetry;
import coldseam.conduction.solve.Conduction;
import coldseam.envelope.Assembly;
import coldseam.envelope.Control;
import coldseam.envelope.Exposure;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Material;
import coldseam.envelope.Role;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.JunctionResult.Leg.Part;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.PenLine;
import coldseam.junctions.WeakestPath;
import coldseam.junctions.detail.Connection;
import coldseam.junctions.detail.Cost;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.detail.DetailDrawing;
import coldseam.junctions.detail.Photograph;
import coldseam.junctions.detail.Rank;
import coldseam.junctions.detail.Suits;
import coldseam.junctions.plan.SectionEnd;
import coldseam.junctions.plan.SectionPlan;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.eclipse.collections.impl.factory.Maps;

/** Two junctions put together by hand. */
final class SampleJunctions {

    private static final Assembly FASTENED = new Assembly(
            SampleAudit.WALL.name(),
            SampleAudit.WALL.layers(),
            Optional.of(new Assembly.Fasteners(SampleAudit.BRICK, 0.005, 6, 0)),
            Assembly.AirGaps.NONE,
            Optional.empty());

    private SampleJunctions() {}

    private static SectionPlan.Piece piece(Material material, Role role, double x0, double y0, double x1, double y1) {
        return new SectionPlan.Piece(
                Polygon.rectangle(x0, y0, x1, y1),
                material,
                role,
                true,
                new SectionPlan.Origin.ByHand(material.name()));
    }

    /** Wall to the right of outdoors; indoors is right of and above the slab. */
    static JunctionResult slabEdge(boolean good) {
        ImmutableList<SectionPlan.Piece> pieces = Lists.immutable.of(
                piece(SampleAudit.GROUND, Role.STRUCTURE, -10, -10, 4, -0.15),
                piece(SampleAudit.RENDER, Role.CLADDING, 0, -0.15, 0.02, 1.5),
                piece(SampleAudit.BOARD, Role.INSULATION, 0.02, -0.15, 0.18, 1.5),
                piece(SampleAudit.BRICK, Role.STRUCTURE, 0.18, 0.26, 0.42, 1.5),
                piece(SampleAudit.PLASTER, Role.FINISH, 0.42, 0.26, 0.435, 1.5),
                piece(SampleAudit.FOAM, Role.INSULATION, 0.18, -0.15, 4, 0),
                piece(SampleAudit.CONCRETE, Role.STRUCTURE, good ? 0.18 : 0, 0, 4, 0.2),
                piece(SampleAudit.SCREED, Role.FINISH, 0.435, 0.2, 4, 0.26),
                piece(SampleAudit.BRICK, Role.STRUCTURE, 0.18, 0.2, 0.42, 0.3),
                piece(SampleAudit.PLASTER, Role.FINISH, 0.42, 0.2, 0.435, 0.3));
        ImmutableList<Boundary> boundaries = Lists.immutable.of(
                new Boundary("indoor", points(0.435, 1.5, 0.435, 0.26, 4, 0.26), OptionalDouble.empty()),
                new Boundary("outdoor", points(-10, -0.15, 0, -0.15, 0, 1.5), OptionalDouble.empty()));
        PenLine pen = good
                ? new PenLine(true, points(0.1, 1.5, 0.1, -0.06, 4, -0.06), 0.15, points(0.18, -0.15, 0.18, 0), 1)
                : new PenLine(false, points(0.1, 1.5, 0.1, 0.2), 0, Lists.immutable.empty(), 0);
        WeakestPath path = good
                ? new WeakestPath(points(0.435, 0.31, 0, 0.31), 4.4, 4.5, 0.97)
                : new WeakestPath(points(0.45, 0.26, 0.43, 0.19, 0, 0.1), 0.31, 3.53, 0.088);
        Solution solution = solution("slab edge", pieces, boundaries);
        return result(
                detail(
                        "slab-edge",
                        JunctionKind.SLAB_EDGE,
                        good ? "Edge board joined to wall board" : "Slab run out to the face",
                        good ? Rank.BEST : Rank.WORST),
                JunctionKind.SLAB_EDGE,
                solution,
                pieces,
                good ? new Interval(0.0312, 0.0313) : new Interval(0.58104, 0.58131),
                good ? 0.88 : 0.66,
                new Point(0.435, 0.26),
                pen,
                path);
    }

    /** Roof over wall. */
    static JunctionResult roofEdge() {
        ImmutableList<SectionPlan.Piece> pieces = Lists.immutable.of(
                piece(SampleAudit.RENDER, Role.CLADDING, 0, -1.2, 0.02, 0.42),
                piece(SampleAudit.BOARD, Role.INSULATION, 0.02, -1.2, 0.18, 0.42),
                piece(SampleAudit.BRICK, Role.STRUCTURE, 0.18, -1.2, 0.42, 0),
                piece(SampleAudit.PLASTER, Role.FINISH, 0.42, -1.2, 0.435, -0.015),
                piece(SampleAudit.PLASTER, Role.FINISH, 0.42, -0.015, 1.8, 0),
                piece(SampleAudit.CONCRETE, Role.STRUCTURE, 0.18, 0, 1.8, 0.18),
                piece(SampleAudit.BOARD, Role.INSULATION, 0.18, 0.18, 1.8, 0.42),
                piece(SampleAudit.TIMBER, Role.STRUCTURE, 0.02, 0.38, 0.18, 0.42),
                piece(SampleAudit.SHEET, Role.MEMBRANE, 0, 0.42, 1.8, 0.43));
        ImmutableList<Boundary> boundaries = Lists.immutable.of(
                new Boundary("indoor", points(0.435, -1.2, 0.435, -0.015, 1.8, -0.015), OptionalDouble.empty()),
                new Boundary("outdoor", points(0, -1.2, 0, 0.43, 1.8, 0.43), OptionalDouble.empty()));
        Solution solution = solution("roof edge", pieces, boundaries);
        return result(
                detail("roof-edge", JunctionKind.FLAT_ROOF_EDGE, "Wall board run up past roof board", Rank.BEST),
                JunctionKind.FLAT_ROOF_EDGE,
                solution,
                pieces,
                new Interval(-0.04123, -0.04118),
                0.91,
                new Point(0.435, -0.015),
                new PenLine(true, points(0.1, -1.2, 0.1, 0.3, 1.8, 0.3), 0.16, points(0.02, 0.1, 0.18, 0.1), 1),
                new WeakestPath(points(0.435, -0.6, 0, -0.6), 4.7, 4.8, 0.98));
    }

    private static ImmutableList<Point> points(double... xy) {
        ImmutableList<Point> out = Lists.immutable.empty();
        for (int i = 0; i < xy.length; i += 2) {
            out = out.newWith(new Point(xy[i], xy[i + 1]));
        }
        return out;
    }

    private static Solution solution(
            String name, ImmutableList<SectionPlan.Piece> pieces, ImmutableList<Boundary> boundaries) {
        Section section = new Section(
                name,
                Symmetry.PLANAR,
                pieces.collect(p -> new Region(p.material().name(), p.material().conductivity(), p.outline())),
                Lists.immutable.of(new Environment("indoor", 20, 0.13), new Environment("outdoor", -10, 0.04)),
                boundaries,
                Lists.immutable.empty());
        return Conduction.solve(section, new Accuracy(1e-3, 40_000));
    }

    private static Detail detail(String id, JunctionKind kind, String name, Rank rank) {
        return new Detail(
                id,
                kind,
                Lists.immutable.empty(),
                name,
                rank,
                Suits.EVERYWHERE,
                "Outside, the wall board ends on a strip of bare concrete as high as the slab.",
                Lists.immutable.of(
                        "Set the edge board on the footing, 300 mm above the ground.",
                        "Pour the slab against it.",
                        "Set the wall board on top and fill the joint."),
                Maps.immutable.of(
                        Control.AIR,
                        Connection.SEALED,
                        Control.WATER,
                        Connection.LAPPED,
                        Control.VAPOUR,
                        Connection.NOT_SHOWN),
                Lists.immutable.of("Mould along the skirting.", "Frost under a door."),
                Lists.immutable.of(new Photograph(
                        "The joint between edge board and wall board, with a rule in the picture.", Optional.empty())),
                Lists.immutable.of("The board carries the wall's edge: ask the structural engineer for its strength."),
                Optional.of(Cost.perMetre(42, "EUR", "quotation")),
                new DetailDrawing() {},
                false);
    }

    private static JunctionResult result(
            Detail detail,
            JunctionKind kind,
            Solution solution,
            ImmutableList<SectionPlan.Piece> pieces,
            Interval psi,
            double factor,
            Point coldest,
            PenLine pen,
            WeakestPath path) {
        boolean ground = kind == JunctionKind.SLAB_EDGE;
        return new JunctionResult(
                detail,
                new JunctionSetup(
                        kind,
                        ground ? SampleAudit.SLAB : SampleAudit.ROOF,
                        Optional.of(FASTENED),
                        90,
                        ground ? Exposure.ground() : Exposure.outdoors(),
                        Exposure.outdoors(),
                        Optional.empty(),
                        0,
                        0,
                        Optional.empty(),
                        20,
                        -10),
                solution,
                SectionPlan.of(pieces, pieces.collect(SectionPlan.Piece::fill), SectionEnd.of(solution.section())),
                Lists.immutable.of(
                        new JunctionResult.Leg(Part.FIRST, ground ? "floor" : "roof", 0.2, 1.8, 1.365, 0.12),
                        new JunctionResult.Leg(Part.SECOND, "wall", 0.2, 1.65, 1.24, 0.16)),
                new Interval(psi.lower() + 0.92, psi.upper() + 0.92),
                psi,
                psi.plus(0.17),
                factor,
                coldest,
                pen,
                path,
                Lists.immutable.empty(),
                OptionalDouble.empty(),
                Lists.immutable.of("The render is drawn without its mesh."));
    }
}
