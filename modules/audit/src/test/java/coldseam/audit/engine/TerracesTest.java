package coldseam.audit.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.audit.Audit;
import coldseam.audit.TerraceLine;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The box with a smaller second storey, whose ground floor is open above as a terrace. */
class TerracesTest {

    private static Audit audit(String layers) {
        return Sample.audit(Sample.terrace(layers), Sample.good());
    }

    @Test
    @Tag("slow")
    void underInsulationOnTopTheStructureIsAsWarmAsTheCeiling() {
        TerraceLine line = audit(
                        "    - {material: reinforced concrete, thickness: 160 mm, role: structure, controls: [air, vapour]}\n"
                                + "    - {material: polyisocyanurate board, thickness: 160 mm, role: insulation, controls: [heat]}\n")
                .terraces()
                .getFirst();
        // θ = 20 − 30·Rsi/RT, by hand: Rsi 0.10, RT = 0.10 + 0.16/2.3 + 0.16/0.025 + 0.04
        double expected = 20 - 30 * 0.10 / (0.10 + 0.16 / 2.3 + 0.16 / 0.025 + 0.04);
        assertEquals(expected, line.deck().temperature(), 1e-9);
        // 20 °C and 50 %: dew point 9.269 °C (ISO 13788:2012 annex E, from memory; computed apart)
        assertEquals(9.269, line.deck().dewPoint(), 0.0005);
        assertTrue(line.safe());
    }

    @Test
    void insulationBelowTheDeckMakesItCold() {
        Audit audit = audit(
                "    - {material: mineral wool board, thickness: 200 mm, role: insulation, controls: [air, vapour]}\n"
                        + "    - {material: reinforced concrete, thickness: 160 mm, role: structure}\n"
                        + "    - {material: extruded polystyrene board, thickness: 20 mm, role: insulation, controls: [heat]}\n");
        TerraceLine line = audit.terraces().getFirst();
        double total = 0.10 + 0.2 / 0.035 + 0.16 / 2.3 + 0.02 / 0.035 + 0.04;
        assertEquals(20 - 30 * (0.10 + 0.2 / 0.035) / total, line.deck().temperature(), 1e-9);
        assertFalse(line.safe());
        assertTrue(audit.findings().anySatisfy(each -> each.rule().equals("terrace-below-dew-point")));
    }

    /** The board on the joists is where the room's air condenses, though nothing lies above that insulates. */
    @Test
    void theDeckOverFilledJoistsIsFoundCold() {
        Audit audit = audit(
                "    - {material: gypsum plasterboard, thickness: 12.5 mm, role: finish, controls: [air, vapour]}\n"
                        + "    - {material: mineral wool board, thickness: 200 mm, role: structure, controls: [heat],\n"
                        + "       framing: {material: softwood, share: 12 %}}\n"
                        + "    - {material: plywood, thickness: 18 mm, role: structure}\n");
        TerraceLine line = audit.terraces().getFirst();
        // Between the joists, by hand: plasterboard 0.25, wool 0.035, plywood 0.13, bitumen sheet weighs nothing as a
        // membrane.
        double warm = 0.10 + 0.0125 / 0.25 + 0.2 / 0.035;
        assertEquals(20 - 30 * warm / (warm + 0.018 / 0.13 + 0.04), line.deck().temperature(), 1e-9);
        assertFalse(line.safe());
        assertTrue(audit.findings().anySatisfy(each -> each.rule().equals("terrace-below-dew-point")));
    }

    @Test
    void roofsWithoutTerraceHaveNoLine() {
        assertTrue(Sample.audit(Sample.yaml(), Sample.good()).terraces().isEmpty());
    }
}
