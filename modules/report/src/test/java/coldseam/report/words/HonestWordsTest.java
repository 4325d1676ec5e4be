package coldseam.report.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import coldseam.audit.engine.Sample;
import coldseam.files.quantity.UnitSystem;
import org.junit.jupiter.api.Test;

/** The verdict's second sentence counts all that rests on the house file's word. */
class HonestWordsTest {

    private static final String NEIGHBOURS = """
            neighbours:
              next door: {heated: true}
              garage: {temperature-factor: 0.31}
              shed: {temperature-factor: 0, source: a reckoning}
              barn: {temperature-factor: 0.8}
            """;

    private static final String LAX = """
            limits: {psi: 0.02 W/(m·K), temperature-factor: 0.6, walls: 1 W/(m²·K)}
            own-psi:
            - {kinds: [outside corner], psi: -0.03 W/(m·K), source: our own computation}
            """;

    private static final String LAST =
            "that the house has no window and no door; all 8 conductivities, generic ones without a product's source.";

    private static String assumed(String yaml) {
        return new HonestWords(Sample.audit(yaml, Sample.good()), UnitSystem.SI)
                .assumed()
                .orElse("");
    }

    @Test
    void theGoodBoxAssumesItsConductivitiesAndThatItHasNoOpening() {
        assertEquals("Of it assumed: " + LAST, assumed(Sample.yaml()));
    }

    /** Walls 8 m and 6 m long, 3.478 m high with floor and roof, of which the barn's is as usual and not told. */
    @Test
    void whatLiesBesideWarmOrHeatedSpacesIsCounted() {
        String walls = "{all: wall, south: {assembly: wall, faces: next door}, north: {assembly: wall, faces: garage},"
                + " east: {assembly: wall, faces: shed}, west: {assembly: wall, faces: barn}}";
        assertEquals(
                "Of it assumed: 27.8 m² beside heated neighbours; 48.7 m² beside unheated spaces said to be warmer than"
                        + " usual (garage 0.31, shed 0.00); " + LAST,
                assumed(Sample.yaml().replace("{all: wall}", walls) + NEIGHBOURS));
    }

    @Test
    void relaxedLimitsAndOwnValuesAreCounted() {
        assertEquals(
                "Of it assumed: limits relaxed (psi, fRsi, U of walls); psi of 13.91 m of seams, the house file's own; "
                        + LAST,
                assumed(Sample.yaml() + LAX));
    }
}
