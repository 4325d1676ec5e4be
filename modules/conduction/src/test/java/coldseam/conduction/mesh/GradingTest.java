package coldseam.conduction.mesh;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.conduction.Rings;
import coldseam.conduction.Sketch;
import coldseam.conduction.Solution;
import org.junit.jupiter.api.Test;

/** Free points of the first mesh: many between a small shape and a large one, none in layers. */
class GradingTest {

    private static int free(Sketch sketch) {
        Mesh mesh = new MeshedSection(sketch.section()).mesh;
        int corners = 0;
        boolean[] seen = new boolean[mesh.nodes];
        for (int t = 0; t < mesh.triangles; t++) {
            for (int i = 0; i < 3; i++) {
                int v = mesh.node[6 * t + i];
                corners += seen[v] || v < mesh.drawn ? 0 : 1;
                seen[v] = true;
            }
        }
        return corners;
    }

    private static Sketch layers(double first, double second) {
        return Sketch.of("layers")
                .rectangle(0.8, 0, 0, first, 3000)
                .rectangle(0.04, first, 0, first + second, 3000)
                .environment("indoor", 1, 0.13)
                .environment("outdoor", 0, 0.04)
                .boundary("indoor", 0, 3000, 0, 0)
                .boundary("outdoor", first + second, 0, first + second, 3000);
    }

    @Test
    void layersGetNoPoints() {
        for (double thickness : new double[] {0.1, 1, 10, 100, 500}) {
            assertEquals(0, free(layers(thickness, 160)), () -> "layer of " + thickness + " mm");
        }
    }

    private static Sketch pipe(int n, double far) {
        double[] box = {-far, -far, far, -far, far, 0, -far, 0};
        double[] hole = Rings.circle(0, -1000, 500, n);
        return Sketch.of("pipe")
                .polygon(1, Rings.around(box, hole))
                .environment("inside", 1, 0)
                .environment("outside", 0, 0)
                .boundary("outside", far, 0, -far, 0)
                .boundary("inside", Rings.closed(hole));
    }

    /** About ten points a side; ten times as far, asks for less than twice as many. */
    @Test
    void pointsGrowWithTheLogarithmOfTheDistance() {
        int near = free(pipe(48, 10_000));
        int far = free(pipe(48, 100_000));
        assertTrue(near >= 48 && near <= 12 * 48, () -> near + " points");
        assertTrue(far > near && far < 2 * near, () -> near + " then " + far + " points");
    }

    /** Without the points this took 290,955 unknowns, with them 7,203; twice that is allowed for other refinements. */
    @Test
    void aPipeInTheGroundNeedsFewUnknowns() {
        Solution solution = pipe(48, 100_000).solve(1e-3);
        assertTrue(solution.met());
        assertTrue(solution.unknowns() < 15_000, () -> solution.unknowns() + " unknowns");
    }
}
