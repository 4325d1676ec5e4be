package coldseam.audit.house;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import coldseam.files.Fault;
import coldseam.files.FileFaultException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.eclipse.collections.api.factory.Lists;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What of alternatives can be refused only beside the shell and the catalogue, word by word, each at its place. */
@Tag("slow")
class DecisionChecksTest {

    private static final Path HOUSE = Path.of(System.getProperty("coldseam.root"), "fixtures/houses/heron-row.yaml");
    private static final Workshop WORKSHOP = new BuiltInWorkshop();

    @TempDir
    Path folder;

    /** The demo house with other alternatives; lines of these are counted from the key's own, which is 1. */
    private Path house(String alternatives) throws IOException {
        String described = Files.readString(HOUSE).replaceFirst("(?s)\nalternatives:.*", "\n");
        return Files.writeString(folder.resolve("house.yaml"), described + "alternatives:\n" + alternatives);
    }

    /** Each message with the file's name left out and its line counted from the key alternatives. */
    private void refused(String alternatives, String... messages) throws IOException {
        Path file = house(alternatives);
        int before = (int) Files.readString(file)
                .lines()
                .takeWhile(line -> !line.equals("alternatives:"))
                .count();
        FileFaultException refused = assertThrows(FileFaultException.class, () -> HouseAudit.of(file, WORKSHOP));
        assertEquals(
                Lists.immutable.of(messages).makeString("\n"),
                refused.faults()
                        .collect((Fault fault) -> fault.place().line() - before + ":"
                                + fault.message()
                                        .substring((file + ":" + fault.place().line() + ":").length()))
                        .makeString("\n"));
    }

    @Test
    void aDecisionIsAboutSomethingOfTheHouse() throws IOException {
        refused(
                """
                  junctions:
                    valleys: {kinds: [valley], options: [{detail: valley-mitred}]}
                    one wall: {surfaces: [ground floor south walls], options: [{detail: outside-corner-unbroken}]}
                """,
                "3:5: a decision is about something of this house; got \"valleys\", which means no junction and no point of"
                        + " it; correct kinds and surfaces, or remove it",
                "4:5: a decision is about something of this house; got \"one wall\", which means no junction and no point"
                        + " of it; correct kinds and surfaces, or remove it",
                "4:27: the name of a surface, an opening or a seam of this house; got \"ground floor south walls\";"
                        + " allowed: one of lowest floor, ground floor south wall, ground floor east wall, ground floor "
                        + "north wall, ground floor west wall, upper floor south wall, upper floor east wall, upper floor "
                        + "north wall, upper floor west wall, attic south wall, attic east wall, attic north wall, attic "
                        + "west wall, gable over attic east wall, gable over attic west wall, terrace over ground floor, "
                        + "lower roof over upper floor, \"roof, south slope\", \"roof, north slope\", front door, living "
                        + "room window, kitchen window, terrace door, bedroom window;"
                        + " did you mean \"ground floor south wall\"?");
    }

    @Test
    void anAssemblyThatIsDecidedIsUsed() throws IOException {
        Path file = house("  assemblies:\n    spare wall: {options: [{assembly: brick wall}]}\n");
        Files.writeString(
                file,
                Files.readString(file)
                        .replace(
                                "assemblies:\n  brick wall:",
                                "assemblies:\n  spare wall:\n    layers:\n    - {material: softwood, thickness: 80 mm, role:"
                                        + " structure}\n  brick wall:"));
        FileFaultException refused = assertThrows(FileFaultException.class, () -> HouseAudit.of(file, WORKSHOP));
        assertEquals(
                "a decision is about something of this house; got \"spare wall\", which no surface is built of; name another"
                        + " assembly, or remove it",
                message(refused));
    }

    private static String message(FileFaultException refused) {
        Fault fault = refused.faults().getOnly();
        return fault.message().substring((fault.place() + ": ").length());
    }

