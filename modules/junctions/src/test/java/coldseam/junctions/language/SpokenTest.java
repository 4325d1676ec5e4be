package coldseam.junctions.language;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A reason that a detail does not fit is said as the trade says it, not as its file writes it. */
class SpokenTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "wall.insulation.outside - wall.insulation.inside | the thickness of the wall's insulation",
                "storey floor.far - storey floor.near | the thickness of the storey floor",
                "storey floor.near | the underside of the storey floor",
                "door.inside | the inner face of the door",
                "wall.structure.outside - 20 mm | the outer face of the wall's structure less 20 mm",
                "insulation.outside | the outer face of the insulation",
                "stiff board + 30 mm | stiff board plus 30 mm",
                "strip | the strip",
                "60 mm | 60 mm",
                "min(wall.insulation.outside, other wall.insulation.outside) | the lesser of the outer face of the wall's"
                        + " insulation and the outer face of the other wall's insulation",
                "halfway(deck.structure.inside, deck.structure.outside) | halfway between the inner face of the deck's"
                        + " structure and the outer face of the deck's structure",
            })
    void saysFacesAndThicknesses(String written, String said) {
        assertEquals(said, Spoken.of(written));
    }
}
