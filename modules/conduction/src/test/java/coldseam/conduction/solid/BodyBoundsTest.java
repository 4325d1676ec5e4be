package coldseam.conduction.solid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.conduction.Interval;
import java.util.Optional;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What holds of the bounds whatever the fields are. */
class BodyBoundsTest {

    private static BodyLevel level(Blocks blocks, int steps) {
        Grid grid = new Grid(new PaintedGrid(blocks.body(), Lists.mutable.empty()));
        BodyLevel coarse = BodyLevel.bounded(grid, Optional.empty(), 1e-3, steps);
        Cuts cuts = new Cuts(grid);
        for (int d = 0; d < 3; d++) {
            for (int i = 0; i < grid.n[d]; i++) {
                cuts = cuts.with(d, i, 0.3);
            }
        }
        return BodyLevel.bounded(cuts.grid(), Optional.of(coarse.before(cuts)), 1e-3, steps);
    }

    private static double sum(double[][] shares) {
        double sum = 0;
        for (double[] direction : shares) {
            for (double each : direction) {
                sum += each;
            }
        }
        return sum;
    }

    /**
     * Prager and Synge: the cells' residuals add up to the difference of the energies, to what the linear solver left of
     * its equations: a hundredth of the gap.
     */
    @ParameterizedTest
    @ValueSource(ints = {2, 3})
    void sharesAddUpToTheGap(int environments) {
        BodyLevel level = level(environments == 2 ? SolidCases.corner2() : SolidCases.iso3(), Integer.MAX_VALUE);
        double width = level.form.total().width();
        assertEquals(width, level.bounds().orElseThrow().gap, 1e-2 * width);
        assertEquals(
                level.bounds().orElseThrow().gap,
                sum(level.bounds().orElseThrow().share),
                1e-9 * level.bounds().orElseThrow().gap);
    }

    /** Unsolved fields have wide bounds, never false ones; and the gap is still the cells' sum for a flux that is free. */
    @Test
    void boundsHoldAfterOneStep() {
        for (int steps = 1; steps < 4; steps++) {
            BodyLevel level = level(SolidCases.corner2(), steps);
            Interval unsolved = level.form.total();
            // 2.279 W/K: reference, see ReferencesTest
            assertTrue(unsolved.contains(2.27907), unsolved::toString);
            Interval case3 = level(SolidCases.iso3(), steps)
                    .form
                    .between(new double[] {1, 0, 0}, new double[] {0, 1, 0})
                    .times(-1);
            assertTrue(case3.contains(2.0935), case3::toString);
        }
    }

    /** The tree leaves nothing but rounding of the divergence. */
    @Test
    void fluxIsFreeOfSources() {
        Grid grid = new Grid(new PaintedGrid(SolidCases.joist().body(), Lists.mutable.empty()));
        FluxSystem system = new FluxSystem(grid);
        double[][] q = system.fluxes();
        double[] surplus = new double[system.n];
        double[] potential = new double[system.n];
        for (int i = 0; i < system.n; i++) {
            potential[i] = Math.sin(i);
        }
        system.flux(potential, 0, q, surplus);
        double before = ConservationTree.divergence(system, q);
        new ConservationTree(system, new Room()).push(q, surplus);
        double after = ConservationTree.divergence(system, q);
        assertTrue(after < 1e-11 * before, before + " then " + after);
    }

    /** Flows in one direction through layers are in both spaces, so both bounds are the sum of resistances. */
    @Test
    void layersAreExact() {
        BodySolution solution = Blocks.of("layers", 0, 0, 0, 700, 300, 250)
                .cut(BoxSide.X0, BoxSide.X1, BoxSide.Y0, BoxSide.Y1)
                .air("indoor", 0, 0, -1, 700, 300, 0)
                .air("outdoor", 0, 0, 250, 700, 300, 251)
                .solid(2.3, 0, 0, 0, 700, 300, 150)
                .solid(0.035, 0, 0, 150, 700, 300, 250)
                .environment(new BodyEnvironment("indoor", 20, 0.10, 0.13, 0.17))
                .environment(new BodyEnvironment("outdoor", -5, 0.04, 0.05, 0.06))
                .solve(1e-4);
        // The floor of the drawing is a ceiling to the room below: heat flows up into it and up out of the roof.
        double exact = 0.21 / (0.10 + 0.15 / 2.3 + 0.1 / 0.035 + 0.04);
        Interval proven = solution.coupling("indoor", "outdoor");
        assertTrue(proven.contains(exact), () -> proven + " misses " + exact);
        assertTrue(proven.width() < 1e-9 * exact, proven::toString);
        assertEquals(
                -5 + 25 * exact / 0.21 * 0.04,
                solution.surface("outdoor").lowest(),
                1e-6); // temperatures are kept in single precision
    }

    /** The patch's flow is a part of its environment's, and the mean of the estimated field lies within its interval. */
    @Test
    void patchHoldsItsMean() {
        BodySolution solution = SolidCases.corner2()
                .patch("corner", "indoor", 380, 380, 1150, 430, 430, 1200)
                .solve(3e-4);
        BodySolution.PatchTemperature patch = solution.patches().getFirst();
        // Three squares of 50 mm meet in the corner.
        assertEquals(3 * 0.05 * 0.05, patch.area(), 1e-12);
        double sum = 0;
        for (BodyField.Face face : solution.field().faces()) {
            boolean near = face.environment().equals(Optional.of("indoor"))
                    && face.cell().high(0) < 0.431
                    && face.cell().high(1) < 0.431
                    && face.cell().low(2) > 1.149;
            double area = 1;
            for (int d = 0; d < 3; d++) {
                area *= d == face.side().direction() ? 1 : face.cell().size(d);
            }
            sum += near ? area * face.temperatures().sumOfDouble(each -> each) / 4 : 0;
        }
        double mean = sum / patch.area();
        // Corner values of small faces miss their mean by little beside the interval.
        assertTrue(
                patch.mean().lower() - 0.1 < mean && mean < patch.mean().upper() + 0.1, () -> patch + " and " + mean);
        assertTrue(patch.mean().width() < 0.15, patch::toString);
        assertTrue(
                solution.coupling("indoor", "outdoor").contains(2.27907),
                () -> solution.couplings().toString());
    }
}
