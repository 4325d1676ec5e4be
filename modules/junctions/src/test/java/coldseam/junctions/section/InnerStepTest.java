package coldseam.junctions.section;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.conduction.Accuracy;
import coldseam.conduction.Boundary;
import coldseam.conduction.Environment;
import coldseam.conduction.Interval;
import coldseam.conduction.Point;
import coldseam.conduction.Polygon;
import coldseam.conduction.Region;
import coldseam.conduction.Section;
import coldseam.conduction.Symmetry;
import coldseam.conduction.solve.Conduction;
import coldseam.envelope.Assembly;
import coldseam.envelope.Exposure;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Role;
import coldseam.junctions.DetailDoesNotFit;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.Samples;
import coldseam.junctions.compute.BridgeComputers;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.detail.DetailFile;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Walls that go straight on from one another with their inner faces out of line are drawn where they stand. */
class InnerStepTest {

    private static final Accuracy ACCURACY = new Accuracy(1e-5, 200_000);

    /** W/(m²·K): heat that flows straight is exact in quadratic elements, and only rounding is left. */
    private static final double ROUNDING = 1e-8;

    private static Assembly wall(double millimetres) {
        return Samples.assembly("solid", Samples.layer("stone", 1.0, millimetres, Role.STRUCTURE));
    }

    private static Detail detail(String drawing) {
        return DetailFile.read(
                "plain.yaml",
                "detail: plain\nkind: change of wall at a floor\nname: n\nrank: best\nlooks-like: l\norder: []\n"
                        + "connections: {}\nfailures: []\nphotographs: []\ndrawing:\n- band: wall\n- band: wall above\n"
                        + drawing);
    }

    private static JunctionSetup setup(Assembly lower, Assembly upper, double step) {
        return new JunctionSetup(
                        JunctionKind.WALL_CHANGE_AT_FLOOR,
                        lower,
                        Optional.of(upper),
                        180,
                        Exposure.outdoors(),
                        Exposure.outdoors(),
                        Optional.empty(),
                        0,
                        0,
                        Optional.empty(),
                        20,
                        -5)
                .stepped(step);
    }

    private static JunctionResult computed(Detail detail, JunctionSetup setup) {
        return BridgeComputers.computer(ACCURACY).compute(detail, setup);
    }

    /** Across x from the lower wall's inner face, up y from the seam: its outline written down by hand, its faces' resistances, too. */
    private static Interval byHand(double lower, double upper, double step, double down, double up) {
        Polygon below = new Polygon(
                Lists.immutable.of(new Point(0, -down), new Point(lower, -down), new Point(lower, 0), new Point(0, 0)));
        Polygon above = new Polygon(Lists.immutable.of(
                new Point(step, 0), new Point(step + upper, 0), new Point(step + upper, up), new Point(step, up)));
        return Conduction.solve(
                        new Section(
                                "by hand",
                                Symmetry.PLANAR,
                                Lists.immutable.of(new Region("stone", 1, below), new Region("stone", 1, above)),
                                Lists.immutable.of(
                                        new Environment("indoor", 20, 0.13), new Environment("outdoor", -5, 0.04)),
                                Lists.immutable.of(
                                        new Boundary(
                                                "indoor",
                                                Lists.immutable.of(
                                                        new Point(step, up),
                                                        new Point(step, 0),
                                                        new Point(0, 0),
                                                        new Point(0, -down)),
                                                OptionalDouble.empty()),
                                        new Boundary(
                                                "outdoor",
                                                lower == step + upper
                                                        ? Lists.immutable.of(
                                                                new Point(lower, -down), new Point(lower, up))
                                                        : Lists.immutable.of(
                                                                new Point(lower, -down),
                                                                new Point(lower, 0),
                                                                new Point(step + upper, 0),
                                                                new Point(step + upper, up)),
                                                OptionalDouble.empty())),
                                Lists.immutable.empty()),
                        ACCURACY)
                .coupling("indoor", "outdoor");
    }

