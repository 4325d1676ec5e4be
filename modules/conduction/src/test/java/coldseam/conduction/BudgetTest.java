package coldseam.conduction;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.conduction.solve.Conduction;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A solve that may not have the unknowns it needs ends with a wider interval and says so. */
class BudgetTest {

    private static final Accuracy ASKED = new Accuracy(1e-6, 400_000);

    /** A corner whose interval needs some 20,000 unknowns. */
    private static Section corner() {
        return Sketch.of("corner")
                .polygon(0.04, 0, 0, 1000, 0, 1000, 100, 100, 100, 100, 1000, 0, 1000)
                .environment("outdoor", 0, 0.04)
                .environment("indoor", 20, 0.13)
                .boundary("outdoor", 0, 1000, 0, 0, 1000, 0)
                .boundary("indoor", 1000, 100, 100, 100, 100, 1000)
                .section();
    }

    @Test
    void aSectionStaysWiderAndHoldsTheExactValue() {
        Solution narrow = Conduction.solve(corner(), ASKED);
        Solution wide = Conduction.solve(corner(), ASKED, Budget.of(1500));
        assertTrue(narrow.met());
        assertFalse(wide.met());
        assertTrue(wide.outcome().byMemory());
        assertTrue(wide.unknowns() <= 1500, () -> "unknowns: " + wide.unknowns());
        Interval exact = narrow.coupling("indoor", "outdoor");
        Interval held = wide.coupling("indoor", "outdoor");
        assertTrue(held.lower() <= exact.upper() && exact.lower() <= held.upper() && held.width() > exact.width());
        String said = wide.notes().getLast();
        assertTrue(said.contains("as many as the budget allows") && said.contains("-Xmx"), said);
    }

    @Test
    void aTemperatureAimedAtSaysWhatItIsKnownTo() {
        Accuracy aimed = new Accuracy(1e-3, 400_000).aimedAt("indoor", 0.001);
        assertTrue(Conduction.solve(corner(), aimed).met());
        Outcome outcome = Conduction.solve(corner(), aimed, Budget.of(600)).outcome();
        assertTrue(outcome.byMemory() && outcome.unsure() > 0.001, outcome::toString);
        assertTrue(outcome.note().orElseThrow().contains("K only"));
    }

    @Test
    void whatFitsIsTheSameWhateverTheBudget() {
        Accuracy asked = new Accuracy(1e-2, 400_000);
        assertEquals(
                Conduction.solve(corner(), asked).couplings(),
                Conduction.solve(corner(), asked, Budget.of(100_000)).couplings());
    }

    @Test
    void moreMemoryAllowsMoreAndWhatIsKeptLeavesRoom() {
        Budget small = Budget.ofHeap(64_000_000);
        Budget large = Budget.ofHeap(512_000_000);
        assertTrue(small.section() < large.section() && small.body() < large.body());
        assertEquals(Budget.of(Budget.LEAST), Budget.ofHeap(1));
        assertEquals(large, large.keeping(512_000_000, 100, 3e5, 10, 1e6));
        Budget roomy = small.keeping(64_000_000, 100, 3e5, 10, 1e6);
        assertTrue(roomy.section() < 3000 && roomy.body() < small.body(), roomy::toString);
        assertTrue(roomy.section() * 100.0 + roomy.body() * 10.0 < 0.35 * 64e6 / 40);
        assertThrows(IllegalArgumentException.class, () -> Budget.of(Budget.LEAST - 1));
    }

    @Test
    void whereTheReckoningFailsItHalvesAndInTheEndRefuses() {
        List<Integer> tried = new ArrayList<>();
        int got = Budget.halving(
                10_000,
                most -> {
                    tried.add(most);
                    if (most > 3000) {
                        throw new OutOfMemoryError("a test");
                    }
                    return most;
                },
                () -> tried.add(0));
        assertEquals(2500, got);
        assertEquals(List.of(10_000, 0, 5000, 0, 2500), tried);
        SectionException refused = assertThrows(
                SectionException.class,
                () -> Budget.halving(
                        4000,
                        most -> {
                            throw new OutOfMemoryError("a test");
                        },
                        () -> {}));
        assertTrue(refused.getMessage().contains("more memory than the"), refused.getMessage());
    }
}
