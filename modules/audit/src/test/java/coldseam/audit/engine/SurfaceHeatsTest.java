package coldseam.audit.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.audit.Audit;
import coldseam.audit.HeatLoss;
import coldseam.audit.HeatLoss.Group;
import coldseam.audit.HeatLoss.Line;
import coldseam.audit.Note;
import coldseam.envelope.shell.Surface;
import coldseam.junctions.JunctionSetup;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.junit.jupiter.api.Test;

/** Floors and walls in the ground. */
class SurfaceHeatsTest {

    private static final double GROUND = 1.5;

    private static final String EDGED = Sample.yaml()
            .replace(
                    "base: {kind: slab on ground, assembly: slab}",
                    "base: {kind: slab on ground, assembly: slab, edge: {direction: vertical, extent: 600 mm,"
                            + " thickness: 100 mm, material: extruded polystyrene board}}");

    private static String ownPsi(String citation) {
        return EDGED + "own-psi:\n- {kinds: [slab edge], psi: 0.1 W/(m·K), source: " + citation + "}\n";
    }

    private static double ground(String yaml) {
        return Sample.audit(yaml, Sample.good()).heatLoss().ground();
    }

    /** A rim that is computed as a section with its ground shows its insulation: it may not count again in the floor's U. */
    @Test
    void edgeInsulationCountsOnceWhereTheRimIsComputed() {
        double plain = BoxByHand.LENGTH * BoxByHand.WIDTH * BoxByHand.transmittance("slab");
        assertEquals(plain, ground(EDGED), 0.0005);
        Audit audit = Sample.audit(EDGED, Sample.good());
        assertEquals(Lists.immutable.of(new Note.EdgeInsulationInSection()), audit.notes());
        assertTrue(
                audit.sheets()
                        .collect(sheet -> sheet.result().setup())
                        .selectInstancesOf(JunctionSetup.class)
                        .collectIf(
                                setup -> setup.ground().isPresent(),
                                setup -> setup.ground().get().edge().isPresent())
                        .contains(true),
                "it reaches the rim's section");
    }

    /**
     * ISO 13370:2017 annex B (from memory), vertical: ψ = −λ/π·(ln(2D/dt + 1) − ln(2D/(dt + d') + 1)), with d' = λ·R' and
     * R' = dn/λn − dn/λ; U = U0 + 2ψ/B'.
     */
    @Test
    void edgeInsulationCountsInTheFloorWhereTheRimHasAPsiOfItsOwn() {
        double dt = BoxByHand.WALL + GROUND * (0.17 + 0.15 / 2.3 + 0.16 / 0.035 + 0.04);
        double more = GROUND * (0.1 / 0.035 - 0.1 / GROUND);
        double psi = -GROUND / Math.PI * (Math.log(2 * 0.6 / dt + 1) - Math.log(2 * 0.6 / (dt + more) + 1));
        double area = BoxByHand.LENGTH * BoxByHand.WIDTH;
        double saved = psi * 2 * (BoxByHand.LENGTH + BoxByHand.WIDTH);
        assertTrue(saved < -0.5, "worth counting");
        assertEquals(area * BoxByHand.transmittance("slab") + saved, ground(ownPsi("our own computation")), 0.001);
    }

    /**
     * An empty stud bay is an air layer of 0.18 m²·K/W (ISO 6946:2017 table 8, horizontal, from memory) whatever role its layer
     * has; the combined method with studs of 15 %. As still air of 0.025 W/(m·K) it would count like foam, with 5.6 m²·K/W.
     */
    @Test
    void anEmptyStudBayIsAnAirLayer() {
        String bay = Sample.yaml()
                .replace(
                        "{material: old solid brick, thickness: 240 mm, role: structure}\n"
                                + "    - {material: mineral wool board, thickness: 200 mm, role: insulation, controls:"
                                + " [heat]}",
                        "{material: air, thickness: 140 mm, role: structure, framing: {material: softwood, share: 15"
                                + " %}}\n"
                                + "    - {material: mineral wool board, thickness: 60 mm, role: insulation, controls:"
                                + " [heat]}");
        double rest = 0.13 + 0.015 / 0.8 + 0.06 / 0.035 + 0.01 / 0.7 + 0.04;
        double stud = 0.14 / 0.13;
        double upper = 1 / (0.85 / (rest + 0.18) + 0.15 / (rest + stud));
        double lower = rest + 1 / (0.85 / 0.18 + 0.15 / stud);
        Line wall = Sample.audit(bay, Sample.good()).heatLoss().lines().getFirst();
        // The table's 0.18 is rounded to two digits.
        assertEquals(2 / (upper + lower), wall.transmittance().middle(), 0.002);
    }

    /** What the citation says is for people: no word of it may move the sum. */
    @Test
    void theCitationOfAnOwnPsiChangesNothing() {
        Audit plain = Sample.audit(ownPsi("our own computation"), Sample.good());
        Audit computed = Sample.audit(ownPsi("computed by the maker"), Sample.good());
        assertEquals(plain.heatLoss().total(), computed.heatLoss().total());
        assertEquals(plain.notes(), computed.notes());
        assertEquals(Lists.immutable.empty(), plain.notes());
    }

    /**
     * Walls of a cellar beside one another: their conductances' mean by area, here by length, since all are as high.
     * Ubw = 2λ/(πz)·(1 + 0.5·dw/(dw + z))·ln(z/dw + 1), ISO 13370:2017 clause 7.4 (from memory), with dw below dt.
     */
    @Test
    void wallsOfACellarCountByTheirArea() {
        String yaml = Sample.yaml()
                .replace("    walls: {all: wall}\n", "    walls: {all: wall, north: bare wall}\n")
                .replace("{kind: slab on ground, assembly", "{kind: heated cellar, depth: 2 m, assembly");
        double bare = 0.24 / 0.81;
        double insulated = 0.015 / 0.8 + 0.24 / 0.81 + 0.2 / 0.035 + 0.01 / 0.7;
        double mean = 28 / (8 / bare + 20 / insulated);
        double dw = GROUND * (0.13 + mean + 0.04);
        double expected = 2 * GROUND / (Math.PI * 2) * (1 + 0.5 * dw / (dw + 2)) * Math.log(2 / dw + 1);
        ImmutableList<Line> walls = Sample.audit(yaml, Sample.good())
                .heatLoss()
                .lines()
                .select(line -> line.group() == Group.GROUND)
                .drop(1);
        assertEquals(4, walls.size());
        for (Line wall : walls) {
            assertEquals(expected, wall.transmittance().middle(), 1e-6, wall::toString);
        }
    }

    @Test
    void whatIsNoNumberNamesItsSurfaceAndLayers() {
        Surface wall = Sample.audit(Sample.yaml(), Sample.good())
                .shell()
                .surfaces()
                .detect(each -> each.name().equals("ground floor south wall"));
        for (double[] bad : new double[][] {{Double.NaN, 1}, {Double.POSITIVE_INFINITY, 1}, {0.2, Double.NaN}}) {
            String told = assertThrows(
                            IllegalStateException.class,
                            () -> new SurfaceHeat(wall, Optional.empty(), bad[0], bad[1], HeatLoss.Group.SURFACES))
                    .getMessage();
            assertTrue(told.contains("of \"ground floor south wall\" (its layers are "), told);
            assertTrue(told.contains("came out as " + (Double.isFinite(bad[0]) ? bad[1] : bad[0])), told);
            assertTrue(told.contains("mineral wool board 0.2 m of 0.035 W/(m·K)"), told);
        }
    }
}
