package coldseam.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.conduction.Accuracy;
import coldseam.conduction.solid.BodySolution;
import coldseam.conduction.solid.BodySolver;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.hand.Drawn;
import coldseam.junctions.hand.DrawnBody;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The picture of a solved body. */
class BodySvgTest {

    private static BodySolution solve(String name) {
        Path path = Path.of(System.getProperty("coldseam.root"), "fixtures", "sections", name + ".yaml");
        return BodySolver.solve(((DrawnBody) Drawn.load(path)).body(), new Accuracy(5e-3, 400_000));
    }

    @Test
    void cutsRunThroughTheColdestPlace() {
        BodySolution solution = solve("corner-of-two-walls-and-roof");
        String svg = BodySvg.text(solution, UnitSystem.SI);
        assertTrue(svg.contains(">cut at x = 380 mm<"), svg.substring(0, 400));
        assertTrue(svg.contains(">cut at y = 380 mm<") && svg.contains(">cut at z = 1200 mm<"));
        assertTrue(svg.contains(">insulation board<") && svg.contains(">brick<") && svg.contains(">concrete<"));
        assertTrue(svg.contains(">18°<"), "the isotherm of 18 °C has no label");
        assertFalse(svg.contains("NaN") || svg.contains("Infinity"));
        assertEquals(svg, BodySvg.text(solution, UnitSystem.SI));
    }

    @Test
    void measuresInFeetWhereAskedTo() {
        String us = BodySvg.text(solve("corner-of-two-walls-and-roof"), UnitSystem.US);
        // 380 mm are 14.96 in, 14 15/16 by the sixteenth; 20 °C are 68 °F, -5 °C 23 °F, both by hand.
        assertTrue(us.contains(">cut at x = 14 15/16 in<"), us.substring(0, 400));
        assertTrue(us.contains(">65°<") && us.contains(" °F<"), us);
        assertFalse(us.contains(" mm<") || us.contains("°C<") || us.contains("W/(m·K)"), us);
    }

    /** The coldest inside is on the plane inner face: a cut along it would show concrete and nothing else. */
    @Test
    void aCutShowsMoreThanOneMaterial() {
        String svg = BodySvg.text(solve("bracket-through-insulation"), UnitSystem.SI);
        assertTrue(
                svg.contains(">cut at z = 280 mm<"),
                () -> Pattern.compile(">cut at[^<]*<")
                        .matcher(svg)
                        .results()
                        .map(each -> each.group())
                        .toList()
                        .toString());
    }

    /** The room's side of a corner is seen: its coldest colour is the corner's, its warmest that of the wall far from it. */
    @Test
    void theViewShowsItsSurfacesTemperatures() {
        BodySolution solution = solve("corner-of-two-walls-and-roof");
        String svg = BodySvg.text(solution, UnitSystem.SI);
        String view = svg.substring(svg.indexOf(">temperature of the surfaces<"));
        double[] scale = Pattern.compile(">(-?[0-9.]+) °C<")
                .matcher(view)
                .results()
                .mapToDouble(each -> Double.parseDouble(each.group(1)))
                .toArray();
        assertEquals(3, scale.length);
        // A cell's mean on the coarse grid lies above its coldest corner.
        assertEquals(solution.surface("indoor").lowest(), scale[0], 0.5);
        assertTrue(scale[0] < scale[1] && scale[1] < scale[2] && scale[2] < 20, view);
    }
}
