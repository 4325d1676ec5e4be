package coldseam.report.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import coldseam.audit.Audit;
import coldseam.audit.engine.GroundRow;
import coldseam.audit.engine.Sample;
import coldseam.files.quantity.UnitSystem;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.junit.jupiter.api.Test;

/**
 * A box of 8 m by 6 m on clay, its walls 465 mm: A = 48 m², P = 28 m. What is said is worked out apart by the formulas of ISO
 * 13370:2017 clause 7 (from memory).
 */
class GroundWordsTest {

    private static void said(String expected, String base) {
        Audit audit =
                Sample.audit(Sample.yaml().replace("{kind: slab on ground, assembly: slab}", base), Sample.good());
        ImmutableList<GroundRow> rows = GroundRow.of(audit);
        assertEquals(1, rows.size());
        assertEquals(48 / 14.0, rows.getOnly().method().floor().characteristicDimension(), 1e-9);
        assertEquals(Lists.immutable.of(expected), new GroundWords(new Print(UnitSystem.SI)).of(rows));
    }

    @Test
    void aCrawlSpaceIsSaidWithAllItsParts() {
        said(
                "lowest floor: the floor itself has U 0.201 W/(m²·K), the ground under it 0.700 W/(m²·K), and the space to"
                        + " outdoors, spread over the floor, 0.968 W/(m²·K), of which vents have 0.338 W/(m²·K). The space: floor 0.60 m over"
                        + " the ground, walls of U 1.800 W/(m²·K), vents of 0.0020 m²/m, wind of 4.0 m/s, shielding factor"
                        + " 0.10, bare ground. Its temperature factor b is 0.89.",
                "{kind: suspended, assembly: slab, crawl-space: {height: 0.6 m, wall-transmittance: 1.8 W/(m²·K), vents:"
                        + " 0.002 m²/m, wind-shielding: exposed}}");
    }

    @Test
    void aCellarIsSaidWithItsDepthAndItsWalls() {
        said(
                "lowest floor: its floor lies 1.20 m under the ground, the mean along P; its U is that of dt and half of this"
                        + " depth together. Walls in the ground: dw = 9.32 m, U 0.138 W/(m²·K).",
                "{kind: heated cellar, assembly: slab, depth: 1.2 m}");
    }
}