    /** Outer faces flush; steps on both sides; the upper wall farther in; and, as before, the step outside alone. */
    @ParameterizedTest
    @CsvSource({"0.3, 0.2, 0.1", "0.4, 0.2, 0.05", "0.3, 0.2, -0.05", "0.2, 0.3, -0.1", "0.3, 0.2, 0"})
    void psiIsThatOfTheOutlineByHand(double lower, double upper, double step) {
        JunctionResult result = computed(detail(""), setup(wall(1000 * lower), wall(1000 * upper), step));
        double down = result.legs().getFirst().internalLength();
        double up = result.legs().getLast().internalLength();
        Interval coupling = byHand(lower, upper, step, down, up);
        assertTrue(
                coupling.lower() <= result.coupling().upper()
                        && result.coupling().lower() <= coupling.upper(),
                coupling + " by hand, " + result.coupling());
        // U of a metre of each wall, R = 0.13 + d / 1 + 0.04.
        double straight = down / (0.17 + lower) + up / (0.17 + upper);
        double allowed = coupling.width() + result.coupling().width();
        assertEquals(coupling.middle() - straight, result.psiExternal().middle(), allowed);
        assertEquals(result.psiExternal(), result.psiInternal(), "the ledge is level: both lengths end at the seam");
    }

    /**
     * Worked out: where what the upper wall lacks indoors is filled with the lower wall's own finish, the wall goes on as if
     * there were no seam, heat flows straight, and psi is (U below - U above) times the length above.
     */
    @Test
    void aFilledStepIsAWallWithoutASeam() {
        Assembly lower = Samples.assembly(
                "lined",
                Samples.layer("lining", 0.2, 100, Role.FINISH),
                Samples.layer("stone", 1.0, 200, Role.STRUCTURE));
        Assembly upper = wall(200);
        Detail filled = detail("- block: filling\n  material: same as wall.finish\n"
                + "  across: [wall.inside, wall above.inside]\n  along: [seam, wall above end]\n");
        JunctionResult result = computed(filled, setup(lower, upper, 0.1));
        double below = 1 / (0.13 + 0.1 / 0.2 + 0.2 + 0.04);
        double above = 1 / (0.13 + 0.2 + 0.04);
        double psi = (below - above) * result.legs().getLast().internalLength();
        assertEquals(psi, result.psiExternal().lower(), ROUNDING);
        assertEquals(psi, result.psiExternal().upper(), ROUNDING);
    }

    /** A wall of 200 mm whose inner face lies 150 mm farther in stands on 50 mm of the one below, or on a floor. */
    @Test
    void aWallNeedsSomethingUnderIt() {
        JunctionSetup inwards = setup(wall(300), wall(200), -0.15);
        DetailDoesNotFit refused = assertThrows(DetailDoesNotFit.class, () -> composed(detail(""), inwards));
        assertTrue(
                refused.getMessage()
                        .contains("on 25 % of the thickness of what carries it, with its inner face 150 mm farther in"),
                refused.getMessage());
        JunctionSetup outwards = setup(wall(300), wall(200), 0.25);
        assertTrue(assertThrows(DetailDoesNotFit.class, () -> composed(detail(""), outwards))
                .getMessage()
                .contains("250 mm farther out"));
        assertDoesNotThrow(() -> composed(detail(""), setup(wall(300), wall(200), 0.2)));
        Detail onAFloor = detail("- block: storey floor\n  material: reinforced concrete\n"
                + "  across: [away, wall.outside]\n  along: [seam - 200 mm, seam]\n");
        assertDoesNotThrow(() -> composed(onAFloor, inwards));
        Detail onSoftBoards = detail("- block: strip\n  material: mineral wool board\n"
                + "  across: [away, wall.outside]\n  along: [seam - 200 mm, seam]\n");
        assertThrows(DetailDoesNotFit.class, () -> composed(onSoftBoards, setup(wall(300), wall(200), -0.05)));
    }

    private static void composed(Detail detail, JunctionSetup setup) {
        Composer.compose(detail, setup);
    }

    @Test
    void twoStepsAreTwoJunctions() {
        JunctionSetup flush = setup(wall(300), wall(200), 0);
        assertEquals(flush, flush.stepped(0));
        assertNotEquals(flush, flush.stepped(0.1));
        assertNotEquals(flush.stepped(-0.1), flush.stepped(0.1));
        assertEquals(0.1, flush.stepped(0.1).at(180).innerStep());
        assertEquals(0.1, flush.stepped(0.1).between(wall(250), flush.second()).innerStep());
    }
}
