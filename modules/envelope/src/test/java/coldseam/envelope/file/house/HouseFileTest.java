package coldseam.envelope.file.house;

import static org.junit.jupiter.api.Assertions.assertEquals;

import coldseam.envelope.Body;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class HouseFileTest {

    private static final Path FIXTURES = Path.of(System.getProperty("coldseam.root"), "fixtures");

    @Test
    void readsTheDemoHouse() {
        var house = HouseFile.read(FIXTURES.resolve("houses/heron-row.yaml")).house();
        assertEquals("Heron Row", house.name());
        var body = (Body.Storeys) house.body();
        assertEquals(
                "ground floor south wall, ground floor east wall, ground floor north wall, ground floor west wall",
                body.storeys().getFirst().walls().collect(Body.Wall::name).makeString());
    }
}
