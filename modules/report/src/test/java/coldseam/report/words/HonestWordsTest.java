package coldseam.report.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.audit.engine.Sample;
import coldseam.files.quantity.UnitSystem;
import org.eclipse.collections.api.factory.Lists;
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

    /** Of every box, whose roof has 8 m by 6 m. */
    private static final String LEVEL =
            "that 48.0 m² of flat roofs and decks fall to where rain leaves them (no layer is cut to falls); ";

    private static String all(String yaml) {
        return new HonestWords(Sample.audit(yaml, Sample.good()), UnitSystem.SI)
                .assumed()
                .orElse("");
    }

    private static String assumed(String yaml) {
        String all = all(yaml);
        assertTrue(all.contains(LEVEL), all);
        return all.replace(LEVEL, "");
    }

    @Test
    void wateryDecksAreTold() {
        String deck = """
                    - {material: lime plaster, thickness: 20 mm, role: finish}
                    - {material: reinforced concrete, thickness: 160 mm, role: structure, controls: [air, vapour]}
                    - {material: polyisocyanurate board, thickness: 60 mm, role: insulation, controls: [heat]%s}
                """;
        String yaml = Sample.terrace(deck)
                .replace(
                        "junctions:\n",
                        "openings:\n  out: {kind: door, surface: upper floor south wall, width: 1 m, height: 2 m,"
                                + " sill: 9 cm, transmittance: 1 W/(m²·K), source: its declaration}\njunctions:\n");
        String all = all(yaml.replace("%s", ", taper: {shape: rectangle, thickest: 240 mm}"));
        // 300 − 20 − 160 − 60 − 8 = 52 mm from the floor down to the deck, 180 mm less where it is thickest.
        assertTrue(
                all.contains(
                        "that the sill of \"out\" keeps water out 142 mm over the deck before it, -38 mm where that is"
                                + " thickest (150 mm are usual); "),
                all);
        // 0.10 + 0.02 / 0.8 + 0.16 / 2.3 + 0.06 / 0.025 + 0.04 m²·K/W; a sheet counts for nothing.
        assertTrue(
                all.contains(
                        "; that \"terrace over ground floor\", cut to falls, may have a U of 0.380 W/(m²·K) where it is thinnest; "),
                all);
        assertTrue(
                all(yaml.replace("%s", ""))
                        .contains(
                                "that the sill of \"out\" keeps water out 142 mm over the deck before it (150 mm are"),
                all);
    }

    @Test
    void anAirThatNoRoomAndAWinterThatNoPlaceHasAreTold() {
        String told = "that the rooms have no more than 29 % of humidity in winter; that it is no colder outdoors than"
                + " 5.1 °C; ";
        assertEquals(
                "Of it assumed: " + told + LAST,
                assumed(Sample.yaml()
                        .replaceFirst("indoor-humidity: .*\n", "indoor-humidity: 29 %\n")
                        .replaceFirst("outdoor-temperature: .*\n", "outdoor-temperature: 5.1 °C\n")));
        assertEquals(
                "Of it assumed: " + LAST,
                assumed(Sample.yaml()
                        .replaceFirst("indoor-humidity: .*\n", "indoor-humidity: 30 %\n")
                        .replaceFirst("outdoor-temperature: .*\n", "outdoor-temperature: 5 °C\n")));
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

    /** Boards under a slab that stays come there only where it is built new, or where they were found. */
    @Test
    void insulationUnderWhatStaysIsTold() {
        String told =
                "that insulation comes to lie under \"lowest floor\", which stays (built-new does not name" + " it); ";
        String slab = "  roof:\n    layers:\n";
        String old = "  old slab:\n    layers:\n"
                + "    - {material: reinforced concrete, thickness: 150 mm, role: structure}\n";
        String boards = "    - {material: expanded polystyrene board, thickness: 60 mm, role: insulation}\n";
        String found = "\nretrofit: {found: {assemblies: {slab: old slab}}}\n";
        String bare = assumed(Sample.yaml().replace(slab, old + slab) + found);
        assertTrue(bare.contains(told), bare);
        for (String without : Lists.immutable.of(
                Sample.yaml(),
                Sample.yaml() + "\nretrofit: {built-new: [lowest floor]}\n",
                Sample.yaml().replace(slab, old + boards + slab) + found)) {
            String all = assumed(without);
            assertFalse(all.contains("comes to lie under"), all);
        }
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
