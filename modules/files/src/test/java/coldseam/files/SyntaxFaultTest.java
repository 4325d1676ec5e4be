package coldseam.files;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Slips of people who have never written YAML: each is told at the line to be mended, with what to write. */
class SyntaxFaultTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                // A line of the file per ¶.
                "a:¶  b:¶    c: 1¶   d: 2|4:4|the line is set in as no line above it; got 3 spaces; allowed: 0 or 2 or 4"
                        + " spaces; set it in like the lines that it stands beside",
                "a:¶  b: 1¶ c: 2|3:2|the line is set in as no line above it; got 1 space; allowed: 0 or 2 spaces;"
                        + " set it in like the lines that it stands beside",
                "a: 1¶- b¶|2:1|a list's line stands among keys; remove its dash, or set it in under its key",
                "a:¶\tb: 1|2:1|a tab sets the line in; set it in with spaces",
                "a: 1¶  b: 2|2:3|the line is set in under line 1, which has its value already; set it in by 0 spaces to"
                        + " stand beside that line",
                "a: b: c|1:5|the line has a second colon; put a text that holds a colon in quotes: \"a: b\"",
                "a = 1¶b: 2|1:1|the line has no key, with a colon after it; write it as key: value",
                "a: 1¶b:2¶c: 3|2:1|no space stands after the colon; write a space after it: key: value",
                "a:¶  - {b: 1}¶  -{b: 2, c: 3}|3:3|no space stands after the dash; write a space after it: - …",
                "a:¶- {b: 1}¶{b: 2}¶c: 1|3:1|the line has neither a key nor a dash; begin an item of a list with \"- \"",
                "a: \"5 1/2\" b¶c: 1|1:12|what stands here does not go on with what stands before it; set what belongs"
                        + " together in alike; a text in quotes ends at its second quote, a bracket at the one that closes"
                        + " it",
                "a:¶- {b: 1}}|2:9|what stands here does not go on with what stands before it; set what belongs together in"
                        + " alike; a text in quotes ends at its second quote, a bracket at the one that closes it",
                "a:¶  front door:{b: 1, c: 2}|2:3|no space stands after the colon; write a space after it: key: value",
                "a: 1¶b:{c: 1, d: 2}|2:1|no space stands after the colon; write a space after it: key: value",
                "a: {b:\t1}|1:7|a tab stands where a value begins; write a space in its place",
                "a: @b|1:4|no value begins with this character; put the text in quotes",
                "a: {b: 1 c: 2}|1:11|a comma or a closing bracket is missing before this; write it",
            })
    void aSlipIsToldWhereItIsAndInTheFilesOwnWords(String text, String place, String told) {
        Faults faults = new Faults();
        SourceDocument.read("x.yaml", text.replace('¶', '\n').getBytes(StandardCharsets.UTF_8), faults);
        assertEquals(
                "x.yaml:" + place + ": the syntax is broken: " + told,
                faults.sorted().collect(Fault::message).makeString("\n"));
    }
}
