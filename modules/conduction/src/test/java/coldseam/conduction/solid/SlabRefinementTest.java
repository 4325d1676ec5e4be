package coldseam.conduction.solid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whether cuts lead where they are meant to. */
class SlabRefinementTest {

    static Stream<Blocks> bodies() {
        return Stream.of(SolidCases.corner(), SolidCases.corner2(), SolidCases.bracket(), SolidCases.iso3());
    }

    /**
     * A gap gets as much narrower as was asked, within twice and half of it, from a grid of drawn planes alone: what pieces of slabs keep is
     * a mean, and what one direction's cuts take from another's slabs is not reckoned with.
     */
    @ParameterizedTest
    @MethodSource("bodies")
    void narrowsAsAsked(Blocks blocks) {
        double asked = 20;
        Grid grid = new Grid(new PaintedGrid(blocks.body(), Lists.mutable.empty()));
        BodyLevel coarse = BodyLevel.bounded(grid, Optional.empty(), 1e-3, Integer.MAX_VALUE);
        BodyBounds bounds = coarse.bounds().orElseThrow();
        Cuts cuts = SlabRefinement.choose(grid, bounds, asked, 100_000);
        BodyLevel fine = BodyLevel.bounded(cuts.grid(), Optional.of(coarse.before(cuts)), 1e-3, Integer.MAX_VALUE);
        double narrower = bounds.gap / fine.bounds().orElseThrow().gap;
        assertTrue(narrower > asked / 2 && narrower < asked * 2, () -> narrower + " times");
        assertTrue(
                IntStream.range(0, 3)
                        .anyMatch(d -> IntStream.range(2, cuts.grid().n[d])
                                .anyMatch(i -> cuts.before(d, i) == cuts.before(d, i - 2))),
                "no slab is cut twice");
    }

    /**
     * Where the cells do not suffice for what is asked, slabs in which nothing solid lies are left alone: no cut of them costs a cell, and
     * thousands made a grid of air larger than an array may be.
     */
    @Test
    void leavesSlabsOfAirWhole() {
        Blocks blocks = Blocks.of("a corner in air", -0.1, -0.1, 0, 500, 500, 500)
                .cut(BoxSide.X1, BoxSide.Y1, BoxSide.Z0, BoxSide.Z1)
                .air("outdoor", -0.1, -0.1, 0, 500, 500, 500)
                .solid(0.04, 0, 0, 0, 500, 500, 500)
                .air("indoor", 300, 300, 0, 500, 500, 500)
                .environment("indoor", 20, 0.13)
                .environment("outdoor", -5, 0.04);
        Grid grid = new Grid(new PaintedGrid(blocks.body(), Lists.mutable.empty()));
        BodyBounds bounds = BodyLevel.bounded(grid, Optional.empty(), 1e-3, Integer.MAX_VALUE)
                .bounds()
                .orElseThrow();
        Cuts cuts = SlabRefinement.choose(grid, bounds, 1e6, 2000);
        assertTrue(cuts.cells() > 1000 && cuts.cells() <= 2000, () -> cuts.cells() + " cells");
        for (int d = 0; d < 2; d++) {
            assertEquals(-0.0001, cuts.planes(d)[0]);
            assertEquals(0, cuts.planes(d)[1]);
        }
    }
}
