package coldseam.envelope;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.OptionalDouble;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MaterialTest {

    /** A name alone makes no timber: masonry called by one would be given a floor of wood, and no lintel. */
    @ParameterizedTest
    @CsvSource({
        "softwood, 0.13, true",
        "cross-laminated timber, 0.13, true",
        "Oak beams, 0.18, true",
        "brick red as oak, 0.77, false",
        "wood fibre insulation board, 0.042, false",
        "clay brick, 0.2, false"
    })
    void timberIsCalledSoAndConductsLikeIt(String name, double conductivity, boolean timber) {
        assertEquals(
                timber,
                new Material(
                                name,
                                conductivity,
                                OptionalDouble.empty(),
                                OptionalDouble.empty(),
                                OptionalDouble.empty(),
                                conductivity <= Material.INSULATES_UP_TO,
                                new Provenance("made up", Provenance.Sureness.DECLARED))
                        .isTimber());
    }
}
