package coldseam.conduction.solid;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** How a body's heat flow follows the conductivities of its boxes. */
@Tag("slow")
class BodySlopesTest {

    /** A quarter of a wall with a rod in it. */
    private static BodySolution rod(double conductivity, int half) {
        return Blocks.of("rod", 0, 0, 0, 300, 300, 200)
                .times(4)
                .cut(BoxSide.X0, BoxSide.X1, BoxSide.Y0, BoxSide.Y1)
                .air("indoor", 0, 0, -10, 300, 300, 0)
                .air("outdoor", 0, 0, 200, 300, 300, 210)
                .solid(0.5, 0, 0, 0, 300, 300, 100)
                .solid(0.05, 0, 0, 100, 300, 300, 200)
                .solid(conductivity, 0, 0, 100, half, half, 200)
                .environment("indoor", 20.0, 0.13)
                .environment("outdoor", 0.0, 0.04)
                .solve(1e-5);
    }

    private static double[] slopes(BodySolution solution) {
        return solution.heatFlows().getFirst().slopes().toArray();
    }

    @Test
    void ofLayersTheyAreExact() {
        double flux = 20 / (0.13 + 0.2 + 2 + 0.04);
        double[] slopes = slopes(rod(0.05, 10));
        // 0.6 m by 0.6 m in all; temperatures are kept in single precision.
        assertEquals(0.36 * flux * flux * 0.2, 20 * slopes[2], 1e-4);
        assertEquals(0.36 * flux * flux * 2, 20 * (slopes[3] + slopes[4]), 1e-3);
    }

    @Test
    void aSlopeIsHowTheCouplingFollows() {
        double step = 0.02;
        double more = rod(1 * Math.exp(step), 30).coupling("indoor", "outdoor").middle();
        double less = rod(1 * Math.exp(-step), 30).coupling("indoor", "outdoor").middle();
        double slope = (more - less) / (2 * step);
        // Couplings within 1e-5 of themselves, over a step of 0.04.
        double most = 1e-5 * more / step;
        assertEquals(slope, slopes(rod(1, 30))[4] / 20, most);
    }
}
