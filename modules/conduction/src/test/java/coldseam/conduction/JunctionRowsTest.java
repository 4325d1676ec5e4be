package coldseam.conduction;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Junctions with the parameters behind the default psi values of ISO 14683 (parameters from memory): insulation 0.1 m at
 * 0.04 in a wall of 0.3 m, masonry 0.2 m at 0.8163, or 0.3 m at 0.1201; slab 0.2 m at 2.0; Rsi 0.13, Rse 0.04; arms of 1.5
 * m. Values from an independent finite-element model of the same geometries, hence ±0.001.
 */
class JunctionRowsTest {

    private static final double ARM = 1500;

    /** Layers from outside: where the insulation lies in a masonry wall. */
    private static double[][] layers(String wall) {
        double[] insulation = {100, 0.04};
        double half = 100;
        switch (wall) {
            case "external":
                return new double[][] {insulation, {200, 0.8163}};
            case "middle":
                return new double[][] {{half, 0.8163}, insulation, {half, 0.8163}};
            case "internal":
                return new double[][] {{200, 0.8163}, insulation};
            default:
                return new double[][] {{300, 0.1201}};
        }
    }

    private static double transmittance(double[][] layers) {
        double r = 0.17;
        for (double[] layer : layers) {
            r += 1e-3 * layer[0] / layer[1];
        }
        return 1 / r;
    }

    @ParameterizedTest
    @CsvSource({
        "external, 0.1236, -0.0822, 0.9003",
        "middle, 0.0756, -0.1302, 0.9088",
        "internal, 0.0221, -0.1837, 0.8718",
        "light, 0.0583, -0.1667, 0.8644"
    })
    void corner(String wall, double inner, double outer, double factor) {
        double[][] layers = layers(wall);
        double end = 300 + ARM;
        Sketch sketch = Sketch.of("corner, " + wall);
        double depth = 0;
        for (double[] layer : layers) {
            double a = depth;
            double b = depth + layer[0];
            sketch.polygon(layer[1], a, a, end, a, end, b, b, b, b, end, a, end);
            depth = b;
        }
        Solution solution = sketch.environment("indoor", 1, 0.13)
                .environment("outdoor", 0, 0.04)
                .boundary("outdoor", 0, end, 0, 0, end, 0)
                .boundary("indoor", end, 300, 300, 300, 300, end)
                .solve(1e-5);
        check(solution, transmittance(layers), 2e-3 * ARM, 2e-3 * end, inner, outer, 0.3, factor);
    }

    @ParameterizedTest
    @CsvSource({
        "external, false, 0.0750, 0.0064, 0.9598",
        "middle, true, 0.9269, 0.8583, 0.7696",
        "internal, true, 0.8620, 0.7934, 0.6640",
        "light, true, 0.7544, 0.6794, 0.7357"
    })
    void intermediateFloor(String wall, boolean through, double inner, double outer, double factor) {
        double[][] layers = layers(wall);
        double height = 2 * ARM + 200;
        Sketch sketch = Sketch.of("intermediate floor, " + wall);
        double depth = 0;
        for (double[] layer : layers) {
            sketch.rectangle(layer[1], depth, 0, depth + layer[0], height);
            depth += layer[0];
        }
        Solution solution = sketch.rectangle(2, through ? 0 : 100, ARM, 300 + ARM, ARM + 200)
                .environment("indoor", 1, 0.13)
                .environment("outdoor", 0, 0.04)
                .boundary("outdoor", 0, 0, 0, height)
                .boundary("indoor", 300, 0, 300, ARM, 300 + ARM, ARM)
                .boundary("indoor", 300 + ARM, ARM + 200, 300, ARM + 200, 300, height)
                .solve(1e-5);
        check(solution, transmittance(layers), 2e-3 * ARM, 1e-3 * height, inner, outer, 1e-3 * ARM, factor);
    }

    private static void check(
            Solution solution,
            double u,
            double innerLength,
            double outerLength,
            double inner,
            double outer,
            double edge,
            double f) {
        Interval l = solution.coupling("indoor", "outdoor");
        assertEquals(inner, l.middle() - u * innerLength, 1e-3, "inner psi");
        assertEquals(outer, l.middle() - u * outerLength, 1e-3, "outer psi");
        // At the inside edge; far from a well-insulated floor the wall itself may be colder.
        assertEquals(f, solution.field().temperatureAt(0.3, edge), 1e-3, "temperature factor");
    }
}
