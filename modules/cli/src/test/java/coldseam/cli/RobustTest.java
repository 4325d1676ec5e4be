package coldseam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
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

    @Test
    void someAreThere() throws IOException {
        assertTrue(files().size() >= 3);
    }
}
