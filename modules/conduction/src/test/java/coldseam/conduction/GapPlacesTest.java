package coldseam.conduction;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.Test;

/** Where the gap sits, and which couplings are wider than asked. */
class GapPlacesTest {

    @Test
    void theGapOfACornerSitsAtItsInsideEdge() {
        Solution solution = CornerTest.corner(100, 100, 300).solve(1e-4);
        GapPlaces.Place first = GapPlaces.of(solution, 1).getFirst();
        assertEquals(new Point(0.1, 0.1), first.at());
        assertTrue(first.share() > 0.9, first::toString);
        assertTrue(first.distance() > 0 && first.distance() < 0.1, first::toString);
    }

    @Test
    void sharesFallAndAddUpToTheWidth() {
        Solution solution = IsoCasesTest.case2().solve(1e-3);
        ImmutableList<GapPlaces.Place> places = GapPlaces.of(solution, 100);
        double sum = places.sumOfDouble(GapPlaces.Place::share);
        // What is left out is less than a thousandth at each of some 24 corners.
        assertTrue(sum <= 1 + 1e-12 && sum > 0.976, () -> "sum of shares " + sum);
        for (int i = 1; i < places.size(); i++) {
            assertTrue(places.get(i).share() <= places.get(i - 1).share(), places::toString);
        }
        double width = solution.coupling("indoor", "outdoor").width();
        assertEquals(width, GapPlaces.total(solution.field()), 1e-6 * width);
        assertEquals(2, GapPlaces.of(solution, 2).size());
    }

    /** With three environments the total's width is half the sum of the three forms'. */
    @Test
    void theGapOfSeveralEnvironmentsIsTheTotalsWidth() {
        Solution solution = wall().solve(1e-3);
        double sum = solution.couplings().collectDouble(c -> c.value().width()).sum();
        double total = GapPlaces.total(solution.field());
        assertTrue(0 < total && total <= sum, () -> total + " of " + sum);
        double middle =
                solution.couplings().collectDouble(c -> c.value().middle()).sum();
        assertTrue(total <= 1e-3 * middle, () -> total + " of " + middle);
    }

    @Test
    void anExactSolutionHasNoGap() {
        Solution solution = Sketch.of("slab").layers(0.5, 0.5).solve(1e-4);
        assertTrue(GapPlaces.of(solution, 5).isEmpty());
        assertTrue(solution.widerThanAsked().isEmpty());
    }

    /** Two faces of a wall, and a small third face behind a board. */
    private static Sketch wall() {
        return Sketch.of("wall")
                .rectangle(0.8, 0, 0, 240, 1000)
                .rectangle(0.03, 0, 400, 120, 1000)
                .environment("indoor", 20, 0.13)
                .environment("outdoor", -5, 0.04)
                .environment("shaft", 5, 0.13)
                .boundary("indoor", 0, 600, 0, 0)
                .boundary("outdoor", 240, 0, 240, 600)
                .boundary("shaft", 0, 1000, 60, 1000);
    }

    /** The total is as narrow as asked and the large coupling nearly so; the small ones are named. */
    @Test
    void smallCouplingsMayBeWiderThanAsked() {
        Solution solution = wall().solve(1e-2);
        assertTrue(solution.met());
        ImmutableList<Coupling> wide = solution.widerThanAsked();
        assertEquals("shaft", wide.collect(Coupling::second).distinct().makeString());
        for (Coupling coupling : solution.couplings()) {
            assertEquals(
                    coupling.value().width() > 1e-2 * coupling.value().middle(),
                    wide.contains(coupling),
                    () -> coupling + "");
        }
        assertFalse(solution.couplings().getFirst().relativeWidth() > 1e-2);
    }

    /** A coupling that is nothing but rounding beside the largest is not called wide; one a little larger is. */
    @Test
    void aCouplingOfRoundingAloneIsNotWide() {
        assertTrue(with(new Interval(0, 1e-10)).widerThanAsked().isEmpty());
        assertEquals(
                "c", with(new Interval(0, 1e-8)).widerThanAsked().getFirst().second());
        assertTrue(with(new Interval(1e-5, 1.0099e-5)).widerThanAsked().isEmpty());
        assertTrue(with(Interval.of(0)).widerThanAsked().isEmpty());
    }

    /** A solution asked for 1e-2 whose couplings are 1 and a given one. */
    private static Solution with(Interval small) {
        Solution solution = wall().solve(1e-2);
        return new Solution(
                solution.section(),
                Lists.immutable.of(new Coupling("a", "b", new Interval(1, 1.001)), new Coupling("a", "c", small)),
                solution.heatFlows(),
                solution.surfaces(),
                solution.probes(),
                solution.field(),
                solution.accuracy(),
                solution.outcome(),
                solution.unknowns(),
                solution.seconds(),
                solution.notes());
    }

    @Test
    void anInfiniteCouplingIsWide() {
        Solution solution = IsoCasesTest.case1().solve(1e-2);
        assertEquals(
                Double.POSITIVE_INFINITY, solution.widerThanAsked().getFirst().relativeWidth());
    }
}
