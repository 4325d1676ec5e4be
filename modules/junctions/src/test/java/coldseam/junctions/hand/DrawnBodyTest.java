package coldseam.junctions.hand;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.conduction.Accuracy;
import coldseam.conduction.Interval;
import coldseam.conduction.solid.BodySolution;
import coldseam.conduction.solid.BodySolver;
import coldseam.conduction.solid.BoxSide;
import coldseam.conduction.solid.PaintedBox;
import coldseam.conduction.solid.Place;
import coldseam.conduction.solid.SolidBody;
import coldseam.files.Fault;
import coldseam.files.FileFaultException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.eclipse.collections.impl.factory.Sets;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Drawings in three dimensions, and their answers as JSON. */
@Tag("slow")
class DrawnBodyTest {

    private static final String WALL = """
            section: A pin through a wall
            lengths: cm
            body: [0, 0, 0, 50, 50, 20]
            multiplicity: 4
            cut-planes: [x0, x1, y0, y1]
            painted:
            - {environment: indoor, box: [0, 0, -1, 50, 50, 0]}
            - {environment: outdoor, box: [0, 0, 20, 50, 50, 21]}
            - {material: insulation, conductivity: 0.04, box: [0, 0, 0, 50, 50, 20]}
            environments:
              indoor: {temperature: 20, surface-resistance: {up: 0.10, horizontal: 0.13, down: 0.17}}
              outdoor: {temperature: 0, surface-resistance: 0.04}
            patches:
            - {name: middle, environment: indoor, box: [0, 0, -1, 10, 10, 0]}
            probes:
            - {name: face, at: [0, 0, 0]}
            chi: {surface: [x1, y1]}
            """;

    @TempDir
    private Path folder;

    private DrawnBody load(String text) throws IOException {
        return (DrawnBody) Drawn.load(Files.writeString(folder.resolve("wall.yaml"), text));
    }

    private String faults(String text) {
        return assertThrows(FileFaultException.class, () -> load(text))
                .faults()
                .collect(Fault::message)
                .collect(each -> each.substring(each.indexOf("wall.yaml")))
                .makeString("\n");
    }

    @Test
    void readsInItsUnit() throws IOException {
        SolidBody body = load(WALL).body();
        assertEquals(0.2, body.extent().high(2), 1e-12);
        assertEquals(Sets.immutable.of(BoxSide.X0, BoxSide.X1, BoxSide.Y0, BoxSide.Y1), body.cutPlanes());
        assertEquals(4, body.multiplicity());
        assertEquals(0.17, body.environments().getFirst().down());
        assertEquals(0.04, body.environments().getLast().up());
        assertTrue(body.painted().getLast() instanceof PaintedBox.Solid);
        assertEquals(new Place(0, 0, 0), body.probes().getFirst().at());
    }

    /** A corner of two walls, 700 mm high between two cuts: nothing is there but its edge, however it couples. */
    @Test
    void chiOfAStraightExtrusionIsNothing() throws IOException {
        DrawnBody file = load("""
                section: Two walls
                lengths: mm
                body: [-10, -10, 0, 900, 900, 700]
                cut-planes: [x1, y1, z0, z1]
                painted:
                - {environment: outdoor, box: [-10, -10, 0, 900, 900, 700]}
                - {environment: indoor, box: [300, 300, 0, 900, 900, 700]}
                - {material: insulation, conductivity: 0.04, box: [0, 0, 0, 900, 300, 700]}
                - {material: insulation, conductivity: 0.04, box: [0, 0, 0, 300, 900, 700]}
                - {material: brick, conductivity: 0.8, box: [200, 200, 0, 900, 300, 700]}
                - {material: brick, conductivity: 0.8, box: [200, 200, 0, 300, 900, 700]}
                environments:
                  indoor: {temperature: 20, surface-resistance: 0.13}
                  outdoor: {temperature: 0, surface-resistance: 0.04}
                chi: {edge: z0}
                """);
        BodySolution solution = BodySolver.solve(file.body(), new Accuracy(1e-4, 400_000));
        Interval coupling = solution.coupling("indoor", "outdoor");
        Interval chi = file.chi().orElseThrow().of(solution).chi();
        // Its width is that of both solutions: 1e-4 and 2e-5 of the coupling.
        assertTrue(chi.contains(0) && chi.width() < 1.3e-4 * coupling.middle(), chi::toString);
    }

