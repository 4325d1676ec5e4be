package coldseam.conduction;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.ToDoubleFunction;
import org.eclipse.collections.api.list.ImmutableList;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What can be asked of a temperature field. */
class FieldTest {

    private static Solution slab() {
        return Sketch.of("slab").layers(0.5, 0.05).solve(1e-4);
    }

    @Test
    void temperaturesOfLayersAreTheirsExactly() {
        TemperatureField field = slab().field();
        double flux = 20 / (0.13 + 0.2 + 2 + 0.04);
        assertEquals(20 - flux * (0.13 + 0.05 / 0.5), field.temperatureAt(0.3, 0.05), 1e-11);
        assertEquals(20 - flux * (0.13 + 0.2 + 0.05 / 0.05), field.temperatureAt(0.7, 0.15), 1e-11);
        assertTrue(Double.isNaN(field.temperatureAt(0.5, 0.3)));
    }

    @Test
    void slopesOfLayersAreTheirsExactly() {
        double flux = 20 / (0.13 + 0.2 + 2 + 0.04);
        double[] slopes = slopes(slab());
        assertEquals(flux * flux * 0.2, 20 * slopes[0], 1e-8);
        assertEquals(flux * flux * 2, 20 * slopes[1], 1e-7);
    }

    /** A disc of 1 m of the same layers: π m² of them. */
    @Test
    void slopesOfATurnedSectionAreOfTheWholeBody() {
        double[] slopes =
                slopes(Sketch.of("disc").axisymmetric().layers(0.5, 0.05).solve(1e-4));
        double flux = 20 / (0.13 + 0.2 + 2 + 0.04);
        assertEquals(Math.PI * flux * flux * 0.2, 20 * slopes[0], 1e-6);
        assertEquals(Math.PI * flux * flux * 2, 20 * slopes[1], 1e-6);
    }

    /** Of the first environment's heat flow. */
    private static double[] slopes(Solution solution) {
        return solution.heatFlows().getFirst().slopes().toArray();
    }

    /**
     * A party wall runs out to the open air, with a neighbour's bare wall beyond it: what he loses through it is no part of how the
     * rooms' flow follows the wall.
     */
    private static Solution between(double wall, double neighbour) {
        return Sketch.of("party wall")
                .rectangle(wall, 0, 0, 1000, 300)
                .rectangle(0.04, 0, -100, 450, 0)
                .rectangle(wall, 450, -1000, 550, 0)
                .environment("indoor", 20, 0.13)
                .environment("neighbour", neighbour, 0.13)
                .environment("outdoor", -5, 0.04)
                .boundary("indoor", 0, -100, 450, -100, 450, -1000)
                .boundary("neighbour", 550, -1000, 550, 0, 1000, 0)
                .boundary("outdoor", 1000, 300, 0, 300)
                .solve(1e-6);
    }

    @ParameterizedTest
    @ValueSource(doubles = {20, 7})
    void slopesAreOfTheOwnFlowAlone(double neighbour) {
        double step = 0.01;
        Solution there = between(0.8, neighbour);
        for (int e = 0; e < 3; e++) {
            int flow = e;
            ToDoubleFunction<Double> of = wall ->
                    between(wall, neighbour).heatFlows().get(flow).value().middle();
            double slope =
                    (of.applyAsDouble(0.8 * Math.exp(step)) - of.applyAsDouble(0.8 * Math.exp(-step))) / (2 * step);
            double[] slopes = there.heatFlows().get(e).slopes().toArray();
            // The couplings are within 1e-6 of themselves, which the step magnifies a hundredfold.
            assertEquals(slope, slopes[0] + slopes[2], 1e-3 * Math.abs(slope));
        }
    }

    private static Solution turned(double rod) {
        return Sketch.of("rod")
                .axisymmetric()
                .rectangle(0.04, 0, 0, 500, 200)
                .rectangle(rod, 0, 0, 20, 300)
                .environment("indoor", 20, 0.13)
                .environment("outdoor", -5, 0.04)
                .boundary("indoor", 0, 0, 500, 0)
                .boundary("outdoor", 500, 200, 20, 200, 20, 300, 0, 300)
                .solve(1e-6);
    }

