package coldseam.report.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.audit.Audit;
import coldseam.audit.engine.Sample;
import coldseam.audit.engine.Sample.Made;
import coldseam.envelope.JunctionKind;
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
            "that the house has no window and no door; that nothing that serves the house goes through the insulation; "
                    + "all 8 conductivities, generic ones without a product's source.";

    /** Of every box, whose roof has 8 m by 6 m. */
    private static final String LEVEL =
            "that 48.0 m² of flat roofs and decks fall to where rain leaves them (no layer is cut to falls); ";

    /** Of every box, whose wall is of an old house's brick. */
    private static final String RENEWED =
            "that \"wall\" is built new, though of an old house's material (no retrofit is said); ";

    /** Of every box, whose wall has its wool outside. */
    private static final String GLUED =
            "that no fastener goes through what insulates \"wall\" outside (none is listed); ";

    private static String all(String yaml) {
        return new HonestWords(Sample.audit(yaml, Sample.good()), UnitSystem.SI)
                .assumed()
                .orElse("");
    }

    private static String assumed(String yaml) {
        String all = all(yaml);
        assertTrue(all.contains(LEVEL), all);
        assertTrue(all.contains(GLUED), all);
        return all.replace(LEVEL, "").replace(RENEWED, "").replace(GLUED, "");
    }

    @Test
    void theAxisOfAPictureSaysWhereSomethingHasNoValue() {
        Audit known = Sample.audit(Sample.yaml(), Sample.good());
        Audit unknown = Sample.audit(
                Sample.yaml().replace("edge-good", "edge-misfit"),
                Sample.good().take(2).newWith(Made.good("edge-misfit", JunctionKind.FLAT_ROOF_EDGE)));
        assertEquals("heat-loss coefficient H, W/K", HonestWords.axis(Lists.immutable.of(known), UnitSystem.SI));
        assertEquals(
                "heat-loss coefficient H, of what has a value, W/K",
                HonestWords.axis(Lists.immutable.of(known, unknown), UnitSystem.SI));
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

    private static final String MONTH = ", [10 °C, 60 %]".repeat(11) + "]}\n";

    private static String year(String indoors, String january) {
        return Sample.yaml()
                .replaceFirst(
                        "outdoor-temperature: .*\n",
                        "outdoor-temperature: -10 °C\n  climate: {source: a station, indoors: " + indoors
                                + ", months: [[" + january + "]" + MONTH);
    }

    @Test
    void aYearThatNoPlaceHasIsTold() {
        assertEquals(
                "Of it assumed: that the months are all alike; that the air of cold months is dry outdoors; that the rooms"
                        + " are as dry as a store's; " + LAST,
                assumed(year("storage", "5.1 °C, 39 %")));
        assertEquals(
                "Of it assumed: that the rooms are as dry as those of a house known to be well ventilated; " + LAST,
                assumed(year("well ventilated", "5 °C, 40 %")));
        assertEquals("Of it assumed: " + LAST, assumed(year("dwelling", "4 °C, 90 %")));
    }

    @Test
    void framesSlimmerThanThereAreUsuallyAreNamed() {
        String told =
                "that the frame of \"window\", or the edge of its glass, is slimmer or loses less than usual (%s)";
        assertTrue(
                all(Sample.yaml() + glazed(49, "0.025")).contains(told.formatted("49 mm, 0.025 W/(m·K)")),
                () -> all(Sample.yaml() + glazed(49, "0.025")));
        assertTrue(all(Sample.yaml() + glazed(50, "0.024")).contains(told.formatted("50 mm, 0.024 W/(m·K)")));
        assertFalse(all(Sample.yaml() + glazed(50, "0.025")).contains("slimmer"));
    }

    private static String glazed(int width, String edge) {
        return window(0.9, "")
                .replace(
                        "transmittance: 0.9 W/(m²·K)",
                        "glazing: {glass: 0.6 W/(m²·K), frame: 1 W/(m²·K), frame-width: " + width + " mm, edge: " + edge
                                + " W/(m·K)}");
    }

    /** A twentieth of the floor between the walls' inner faces. */
    @Test
    void windowsTooFewForTheirFloorAreTold() {
        String told = " of windows light ";
        assertTrue(all(Sample.yaml() + window(0.9, "").replace("width: 2 m", "width: 1 m"))
                .contains("that 1.2 m²" + told));
        assertFalse(all(Sample.yaml() + window(0.9, "")).contains(told));
        assertFalse(all(Sample.yaml()).contains(told));
    }

    @Test
    void wallsBesideNothingButSheltersAreOutOfTheRain() {
        String sheltered = Sample.yaml()
                .replace("{all: wall}", "{all: {assembly: wall, faces: barn}, south: wall}")
                .replace("body:\n", NEIGHBOURS + "body:\n");
        String all = all(sheltered);
        assertTrue(
                all.contains("of walls, more than half of all, stand beside unheated spaces and out of the rain"), all);
        assertTrue(all.contains("that nobody goes from the rooms to \"barn\" (no door or hatch is listed there)"), all);
        String half = all(sheltered.replace("south: wall}", "south: wall, north: wall}"));
        assertFalse(half.contains("out of the rain"), half);
        String way = all(sheltered + window(0.9, "").replace("ground floor south", "ground floor north"));
        assertFalse(way.contains("nobody goes"), way);
    }

    @Test
    void whatWarmsTheGroundBetterThanUsualIsTold() {
        String slab = "{kind: slab on ground, assembly: slab}";
        String crawl =
                "{kind: suspended, assembly: slab, crawl-space: {height: 300 mm, wall-transmittance: %s W/(m²·K),"
                        + " vents: 1500 mm²/m, ground-resistance: %s m²·K/W}}";
        String told = "that the crawl space's walls have a U of 0.%s0 W/(m²·K), and what insulates its ground an R of ";
        String walls = all(Sample.yaml().replace(slab, crawl.formatted("0.29", "5")));
        assertTrue(walls.contains(told.formatted("29") + "5.00 m²·K/W"), walls);
        String ground = all(Sample.yaml().replace(slab, crawl.formatted("0.3", "5.1")));
        assertTrue(ground.contains(told.formatted("30") + "5.10 m²·K/W"), ground);
        assertFalse(
                all(Sample.yaml().replace(slab, crawl.formatted("0.3", "5"))).contains("crawl space's"));
        String edge =
                "{kind: slab on ground, assembly: slab, edge: {direction: vertical, extent: %s, thickness: %s, material:"
                        + " extruded polystyrene board}}";
        String far = all(Sample.yaml().replace(slab, edge.formatted("1.51 m", "250 mm")));
        assertTrue(far.contains("that 250 mm of board along a slab's edge reach 1.51 m"), far);
        String thick = all(Sample.yaml().replace(slab, edge.formatted("1.5 m", "251 mm")));
        assertTrue(thick.contains("that 251 mm of board along a slab's edge reach 1.50 m"), thick);
        assertFalse(all(Sample.yaml().replace(slab, edge.formatted("1.5 m", "250 mm")))
                .contains("along a slab's edge"));
    }

    @Test
    void aFloorLikeAPlankIsTold() {
        String two = Sample.yaml()
                .replace(
                        "  base: {kind",
                        "  - {name: upper, footprint: {rectangle: [8 m, 6 m]}, height: 3 m, floor-thickness: %s, walls: wall}\n"
                                + "  base: {kind");
        String thin = all(two.replace("%s", "119 mm"));
        assertTrue(thin.contains("that a floor between two storeys is 119 mm thick"), thin);
        assertFalse(all(two.replace("%s", "120 mm")).contains("a floor between"));
    }

    @Test
    void whatIsBuiltNewUnderWhatStaysIsTold() {
        String old = "retrofit: {built-new: [ground floor south wall]}\n";
        String told = "that what stays is held up while \"ground floor south wall\" is built new under it";
        assertTrue(all(Sample.yaml() + old).contains(told), () -> all(Sample.yaml() + old));
        assertFalse(all(Sample.yaml() + "retrofit: {built-new: [ground floor south wall], taken-down: [roof]}\n")
                .contains("is held up"));
        assertFalse(all(Sample.yaml() + "retrofit: {built-new: [ground floor south wall, roof]}\n")
                .contains("is held up"));
    }

    @Test
    void whatStaysBearsWhatIsBuiltNewOverIt() {
        String two = Sample.yaml()
                .replace(
                        "  base: {kind",
                        "  - {name: upper, footprint: {rectangle: [8 m, 6 m]}, height: 3 m, floor-thickness: 200 mm, walls: wall}\n"
                                + "  base: {kind");
        String told = "and what they stand on, bear what is built new over them";
        String one = all(two + "retrofit: {built-new: [upper south wall]}\n");
        assertTrue(
                one.contains(
                        "that \"ground floor south wall\", and what it stands on, bears what is built new over it"),
                one);
        assertTrue(all(two + "retrofit: {built-new: [upper]}\n").contains(told));
        assertFalse(all(two + "retrofit: {built-new: [upper, ground floor]}\n").contains(told));
        assertFalse(all(two + "retrofit: {built-new: [roof]}\n").contains("built new over"));
    }

    @Test
    void aRoofThatComesDownAndStaysGoesUpAgain() {
        String told = "that what carries \"roof\" comes down and goes up again (built-new does not name it)";
        String down = all(Sample.yaml() + "retrofit: {taken-down: [roof]}\n");
        assertTrue(down.contains(told), down);
        assertFalse(all(Sample.yaml() + "retrofit: {built-new: [roof], taken-down: [roof]}\n")
                .contains("goes up again"));
        assertFalse(all(Sample.yaml() + "retrofit: {}\n").contains("goes up again"));
    }

    @Test
    void theGoodBoxAssumesItsConductivitiesAndThatItHasNoOpening() {
        assertEquals("Of it assumed: " + LAST, assumed(Sample.yaml()));
        assertTrue(all(Sample.yaml()).contains(RENEWED), all(Sample.yaml()));
        String old = all(Sample.yaml() + "retrofit: {}\n");
        assertFalse(old.contains(RENEWED), old);
    }

    /** Walls 8 m and 6 m long, 3.478 m high with floor and roof, of which the barn's is as usual and not told. */
    @Test
    void whatLiesBesideWarmOrHeatedSpacesIsCounted() {
        String walls = "{all: wall, south: {assembly: wall, faces: next door}, north: {assembly: wall, faces: garage},"
                + " east: {assembly: wall, faces: shed}, west: {assembly: wall, faces: barn}}";
        assertEquals(
                "Of it assumed: 27.8 m² beside heated neighbours (next door); 48.7 m² beside unheated spaces said to be warmer than"
                        + " usual (garage 0.31, shed 0.00); that 69.6 m² of walls, more than half of all, stand beside unheated"
                        + " spaces and out of the rain; that nobody goes from the rooms to \"shed\", \"garage\" and \"barn\" (no"
                        + " door or hatch is listed there); " + LAST,
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
        String foot =
                "Of it assumed: that the wood at the foot of \"wall\" stays dry, 0 mm over the ground (300 mm are usual,"
                        + " and 150 mm over gravel); ";
        assertEquals(
                foot + "that \"wall\" is carried by 59 mm of softwood without studs, rafters or joists; "
                        + LAST.replace("8", "9"),
                assumed(carriedBy("softwood, thickness: 59 mm")));
        assertEquals(foot + LAST.replace("8", "9"), assumed(carriedBy("softwood, thickness: 60 mm")));
        assertEquals(
                "Of it assumed: " + LAST.replace("8", "9"),
                assumed(carriedBy(
                        "mineral wool batt, thickness: 50 mm, framing: {material: old solid brick, share: 12 %}")));
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
            "that the house has no door; that nothing that serves the house goes through the insulation; "
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
        String said = "that the house has no window; that nothing that serves the house goes through the insulation; "
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
                        + "that the house has no window and no door; that nothing that serves the house goes through the insulation; "
                        + "7 of 8 conductivities, generic ones without a product's source.",
                assumed(yaml));
        assertEquals(
                "Of it assumed: that the house has no window and no door; that nothing that serves the house goes through the insulation; "
                        + "7 of 8 conductivities, generic ones without a"
                        + " product's source.",
                assumed(yaml.replace(
                        "conductivity: 0.017 W/(m·K)", "conductivity: 0.018 W/(m·K), vapour-resistance-factor: 50")));
        String open = "that \"leaflet board\" conducts 0.018 W/(m·K), less than fibres and foams open to air do";
        assertTrue(all(yaml.replace("0.017", "0.018")).contains(open));
        assertFalse(all(yaml.replace("0.017", "0.029")).contains("open to air"));
        String pierced = "that no panel of \"%s\" is cut, drilled or screwed through, then or later";
        String own = all(yaml.replace("0.017", "0.011"));
        assertTrue(own.contains(pierced.formatted("leaflet board")), own);
        String builtIn = all(Sample.yaml()
                .replaceFirst("mineral wool board, thickness: 200", "vacuum insulation panel, thickness: 40"));
        assertTrue(builtIn.contains(pierced.formatted("vacuum insulation panel")), builtIn);
        assertFalse(all(yaml).contains("screwed through"));
        assertFalse(all(yaml.replace("0.017", "0.012")).contains("screwed through"));
    }
}
