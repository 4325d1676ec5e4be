package coldseam.audit.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.audit.Audit;
import coldseam.audit.JunctionRow;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.shell.OpenEdge;
import org.eclipse.collections.api.list.ImmutableList;
import org.junit.jupiter.api.Test;

/** What has no value may take off heat, and the least of H_T is one whatever it is. */
class UnknownTest {

    /** W/K; the membranes' resistances are neglected by hand. */
    private static final double BY_HAND = 5e-3;

    private static final double WALL_U = BoxByHand.transmittance("wall");

    /** The catalogue has no detail for corners, each of which the external dimensions count twice. */
    @Test
    void cornersWithoutAValueMayTakeOffWhatGeometryAllows() {
        Audit audit = Sample.audit(
                Sample.yaml(), Sample.good().reject(made -> made.kind().equals(JunctionKind.OUTSIDE_CORNER)));
        Unknown unknown = Unknown.of(audit);
        ImmutableList<JunctionRow> corners =
                audit.junctions().select(row -> row.edge().kind() == JunctionKind.OUTSIDE_CORNER);
        double each = 2 * WALL_U * 1.5 * BoxByHand.WALL;
        assertEquals(4, corners.size());
        assertEquals(each * corners.sumOfDouble(JunctionRow::length), unknown.below(), BY_HAND);
        assertEquals(unknown.without(), unknown.below());
        assertTrue(unknown.below() > 2, "it is a bound that somebody sees: " + unknown.below());
    }

    /** Two walls beside the hole and the roof over it end there; the floor takes off no more than it loses. */
    @Test
    void whereASurfaceIsMissingThoseBesideItMayLoseLessForHalfTheirThickness() {
        Audit audit = Sample.audit(Sample.yaml().replace("{all: wall}", "{all: wall, south: none}"), Sample.good());
        ImmutableList<OpenEdge> open = audit.shell().openEdges();
        double upright =
                open.sumOfDouble(edge -> Math.abs(edge.to().z() - edge.from().z()));
        double along = open.select(edge -> edge.surfaces().contains("roof")).sumOfDouble(OpenEdge::length);
        double known =
                WALL_U * BoxByHand.WALL / 2 * upright + BoxByHand.transmittance("roof") * BoxByHand.ROOF / 2 * along;
        double floor = Unknown.of(audit).below() - known;
        assertEquals(4, open.size());
        assertTrue(
                floor > BY_HAND && floor < audit.heatLoss().ground(),
                floor + " of " + audit.heatLoss().ground());
    }
}
