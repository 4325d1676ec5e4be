package coldseam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the README shows is what the tool does. */
@Tag("slow")
class ReadmeTest {

    @TempDir
    Path folder;

    private static String readme() throws IOException {
        return Files.readString(CommittedReport.ROOT.resolve("README.md"));
    }

    @Test
    void theFirstCommandAuditsTheDemoHouse() throws IOException {
        MatchResult command = Pattern.compile("coldseam\\.jar audit (\\S+) -o (\\S+)")
                .matcher(readme())
                .results()
                .findFirst()
                .orElseThrow();
        Path pdf = folder.resolve(Path.of(command.group(2)).getFileName());
        Run run = Run.of("audit", CommittedReport.ROOT.resolve(command.group(1)).toString(), "-o", pdf.toString());
        assertEquals(0, run.code(), run::err);
        assertTrue(Files.size(pdf) > 100_000, "the PDF is too small to hold the sheets");
    }

    @Test
    void theExcerptIsWhatTheCommandPrints() throws IOException {
        Run run = Run.of(
                "audit",
                CommittedReport.ROOT
                        .resolve("fixtures/houses/heron-row-gaps.yaml")
                        .toString(),
                "-o",
                folder.resolve("gaps.pdf").toString());
        assertEquals(1, run.code(), run::err);
        String block = readme().split("```\n")[1];
        List<String> shown = block.lines()
                .filter(line -> !line.isBlank() && !line.strip().equals("..."))
                .toList();
        assertTrue(shown.size() > 5, block);
        for (String line : shown) {
            assertTrue(run.lines().contains(line), () -> "not printed: " + line + "\n" + run.out());
        }
    }

    @Test
    void theFirstHouseIsUnbrokenAndTellsWhatToChoose() throws IOException {
        Path first = CommittedReport.ROOT.resolve("fixtures/houses/first-house.yaml");
        String text = Files.readString(first);
        assertTrue(
                readme().contains("```yaml\n" + text.substring(text.indexOf("\nhouse:") + 1) + "```"),
                "another first house");
        assertEquals(0, Run.of("check", first.toString()).code());
        int choices = text.indexOf("junctions:");
        Path open = Files.writeString(folder.resolve("open.yaml"), text.substring(0, choices));
        Run run = Run.of("check", open.toString());
        assertEquals(1, run.code(), run::err);
        List<String> details = Pattern.compile("detail: ([a-z-]+)")
                .matcher(text)
                .results()
                .map(found -> found.group(1))
                .toList();
        assertEquals(6, details.size());
        for (String detail : details) {
            assertTrue(run.out().contains("(" + detail + ")"), () -> detail + " is not named:\n" + run.out());
        }
        // What it prints to be added, added as printed.
        String lines = run.out().substring(run.out().indexOf("\njunctions:") + 1);
        assertEquals(
                0,
                Run.of(
                                "check",
                                Files.writeString(open, text.substring(0, choices) + lines)
                                        .toString())
                        .code(),
                lines);
    }

    @Test
    void everyCommandNamedIsThere() throws IOException {
        List<String> names = Pattern.compile("`coldseam ([a-z]+)")
                .matcher(readme())
                .results()
                .map(found -> found.group(1))
                .distinct()
                .toList();
        assertTrue(names.size() >= 6, names::toString);
        for (String name : names) {
            assertEquals(0, Run.of(name, "--help").code(), name);
        }
    }

    @Test
    void thePictureIsWhatTheDetailLooksLike() throws IOException {
        Path svg = folder.resolve("terrace-edge.svg");
        Run run = Run.of("detail", "terrace-edge-boards-meet", "--svg", svg.toString());
        assertEquals(0, run.code(), run::err);
        CommittedReport.check("terrace-edge.svg", Files.readString(svg));
    }

    /** The numbers of values are those of the validation page, which a test of its own makes. */
    @Test
    void theValuesFromOutsideAreCountedAsTheValidationPageCountsThem() throws IOException {
        String page = Files.readString(CommittedReport.ROOT.resolve("reports/validation.md"));
        String said = readme().replaceAll("\\s+", " ");
        String wanted = count(page, "from outside, together") + " values from outside the project ("
                + count(page, "from outside: read") + " read in the source named, "
                + count(page, "from outside: from memory") + " remembered from it, "
                + count(page, "from outside: common practice, no source")
                + " common practice without a source) and " + count(page, "worked out apart")
                + " that we worked out apart from the code";
        assertTrue(said.contains(wanted), () -> "README.md should say: " + wanted);
    }

    private static int count(String page, String what) {
        return Pattern.compile("^\\| " + Pattern.quote(what) + " \\| (\\d+) \\|", Pattern.MULTILINE)
                .matcher(page)
                .results()
                .mapToInt(found -> Integer.parseInt(found.group(1)))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no line of \"" + what + "\" in reports/validation.md"));
    }
}
