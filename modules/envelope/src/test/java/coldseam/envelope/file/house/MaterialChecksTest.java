package coldseam.envelope.file.house;

import static org.junit.jupiter.api.Assertions.assertEquals;

import coldseam.files.Faults;
import coldseam.files.Position;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MaterialChecksTest {

    /** A gas insulates by not moving alone; a solid may be made with one. */
    @ParameterizedTest
    @CsvSource({
        "dry air, 1",
        "Argon, 1",
        "krypton filling, 1",
        "board blown with dry air, 0",
        "'glass wool, open to air', 0",
        "chair, 0"
    })
    void onlyAGasIsNoMaterial(String name, int faults) {
        Faults found = new Faults();
        MaterialChecks.like(name, 0.025, new Position("x.yaml", 1, 1), found);
        assertEquals(faults, found.count());
    }
}
