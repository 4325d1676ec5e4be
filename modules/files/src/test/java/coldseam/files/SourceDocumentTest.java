package coldseam.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SourceDocumentTest {

    private static SourceNode read(String name, String text) {
        Faults faults = new Faults();
        SourceNode node = SourceDocument.read(name, text.getBytes(StandardCharsets.UTF_8), faults)
                .orElseThrow();
        assertTrue(faults.isEmpty());
        return node;
    }

    private static String shape(SourceNode node) {
        String at = node.place().line() + ":" + node.place().column();
        if (node instanceof SourceNode.Mapping mapping) {
            return at
                    + mapping.entries()
                            .collect(each -> each.key() + "@" + each.place().line() + ":"
                                    + each.place().column() + "=" + shape(each.value()))
                            .makeString("{", ",", "}");
        }
        if (node instanceof SourceNode.Sequence sequence) {
            return at + sequence.items().collect(SourceDocumentTest::shape).makeString("[", ",", "]");
        }
        SourceNode.Scalar scalar = (SourceNode.Scalar) node;
        return at + scalar.kind() + "(" + scalar.text() + ")";
    }

    @Test
    void keepsThePlaceOfEachKeyAndValue() {
        assertEquals(
                "1:1{a@1:1=1:4NUMBER(1),b@2:1=3:1[3:3TEXT(5'6\"),4:3BOOLEAN(true)],c@5:1=5:4{d@5:5=5:8EMPTY()}}",
                shape(read("x.yaml", "a: 1\nb:\n- 5'6\"\n- true\nc: {d: ~}\n")));
        assertEquals(
                "1:1{a@1:2=1:7NUMBER(1),b@2:1=2:6[2:7TEXT(12 °),2:15EMPTY()]}",
                shape(read("x.json", "{\"a\": 1,\n\"b\": [\"12 °\", null]}")));
    }

    @Test
    void readsScalarsAsTheyAreWritten() {
        for (String number : new String[] {"1", "-1.5", "2e3", ".5", "0", "0.035"}) {
            assertEquals("1:1NUMBER(" + number + ")", shape(read("x.yaml", number)));
        }
        for (String text : new String[] {"012", "1_000", "yes", "8:12", "0x1F", "R-30", "1/2", "72 °F", "0,5"}) {
            assertEquals("1:1TEXT(" + text + ")", shape(read("x.yaml", text)));
        }
        assertEquals("1:1TEXT(12)", shape(read("x.yaml", "\"12\"")));
        assertEquals("1:1TEXT(a)", shape(read("x.yaml", "\ufeffa")));
    }

    /** Cyrillic letters in a Latin word pass for it; words of one script, and signs of Greek letters, do not. */
    @Test
    void refusesWordsOfLettersThatLookAlike() {
        for (String text : new String[] {"mineral w\u043eol", "\u0430ir", "clay bric\u039a"}) {
            Faults faults = new Faults();
            SourceDocument.read("x.yaml", (text + ": " + text).getBytes(StandardCharsets.UTF_8), faults);
            assertEquals(2, faults.count(), text);
        }
        for (String text : new String[] {
            "\u0444\u0430\u0441\u0430\u0434 north", "50 \u03bcm", "\u03bb=0.035", "W\u00e4rmed\u00e4mmung", "\u0394T"
        }) {
            assertEquals("1:1TEXT(" + text + ")", shape(read("x.yaml", "\"" + text + "\"")));
        }
    }

    @Test
    void refusesFilesItCannotRead(@TempDir Path folder) throws IOException {
        Path large = folder.resolve("large.yaml");
        Files.write(large, new byte[SourceDocument.LARGEST + 1]);
        Path none = folder.resolve("none.yaml");
        Faults faults = new Faults();
        assertTrue(SourceDocument.read(large, faults).isEmpty());
        assertTrue(SourceDocument.read(none, faults).isEmpty());
        assertTrue(SourceDocument.read(folder, faults).isEmpty());
        assertEquals(
                folder + ":1:1: a file is needed; got a folder; name the file in it\n"
                        + large
                        + ":1:1: the file is too large; got 1048577 bytes; allowed: up to 1048576 bytes; check that"
                        + " this is the right file\n"
                        + none + ":1:1: the file does not exist; check its name and folder",
                faults.sorted().collect(Fault::message).makeString("\n"));
    }

    /** Whatever the text, there is a tree or a fault, and nothing else happens. */
    @Property(seed = "2026")
    void alwaysGivesATreeOrAFault(@ForAll String text, @ForAll boolean json) {
        Faults faults = new Faults();
        boolean read = SourceDocument.read(json ? "x.json" : "x.yaml", text.getBytes(StandardCharsets.UTF_8), faults)
                .isPresent();
        assertTrue(read || !faults.isEmpty());
    }

    /** Text that is nearly YAML finds more ways to fail than any text does. */
    @Property(seed = "2026")
    void neverFailsOnTextThatIsNearlyYaml(
            @ForAll
                    @net.jqwik.api.constraints.CharRange(from = ' ', to = '~')
                    @net.jqwik.api.constraints.Chars({'\n', '\t', ':', '-', '{', '[', '&', '*', '!', '?', '|', '>', '%'
                    })
                    String text) {
        Faults faults = new Faults();
        boolean read = SourceDocument.read("x.yaml", text.getBytes(StandardCharsets.UTF_8), faults)
                .isPresent();
        assertTrue(read || !faults.isEmpty());
    }
}
