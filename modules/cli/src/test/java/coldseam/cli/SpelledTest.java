package coldseam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Consoles that show fewer letters than are printed: code pages of Windows in Europe, America and Japan. */
class SpelledTest {

    private static final List<String> PAGES = List.of(
            "IBM437", "IBM850", "IBM852", "IBM866", "windows-1250", "windows-1252", "ISO-8859-1", "windows-31j");

    private static String shown(String text, String page) throws IOException {
        ByteArrayOutputStream console = new ByteArrayOutputStream();
        try (Spelled writer = new Spelled(console, Charset.forName(page))) {
            writer.write(text);
        }
        return console.toString(Charset.forName(page));
    }

    @Test
    void whatThePageHasIsShownAndTheRestIsSpelled() throws IOException {
        String line = "U up to 0.341 W/(m²·K), λ 0.035, 20 °C – “Älteres Haus”, 3½ in, Σ ψ·l ≤ 4 €";
        assertEquals(
                "U up to 0.341 W/(m²·K), lambda 0.035, 20 °C - \"Älteres Haus\", 3½ in, Σ psi·l ≤ 4 EUR",
                shown(line, "IBM437"));
        assertEquals(
                "U up to 0.341 W/(m2*K), lambda 0.035, 20 °C - \"Älteres Haus\", 3 1/2 in, sum psi*l <= 4 EUR",
                shown(line, "IBM852"));
        assertEquals("3 5/8 in of 5' 3\", infinite", shown("3⅝ in of 5′ 3″, ∞", "IBM850"));
        assertEquals("Cati evi, Izmir", shown("Çatı evi, İzmir", "IBM866"));
        assertEquals("?", shown("家", "IBM850"), "of another script nothing is guessed");
    }

    /** What is said of the demo houses, and of all that is checked; other reports show words that mix two scripts. */
    @Test
    void noUnitOfAReportGetsAQuestionMark() throws IOException {
        try (Stream<Path> reports = Files.walk(CommittedReport.ROOT.resolve("reports"))) {
            for (Path report : reports.filter(each -> each.toString().matches(".*(?:[.]txt|validation[.]md)"))
                    .toList()) {
                String text = Files.readString(report);
                for (String page : PAGES) {
                    String marks = text.replaceAll("[^?]", "");
                    String shown = shown(text, page);
                    assertEquals(marks, shown.replaceAll("[^?]", ""), () -> report + " on " + page);
                }
            }
        }
    }

    @Test
    void aConsoleNamesItsLettersAndALocaleWithoutALanguageDoesNot() {
        assertEquals(StandardCharsets.UTF_8, Terminal.letters(StandardCharsets.US_ASCII));
        assertEquals(StandardCharsets.UTF_8, Terminal.letters(StandardCharsets.UTF_8));
        assertFalse(Terminal.letters(Charset.forName("IBM850")).equals(StandardCharsets.UTF_8));
    }
}