    /** A plane wall is exact, and chi of nothing is nothing. */
    @Test
    void answersAsJson() throws IOException {
        DrawnBody file = load(WALL);
        BodySolution solution = BodySolver.solve(file.body(), BodySolver.STANDARD);
        String json = SectionJson.write(solution, file.unit(), file.chi().map(each -> each.of(solution)))
                .replaceAll("\\s", "");
        double l = 1 / (0.10 + 0.2 / 0.04 + 0.04);
        Interval coupling = solution.coupling("indoor", "outdoor");
        assertTrue(coupling.contains(l), coupling::toString);
        assertTrue(json.contains("\"unit\":\"W/K\",\"asNarrowAsAsked\":true"), json);
        assertTrue(json.contains("\"unit\":\"W\""), json);
        assertTrue(json.contains("\"patches\":[{\"name\":\"middle\",\"lower\":19.6"), json);
        assertTrue(json.contains("\"area\":0.01"), json);
        assertTrue(json.contains("\"lowestTemperature\":19.6"), json);
        assertTrue(json.contains("\"between\":[\"indoor\",\"outdoor\"]"), json);
        Interval chi = file.chi().orElseThrow().of(solution).chi();
        assertTrue(chi.contains(0) && chi.width() < 1e-9, chi::toString);
    }

    /** References: worked out apart with other grids and solvers, to 2e-4 W/K (corner), 1e-4 (slab), 2e-5 (bracket). */
    @ParameterizedTest
    @CsvSource({
        "corner-of-two-walls-and-roof, internal, 0.0186, 2e-4",
        "corner-of-two-walls-and-roof, external, 0.0119, 2e-4",
        "corner-with-slab-run-out, external, -0.3437, 4e-4",
        "corner-with-slab-run-out, internal, 0.0752, 4e-4",
        "bracket-through-insulation, , 0.0481, 6e-5"
    })
    void chiIsReadOffTheDrawing(String name, String dimensions, double expected, double tolerance) {
        Path path = Path.of(System.getProperty("coldseam.root"), "fixtures", "sections", name + ".yaml");
        DrawnBody file = (DrawnBody) Drawn.load(path);
        DrawnChi asked = dimensions == null
                ? file.chi().orElseThrow()
                : dimensions.equals("internal")
                        ? new DrawnChi.OfCorner(new Place(0.38, 0.38, 1.2), true)
                        : new DrawnChi.OfCorner(new Place(0, 0, 1.6), false);
        BodySolution solution = BodySolver.solve(file.body(), new Accuracy(3e-4, 400_000));
        DrawnChi.Sum sum = asked.of(solution);
        assertEquals(expected, sum.chi().middle(), tolerance, () -> sum.toString());
        assertEquals(3 + (dimensions == null ? -1 : 4), sum.terms().size());
    }

    @Test
    void everyFaultWithItsPlace() {
        assertEquals(
                """
                wall.yaml:3:7: body is needed; got a list of 5; allowed: a list [x0, y0, z0, x1, y1, z1]; write all of them
                wall.yaml:5:26: cut-planes is needed; got "w1"; allowed: x0, x1, y0, y1, z0, z1; did you mean "x1"?
                wall.yaml:7:3: a painted box needs exactly one of the keys material, environment, adiabatic; got the keys \
                enviroment, box; did you mean "environment"?
                wall.yaml:9:40: conductivity is out of range; got 0; allowed: more than 0 and at most 500; check value and unit""",
                faults(WALL.replace("body: [0, 0, 0, 50, 50, 20]", "body: [0, 0, 0, 50, 50]")
                        .replace("[x0, x1, y0, y1]", "[x0, x1, y0, w1]")
                        .replace("{environment: indoor, box", "{enviroment: indoor, box")
                        .replace("0.04, box", "0, box")));
    }

    @Test
    void faultsOfTheGeometryStandWhereTheBoxIsWritten() {
        assertEquals(
                """
                wall.yaml:9:3: the x1 face of box 3 (insulation) at x = 0.5 m, from (0.5, 0, 0) m to (0.5, 0.5, 0.2) m, faces \
                nothing; paint air of an environment or an adiabatic box there, or name the face among the cut-planes
                wall.yaml:14:3: patch middle holds no surface that faces its environment's air; move its box there""", faults(WALL.replace("[x0, x1, y0, y1]", "[x0, y0, y1]").replace("-1, 10, 10, 0", "5, 10, 10, 6")));
    }

