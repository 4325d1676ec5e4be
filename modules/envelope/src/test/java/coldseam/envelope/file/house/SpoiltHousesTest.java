package coldseam.envelope.file.house;

import static org.junit.jupiter.api.Assertions.assertFalse;

import coldseam.files.FileFaultException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tag;

/** A good house file spoilt at random is read or refused in words; nothing else may happen. */
@Tag("slow")
class SpoiltHousesTest {

    private static final Path FIXTURES = Path.of(System.getProperty("coldseam.root"), "fixtures");
    private static final List<String> SCRAPS = List.of(
            "",
            " ",
            "\n",
            ":",
            "- ",
            "{",
            "}",
            "[",
            "]",
            ",",
            "0",
            "-1",
            "1e9",
            "none",
            "true",
            "~",
            "&a ",
            "*a",
            "\"",
            "'",
            "#",
            "mm",
            " in",
            "5/0 in",
            "R-30",
            "all",
            "side 9",
            "wall",
            "[]",
            "{}",
            "house: x",
            "\t",
            "%",
            "é",
            "|",
            ">");

    /**
     * One spoiling.
     *
     * @param at where, as a share of the text
     * @param length how many characters are taken out
     * @param scrap what is put in
     */
    record Spoiling(double at, int length, String scrap) {
        String of(String text) {
            int from = (int) (at * text.length());
            int to = Math.min(text.length(), from + length);
            return text.substring(0, from) + scrap + text.substring(to);
        }
    }

    @Provide
    Arbitrary<List<Spoiling>> spoilings() {
        return Combinators.combine(
                        Arbitraries.doubles().between(0, 1).ofScale(6),
                        Arbitraries.integers().between(0, 12),
                        Arbitraries.of(SCRAPS))
                .as(Spoiling::new)
                .list()
                .ofMinSize(1)
                .ofMaxSize(4);
    }

    @Property(tries = 150, seed = "2026")
    void isReadOrRefusedInWords(@ForAll("spoilings") List<Spoiling> spoilings, @ForAll boolean storeys)
            throws IOException {
        Path file = storeys
                ? FIXTURES.resolve("houses/heron-row.yaml")
                : FIXTURES.resolve("../modules/envelope/src/test/resources/houses/everything.yaml");
        String text = Files.readString(file);
        for (Spoiling spoiling : spoilings) {
            text = spoiling.of(text);
        }
        try {
            HouseFiles.read("spoilt.yaml", text.getBytes(StandardCharsets.UTF_8));
        } catch (FileFaultException refused) {
            assertFalse(refused.faults().isEmpty());
            refused.faults().forEach(each -> assertFalse(each.asked().isBlank()));
        }
    }
}