    @Test
    void soIsThatOfATurnedSection() {
        double step = 0.01;
        double more = turned(17 * Math.exp(step)).coupling("indoor", "outdoor").middle();
        double less = turned(17 * Math.exp(-step)).coupling("indoor", "outdoor").middle();
        double slope = (more - less) / (2 * step);
        // The couplings are within 1e-6 of themselves, which the step magnifies: as much as a hundredth where they
        // hardly follow.
        assertEquals(slope, slopes(turned(17))[1] / 25, 5e-3 * slope);
    }

    private static Solution corner(double inner, double outer) {
        return Sketch.of("corner")
                .rectangle(outer, 0, 0, 1000, 1000)
                .rectangle(inner, 0, 0, 850, 850)
                .rectangle(outer, 0, 0, 800, 60)
                .environment("indoor", 20, 0.13)
                .environment("outdoor", -5, 0.04)
                .boundary("indoor", 0, 0, 1000, 0)
                .boundary("outdoor", 0, 1000, 1000, 1000, 1000, 500)
                .solve(1e-6);
    }

    /** The slope over the difference is dL / d ln k: held to the difference of two solutions. */
    @Test
    void aSlopeIsHowTheCouplingFollowsItsConductivity() {
        double step = 0.01;
        double more =
                corner(0.8 * Math.exp(step), 0.1).coupling("indoor", "outdoor").middle();
        double less =
                corner(0.8 * Math.exp(-step), 0.1).coupling("indoor", "outdoor").middle();
        double slope = (more - less) / (2 * step);
        // The couplings are within 1e-6 of themselves, which the step magnifies a hundredfold.
        assertEquals(slope, slopes(corner(0.8, 0.1))[1] / 25, 1e-3 * slope);
    }

    /** Between the middle of the second layer and its outer face the temperature is linear: the line is straight. */
    @Test
    void isothermOfLayersIsOneStraightLine() {
        Solution solution = slab();
        double value = solution.field().temperatureAt(0.5, 0.15);
        ImmutableList<ImmutableList<Point>> lines = solution.field().isotherm(value);
        assertEquals(1, lines.size());
        for (Point p : lines.get(0)) {
            assertEquals(0.15, p.y(), 1e-9);
        }
        double first = lines.get(0).get(0).x();
        double last = lines.get(0).getLast().x();
        assertEquals(1, Math.abs(last - first), 1e-9);
        assertTrue(solution.field().isotherm(25).isEmpty());
    }

    /** Points of an isotherm have its temperature, up to what the straight pieces leave. */
    @Test
    void isothermOfACornerFollowsTheField() {
        Solution solution = CornerTest.corner(100, 100, 300).solve(1e-4);
        for (ImmutableList<Point> line : solution.field().isotherm(0.6)) {
            for (Point p : line) {
                assertEquals(0.6, solution.field().temperatureAt(p.x(), p.y()), 5e-3);
            }
        }
    }

    /** The cells cover each region's visible part once, and their errors sum to about the interval's width. */
    @Test
    void cellsTileTheSection() {
        Solution solution = IsoCasesTest.case2().solve(1e-3);
        double[] area = new double[6];
        double error = 0;
        for (TemperatureField.Cell cell : solution.field().cells()) {
            double twice = (cell.b().x() - cell.a().x())
                            * (cell.c().y() - cell.a().y())
                    - (cell.b().y() - cell.a().y()) * (cell.c().x() - cell.a().x());
            assertTrue(twice > 0, "corners run anticlockwise");
            area[cell.region()] += 0.5 * twice;
            error += cell.error();
        }
        double[] exact = {
            0.5 * 0.04 - 0.015 * 0.005 - 0.0015 * 0.0335 - 0.015 * 0.0015,
            0.5 * 0.006,
            0.015 * 0.005,
            0.5 * 0.0015,
            0.0015 * 0.0335,
            0.015 * 0.0015
        };
        for (int r = 0; r < 6; r++) {
            assertEquals(exact[r], area[r], 1e-12, "region " + r);
        }
        double width = solution.coupling("indoor", "outdoor").width();
        // The gap identity (Prager and Synge 1947); what differs is the linear systems' and the evaluation's rounding.
        assertEquals(width, error, 1e-6 * width);
    }
}
