package coldseam.junctions.section;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.conduction.Point;
import coldseam.envelope.Assembly;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Role;
import coldseam.files.FileFaultException;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.Samples;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.detail.DetailFile;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where one of several layers of a role ends apart from the others. */
class NamedLayersTest {

    /** 15 + 215 mm, then boards of 100, 50 and 30 mm, then 10 mm: the other wall's lines lie at 230, 410 and 420 mm. */
    private static final Assembly WALL = Samples.assembly(
            "wall with three boards",
            Samples.layer("plaster", 0.57, 15, Role.FINISH),
            Samples.layer("brick", 0.77, 215, Role.STRUCTURE),
            Samples.layer("first board", 0.035, 100, Role.INSULATION),
            Samples.layer("second board", 0.036, 50, Role.INSULATION),
            Samples.layer("third board", 0.037, 30, Role.INSULATION),
            Samples.layer("render", 1.0, 10, Role.CLADDING));

    private static Detail detail(String ends) {
        return DetailFile.read(
                "corner.yaml",
                "detail: corner\nkind: outside corner\nname: n\nrank: best\nlooks-like: l\norder: []\nconnections: {}\n"
                        + "failures: []\nphotographs: []\ndrawing:\n- band: wall\n  to: other wall.outside\n  ends: {"
                        + ends + "}\n- band: other wall\n  to: wall.inside\n");
    }

    /** mm, how far a board of the first wall goes: to the right in the section. */
    private static double end(String ends, String board) {
        JunctionSetup setup = Samples.setup(JunctionKind.OUTSIDE_CORNER).between(WALL, Optional.of(WALL));
        Composition composition = Composer.compose(detail(ends), setup);
        return 1000
                * composition
                        .plan()
                        .pieces()
                        .select(piece -> piece.material().name().equals(board))
                        .getFirst()
                        .outline()
                        .corners()
                        .collectDouble(Point::x)
                        .max();
    }

    @ParameterizedTest
    @CsvSource({
        "first board, 410, 410, 230",
        "second board, 410, 230, 410",
        "third board, 230, 410, 410",
    })
    void oneLayerIsNamedByItsPlace(String board, double outermost, double second, double innermost) {
        String all = "insulation: other wall.insulation.outside, ";
        assertEquals(outermost, end(all + "outermost insulation: other wall.structure.outside", board), 1e-6);
        assertEquals(second, end(all + "insulation 2: other wall.structure.outside", board), 1e-6);
        assertEquals(innermost, end(all + "innermost insulation: other wall.structure.outside", board), 1e-6);
    }

    @Test
    void aLayerThatIsNotThereChangesNothing() {
        assertEquals(420, end("insulation 4: other wall.structure.outside", "third board"), 1e-6);
        // The only layer of its role is the innermost and the outermost.
        assertEquals(230, end("outermost structure: other wall.structure.outside", "brick"), 1e-6);
    }

    @Test
    void wordsThatMeanNoLayerAreRefused() {
        FileFaultException twice = assertThrows(
                FileFaultException.class,
                () -> detail("innermost insulation: other wall.inside, insulation 1: other wall.outside"));
        assertTrue(twice.getMessage().contains("corner.yaml:13:51: each layer ends once"), twice.getMessage());
        FileFaultException unknown =
                assertThrows(FileFaultException.class, () -> detail("outermost insolation: other wall.inside"));
        assertTrue(
                unknown.getMessage().contains("a role is needed; got \"outermost insolation\""), unknown.getMessage());
    }
}
