package coldseam.assemblies.ground;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.assemblies.Build;
import coldseam.assemblies.HeatFlow;
import coldseam.assemblies.OuterSurface;
import coldseam.assemblies.Transmittance;
import coldseam.envelope.Assembly;
import coldseam.envelope.Body.CrawlSpace;
import coldseam.envelope.Body.EdgeInsulation;
import coldseam.envelope.Role;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.Test;

class GroundHeatTest {

    private static final double EXACT = 1e-12;

    private static final GroundFloor CLAY = new GroundFloor(80, 36, 0.3, 1.5);

    private static final Assembly FLOOR = Build.assembly(
            Build.layer(Role.INSULATION, "board", 100, 0.04), Build.layer(Role.STRUCTURE, "slab", 150, 2.0));

    private static final CrawlSpace SPACE = new CrawlSpace(0.4, 1.5, 0.003, 4, 0.05, 0);

    @Test
    void theEdgeThatSavesMostCounts() {
        EdgeInsulation flat = new EdgeInsulation(false, 1.0, 0.06, Build.material("board", 0.035));
        EdgeInsulation down = new EdgeInsulation(true, 0.6, 0.06, Build.material("board", 0.035));
        SlabOnGround both = SlabOnGround.of(CLAY, 0, Lists.immutable.of(flat, down));
        SlabOnGround one = SlabOnGround.of(CLAY, 0, Lists.immutable.of(down));
        assertTrue(one.edgePsi()
                < SlabOnGround.of(CLAY, 0, Lists.immutable.of(flat)).edgePsi());
        assertEquals(one.transmittance(), both.transmittance(), EXACT);
    }

    @Test
    void boardsThatConductBetterThanTheGroundSaveNothing() {
        EdgeInsulation concrete = new EdgeInsulation(false, 1.0, 0.06, Build.material("concrete", 2.0));
        assertEquals(0, SlabOnGround.of(CLAY, 0, Lists.immutable.of(concrete)).edgePsi(), EXACT);
    }

    @Test
    void theBranchesOfTheSlabMeetWithinAPercent() {
        // The two branches of the standard are fitted to meet near dt = B'.
        double b = CLAY.characteristicDimension();
        double bare = CLAY.transmittance(b * (1 - 1e-9));
        assertEquals(bare, CLAY.transmittance(b), 0.01 * bare);
        assertTrue(CLAY.wellInsulated(b));
    }

    @Property(tries = 300, seed = "2026")
    void moreResistanceNeverLosesMoreAndTheEdgeHelps(
            @ForAll @DoubleRange(min = 10, max = 500) double area,
            @ForAll @DoubleRange(min = 0.1, max = 1.2) double ratio,
            @ForAll @DoubleRange(min = 0, max = 8) double resistance,
            @ForAll @DoubleRange(min = 0.5, max = 3.5) double ground) {
        GroundFloor floor = new GroundFloor(area, ratio * area, 0.3, ground);
        EdgeInsulation edge = new EdgeInsulation(true, 0.6, 0.05, Build.material("board", 0.035));
        SlabOnGround bare = SlabOnGround.of(floor, resistance, Lists.immutable.empty());
        SlabOnGround edged = SlabOnGround.of(floor, resistance, Lists.immutable.of(edge));
        assertTrue(edged.transmittance() < bare.transmittance());
        // The fitted branches meet with a step of up to a percent; aside from it U falls.
        SlabOnGround more = SlabOnGround.of(floor, resistance + 0.5, Lists.immutable.empty());
        assertTrue(more.transmittance() < bare.transmittance() * 1.01);
        assertTrue(bare.transmittance() < 1 / (0.21 + resistance));
    }

