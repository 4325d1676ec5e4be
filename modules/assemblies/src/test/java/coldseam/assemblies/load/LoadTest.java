package coldseam.assemblies.load;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.assemblies.Build;
import coldseam.envelope.Role;
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
}
