package coldseam.envelope.file.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.files.Fault;
import coldseam.files.FileFaultException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.eclipse.collections.api.list.ImmutableList;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Small files that once took minutes or gigabytes are refused in words.
 *
 * <p>The times are guards against hanging, many times what is needed on a slow machine: no speed is asserted.
 */
@Tag("slow")
class CostBombsTest {

    private static final Duration HANGS = Duration.ofMinutes(5);

    private static final String HEAD = """
            house: Bomb
            site: {indoor-temperature: 20 °C, outdoor-temperature: -10 °C}
            """;

    private static ImmutableList<Fault> faults(String text) {
        byte[] content = text.getBytes(StandardCharsets.UTF_8);
        FileFaultException refused = assertThrows(
                FileFaultException.class,
                () -> assertTimeoutPreemptively(HANGS, () -> HouseFiles.read("bomb.yaml", content)));
        int said = refused.getMessage().length();
        assertTrue(said < 200_000, () -> said + " characters are said");
        return refused.faults();
    }

    private static String said(String text) {
        return faults(text).collect(Fault::message).makeString("\n");
    }

    private static String assembly(String layers) {
        return HEAD + "assemblies:\n  wall:\n    layers:\n" + layers;
    }

    private static String layer(String material, String thickness) {
        return "    - {material: " + material + ", thickness: " + thickness + ", role: structure}\n";
    }

    private static String many(int count, IntFunction<String> each) {
        return IntStream.range(0, count).mapToObj(each).collect(Collectors.joining());
    }

    @Test
    void nameOfTwentyThousandLetters() {
        String name = "a".repeat(500);
        String said = said(HEAD + "materials:\n  " + name + ": {conductivity: 0.04 W/(m·K), source: test}\n"
                + "assemblies:\n  wall:\n    layers:\n" + layer("a".repeat(20_000), "1 mm"));
        assertTrue(
                said.contains("bomb.yaml:4:3: a name is too long; got 500 characters; allowed: up to 200 characters"),
                said);
        assertTrue(said.contains("bomb.yaml:8:18: a text is too long; got 20000 characters"), said);
    }

    @Test
    void tenThousandBracketsInAUnit() {
        String said = said(assembly(layer("softwood", "\"1 " + "(".repeat(10_000) + "\"")));
        assertTrue(said.contains("bomb.yaml:6:39: a text is too long; got 10002 characters"), said);
        said = said(assembly(layer("softwood", "\"1 " + "(".repeat(1_000) + "\"")));
        assertTrue(
                said.contains("thickness: a thickness is needed; got a text of 1002 characters; allowed: a number"),
                said);
        said = said(assembly(layer("softwood", "\"1 " + "(".repeat(98) + "\"")));
        assertTrue(said.contains("is no unit known here"), said);
    }

    @Test
    void hundredThousandSpacesInALength() {
        String said = said(assembly(layer("softwood", "\"1" + " ".repeat(100_000) + "mm\"")));
        assertTrue(said.contains("a text is too long; got 100003 characters"), said);
    }

    /** Each is a run of letters that can be taken apart into units in many ways, and in the end cannot. */
    @Test
    void twoThousandOddUnits() {
        ImmutableList<Fault> faults =
                faults(assembly(many(2_000, i -> layer("softwood", i + " mmmmmmmmmmmmmmmmmmmmmmmq"))));
        assertEquals(201, faults.size());
        assertTrue(
                faults.getLast()
                        .message()
                        .endsWith("there are more faults after this one; got 1802 more; mend these first"),
                () -> faults.getLast().message());
    }

    @Test
    void manyNamesThatAreNotThere() {
        ImmutableList<Fault> faults = faults(HEAD
                + "materials:\n"
                + many(500, i -> "  material " + i + ": {conductivity: 0.04 W/(m·K), source: test}\n")
                + "assemblies:\n"
                + many(
                        200,
                        i -> "  a" + i + ":\n    layers:\n"
                                + many(30, j -> layer("mateiral " + (30 * i + j), "1 mm"))));
        assertEquals(201, faults.size());
    }

    @Test
    void manyKeysThatAreNone() {
        assertEquals(
                201, faults(HEAD + many(10_000, i -> "assembles" + i + ": 1\n")).size());
    }

    /** Every two openings are held against each other, so rows that multiply them are counted out. */
    @Test
    void rowsOfRowsOfOpenings() {
        String said = said(HEAD + """
                assemblies:
                  wall: {layers: [{material: softwood, thickness: 100 mm, role: structure}]}
                body:
                  footprint-line: inner face
                  storeys:
                  - {name: floor, height: 2.5 m, footprint: {rectangle: [500 m, 500 m]}, walls: {all: wall}}
                  base: {kind: slab on ground, assembly: wall}
                  roof: {form: flat, assembly: wall}
                openings:
                """
                + many(
                        9,
                        i -> "  w" + i
                                + ": {kind: window, surface: floor south wall, width: 1 m, height: 1 m, left: 1 m,"
                                + " transmittance: 1 W/(m²·K), count: 50, spacing: 1 m}\n"));
        assertEquals(
                "bomb.yaml:12:3: a house has too many openings; got 450, those in rows counted one by one; allowed: up to 400;"
                        + " divide it, or join openings that stand side by side",
                said);
    }

    @Test
    void moreOfAKindThanAHouseHas() {
        String said = said(HEAD + "materials:\n" + many(501, i -> "  m" + i + ": {}\n"));
        assertTrue(said.contains("bomb.yaml:4:3: materials has too many items; got 501; allowed: 0 to 500"), said);
    }
}
