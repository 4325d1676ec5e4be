package coldseam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What somebody meets who writes a first house. */
@Tag("slow")
class FirstUseTest {

    @TempDir
    Path folder;

    private static String fixture(String name) throws IOException {
        return Files.readString(CommittedReport.ROOT.resolve("fixtures/houses").resolve(name));
    }

    private static String said(Run run) {
        return (run.out() + run.err()).replaceAll("\\s+", " ");
    }

    private static String check(Path file, String... more) {
        String[] arguments = new String[more.length + 2];
        arguments[0] = "check";
        arguments[1] = file.toString();
        System.arraycopy(more, 0, arguments, 2, more.length);
        return said(Run.with(Bench.SHARED, arguments));
    }

    @Test
    void whoeverWritesFeetIsAnsweredInFeet() throws IOException {
        Path file = Files.writeString(folder.resolve("marsh.yaml"), fixture("marsh-bungalow.yaml"));
        String feet = check(file);
        assertTrue(feet.contains("Btu/(h·°F)") && feet.contains(" ft "), feet);
        assertFalse(feet.contains("W/K") || feet.contains("°C"), feet);
        String metres = check(file, "--units", "si");
        assertTrue(metres.contains("W/K") && !metres.contains("Btu"), metres);
        String here = said(Run.with(Bench.SHARED, "catalogue", "--kind", "outside corner", "--house", file.toString()));
        assertTrue(here.contains("Btu/(h·ft·°F)"), here);
    }

    @Test
    void whoeverWritesFeetIsRefusedInFeet() throws IOException {
        String text = fixture("marsh-bungalow.yaml");
        String wrong = text.replaceFirst("height: [0-9].*", "height: 42 ft");
        assertFalse(wrong.equals(text));
        Path file = Files.writeString(folder.resolve("marsh.yaml"), wrong);
        Run refused = Run.with(Bench.SHARED, "check", file.toString());
        assertEquals(2, refused.code(), () -> said(refused));
        assertTrue(said(refused).contains("42 ft") && !said(refused).contains(" m;"), () -> said(refused));
    }

    @Test
    void aCeilingUnderAColdLoftIsThoughtOfWhereARoofHasNoWaterLayer() throws IOException {
        String text = fixture("first-house.yaml");
        String dry =
                text.replace("thickness: 8 mm, role: membrane, controls: [water]", "thickness: 8 mm, role: membrane");
        assertFalse(dry.equals(text));
        String said = check(Files.writeString(folder.resolve("dry.yaml"), dry));
        assertTrue(
                said.contains("No water layer in \"roof\"") && said.contains("say insulated-at: ceiling under roof"),
                said);
    }

    @Test
    void aYearsLossHasTheBoundsOfWhatItFollowsFrom() throws IOException {
        String text = fixture("first-house.yaml")
                .replace("outdoor-temperature: -10 °C}", "outdoor-temperature: -10 °C, heating-degree-days: 3500 K·d}");
        String said = check(Files.writeString(folder.resolve("year.yaml"), text));
        assertTrue(said.matches(".*loss in a year \\d+…\\d+ kWh, gross.*"), said);
    }
}
