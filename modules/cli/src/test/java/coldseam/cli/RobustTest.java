package coldseam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.envelope.JunctionKind;
import coldseam.files.AtomicFiles;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.TypicalBuild;
import coldseam.junctions.catalogue.CatalogueFile;
import coldseam.junctions.detail.Detail;
import coldseam.report.DetailSvg;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Files that once were too much for a reader: each is now read, or refused with exactly the words beside it.
 *
 * <p>{@code -Dcoldseam.write=true} writes the words anew.
 */
@Tag("slow")
class RobustTest {

    private static final Path FOLDER = CommittedReport.ROOT.resolve("fixtures").resolve("robust");

    @TempDir
    Path folder;

    static List<Path> files() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.filter(each -> !each.toString().endsWith(".expected"))
                    .sorted()
                    .toList();
        }
    }

    @ParameterizedTest
    @MethodSource("files")
    void isReadOrRefusedInTheseWords(Path file) throws IOException {
        String name = file.getFileName().toString();
        Probe probe = Probe.valueOf(name.substring(0, name.indexOf('-')).toUpperCase(Locale.ROOT));
        Path copy = Files.copy(file, folder.resolve(name));
        String said = probe.refusal(copy)
                        .map(refusal -> refusal.replace(folder + "/", ""))
                        .orElse("accepted")
                + "\n";
        Path expected = file.resolveSibling(name.replaceFirst("\\.\\w+$", ".expected"));
        if (Boolean.getBoolean("coldseam.write")) {
            Files.writeString(expected, said, StandardCharsets.UTF_8);
        }
        assertEquals(Files.readString(expected, StandardCharsets.UTF_8), said);
    }

    /** What was read and then could not be drawn: it is, and no number of it is none. */
    @Test
    void aDetailIsDrawn() throws IOException {
        Files.copy(FOLDER.resolve("detail-drawn.yaml"), folder.resolve("detail-drawn.yaml"));
        Detail detail = CatalogueFile.withOwn(
                        CatalogueFile.builtIn(), folder, List.of("detail-drawn.yaml"), List.of(), List.of())
                .find("detail-drawn.yaml")
                .orElseThrow();
        JunctionResult result =
                Bench.SHARED.computer().compute(detail, TypicalBuild.MASONRY.setup(JunctionKind.of("shutter box")));
        Path svg = folder.resolve("detail.svg");
        AtomicFiles.write(svg, DetailSvg.text(result, Lists.immutable.empty(), UnitSystem.SI));
        assertNumbers(Files.readString(svg));
    }

    @Test
    void aCouplingWithoutEndIsNullWithItsReason() throws IOException {
        Path json = folder.resolve("section.json");
        Path svg = folder.resolve("section.svg");
        Run run = Run.of(
                "section",
                FOLDER.resolve("section-two-prescribed-temperatures-meet.yaml").toString(),
                "--json",
                json.toString(),
                "--svg",
                svg.toString());
        assertEquals(Exit.UNBROKEN.code(), run.code(), run::err);
        assertTrue(run.out().contains("two temperatures are prescribed without surface resistance and meet"), run::out);
        assertTrue(!run.out().contains("-1.25"), "a prescribed side is at its temperature");
        String data = Files.readString(json);
        assertTrue(data.contains("\"lower\": null") && data.contains("meet"), data);
        assertNumbers(data);
        assertNumbers(Files.readString(svg));
    }

    private static void assertNumbers(String text) {
        assertTrue(!text.contains("NaN") && !text.contains("Infinity"), text);
    }

    @Test
    void someAreThere() throws IOException {
        assertTrue(files().size() >= 3);
    }
}