    @Test
    void chiNeedsTheCutsItIsReadFrom() {
        assertTrue(faults(WALL.replace("{surface: [x1, y1]}", "{corner: [0, 0, 0], dimensions: internal}"))
                .endsWith("a corner where three edges meet is cut three times, once in each direction; the cut planes"
                        + " away from it are x1, y1"));
        assertTrue(faults(WALL.replace("{surface: [x1, y1]}", "{surface: [x1, z1]}"))
                .contains(
                        "chi needs two cut planes at right angles, whose common line is a surface's layers; got x1 and"
                                + " z1, and the cut planes are x0, x1, y0, y1"));
        assertTrue(
                faults(WALL.replace("{surface: [x1, y1]}", "{edge: z0}")).contains("got z0, and the cut planes are"));
    }

    private static final String SECTIONS =
            Path.of(System.getProperty("coldseam.root"), "fixtures", "sections").toString();

    /** A drawing of the fixtures with something else in the place of a text. */
    private String faultsOf(String name, String text, String by) throws IOException {
        String file = Files.readString(Path.of(SECTIONS, name + ".yaml"));
        assertTrue(file.contains(text), text);
        return faults(file.replace(text, by));
    }

    /**
     * A cut 60 mm from a bracket made 0.032 W/K of 0.048 (our own solutions), and nothing was said. The face opposite halves
     * the drawing or is a cut as well.
     */
    @Test
    void chiNeedsItsCutsFarAway() throws IOException {
        String bracket = "bracket-through-insulation";
        String near = faultsOf(bracket, "500", "65");
        assertTrue(
                near.contains("got 60 mm from x1 to whatever is drawn otherwise; allowed: at least 378 mm, 1.5"), near);
        assertTrue(near.contains("got 40 mm from y1"), near);
        String beside = faultsOf(bracket, "[0, 0, 180, 5, 25, 480]", "[60, 0, 180, 70, 25, 480]");
        assertTrue(beside.contains("got 60 mm from x0") && !beside.contains("y0"), beside);
        String joist = faultsOf("joist-end-in-brick", ", repeated: true", "");
        assertTrue(joist.contains("got 270 mm from x1") && joist.contains("or write repeated: true"), joist);
    }

    /** A quarter of a bracket has a quarter of its chi, which was printed as the bracket's. */
    @Test
    void chiIsOfTheWholeThing() throws IOException {
        String bracket = faultsOf("bracket-through-insulation", "multiplicity: 4", "multiplicity: 2");
        assertTrue(
                bracket.contains("cuts through at x0 and y0; got a multiplicity of 2; allowed: at least 4;"), bracket);
        String joist = faultsOf("joist-end-in-brick", "multiplicity: 2", "multiplicity: 1");
        assertTrue(joist.contains("cuts through at x0; got a multiplicity of 1; allowed: at least 2;"), joist);
    }

    /** What lengths are counted from decides chi: a vertex within a wall, or the other face's, is a slip. */
    @Test
    void aCornersVertexLiesOnItsFaces() throws IOException {
        String corner = "corner-of-two-walls-and-roof";
        assertTrue(faultsOf(corner, "[380, 380, 1200]", "[400, 380, 1200]")
                .contains("got x = 0.4000 m; allowed: 0.3800 m"));
        assertTrue(faultsOf(corner, "internal", "external")
                .contains("cold faces meet; got z = 1.200 m; allowed: 1.600 m"));
    }

    /** Of a library's name is what conducts like it. */
    @Test
    void aBorrowedNameIsRefused() throws IOException {
        assertTrue(faults(WALL.replace(
                        "material: insulation, conductivity: 0.04", "material: mineral wool board, conductivity: 35"))
                .startsWith("wall.yaml:9:3: a material of a built-in one's name conducts like it; got 35.000 W/(m·K)"));
        assertTrue(faults(WALL.replace("0.04, box", "501, box")).contains("conductivity is out of range; got 501"));
    }

    /** A bracket that is painted before its wall is not there. */
    @Test
    void aBoxThatALaterOneCoversIsRefused() {
        String bracket = "- {material: steel, conductivity: 50, box: [0, 0, 1, 1, 1, 19]}\n";
        int wall = WALL.indexOf("- {material");
        assertTrue(faults(WALL.substring(0, wall) + bracket + WALL.substring(wall))
                .contains("what is painted later leaves something of a box; got nothing: the box of line "));
    }

    @Test
    void aSectionIsStillASection() throws IOException {
        Path path = Path.of(System.getProperty("coldseam.root"), "fixtures", "sections", "flat-roof-edge.yaml");
        assertInstanceOf(DrawnSection.class, Drawn.load(path));
    }
}
