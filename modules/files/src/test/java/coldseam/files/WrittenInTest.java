package coldseam.files;

import static org.junit.jupiter.api.Assertions.assertEquals;

import coldseam.files.quantity.UnitSystem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WrittenInTest {

    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "a: [9 ft 2 in, 3 1/2 in], b: 0.2 mm | US",
                "a: [9 ft 2 in, 35 cm], b: 0.2 mm | SI",
                "a: 5'6\", b: 12 mm, c: 4 inches | US",
                "a: [2.9 m, 240 mm] | SI",
                "a: 9 ft, b: 2.7 m | SI",
                "a: 70 °F, b: R-30, c: 0, d: 12 | SI",
                "a: 3 m, b: 'room 2' # 9 ft, 3 in, 2 in | SI",
                "a: [3 ft, 90 cm], b: 'wall 2', c: 20 ft², d: 4 in | US",
                "a: [9 ft | US"
            })
    void whatMostLengthsAreWrittenIn(String content, UnitSystem units) throws IOException {
        Path file = Files.writeString(
                folder.resolve("house.yaml"),
                content.replace(", b:", "\nb:").replace(", c:", "\nc:").replace(", d:", "\nd:"));
        assertEquals(units, WrittenIn.of(file));
    }

    @Test
    void whatCannotBeReadIsInMetres() throws IOException {
        assertEquals(UnitSystem.SI, WrittenIn.of(folder.resolve("none.yaml")));
        assertEquals(UnitSystem.SI, WrittenIn.of(folder));
    }
}
