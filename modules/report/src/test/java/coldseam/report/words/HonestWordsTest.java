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
            "that the house has no window and no door; that nothing goes through the insulation at a spot; "
                    + "all 8 conductivities, generic ones without a product's source.";

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

    @Test
    void aWallThatABoardCarriesIsNamed() {
        assertEquals(
                "Of it assumed: that \"wall\" is carried by 59 mm of softwood without studs, rafters or joists; "
                        + LAST.replace("8", "9"),
                assumed(carriedBy("softwood, thickness: 59 mm")));
        assertEquals("Of it assumed: " + LAST.replace("8", "9"), assumed(carriedBy("softwood, thickness: 60 mm")));
        assertEquals(
                "Of it assumed: " + LAST.replace("8", "9"),
                assumed(carriedBy(
                        "mineral wool batt, thickness: 50 mm, framing: {material: old solid brick, share: 12 %}")));
        assertEquals("Of it assumed: " + LAST.replace("8", "9"), assumed(carriedBy("steel, thickness: 1 mm")));
    }

    private static String carriedBy(String structure) {
        return Sample.yaml().replaceFirst("old solid brick, thickness: 240 mm", structure);
    }

    /** Rooms are 2.84 m high and 7.07 m by 5.07 m; at 4.36 m of storey height they are 4.2 m high. */
    @Test
    void wallsHigherThanAStoreyAreCounted() {
        assertEquals("Of it assumed: " + LAST, assumed(Sample.yaml().replace("height: 3 m", "height: 4.36 m")));
        assertEquals(
                "Of it assumed: that no floor meets 102.2 m² of walls higher indoors than one storey; " + LAST,
                assumed(Sample.yaml().replace("height: 3 m", "height: 4.37 m")));
    }

    private static final String NO_DOOR =
            "that the house has no door; that nothing goes through the insulation at a spot; "
                    + "all 8 conductivities, generic ones without a product's source";

    private static final String UNDECLARED = "; the U of 1 window or door without a product's source.";

    @Test
    void windowsBetterThanThereAreUsuallyAreCounted() {
        assertEquals(
                "Of it assumed: that 1 window or door, or its frame, loses less than the best usual ones, U from 0.590 W/(m²·K); "
                        + NO_DOOR + UNDECLARED,
                assumed(Sample.yaml() + window(0.59, "")));
        assertEquals("Of it assumed: " + NO_DOOR + UNDECLARED, assumed(Sample.yaml() + window(0.6, "")));
    }

    @Test
    void windowsWithAProductsSourceAreNotCounted() {
        assertEquals(
                "Of it assumed: " + NO_DOOR + ".",
                assumed(Sample.yaml() + window(0.6, ", source: declared by the maker of the windows")));
    }

    private static String window(double transmittance, String more) {
        return "openings:\n  window: {kind: window, surface: ground floor south wall, width: 2 m, height: 1.2 m, sill: 0.9 m,"
                + " transmittance: " + transmittance + " W/(m²·K)" + more + "}\n";
    }

    @Test
    void doorsWithASillAndOpeningsLargerThanUsualAreNamed() {
        String said = "that the house has no window; that nothing goes through the insulation at a spot; "
                + "all 8 conductivities, generic ones without a product's source.";
        assertEquals(
                "Of it assumed: that the door \"door\" has its sill 510 mm over the floor; that \"door\" is 3.01 m wide and"
                        + " 2.00 m high; " + said,
                assumed(Sample.yaml() + door("3.01 m", "0.51 m")));
        assertEquals("Of it assumed: " + said, assumed(Sample.yaml() + door("3 m", "0.5 m")));
    }

    private static String door(String width, String sill) {
        return "openings:\n  door: {kind: door, surface: ground floor south wall, width: " + width
                + ", height: 2 m, sill: " + sill + ", transmittance: 1.1 W/(m²·K), source: the door's declaration}\n";
    }

    @Test
    void whatConductsLikeAVacuumIsNamed() {
        String yaml = Sample.yaml()
                .replaceFirst("mineral wool board, thickness: 200", "leaflet board, thickness: 100")
                .replaceFirst(
                        "assemblies:",
                        "materials: {leaflet board: {conductivity: 0.017 W/(m·K), source: a leaflet}}\nassemblies:");
        assertEquals(
                "Of it assumed: that \"leaflet board\" conducts 0.017 W/(m·K), less than boards without a vacuum do; "
                        + "that the house has no window and no door; that nothing goes through the insulation at a spot; "
                        + "7 of 8 conductivities, generic ones without a product's source.",
                assumed(yaml));
        assertEquals(
                "Of it assumed: that the house has no window and no door; that nothing goes through the insulation at a spot; "
                        + "7 of 8 conductivities, generic ones without a"
                        + " product's source.",
                assumed(yaml.replace("0.017", "0.018")));
    }
}
