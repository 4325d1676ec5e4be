package coldseam.envelope.shell;

import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.overlayng.OverlayNG;

/**
 * Cuts the plan so that every part between two storeys is a polygon without holes, and either a strip or not.
 *
 * <p>What lies open above a storey, or over the air below one, and is narrower than {@link #STRIP} is a step of the wall
 * and not a terrace or an overhang. A terrace whose arm runs on as such a step is cut where the arm begins: the wide part
 * is the terrace's opening by a square of that width (erosion, then dilation, mitred).
 */
final class PlanCuts {

    /** Narrower than this, m, a step in the outer planes is a change of wall thickness; our own rule. */
    static final double STRIP = 0.30;

    private static final int ROUNDS = 8;

    private PlanCuts() {}

    static boolean strip(Geometry part) {
        return eroded(part).isEmpty();
    }

    /** The plan of all storeys with its cuts. */
    static Plan cut(ImmutableList<Polygon> storeys, ImmutableList<Plan.Line> lines) {
        MutableList<Plan.Line> all = lines.toList();
        Plan plan = Plan.of(storeys, all.toImmutable());
        for (int round = 0; round < ROUNDS; round++) {
            MutableList<Plan.Line> cuts = Lists.mutable.empty();
            for (int k = 0; k + 1 < storeys.size(); k++) {
                for (boolean open : new boolean[] {true, false}) {
                    for (ImmutableList<Integer> region : plan.regions(k, open)) {
                        Geometry part = plan.union(region);
                        // Arms first: a terrace around a corner may lose its hole with them.
                        Plan.Tag tag = Plan.Tag.cut(k, open);
                        ImmutableList<Plan.Line> arms = arms(part, tag);
                        cuts.addAllIterable(arms.isEmpty() ? holes(part, tag) : arms);
                    }
                }
            }
            cuts.removeAllIterable(all);
            if (cuts.isEmpty()) {
                break;
            }
            all.addAllIterable(cuts);
            plan = Plan.of(storeys, all.toImmutable());
        }
        return plan;
    }

    private static Geometry eroded(Geometry part) {
        return buffer(part, -Vertex.PER_METRE * STRIP / 2);
    }

    private static Geometry buffer(Geometry part, double distance) {
        BufferParameters square = new BufferParameters(
                1, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, BufferParameters.DEFAULT_MITRE_LIMIT * 4);
        return BufferOp.bufferOp(part, distance, square);
    }

    private static ImmutableList<Plan.Line> arms(Geometry part, Plan.Tag tag) {
        Geometry core = eroded(part);
        if (core.isEmpty()) {
            return Lists.immutable.empty();
        }
        Geometry wide = buffer(core, Vertex.PER_METRE * STRIP / 2);
        Geometry arms = OverlayNG.overlay(part, wide, OverlayNG.DIFFERENCE, Plan.LATTICE);
        MutableList<Plan.Line> cuts = Lists.mutable.empty();
        for (int i = 0; i < arms.getNumGeometries(); i++) {
            Geometry arm = arms.getGeometryN(i);
            // What rounding leaves over is a unit or two wide.
            if (arm.buffer(-2).isEmpty()) {
                continue;
            }
            Geometry mouth =
                    OverlayNG.overlay(arm.getBoundary(), part.getBoundary(), OverlayNG.DIFFERENCE, Plan.LATTICE);
            cuts.addAllIterable(lines(mouth, tag));
        }
        return cuts.toImmutable();
    }

    /** Cuts through a hole's westernmost corner, north and south, across the part. */
    private static ImmutableList<Plan.Line> holes(Geometry part, Plan.Tag tag) {
        MutableList<Plan.Line> cuts = Lists.mutable.empty();
        for (int i = 0; i < part.getNumGeometries(); i++) {
            Polygon polygon = (Polygon) part.getGeometryN(i);
            for (int h = 0; h < polygon.getNumInteriorRing(); h++) {
                LineString hole = polygon.getInteriorRingN(h);
                Envelope box = polygon.getEnvelopeInternal();
                Vertex west = Plan.vertex(westernmost(hole));
                Geometry across = Plan.line(
                        new Vertex(west.x(), Math.round(box.getMinY()) - 1, 0),
                        new Vertex(west.x(), Math.round(box.getMaxY()) + 1, 0));
                Geometry inside = OverlayNG.overlay(across, polygon, OverlayNG.INTERSECTION, Plan.LATTICE);
                for (int j = 0; j < inside.getNumGeometries(); j++) {
                    if (inside.getGeometryN(j).distance(hole) < 1) {
                        cuts.addAllIterable(lines(inside.getGeometryN(j), tag));
                    }
                }
            }
        }
        return cuts.toImmutable();
    }

    private static Coordinate westernmost(LineString hole) {
        return Lists.immutable.of(hole.getCoordinates()).minBy(c -> c.x * 1e9 + c.y);
    }

    private static ImmutableList<Plan.Line> lines(Geometry geometry, Plan.Tag tag) {
        MutableList<Plan.Line> lines = Lists.mutable.empty();
        for (int i = 0; i < geometry.getNumGeometries(); i++) {
            if (geometry.getGeometryN(i) instanceof LineString) {
                Coordinate[] points = geometry.getGeometryN(i).getCoordinates();
                for (int j = 0; j + 1 < points.length; j++) {
                    lines.add(new Plan.Line(Plan.vertex(points[j]), Plan.vertex(points[j + 1]), tag));
                }
            }
        }
        return lines.toImmutable();
    }
}
