package coldseam.conduction;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Two materials crosswise at one corner, the hardest singularity there is: a square of four equal quarters of
 * conductivities k1 and k2 in turn, two opposite faces at prescribed temperatures, the others adiabatic, has the coupling
 * √(k1·k2) exactly (J. B. Keller, A theorem on the conductivity of a composite medium, Journal of Mathematical Physics 5,
 * 1964, pp. 548–549: a turned checkerboard is itself with its conductivities swapped; the reference from memory).
 */
@Tag("slow")
class CheckerboardTest {

    private static Sketch board(double contrast, double x, double y) {
        double m = 500;
        return Sketch.of("checkerboard")
                .rectangle(1, x, y, x + m, y + m)
                .rectangle(contrast, x + m, y, x + 2 * m, y + m)
                .rectangle(contrast, x, y + m, x + m, y + 2 * m)
                .rectangle(1, x + m, y + m, x + 2 * m, y + 2 * m)
                .environment("a", 1, 0)
                .environment("b", 0, 0)
                .boundary("a", x, y, x + 2 * m, y)
                .boundary("b", x, y + 2 * m, x + 2 * m, y + 2 * m);
    }

    @ParameterizedTest
    @ValueSource(doubles = {4, 25, 150, 1e4, 1e6})
    void exactValueInsideAtAnyWidthAndPlace(double contrast) {
        double exact = Math.sqrt(contrast);
        for (double width : new double[] {1e-3, 1e-4, 1e-5, 1e-6}) {
            Solution solution = board(contrast, 0, 0).solve(width);
            Interval l = solution.coupling("a", "b");
            assertTrue(l.contains(exact), () -> l + " should hold " + exact);
            assertEquals(
                    solution.met(),
                    l.width() <= width * l.middle(),
                    () -> l + " at " + width + ": " + solution.outcome());
            // The lattice's origin is the drawing's middle, so it is the same drawing to the bit.
            assertEquals(
                    l, board(contrast, 50_000, -50_000).solve(width).coupling("a", "b"), () -> "at 50 m, " + width);
        }
    }

    /** What a singular corner costs is said: how wide, why, where. */
    @Test
    void theCornerIsNamed() {
        Solution solution = board(1e4, 2000, 3000).solve(1e-3);
        Outcome.SingularCorner outcome = assertInstanceOf(Outcome.SingularCorner.class, solution.outcome());
        assertEquals(new Point(2.5, 3.5), outcome.corner());
        assertEquals(1e-3, outcome.asked());
        Interval l = solution.coupling("a", "b");
        assertEquals(l.width() / l.middle(), outcome.got(), 1e-12);
        assertTrue(
                solution.notes().anySatisfy(note -> note.contains("meet crosswise at (2.5, 3.5) m")),
                solution.notes()::toString);
    }

    /** Where a corner ended what was aimed at, nobody is told to allow more unknowns. */
    @Test
    void aTemperatureBesideItSaysWhatEndedIt() {
        String said = new Outcome.ColdestUnsure(1e-3, 1e-3, 0.2, Outcome.ColdestUnsure.End.SINGULAR)
                .note()
                .orElseThrow();
        assertTrue(said.startsWith("the lowest surface temperature is known to 0.20 K only: "), said);
        assertTrue(said.contains("meet crosswise") && !said.contains("unknowns"), said);
    }
}
