package coldseam.audit.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.audit.Audit;
import coldseam.envelope.JunctionKind;
import org.junit.jupiter.api.Test;

/** The least psi, against the box computed by hand. */
class LeastPsiTest {

    /** The membranes' resistances are neglected by hand. */
    private static final double BY_HAND = 2e-4;

    private static final double WALL_U = BoxByHand.transmittance("wall");

    private static double least(JunctionKind kind, String yaml) {
        Audit audit = Sample.audit(yaml, Sample.good());
        LeastPsi least = new LeastPsi(audit.house(), audit.shell());
        return least.at(audit.shell().edges().detect(edge -> edge.kind() == kind));
    }

    @Test
    void aCornerTakesOffWhatLiesOutsideItsInnerFacesAndHalfAThicknessMore() {
        assertEquals(
                -2 * WALL_U * (BoxByHand.WALL + BoxByHand.WALL / 2),
                least(JunctionKind.OUTSIDE_CORNER, Sample.yaml()),
                BY_HAND);
    }

    @Test
    void inInternalDimensionsACornerCountsNothingTwice() {
        String internal = Sample.yaml().replace("dimensions: external", "dimensions: internal");
        assertEquals(-2 * WALL_U * BoxByHand.WALL / 2, least(JunctionKind.OUTSIDE_CORNER, internal), BY_HAND);
    }

    @Test
    void aSlabEdgeTakesOffNoMoreThanItsFloorLoses() {
        double reach = BoxByHand.LENGTH * BoxByHand.WIDTH / (2 * (BoxByHand.LENGTH + BoxByHand.WIDTH));
        double floor = BoxByHand.transmittance("slab") * (BoxByHand.WALL + reach);
        double wall = WALL_U * (BoxByHand.SLAB + BoxByHand.WALL / 2);
        assertEquals(-floor - wall, least(JunctionKind.SLAB_EDGE, Sample.yaml()), BY_HAND);
    }

    /** The wall goes on on both sides of it, half its thickness each. */
    @Test
    void aPartitionHasItsWallOnBothSides() {
        String parted = Sample.yaml()
                + "seams: {wall between: {kind: partition, surface: ground floor south wall, length: 2.5 m}}\n";
        assertEquals(-2 * WALL_U * BoxByHand.WALL / 2, least(JunctionKind.of("partition"), parted), BY_HAND);
    }

    /** The walls of the two storeys that it meets are both there already: half a thickness of each. */
    @Test
    void aStoreysFloorHasItsTwoWallsOnce() {
        String upper =
                "  - {name: upper floor, footprint: {rectangle: [8 m, 6 m]}, height: 2.8 m, floor-thickness: 0.3 m, walls: {all: wall}}\n";
        assertEquals(
                -2 * WALL_U * BoxByHand.WALL / 2,
                least(JunctionKind.INTERMEDIATE_FLOOR, Sample.yaml().replace("  base:", upper + "  base:")),
                BY_HAND);
    }

    @Test
    void whoeverWritesTheLeastEverywhereGetsNoHeatOutOfTheHouse() {
        Audit audit = Sample.audit(Sample.yaml(), Sample.good());
        LeastPsi least = new LeastPsi(audit.house(), audit.shell());
        double planes = audit.heatLoss().surfaces() + audit.heatLoss().ground();
        double most = audit.shell().edges().sumOfDouble(edge -> -least.at(edge) * edge.externalLength());
        assertTrue(most < planes, most + " W/K of " + planes);
    }
}
