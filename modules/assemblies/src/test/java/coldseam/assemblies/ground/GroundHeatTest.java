package coldseam.assemblies.ground;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.assemblies.Build;
import coldseam.envelope.Body.EdgeInsulation;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.Test;

class GroundHeatTest {

    /** The standard's formulas evaluated apart from this code; half a digit of what is printed. */
    private static final double HALF_DIGIT = 5e-6;

    private static final GroundFloor CLAY = new GroundFloor(80, 36, 0.3, 1.5);

    @Test
    void bareSlabOnClay() {
        SlabOnGround slab = SlabOnGround.of(CLAY, 0, Lists.immutable.empty());
        assertEquals(0.65147, slab.transmittance(), HALF_DIGIT);
        assertEquals(0.65147 * 80, slab.coupling(), HALF_DIGIT * 80);
    }

    @Test
    void theEdgeThatSavesMostCounts() {
        EdgeInsulation flat = new EdgeInsulation(false, 1.0, 0.06, Build.material("board", 0.035));
        EdgeInsulation down = new EdgeInsulation(true, 0.6, 0.06, Build.material("board", 0.035));
        SlabOnGround both = SlabOnGround.of(CLAY, 0, Lists.immutable.of(flat, down));
        assertEquals(down, both.edge().orElseThrow().insulation());
        assertEquals(0.48874, both.transmittance(), HALF_DIGIT);
    }

    @Test
    void wellInsulatedBranchMeetsTheOtherWithinAPercent() {
        // The two branches of the standard are fitted to meet near dt = B'.
        GroundFloor floor = new GroundFloor(108, 42, 0.4, 2.0);
        double b = floor.characteristicDimension();
        double bare = floor.transmittance(b * (1 - 1e-9));
        assertEquals(bare, floor.transmittance(b), 0.01 * bare);
        assertTrue(floor.wellInsulated(b));
    }
}
