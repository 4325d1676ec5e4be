package coldseam.envelope.file.house;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.files.Fault;
import coldseam.files.FileFaultException;
import coldseam.files.KnownNames;
import coldseam.files.quantity.UnitSystem;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.eclipse.collections.api.factory.Lists;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each file of fixtures/faulty is refused with exactly the messages beside it, all at once. */
class FaultyHousesTest {

    private static final Path FOLDER = Path.of(System.getProperty("coldseam.root"), "fixtures", "faulty");
    private static final KnownNames DETAILS =
            KnownNames.of(Lists.immutable.with("slab-edge-insulated", "corner-wrapped"));

    static List<Path> faulty() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.filter(each -> each.getFileName().toString().matches("\\d.*\\.(yaml|json)"))
                    .sorted()
                    .toList();
        }
    }

    @ParameterizedTest
    @MethodSource("faulty")
    void isRefusedWithTheseMessages(Path file) throws IOException {
        String name = file.getFileName().toString();
        byte[] content = Files.readAllBytes(file);
        FileFaultException refused = assertThrows(
                FileFaultException.class,
                () -> HouseFiles.read(name, content, DETAILS).shell());
        Path expected = file.resolveSibling(name.replaceFirst("\\.\\w+$", ".expected"));
        String said = refused.getMessage() + "\n";
        if (Boolean.getBoolean("coldseam.write")) {
            Files.writeString(expected, said);
        }
        assertEquals(Files.exists(expected) ? Files.readString(expected) : "", said);
    }

    /** Units that no sentence of a fault names in the other system, but where it quotes a file or says what to write. */
    private static final Pattern METRIC = Pattern.compile("W/\\(m|°C|K·d|mm²/m|kg/m|kPa|W/K");

    @ParameterizedTest
    @MethodSource("faulty")
    void measuresInTheReadersUnits(Path file) throws IOException {
        byte[] content = Files.readAllBytes(file);
        FileFaultException refused = assertThrows(
                FileFaultException.class,
                () -> HouseFiles.read("f", content, DETAILS).shell());
        for (Fault fault : refused.faults()) {
            String allowed = fault.allowed().in(UnitSystem.US);
            boolean toBeWritten = allowed.contains("such as") || allowed.contains(": ");
            assertFalse(METRIC.matcher(fault.asked()).find(), fault::message);
            assertFalse(!toBeWritten && METRIC.matcher(allowed).find(), allowed);
        }
    }

    @Test
    void saysItsValuesInEitherSystem() throws IOException {
        String good = Files.readString(FOLDER.resolve("83-material-of-no-conductivity.yaml"));
        FileFaultException refused = assertThrows(
                FileFaultException.class,
                () -> HouseFiles.read(
                        "f",
                        good.replace("conductivity: 0 W", "conductivity: 600 W").getBytes(StandardCharsets.UTF_8),
                        DETAILS));
        Fault fault = refused.faults().getFirst();
        assertEquals("600 W/(m·K)", fault.got().in(UnitSystem.US));
        assertEquals(
                "at least 0.003 W/(m·K) and at most 500 W/(m·K)",
                fault.allowed().in(UnitSystem.SI));
        assertEquals(
                "at least 0.021 Btu·in/(h·ft²·°F) and at most 3466.736 Btu·in/(h·ft²·°F)",
                fault.allowed().in(UnitSystem.US));
        assertTrue(
                fault.next().in(UnitSystem.SI).startsWith("usual: insulation 0.020 to 0.045, vacuum panels 0.007, "));
        assertTrue(
                fault.next()
                        .in(UnitSystem.US)
                        .startsWith(
                                "usual: insulation 0.139 Btu·in/(h·ft²·°F) to 0.312 Btu·in/(h·ft²·°F), vacuum panels 0.049"
                                        + " Btu·in/(h·ft²·°F), "),
                () -> fault.next().in(UnitSystem.US));
    }

    @Test
    void thereAreAtLeastForty() throws IOException {
        assertTrue(faulty().size() >= 40);
    }

    @Test
    void theHouseTheyAreMadeFromIsGood() throws IOException {
        byte[] content = Files.readAllBytes(FOLDER.resolve("good.yaml"));
        assertDoesNotThrow(() -> HouseFiles.read("good.yaml", content, DETAILS));
    }
}
