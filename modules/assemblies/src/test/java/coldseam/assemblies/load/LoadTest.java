package coldseam.assemblies.load;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.assemblies.Build;
import coldseam.envelope.Layer;
import coldseam.envelope.Material;
import coldseam.envelope.Provenance;
import coldseam.envelope.Role;
import java.util.OptionalDouble;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.Test;

class LoadTest {

    @Test
    void aTerraceOnExpandedPolystyrene() {
        // Pavers 0.44 and screed 1.28 kPa for good, 4.0 kPa of people.
        CompressionCheck terrace = new CompressionCheck(150e3, PermanentShare.EXPANDED_POLYSTYRENE, 1720, 4000);
        assertEquals(45e3, terrace.permanentResistance(), 1e-9);
        assertEquals(50e3, terrace.resistance(), 1e-9);
        assertEquals(5720 / 50e3, terrace.utilisation(), 1e-12);
        assertTrue(terrace.passes());
    }

    @Test
    void aPedestalOnWoolFails() {
        // 1 kN on 20 cm by 20 cm, for good: 25 kPa.
        assertFalse(new CompressionCheck(60e3, PermanentShare.MINERAL_WOOL, 25e3, 0).passes());
        assertTrue(new CompressionCheck(100e3, PermanentShare.EXPANDED_POLYSTYRENE, 25e3, 0).passes());
    }

    @Test
    void lastingLoadAloneCanDecide() {
        CompressionCheck board = new CompressionCheck(100e3, PermanentShare.OTHER, 21e3, 0);
        assertEquals(1.05, board.utilisation(), 1e-12);
        assertFalse(board.passes());
        // Live load may use up to a third.
        assertTrue(new CompressionCheck(100e3, PermanentShare.OTHER, 19e3, 14e3).passes());
        assertFalse(new CompressionCheck(100e3, PermanentShare.OTHER, 19e3, 15e3).passes());
    }

    @Test
    void boardsOnOneAnotherAddTheirGive() {
        // 1/k adds: two boards of 50 mm are one of 100 mm.
        double single = 10e6 / 0.05;
        double both = 1 / (1 / single + 1 / single);
        assertEquals(10e6 / 0.1, both, 1e-6);
        PlateOnElasticBase plate = new PlateOnElasticBase(20e3, PlateOnElasticBase.stiffness(30e9, 0.1, 0.2), both);
        // The base carries the whole load: p over 8·l² is P.
        assertEquals(20e3, plate.pressure() * 8 * plate.radius() * plate.radius(), 1e-6);
        assertEquals(plate.pressure(), plate.deflection() * both, 1e-6);
    }

    @Test
    void whatLiesOutsideTheStructureSticksOut() {
        EdgeStack stack = EdgeStack.outsideStructure(Build.assembly(
                        Build.layer(Role.FINISH, "plasterboard", 12.5, 0.25),
                        Build.layer(Role.STRUCTURE, "studs", 140, 0.05),
                        Build.layer(Role.STRUCTURE, "sheathing", 12, 0.13),
                        Build.layer(Role.INSULATION, "board", 50.8, 0.03),
                        Build.layer(Role.CLADDING, "siding", 20, 0.13)))
                .with("trim", 0.025);
        assertEquals(
                "[board, siding, trim]",
                stack.parts().collect(EdgeStack.Part::name).toString());
        assertEquals(0.0508 + 0.020 + 0.025, stack.projection(), 1e-12);
        assertEquals(-0.0042, stack.past(0.1), 1e-12);
        assertThrows(IllegalArgumentException.class, () -> stack.with("gap", -0.001));
    }

    @Test
    void anAssemblyWithoutStructureSticksOutWhole() {
        assertEquals(
                0.1,
                EdgeStack.outsideStructure(Build.assembly(Build.layer(Role.INSULATION, "board", 100, 0.03)))
                        .projection(),
                1e-12);
        assertEquals(0, new EdgeStack(Lists.immutable.empty()).projection(), 0);
    }

    @Test
    void screwsKeepTheirSpacingFromBoardToBoard() {
        ScrewRow row = new ScrewRow(0.3, 2);
        assertEquals(row.spacing(), 2 * row.edgeDistance(), 1e-15);
        assertEquals(0.3, row.spacing() + 2 * row.edgeDistance(), 1e-15);
        // Two screws in every 0.3 m by 0.4 m.
        assertEquals(2 / 0.12, row.perSquareMetre(0.4), 1e-9);
        assertThrows(IllegalArgumentException.class, () -> new ScrewRow(0.3, 0));
    }