    @Test
    void aDetailIsOfAKindThatIsDecidedAndHasTheParametersThatAreGiven() throws IOException {
        refused(
                """
                  junctions:
                    parapet:
                      kinds: [parapet]
                      options:
                      - {detail: jamb-mid-depth}
                      - {detail: parapet-wrapped, parameters: {wings: 60 mm}}
                  points:
                    terrace guard posts: {options: [{detail: duct-insulated}]}
                """,
                "6:18: an option is of a kind that is decided; got \"jamb-mid-depth\", for: jamb; allowed: one for: parapet;"
                        + " choose another detail, or correct the decision's kinds",
                "7:48: parapet-wrapped has no such parameter; got \"wings\"; allowed: wrap; remove it",
                "9:46: an option is of a kind that is decided; got \"duct-insulated\", for: duct; allowed: one for: steel post;"
                        + " choose another detail, or correct the decision's kinds");
    }

    @Test
    void aJunctionIsDecidedOnce() throws IOException {
        refused(
                """
                  junctions:
                    all jambs: {kinds: [jamb], options: [{detail: jamb-mid-depth}]}
                    kitchen: {surfaces: [kitchen window], options: [{detail: jamb-flush-lapped}]}
                """,
                "4:5: a junction is decided once; got left jamb: kitchen window, by \"all jambs\" and by \"kitchen\"; narrow one of"
                        + " them by kinds or surfaces");
    }

    /** Once an option is chosen its line may stay, at the price of what is described. */
    @Test
    void anOptionThatIsDescribedHasNoOtherPrice() throws IOException {
        refused(
                """
                  junctions:
                    parapet: {kinds: [parapet], options: [{detail: parapet-on-break-blocks, cost: 9 EUR/m, source: a quote}]}
                  openings:
                    kitchen:
                      openings: [kitchen window]
                      cost: 520 EUR/m²
                      source: a quote
                      options:
                      - {name: the same, transmittance: 0.9 W/(m²·K), frame-transmittance: 1.0 W/(m²·K), cost: 500 EUR/m², source: a quote}
                """,
                "3:52: what is described has one price; got \"parapet-on-break-blocks\", which is what the house has there, at"
                        + " another price than the decision's cost (none is given, so that options' costs are extra costs); write"
                        + " its price as the decision's cost, or remove the option",
                "10:9: what is described has one price; got \"the same\", which is what the house has there, at another price"
                        + " than the decision's cost; write its price as the decision's cost, or remove the option");
        Path file = house("""
                  junctions:
                    parapet: {kinds: [parapet], options: [{detail: parapet-on-break-blocks, cost: 0 EUR/m, source: a quote}]}
                  assemblies:
                    brick wall: {options: [{thickness: 200 mm}]}
                  points:
                    cable sleeve: {options: [{detail: pipe-in-insulated-collar, parameters: {pipe: 50 mm}}]}
                """);
        assertDoesNotThrow(() -> HouseAudit.of(file, WORKSHOP));
    }

    @Test
    void aBuildUpThatCannotBeComputedIsRefused() throws IOException {
        refused(
                "  assemblies:\n    brick wall: {options: [{thickness: 10 mm}]}\n",
                "3:28: another build-up can be computed; got 10 mm: fasteners: recess is 0.02 m; allowed is up to the"
                        + " insulation's thickness, 0.01 m; correct it, or describe the whole assembly and name it");
    }

    /** The same detail with another length is another option. */
    @Test
    void anOptionMayDifferByALengthAlone() throws IOException {
        Path file = house(
                "  points:\n    cable sleeve: {options: [{detail: pipe-in-insulated-collar, parameters: {pipe: 60 mm}}]}\n");
        assertDoesNotThrow(() -> HouseAudit.of(file, WORKSHOP));
    }

    @Test
    void tooManyCombinationsAreRefused() throws IOException {
        StringBuilder options = new StringBuilder();
        for (int k = 1; k <= 12; k++) {
            options.append("      - {thickness: ").append(200 + 5 * k).append(" mm}\n");
        }
        refused(
                "  assemblies:\n    brick wall:\n      options:\n" + options + "    slab:\n      options:\n"
                        + options.toString().replace("thickness", "layer: extruded polystyrene board, thickness")
                        + "    flat roof:\n      options:\n      - {thickness: 240 mm}\n",
                "31:5: build-ups and openings are compared in all combinations; got 338 combinations; allowed: up to 200;"
                        + " leave out options, or decide several openings together");
    }
}
