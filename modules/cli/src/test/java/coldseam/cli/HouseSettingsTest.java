package coldseam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.junctions.catalogue.CatalogueFile;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Parameters and prices of details in a house file. */
class HouseSettingsTest {

    private static final String PARAPET = "- {kinds: [parapet], detail: parapet-on-break-blocks}";
    private static final String HEAT = "  heat: 0.12 EUR/kWh\n";

    @TempDir
    Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... arguments) {
        return Coldseam.run(Terminal.of(out, err), Bench.SHARED, Optional.empty(), arguments);
    }

    private Path house(String parapet, String prices) throws IOException {
        String text =
                Files.readString(Path.of(System.getProperty("coldseam.root"), "fixtures", "houses", "heron-row.yaml"));
        assertTrue(text.contains(PARAPET) && text.contains(HEAT));
        return Files.writeString(
                folder.resolve("house.yaml"), text.replace(PARAPET, parapet).replace(HEAT, HEAT + prices));
    }

    @Test
    void parametersAndPricesTheDetailsDoNotHaveAreRefusedAtOnce() throws IOException {
        Path house = house(
                "- {kinds: [parapet], detail: parapet-wrapped, parameters: {wrap: 300 mm, wrop: 80 mm}}",
                "  details: {parapet-wraped: {cost: 35 EUR/m, source: quotation}}\n");
        assertEquals(2, run("check", house.toString()), out::toString);
        String said = err.toString().replaceAll("\\s+", " ");
        assertTrue(
                said.contains("house.yaml:" + line(house, "parapet-wrapped,")
                        + ":66: the parameter wrap of parapet-wrapped is out of the detail's range; got"
                        + " 300 mm; allowed: 40 mm to 200 mm; write a length in that range"),
                said);
        assertTrue(
                said.contains("house.yaml:" + line(house, "parapet-wrapped,")
                        + ":74: parapet-wrapped has no such parameter; got \"wrop\"; allowed: wrap; did"
                        + " you mean \"wrap\"?"),
                said);
        assertTrue(
                said.contains(
                        "house.yaml:" + line(house, "parapet-wraped:") + ":13: the price of a detail needs its id"),
                said);
        assertTrue(said.contains("did you mean \"parapet-wrapped\"?"), said);
    }

    /** The number of the line that holds a text. */
    private static int line(Path file, String text) throws IOException {
        List<String> lines = Files.readAllLines(file);
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).contains(text)) {
                return i + 1;
            }
        }
        throw new AssertionError(text + " is not in " + file);
    }

    /** What the guide shows can be written as it stands. */
    @Test
    void theGuidesExampleIsAccepted() throws IOException {
        String guide = CatalogueFile.guide();
        String example = guide.substring(guide.indexOf("junctions:\n- {kinds: [parapet]"));
        example = example.substring(0, example.indexOf("```"));
        Path house = house(
                example.lines().skip(1).findFirst().orElseThrow(),
                example.substring(example.indexOf("prices:\n") + "prices:\n".length()));
        assertEquals(
                0,
                run("catalogue", "--house", house.toString(), "--kind", "parapet", "--width", "1e-1"),
                err::toString);
        assertTrue(out.toString().contains("cost 35.00 EUR/m (quotation of 3 October)"), out::toString);
    }

    @Test
    void pricesStandBesideTheOptionsWithTheirSource() throws IOException {
        Path house = house(PARAPET, "  details: {parapet-wrapped: {cost: 35 EUR/m, source: quotation of 3 October}}\n");
        assertEquals(
                0,
                run("catalogue", "--house", house.toString(), "--kind", "parapet", "--width", "1e-1"),
                err::toString);
        assertTrue(out.toString().contains("cost 35.00 EUR/m (quotation of 3 October)"), out::toString);
        assertEquals(1, out.toString().split("cost ", -1).length - 1, "nobody gave the others a price");
    }
}
