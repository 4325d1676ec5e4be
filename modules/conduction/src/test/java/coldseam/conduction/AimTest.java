package coldseam.conduction;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.conduction.solve.Conduction;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Refinement aimed at the lowest surface temperature. */
@Tag("slow")
class AimTest {

    /** A wall of board on concrete with a slab through the board. */
    private static Sketch slabThrough(double board, double concrete) {
        return Sketch.of("slab through the board")
                .rectangle(board, 0, 0, 100, 1500)
                .rectangle(concrete, 100, 0, 300, 1500)
                .rectangle(concrete, 0, 700, 1500, 900)
                .environment("outdoor", -5, 0.04)
                .environment("indoor", 20, 0.25)
                .boundary("outdoor", 0, 0, 0, 1500)
                .boundary("indoor", 300, 0, 300, 700, 1500, 700)
                .boundary("indoor", 300, 1500, 300, 900, 1500, 900);
    }

    /** What the rows of a table have in common is solved once. */
    private static final Map<List<Object>, Solution> SOLVED = new HashMap<>();

    private static Solution solved(Section section, double width) {
        return SOLVED.computeIfAbsent(
                List.of(section, width), asked -> Conduction.solve(section, new Accuracy(width, 400_000)));
    }

    /**
     * Within the error asked for of a solution a hundred times as narrow as any that is used, and with fewer unknowns than
     * narrowing the whole section takes.
     */
    @ParameterizedTest
    @CsvSource({"0.035, 2.3, 0.025", "0.035, 2.3, 0.0025", "0.022, 50, 0.025", "0.2, 0.2, 0.025"})
    void theColdestPointIsAsExactAsAsked(double board, double concrete, double kelvin) {
        Section section = slabThrough(board, concrete).section();
        double exact = solved(section, 1e-8).surface("indoor").lowest();
        Solution aimed = Conduction.solve(section, new Accuracy(1e-3, 400_000).aimedAt("indoor", kelvin));
        Solution narrow = solved(section, 1e-6);
        assertTrue(aimed.met(), () -> aimed.outcome() + "");
        assertEquals(exact, aimed.surface("indoor").lowest(), kelvin);
        assertTrue(aimed.unknowns() < narrow.unknowns(), aimed.unknowns() + " and " + narrow.unknowns());
        assertTrue(aimed.coupling("indoor", "outdoor").lower()
                <= narrow.coupling("indoor", "outdoor").upper());
    }

    /** An exact field has no error to refine away; an environment that nothing faces is nothing to aim at. */
    @Test
    void nothingToAimAt() {
        Section layers = Sketch.of("layers")
                .rectangle(0.035, 0, 0, 1000, 100)
                .rectangle(2.3, 0, 100, 1000, 300)
                .environment("indoor", 20, 0.25)
                .environment("outdoor", 0, 0.04)
                .boundary("indoor", 0, 0, 1000, 0)
                .boundary("outdoor", 0, 300, 1000, 300)
                .section();
        Accuracy accuracy = new Accuracy(1e-3, 400_000);
        assertTrue(Conduction.solve(layers, accuracy.aimedAt("indoor", 1e-6)).unknowns() < 200);
        assertTrue(Conduction.solve(layers, accuracy.aimedAt("attic", 1e-6)).unknowns() < 200);
        assertThrows(IllegalArgumentException.class, () -> Conduction.solve(layers, accuracy.aimedAt("indoor", 0)));
    }

    /** Of two rooms of one temperature each alone has a field of its own, but what is read from is exact: it is not refined for ever. */
    @Test
    void twoRoomsAreAsWarm() {
        Section layers = Sketch.of("layers before two rooms")
                .rectangle(0.035, 0, 0, 1000, 100)
                .rectangle(2.3, 0, 100, 1000, 300)
                .environment("outdoor", 0, 0.04)
                .environment("indoor", 20, 0.25)
                .environment("next room", 20, 0.25)
                .boundary("indoor", 0, 0, 500, 0)
                .boundary("next room", 500, 0, 1000, 0)
                .boundary("outdoor", 0, 300, 1000, 300)
                .section();
        Solution solution = Conduction.solve(layers, new Accuracy(1e-2, 400_000).aimedAt("indoor", 0.0025));
        assertTrue(solution.met(), () -> solution.outcome() + "");
        assertTrue(solution.unknowns() < 20_000, solution.unknowns() + " unknowns");
    }
}
