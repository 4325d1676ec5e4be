package coldseam.conduction.solid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.conduction.Interval;
import java.util.function.Supplier;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Couplings, flows and temperatures from outside the project. */
@Tag("slow")
class ReferencesTest {

    private static final double WIDTH = 3e-4;

    private static final BodySolution CASE_3 = SolidCases.iso3().solve(WIDTH);

    private static Blocks named(String body) {
        Supplier<Blocks> drawn = switch (body) {
            case "bracket" -> SolidCases::bracket;
            case "corner" -> SolidCases::corner;
            case "corner2" -> SolidCases::corner2;
            case "cube" -> SolidCases::cube;
            case "ext" -> SolidCases::ext;
            case "iso4" -> SolidCases::iso4;
            case "joist" -> SolidCases::joist;
            default -> throw new IllegalArgumentException(body);
        };
        return drawn.get();
    }

    /**
     * Two independent programs, worked out apart: A tensor grids of degrees 2 and 3, B trilinear temperatures and
     * two-point fluxes with a grading and a solver of its own; both proven intervals, W/K.
     */
    @ParameterizedTest
    @CsvSource({
        "bracket, indoor, outdoor, 0.2158091, 0.2158097, 0.215373, 0.216207",
        "corner, indoor, outdoor, 0.9211780, 0.9211868, 0.920826, 0.921435",
        "corner2, indoor, outdoor, 2.2790571, 2.2790966, 2.276467, 2.282151",
        "cube, hot, cold, 2.1969179, 2.1969262, 2.195324, 2.198461",
        "ext, indoor, outdoor, 0.4231373, 0.4231381, 0.423072, 0.423180",
        "iso3, alpha, beta, 2.0934952, 2.0935091, 2.091886, 2.095058",
        "iso3, alpha, gamma, 1.7812351, 1.7812542, 1.779541, 1.783013",
        "iso3, beta, gamma, 1.6243231, 1.6243405, 1.622771, 1.625951",
        "iso4, inside, outside, 0.5399829, 0.5399847, 0.539454, 0.540442",
        "joist, indoor, outdoor, 0.1762556, 0.1762571, 0.176127, 0.176385"
    })
    void couplings(
            String body, String first, String second, double aLower, double aUpper, double bLower, double bUpper) {
        BodySolution solution = body.equals("iso3") ? CASE_3 : named(body).solve(WIDTH);
        Interval proven = solution.coupling(first, second);
        assertTrue(
                proven.lower() <= aUpper && aLower <= proven.upper(),
                () -> body + ": " + proven + " misses " + aLower + " … " + aUpper);
        assertTrue(proven.lower() <= bUpper && bLower <= proven.upper(), () -> body + ": " + proven);
        assertTrue(solution.met(), body);
        assertTrue(body.equals("iso3") || proven.width() <= WIDTH * proven.middle(), () -> body + ": " + proven);
    }

    /** Separation of variables, three hot–cold faces added; the digits are the series'. */
    @Test
    void cubeBySeries() {
        Interval proven = SolidCases.cube().solve(2e-6).coupling("hot", "cold");
        assertTrue(proven.contains(2.19692182), proven::toString);
        assertTrue(proven.width() < 5e-6, proven::toString);
    }

    private static Interval flow(BodySolution solution, String environment) {
        return solution.heatFlows()
                .detect(each -> each.environment().equals(environment))
                .value();
    }

    private static double temperature(BodySolution solution, String probe) {
        return solution.probes().detect(each -> each.name().equals(probe)).temperature();
    }

    /**
     * ISO 10211:2007 Annex A case 3, flows and corner temperatures as restated in a public data file of a general finite
     * element library; its tolerances are 1 % and 0.1 K (from memory). The flows here are held to 0.02 W: the printed
     * digits and the interval's width. Couplings follow from the printed flows and are from memory.
     */
    @ParameterizedTest
    @CsvSource({"alpha, 46.09", "beta, 13.89", "gamma, -59.98"})
    void flowsOfCase3(String environment, double printed) {
        Interval flow = flow(CASE_3, environment);
        assertTrue(flow.lower() <= printed + 0.02 && printed - 0.02 <= flow.upper(), flow::toString);
        // 3e-4 of the total coupling of 5.5 W/K at 15 to 20 K.
        assertTrue(flow.width() < 0.04, flow::toString);
    }

    @ParameterizedTest
    @CsvSource({"alpha corner, 11.32", "beta corner, 11.11", "far alpha, 17.905", "far beta, 16.845"})
    void temperaturesOfCase3(String probe, double printed) {
        // The far corners are not printed: an independent program's, good to 0.01 K; the estimate is good to 0.02 K.
        assertEquals(printed, temperature(CASE_3, probe), 0.03, probe);
    }

    @Test
    void coldestPlacesOfCase3AreTheCorners() {
        assertEquals(11.32, CASE_3.surface("alpha").lowest(), 0.03);
        assertEquals(new Place(0.2, 0.2, 1), CASE_3.surface("alpha").at());
        assertEquals(11.11, CASE_3.surface("beta").lowest(), 0.03);
    }

    /** ISO 10211:2007 Annex A case 4, from the same; 0.8041 °C is what independent meshes converge to. */
    @Test
    void case4() {
        BodySolution solution = SolidCases.iso4().solve(WIDTH);
        assertEquals(0.540, flow(solution, "inside").middle(), 0.0005);
        assertEquals(0.805, temperature(solution, "bar end centre"), 0.005);
        assertEquals(0.8041, temperature(solution, "bar end centre"), 2e-4);
        BodyField field = solution.field();
        assertEquals(
                field.temperatureAt(new Place(0, 0, 0)),
                field.faces()
                        .select(each -> each.environment().equals(java.util.Optional.of("outside")))
                        .flatCollect(BodyField.Face::temperatures)
                        .max(),
                1e-12);
    }
}
