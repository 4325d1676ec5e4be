package coldseam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * What is committed in reports/, against what the code writes now.
 *
 * <p>{@code mvn -pl modules/cli -am test -Dcoldseam.write=true} writes the pages anew where a change of them is meant.
 */
final class CommittedReport {

    static final Path ROOT = Path.of(System.getProperty("coldseam.root"));

    private CommittedReport() {}

    /** Fails where the committed text differs. */
    static void check(String name, String text) throws IOException {
        Path file = ROOT.resolve("reports").resolve(name);
        if (Boolean.getBoolean("coldseam.write")) {
            Files.writeString(file, text, StandardCharsets.UTF_8);
        }
        assertEquals(
                Files.exists(file) ? Files.readString(file, StandardCharsets.UTF_8) : "",
                text,
                () -> "reports/" + name + " is out of date; run with -Dcoldseam.write=true if the change is meant");
    }
}