    private static Layer board(String name, double kilopascals, double density) {
        Layer plain = Build.layer(Role.INSULATION, name, 100, 0.035);
        Material material = new Material(
                name,
                0.035,
                OptionalDouble.empty(),
                density > 0 ? OptionalDouble.of(density) : OptionalDouble.empty(),
                kilopascals > 0 ? OptionalDouble.of(kilopascals * 1000) : OptionalDouble.empty(),
                true,
                plain.material().provenance());
        return layer(plain, material);
    }

    private static Layer heavy(String name, double millimetres, double density) {
        Layer plain = Build.layer(Role.CLADDING, name, millimetres, 1.5);
        Material material = new Material(
                name,
                1.5,
                OptionalDouble.empty(),
                density > 0 ? OptionalDouble.of(density) : OptionalDouble.empty(),
                OptionalDouble.empty(),
                false,
                plain.material().provenance());
        return layer(plain, material);
    }

    private static Layer layer(Layer plain, Material material) {
        return new Layer(
                material,
                plain.thickness(),
                plain.role(),
                plain.framing(),
                plain.air(),
                plain.taper(),
                plain.controls());
    }

    @Test
    void boardsOfATerraceCarryWhatLiesOnThem() {
        Layer upper = board("expanded polystyrene", 150, 25);
        Layer lower = board("XPS 300", 300, 35);
        BoardLoads loads = BoardLoads.of(
                Build.assembly(
                        heavy("unweighed slab", 200, 0),
                        lower,
                        upper,
                        Build.layer(Role.MEMBRANE, "felt", 5, 0.2),
                        heavy("pavers", 50, 2300)),
                BoardLoads.Top.OUTER_FACE,
                material -> material.name().equals("XPS 300")
                        ? PermanentShare.EXTRUDED_POLYSTYRENE
                        : PermanentShare.EXPANDED_POLYSTYRENE,
                BoardLoads.TERRACE_LIVE_LOAD);
        assertEquals("[]", loads.missing().toString());
        double pavers = 0.05 * 2300 * 9.80665;
        assertEquals(
                Lists.immutable.of(
                        new BoardLoads.Board(
                                upper, new CompressionCheck(150e3, PermanentShare.EXPANDED_POLYSTYRENE, pavers, 4000)),
                        new BoardLoads.Board(
                                lower,
                                new CompressionCheck(
                                        300e3,
                                        PermanentShare.EXTRUDED_POLYSTYRENE,
                                        pavers + 0.1 * 25 * 9.80665,
                                        4000))),
                loads.boards());
    }

    @Test
    void whatIsNotKnownIsSaid() {
        BoardLoads loads = BoardLoads.of(
                Build.assembly(
                        board("lowest", 100, 20), board("soft", 0, 0), heavy("stone", 30, 2600), board("top", 100, 20)),
                BoardLoads.Top.OUTER_FACE,
                material -> PermanentShare.OTHER,
                0);
        assertEquals("""
                soft has no compressive strength; give its material the stress at 10 % strain
                soft has no density; what lies under it cannot be checked. Give its material one""", loads.missing().makeString("\n"));
        assertEquals(
                "[top]",
                loads.boards().collect(each -> each.layer().material().name()).toString());
        // Of a floor the inner face is on top.
        assertEquals(
                "[lowest]",
                BoardLoads.of(
                                Build.assembly(board("lowest", 100, 20), heavy("stone", 30, 0)),
                                BoardLoads.Top.INNER_FACE,
                                material -> PermanentShare.OTHER,
                                0)
                        .boards()
                        .collect(each -> each.layer().material().name())
                        .toString());
    }

    @Test
    void aBoardBearsExactlyWhatItBears() {
        CompressionCheck full = new CompressionCheck(100e3, PermanentShare.OTHER, 20e3, 0);
        assertEquals(1, full.utilisation(), 0);
        assertTrue(full.passes());
        assertEquals(Provenance.Sureness.READ, PermanentShare.OTHER.provenance().sureness());
        assertEquals(
                Provenance.Sureness.FROM_MEMORY,
                PermanentShare.EXPANDED_POLYSTYRENE.provenance().sureness());
    }
}
