package coldseam.report.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import coldseam.audit.Audit;
import coldseam.audit.engine.Sample;
import coldseam.files.quantity.UnitSystem;
import org.eclipse.collections.api.factory.Lists;
import org.junit.jupiter.api.Test;

class DifferenceWordsTest {

    private static Audit audit(String more) {
        return Sample.audit(
                Sample.yaml() + "openings:\n  pane: {kind: window, surface: ground floor south wall, width: 1 m,"
                        + " height: 1 m, sill: 0.8 m, transmittance: 0.9 W/(m²·K)" + more + "}\n",
                Sample.good());
    }

    /** What the seams round a window hang on is told, whatever its size and U. */
    @Test
    void whatAWindowIsSetIntoIsTold() {
        assertEquals(
                Lists.immutable.of(
                        "Frame of pane: 80 mm deep, now 120 mm deep, under a shutter's box",
                        "Lintel of pane: new, timber"),
                DifferenceWords.between(
                                audit(", frame-depth: 80 mm"),
                                audit(", frame-depth: 120 mm, shutter-box: true, lintel: timber"),
                                UnitSystem.SI)
                        .collect(DifferenceWords.Difference::line)
                        .select(line -> line.contains("pane")));
    }
}
