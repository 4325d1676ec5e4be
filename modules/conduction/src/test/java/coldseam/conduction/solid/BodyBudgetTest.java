package coldseam.conduction.solid;

import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.conduction.Accuracy;
import coldseam.conduction.Budget;
import coldseam.conduction.Interval;
import coldseam.conduction.Outcome;
import org.junit.jupiter.api.Test;

/** A body that may not have the unknowns it needs. */
class BodyBudgetTest {

    @Test
    void aBodyStaysWiderAndHoldsTheExactValue() {
        SolidBody body = SolidCases.corner().body();
        Accuracy asked = new Accuracy(1e-3, 800_000);
        BodySolution narrow = BodySolver.solve(body, asked);
        BodySolution wide = BodySolver.solve(body, asked, Budget.of(3000));
        assertTrue(narrow.met());
        assertTrue(wide.outcome().byMemory() && wide.unknowns() < narrow.unknowns());
        Interval exact = narrow.couplings().getFirst().value();
        Interval held = wide.couplings().getFirst().value();
        assertTrue(held.lower() <= exact.upper() && exact.lower() <= held.upper() && held.width() > exact.width());
        String at = "indoor";
        Outcome cold =
                BodySolver.solve(body, asked.aimedAt(at, 1e-6), Budget.of(3000)).outcome();
        assertTrue(cold.byMemory() && cold.unsure() > 1e-6, cold::toString);
    }
}