    @Test
    void theTemperatureFactorsClose() {
        // H = A·Uf·b for a floor over a space with temperature factor b.
        SuspendedFloor suspended = SuspendedFloor.of(CLAY, 0.3, SPACE);
        assertEquals(80 * suspended.transmittance(), 80 * 0.3 * suspended.temperatureFactor(), EXACT);
        Basement below = Basement.of(CLAY, 2, 0, 0.2);
        UnheatedBasement cellar = new UnheatedBasement(below, 0.8, 0.5, 1.2, 0.3, 160);
        double inward = 80 * 0.8;
        double outward = cellar.outwardCoupling();
        assertEquals(outward / (inward + outward), cellar.temperatureFactor(), EXACT);
    }

    @Test
    void theWallsInTheGroundTakeTheSmallerEquivalentThickness() {
        // Walls better insulated than the floor: dw > dt, so dt stays; the other way round dw replaces it.
        Basement insulatedWalls = Basement.of(CLAY, 2, 0, 3);
        double dt = 0.3 + 1.5 * 0.21;
        double dw = 1.5 * 3.17;
        assertEquals(
                3 / (Math.PI * 2) * (1 + 0.5 * dt / (dt + 2)) * Math.log(2 / dw + 1),
                insulatedWalls.wallTransmittance(),
                EXACT);
    }

    @Test
    void floorsInTheGroundUseTheStandardsSurfaces() {
        Transmittance u = Transmittance.of(FLOOR, HeatFlow.DOWNWARDS, OuterSurface.GROUND);
        assertEquals(0.17 + 2.575 + 0.04, u.total(), EXACT);
    }

    /** Every step of a cellar, worked out apart: A 80, P 36, w 0.3, λ 1.5, z 2, Rf 0, Rw 0.2; n 0.3, V 160. */
    @Test
    void theStepsOfACellarHaveTheirValues() {
        UnheatedBasement cellar = new UnheatedBasement(Basement.of(CLAY, 2, 0, 0.2), 0.8, 0.5, 1.2, 0.3, 160);
        double b = 80 / 18.0;
        double dt = 0.3 + 1.5 * 0.21;
        double dw = 1.5 * (0.13 + 0.2 + 0.04);
        double ubf = 2 * 1.5 / (Math.PI * b + dt + 1) * Math.log(Math.PI * b / (dt + 1) + 1);
        double ubw = 2 * 1.5 / (Math.PI * 2) * (1 + 0.5 * dw / (dw + 2)) * Math.log(2 / dw + 1);
        double outward = 80 * ubf + 72 * ubw + 0.5 * 36 * 1.2 + 0.33 * 0.3 * 160;
        double u = 1 / (1 / 0.8 + 80 / outward);
        assertEquals(dt, cellar.below().equivalentThickness(), EXACT);
        assertEquals(dw, cellar.below().wallThickness(), EXACT);
        assertEquals(ubf, cellar.below().transmittance(), EXACT);
        assertEquals(ubw, cellar.below().wallTransmittance(), EXACT);
        assertEquals(u, cellar.transmittance(), EXACT);
        assertEquals(80 * ubf + 72 * ubw, UnheatedBasement.coupling(cellar.below()), 80 * EXACT);
        assertEquals(b, cellar.below().floor().characteristicDimension(), EXACT);
    }

    @Test
    void aSlabOfExactlyItsDimensionIsWellInsulated() {
        // B' = dt: A = 0.5·P·dt.
        double dt = 0.3 + 1.5 * 2.21;
        GroundFloor floor = new GroundFloor(18 * dt, 36, 0.3, 1.5);
        SlabOnGround slab = SlabOnGround.of(floor, 2, Lists.immutable.empty());
        assertEquals(floor.characteristicDimension(), slab.equivalentThickness(), 0);
        assertTrue(floor.wellInsulated(slab.equivalentThickness()));
        assertEquals(1.5 / (1.457 * dt), slab.transmittance(), EXACT);
        assertFalse(floor.wellInsulated(
                SlabOnGround.of(floor, 1.99, Lists.immutable.empty()).equivalentThickness()));
    }
}
