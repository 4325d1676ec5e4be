package coldseam.conduction.solid;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.eclipse.collections.impl.factory.Lists;
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
}
