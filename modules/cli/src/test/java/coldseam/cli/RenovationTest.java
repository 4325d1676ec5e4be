package coldseam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.audit.engine.Progress;
import coldseam.audit.house.HouseAudit;
import coldseam.conduction.Interval;
import coldseam.options.Renovation;
import coldseam.options.Renovation.Stage;
import coldseam.options.Stages;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The demo house with thin walls and old windows, as it was found, and as its file describes it. */
@Tag("slow")
class RenovationTest {

    private static final Path AFTER = CommittedReport.ROOT.resolve("fixtures/houses/heron-row.yaml");
    private static final ImmutableList<String> ORDER = Lists.immutable.of("windows and doors", "brick wall");

    @TempDir
    static Path folder;

    private static Path found;
    private static Renovation renovation;

    @BeforeAll
    static void compare() throws IOException {
        found = folder.resolve("as-found.yaml");
        Files.writeString(
                found,
                Files.readString(AFTER)
                        .replaceFirst("(?s)\nalternatives:.*?\n(?=[a-z])|\nalternatives:.*", "\n")
                        .replaceFirst("thickness: 200 mm, role: insulation", "thickness: 40 mm, role: insulation")
                        .replace(" transmittance: 0.9 W", " transmittance: 2.8 W")
                        .replace("frame-transmittance: 1.0 W", "frame-transmittance: 2.4 W"));
        HouseAudit before = HouseAudit.of(found, Run.REAL);
        HouseAudit after = HouseAudit.of(AFTER, Run.REAL);
        assertEquals(ORDER.toSet(), Stages.measures(before, after).toSet());
        renovation = Stages.compare(before, after, ORDER, Progress.SILENT);
    }

    @Test
    void stagesAddUpToTheWholeChange() {
        assertEquals(ORDER, renovation.stages().collect(Stage::name));
        assertTrue(renovation.more().upper() < -50, renovation.more()::toString);
        assertEquals(1, renovation.stages().sumOfDouble(stage -> stage.share().orElseThrow()), 1e-9);
        Interval sum = renovation.stages().collect(Stage::more).injectInto(Interval.of(0), Interval::plus);
        assertTrue(
                sum.lower() <= renovation.more().upper()
                        && sum.upper() >= renovation.more().lower(),
                () -> sum + " beside " + renovation.more());
    }

    /** New windows in an old wall: nothing covers their frames until the wall is done. */
    @Test
    void aStageNamesTheSeamsThatWaitForTheNext() {
        ImmutableList<String> open = renovation
                .stages()
                .getFirst()
                .open()
                .collect(row -> row.kindLabel())
                .distinct();
        assertTrue(open.containsAllArguments("jamb", "head", "sill"), open::makeString);
        assertTrue(renovation.stages().getLast().open().isEmpty());
    }

    /** A seam whose detail does not fit the house as found has no value, which is not the value nothing. */
    @Test
    void aPartWithoutAValueIsNotTakenForNothing() {
        Renovation.Part jambs = renovation.parts().detect(part -> part.name().equals("jamb"));
        assertTrue(jambs.before().isEmpty(), jambs::toString);
        assertTrue(jambs.after().isPresent(), jambs::toString);
    }

    @Test
    void theCommandTellsItAndRefusesAnOrderItDoesNotKnow() throws IOException {
        Path csv = folder.resolve("changes.csv");
        Run run = Run.of(
                "compare", found.toString(), AFTER.toString(), "--order", "windows and doors", "--csv", csv.toString());
        assertEquals(Exit.of(renovation.after()).code(), run.code(), run::err);
        assertTrue(run.out().contains("Stage 1: windows and doors"), run::out);
        assertTrue(run.lines().stream()
                .allMatch(line ->
                        line.codePointCount(0, line.length()) <= Terminal.WIDTH || line.startsWith("Written:")));
        assertEquals(renovation.parts().size() + 1, Files.readAllLines(csv).size());

        Run refused = Run.of("compare", found.toString(), AFTER.toString(), "--order", "new roof");
        assertEquals(Exit.REFUSED.code(), refused.code());
        assertTrue(refused.err().contains("\"new roof\"") && refused.err().contains("brick wall"), refused::err);
    }
}
