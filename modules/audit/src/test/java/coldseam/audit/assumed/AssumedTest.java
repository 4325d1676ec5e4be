package coldseam.audit.assumed;

import static org.junit.jupiter.api.Assertions.assertEquals;

import coldseam.audit.Audit;
import coldseam.audit.engine.Sample;
import coldseam.audit.engine.Sample.Made;
import coldseam.envelope.Assembly;
import coldseam.envelope.Exposure;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Material;
import coldseam.envelope.Opening;
import coldseam.envelope.Seam;
import coldseam.envelope.Site;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whatever rests on the house file's word alone is told: a house that leaves out or relaxes something says so. */
@Tag("slow")
class AssumedTest {

    private static final ImmutableList<Made> DETAILS =
            Sample.good().newWith(Made.good("inner-good", JunctionKind.of("partition at inside insulation")));

    /** m, of the box outside. */
    private static final double HEIGHT = audit(Sample.yaml()).shell().externalVolume() / 48;

    private static Audit audit(String yaml) {
        return Sample.audit(yaml, DETAILS);
    }

    private static <E> ImmutableList<E> in(String yaml, Assumption<E> assumption) {
        return assumption.in(audit(yaml));
    }

    private static <E> ImmutableList<E> changed(String from, String to, Assumption<E> assumption) {
        return in(Sample.yaml().replace(from, to), assumption);
    }

    @Test
    void thePlainBoxRestsOnItsListedMaterialsAndHasNoOpenings() {
        Audit box = audit(Sample.yaml());
        assertEquals(Lists.immutable.empty(), Neighbours.BESIDE_HEATED.in(box));
        assertEquals(Lists.immutable.empty(), Neighbours.BESIDE_WARM.in(box));
        assertEquals(Lists.immutable.empty(), Unlisted.INNER_WALLS.in(box));
        assertEquals(
                Lists.immutable.of(Opening.Kind.WINDOW, Opening.Kind.DOOR),
                WindowsAndDoors.OPENINGS.in(box).collect(WindowsAndDoors.NoOpening::kind));
        assertEquals(Lists.immutable.empty(), OwnWord.RELAXED.in(box));
        assertEquals(Unlisted.EVERY_HOUSE, Unlisted.SERVICES.in(box));
        // Plaster, brick, wool, render, concrete, extruded and polyisocyanurate board, bitumen.
        assertEquals(Lists.immutable.of(new Materials.Generic(8, 8)), Materials.WITHOUT_PRODUCT.in(box));
        assertEquals(Lists.immutable.empty(), OwnWord.PSI.in(box));
        assertEquals(Lists.immutable.empty(), Materials.OVERRIDE.in(box));
    }

    /** Brick before the insulation stands on something or hangs on angles; a board of it, or one before an inner lining, does not. */
    @Test
    void aLeafOutsideTheInsulationIsBorneBySomething() {
        String brick = "    - {material: clay brick, thickness: 100 mm, role: cladding}\n";
        String wool = Sample.yaml()
                .lines()
                .filter(line -> line.contains("material: mineral wool board, thickness: 200 mm"))
                .findFirst()
                .orElseThrow();
        String leaf = Sample.yaml().replace(wool + "\n", wool + "\n" + brick);
        Carrying.Leaf found = in(leaf, Carrying.LEAF).getOnly();
        assertEquals("wall", found.assembly().name());
        assertEquals("clay brick", found.layer().material().name());
        assertEquals(0, found.ledge());
        assertEquals(0, found.angles());
        Carrying.Leaf borne = in(
                        leaf
                                + "seams: {ledge: {kind: masonry veneer ledge, surface: ground floor south wall, length: 7 m}}\n"
                                + "points: {over the door: {surface: ground floor north wall, detail: angle-steel, number: 3}}\n",
                        Carrying.LEAF)
                .getOnly();
        assertEquals(7, borne.ledge());
        assertEquals(3, borne.angles());
        assertEquals(
                Lists.immutable.empty(),
                in(
                        leaf.replace("thickness: 100 mm, role: cladding", "thickness: 22 mm, role: cladding"),
                        Carrying.LEAF));
        assertEquals(Lists.immutable.empty(), in(Sample.yaml(), Carrying.LEAF));
        // Nothing lies outside the insulation of a wall that has none.
        assertEquals(
                Lists.immutable.empty(),
                in(Sample.yaml().replace("{all: wall}", "{all: wall, south: bare wall}"), Carrying.LEAF));
    }

    /** Each limit a little laxer than its default; the defaults are those of 3000 K·d. */
    @ParameterizedTest
    @CsvSource({
        "neck-share: 49 %, NECK",
        "path-share: 49 %, PATH",
        "psi: 0.0101 W/(m·K), PSI",
        "geometry-psi: 0.101 W/(m·K), PSI",
        "opening-psi: 0.0501 W/(m·K), OPENING_PSI",
        "chi: 0.0501 W/K, CHI",
        "temperature-factor: 0.699, TEMPERATURE_FACTOR",
        "mean-share: 49 %, MEAN",
        "walls: 0.341 W/(m²·K), WALLS",
        "roofs: 0.190 W/(m²·K), ROOFS",
        "floors: 0.267 W/(m²·K), FLOORS",
        "ground: 0.336 W/(m²·K), GROUND",
        "windows: 1.82 W/(m²·K), WINDOWS",
        "doors: 1.82 W/(m²·K), DOORS"
    })
    void aLimitThatIsLaxerThanUsualIsTold(String limit, OwnWord.Limit relaxed) {
        assertEquals(Lists.immutable.of(relaxed), in(Sample.yaml() + "limits: {" + limit + "}\n", OwnWord.RELAXED));
    }

    @Test
    void stricterLimitsAreNotTold() {
        String strict = "limits: {neck-share: 51 %, path-share: 51 %, psi: 0.009 W/(m·K), geometry-psi: 0.09 W/(m·K),"
                + " opening-psi: 0.04 W/(m·K), chi: 0.04 W/K, temperature-factor: 0.71, mean-share: 51 %, walls: 0.34"
                + " W/(m²·K), roofs: 0.189 W/(m²·K), floors: 0.266 W/(m²·K), ground: 0.335 W/(m²·K), windows: 1.81"
                + " W/(m²·K), doors: 1.81 W/(m²·K)}\n";
        assertEquals(Lists.immutable.empty(), in(Sample.yaml() + strict, OwnWord.RELAXED));
    }

    private static String facing(String neighbours) {
        return Sample.yaml()
                .replace(
                        "{all: wall}",
                        "{all: wall, south: {assembly: wall, faces: garage}, east: {assembly: wall, faces: other}}")
                .replace("body:\n", "neighbours:\n" + neighbours + "body:\n");
    }

    /** 0.8 is usual of a space with three outer walls; what is warmer is told, with its area. */
    @Test
    void wallsBesideWarmSpacesAreTold() {
        Audit warm = audit(facing("  garage: {temperature-factor: 0.79}\n  other: {temperature-factor: 0.8}\n"));
        Neighbours.Beside beside = Neighbours.BESIDE_WARM.in(warm).getOnly();
        assertEquals(8 * HEIGHT, beside.area(), 1e-3);
        assertEquals(Lists.immutable.of(new Exposure(Exposure.Kind.UNHEATED, "garage", 0.79)), beside.spaces());
        assertEquals(Lists.immutable.empty(), Neighbours.BESIDE_HEATED.in(warm));
    }

    @Test
    void wallsBesideHeatedNeighboursAreTold() {
        Audit party = audit(facing("  garage: {temperature-factor: 0.8}\n  other: {heated: true}\n"));
        assertEquals(6 * HEIGHT, Neighbours.BESIDE_HEATED.in(party).getOnly().area(), 1e-3);
        assertEquals(Lists.immutable.empty(), Neighbours.BESIDE_WARM.in(party));
    }

    @Test
    void areasAreThoseOfTheSitesDimensions() {
        String inside = facing("  garage: {temperature-factor: 0.8}\n  other: {heated: true}\n")
                .replace("dimensions: external", "dimensions: internal");
        Audit audit = audit(inside);
        assertEquals(
                audit.shell()
                        .surfaces()
                        .detect(surface -> surface.exposure().kind() == Exposure.Kind.PARTY)
                        .internalArea(),
                Neighbours.BESIDE_HEATED.in(audit).getOnly().area(),
                1e-9);
    }

    @Test
    void wallsInsulatedInsideWhichNothingMeetsAreTold() {
        String inside = Sample.yaml()
                .replace(
                        "    - {material: old solid brick, thickness: 240 mm, role: structure}\n"
                                + "    - {material: mineral wool board, thickness: 200 mm, role: insulation, controls:"
                                + " [heat]}\n",
                        "    - {material: mineral wool board, thickness: 200 mm, role: insulation, controls: [heat]}\n"
                                + "    - {material: old solid brick, thickness: 240 mm, role: structure}\n");
        assertEquals(28 * HEIGHT, nothingMeets(inside), 1e-3);
        String met = "seams:\n  inner wall: {kind: partition at inside insulation, surface: ground floor south wall,"
                + " length: 2.8 m}\n";
        assertEquals(20 * HEIGHT, nothingMeets(inside + met), 1e-3);
        assertEquals(Lists.immutable.empty(), in(inside + met, Unlisted.PLACES));
        String window = "openings:\n  pane: {kind: window, surface: ground floor south wall, width: 1 m, height: 1 m,"
                + " sill: 1 m, transmittance: 0.9 W/(m²·K)}\n";
        assertEquals(
                Lists.immutable.of("inner wall"),
                in(inside + met + window, Unlisted.PLACES).collect(Seam::name));
        // What meets a wall that it is not a seam of says nothing about its insulation.
        assertEquals(
                28 * HEIGHT, nothingMeets(inside + met.replace("partition at inside insulation", "balcony")), 1e-3);
        assertEquals(
                22 * HEIGHT,
                nothingMeets(inside.replace("{all: wall}", "{all: wall, east: {assembly: wall, faces: other}}")
                        .replace("body:\n", "neighbours:\n  other: {heated: true}\nbody:\n")),
                1e-3);
    }

    private static double nothingMeets(String yaml) {
        return in(yaml, Unlisted.INNER_WALLS).getOnly();
    }

    /** Where two floors meet a wall may go down between them; in an old house with a wing one stands there. */
    @Test
    void floorsThatMeetWithoutAWallAreTold() {
        String thinner = Sample.yaml()
                .replace(
                        "  roof: {",
                        "  other-bases:\n  - {kind: slab on ground, assembly: roof, area: {rectangle: [4 m, 8 m], at: [-1 m,"
                                + " -1 m]}}\n  roof: {");
        assertEquals(6, in(thinner, Unlisted.WALLS_BETWEEN_FLOORS).getOnly(), 1e-3);
        String wall = "seams:\n  old wall: {kind: bearing wall through the slab's insulation, surface: lowest floor,"
                + " length: 6 m}\n";
        assertEquals(Lists.immutable.empty(), in(thinner + wall, Unlisted.WALLS_BETWEEN_FLOORS));
        assertEquals(
                6,
                in(thinner + wall.replace("length: 6 m", "length: 0.9 m"), Unlisted.WALLS_BETWEEN_FLOORS)
                        .getOnly(),
                1e-3);
    }

    /** A floor on piers; the floor of a bay hangs on the wall under it. */
    @Test
    void whatBearsAFloorOverOpenAirIsAskedFor() {
        String piers = Sample.yaml()
                .replaceFirst("base: \\{.*\\}", "base: {kind: over unheated, assembly: wall, faces: outdoors}");
        assertEquals(
                Lists.immutable.of("lowest floor"),
                in(piers, Unlisted.SUPPORTS).collect(each -> each.floor().name()));
        String pier = "points:\n  pier: {kind: column, surface: lowest floor, number: 6}\njunctions:\n";
        assertEquals(Lists.immutable.empty(), in(piers.replace("junctions:\n", pier), Unlisted.SUPPORTS));
        assertEquals(
                Lists.immutable.of(1),
                in(piers.replace("junctions:\n", pier.replace("6", "1")), Unlisted.SUPPORTS)
                        .collect(Unlisted.Borne::posts));
        String pipe = piers.replace("junctions:\n", pier.replace("column", "soil pipe"));
        assertEquals(1, in(pipe, Unlisted.SUPPORTS).size());
        assertEquals(Lists.immutable.empty(), in(Sample.yaml(), Unlisted.SUPPORTS));
        // Nobody said how high over the ground its door is.
        String door = "openings:\n  way in: {kind: door, surface: ground floor south wall, width: 1 m, height: 2 m,"
                + " transmittance: 1.2 W/(m²·K)}\njunctions:\n";
        assertEquals(
                1,
                in(Sample.yaml().replace("junctions:\n", door), Rain.LOW_SILL).size());
        assertEquals(Lists.immutable.empty(), in(piers.replace("junctions:\n", door), Rain.LOW_SILL));
    }

    @Test
    void openingsThatAreThereAreNotMissed() {
        String door = "openings:\n  way in: {kind: door, surface: ground floor south wall, width: 1 m, height: 2 m,"
                + " sill: 0 m, transmittance: 1.2 W/(m²·K)}\njunctions:\n";
        assertEquals(
                Lists.immutable.of(Opening.Kind.WINDOW),
                changed("junctions:\n", door, WindowsAndDoors.OPENINGS).collect(WindowsAndDoors.NoOpening::kind));
    }

    /** The lid of a hatch is as thick as one makes it; a door is not, nor what lies in the rain. */
    @Test
    void onlyAHatchMayLoseHardlyAnything() {
        String lid =
                "openings:\n  lid: {kind: door, surface: %s, width: 1 m, height: 2 m, transmittance: 0.2 W/(m²·K)}\njunctions:\n";
        assertEquals(
                1,
                changed("junctions:\n", lid.formatted("ground floor south wall"), WindowsAndDoors.BETTER_THAN_BEST)
                        .size());
        assertEquals(
                1,
                changed("junctions:\n", lid.formatted("roof"), WindowsAndDoors.BETTER_THAN_BEST)
                        .size());
        String loft = Sample.yaml()
                .replaceFirst(
                        "roof: \\{[^}]*\\}",
                        "roof: {form: gable, insulated-at: ceiling, assembly: roof, pitch: 35 °, low-side: south}")
                .replace("junctions:\n", lid.formatted("top ceiling"));
        assertEquals(Lists.immutable.empty(), in(loft, WindowsAndDoors.BETTER_THAN_BEST));
    }

    /** Nobody walks through a door of 599 mm, or of 1.59 m. */
    @ParameterizedTest
    @CsvSource({"600 mm, 1.6 m, 1", "599 mm, 1.6 m, 2", "600 mm, 1.59 m, 2"})
    void aDoorIsWalkedThrough(String width, String height, int missing) {
        String door = "openings:\n  way in: {kind: door, surface: ground floor south wall, width: " + width
                + ", height: " + height + ", sill: 0 m, transmittance: 1.2 W/(m²·K)}\njunctions:\n";
        assertEquals(
                missing, changed("junctions:\n", door, WindowsAndDoors.OPENINGS).size());
    }

    private static final String TERRACE = Sample.terrace("""
                - {material: lime plaster, thickness: 20 mm, role: finish}
                - {material: reinforced concrete, thickness: 160 mm, role: structure, controls: [air, vapour]}
                - {material: polyisocyanurate board, thickness: 100 mm, role: insulation, controls: [heat]}
            """);

    private static final String WAY_OUT = "openings:\n  out: {kind: door, surface: upper floor south wall, width: 1 m,"
            + " height: 2 m, sill: 20 cm, transmittance: 1 W/(m²·K), source: its declaration}\njunctions:\n";

    /** Nobody comes in over a deck; who goes out there may fall. */
    @Test
    void aDoorToADeckIsNoWayInAndTheDeckWantsAGuard() {
        String deck = TERRACE.replace("junctions:\n", WAY_OUT);
        assertEquals(
                Lists.immutable.of(
                        new WindowsAndDoors.NoOpening(Opening.Kind.WINDOW, false),
                        new WindowsAndDoors.NoOpening(Opening.Kind.DOOR, true)),
                in(deck, WindowsAndDoors.OPENINGS));
        assertEquals(
                Lists.immutable.of("terrace over ground floor"),
                in(deck, Safety.GUARDS).collect(each -> each.surface().name()));
        String bolts = "points:\n  posts: {kind: anchor bolt, surface: SURFACE, number: 8}\njunctions:\n";
        assertEquals(
                Lists.immutable.empty(),
                in(
                        TERRACE.replace("junctions:\n", bolts.replace("SURFACE", "ground floor south wall")),
                        Safety.GUARDS));
        assertEquals(
                1,
                in(TERRACE.replace("junctions:\n", bolts.replace("SURFACE", "roof")), Safety.GUARDS)
                        .size());
    }

    /** Posts farther apart than rails reach guard nothing. */
    @Test
    void aPostAloneGuardsNoDeck() {
        String post =
                "points:\n  posts: {kind: steel post, surface: terrace over ground floor, number: NUMBER}\njunctions:\n";
        String deck = TERRACE.replace("junctions:\n", post);
        Safety.Deck one = in(deck.replace("NUMBER", "1"), Safety.GUARDS).getOnly();
        assertEquals(1, one.posts());
        int enough = (int) Math.ceil(one.length() / 2.5);
        assertEquals(
                enough - 1,
                in(deck.replace("NUMBER", "" + (enough - 1)), Safety.GUARDS)
                        .getOnly()
                        .posts());
        assertEquals(Lists.immutable.empty(), in(deck.replace("NUMBER", "" + enough), Safety.GUARDS));
    }

    private static String cellarWindow(String projection, String points) {
        return Sample.yaml()
                .replace("{kind: slab on ground, assembly: slab}", "{kind: heated cellar, assembly: slab, depth: 2 m}")
                .replace(
                        "junctions:\n",
                        "openings:\n  low: {kind: window, surface: ground floor south wall, width: 1 m, height: 1 m, sill: 1.2 m,"
                                + " transmittance: 0.9 W/(m²·K), light-well: {width: 1.4 m, below-sill: 200 mm, drain: soakaway,"
                                + " projection: " + projection + "}}\n" + points + "junctions:\n");
    }

    /** Brackets may hold it; a pipe through the same wall does not. */
    @ParameterizedTest
    @CsvSource({"'', 1", "pipe, 1", "bracket, 0"})
    void whatHoldsALightWellIsAskedUntilItIsListed(String kind, int asked) {
        String points = kind.isEmpty()
                ? ""
                : "points:\n  some: {kind: " + kind + ", surface: ground floor south wall, number: 4}\n";
        assertEquals(
                asked,
                in(cellarWindow("1 m", points), WindowsAndDoors.HELD_BY_NOTHING).size());
    }

    @ParameterizedTest
    @CsvSource({"36 in, 0", "0.9 m, 1"})
    void aLightWellIsAWayOutFromACodesLeastOn(String projection, int asked) {
        assertEquals(asked, in(cellarWindow(projection, ""), Safety.NO_WAY_OUT).size());
    }

    @Test
    void boardsThatNothingHoldsAreNamed() {
        assertEquals(
                Lists.immutable.of("wall"),
                in(Sample.yaml(), Carrying.UNFASTENED).collect(Assembly::name));
        String wool = "thickness: 200 mm, role: insulation, controls: [heat]";
        assertEquals(
                Lists.immutable.empty(),
                changed(wool, wool + ", framing: {material: softwood, share: 5 %}", Carrying.UNFASTENED));
        assertEquals(
                Lists.immutable.empty(),
                changed(
                        "junctions:\n",
                        "points:\n"
                                + Lists.immutable
                                        .of("south", "east", "north", "west")
                                        .collect(side ->
                                                "  " + side + ": {kind: fastener through boards, surface: ground floor "
                                                        + side + " wall, number: 100}\n")
                                        .makeString("")
                                + "junctions:\n",
                        Carrying.UNFASTENED));
    }

    /** Air that is said to be ventilated, or lies among the insulation, is not asked after. */
    @Test
    void stillAirUnderACladdingIsNamed() {
        String render = Sample.yaml()
                .lines()
                .filter(line -> line.contains("render"))
                .findFirst()
                .orElseThrow();
        String gap = "    - {material: air, thickness: 40 mm, role: air layer, air: {VENTILATION}}\n" + render;
        assertEquals(
                1,
                changed(render, gap.replace("VENTILATION", ""), Layering.CLOSED).size());
        assertEquals(
                0,
                changed(render, gap.replace("VENTILATION", "ventilation: well ventilated"), Layering.CLOSED)
                        .size());
    }

    @Test
    void whatIsUsualStandsForWhatASiteLeavesOut() {
        assertEquals(Lists.immutable.empty(), in(Sample.yaml(), AirAndGround.LEFT_OUT));
        String site = Sample.yaml().replaceFirst("  indoor-humidity: .*\n", "").replaceFirst("  ground: .*\n", "");
        assertEquals(
                Lists.immutable.of(Site.Usual.INDOOR_HUMIDITY, Site.Usual.GROUND),
                in(site, AirAndGround.LEFT_OUT).collect(AirAndGround.Left::usual));
        // A flat over others has no ground under it.
        String upstairs = site.replace("body:\n", "neighbours: {flat below: {heated: true}}\nbody:\n")
                .replaceFirst("base: \\{.*\\}", "base: {kind: over unheated, assembly: slab, faces: flat below}");
        assertEquals(
                Lists.immutable.of(Site.Usual.INDOOR_HUMIDITY),
                in(upstairs, AirAndGround.LEFT_OUT).collect(AirAndGround.Left::usual));
    }

    /** Each serves once: what several kinds may be is what no other is, and no post serves anything. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "pipe on wall, 1 | WATER WASTE_WATER VENT_OF_WASTE_PIPES VENTILATION LAMP_OUTDOORS TAP_OUTDOORS",
                "pipe on wall, 3 | VENT_OF_WASTE_PIPES VENTILATION LAMP_OUTDOORS TAP_OUTDOORS",
                "pipe on roof, 1 | ELECTRICITY WATER WASTE_WATER VENTILATION LAMP_OUTDOORS TAP_OUTDOORS",
                "pipe on roof, 9 | WASTE_WATER",
                "pipe on wall, 9 | VENT_OF_WASTE_PIPES",
                "pipe on wall, 1; meter box on wall, 1 | WASTE_WATER VENT_OF_WASTE_PIPES VENTILATION LAMP_OUTDOORS TAP_OUTDOORS",
                "soil pipe on roof, 2 | ELECTRICITY WATER WASTE_WATER VENTILATION LAMP_OUTDOORS TAP_OUTDOORS",
                "soil pipe on wall, 1; duct on roof, 2 | ELECTRICITY WATER VENT_OF_WASTE_PIPES LAMP_OUTDOORS TAP_OUTDOORS",
                "chimney on roof, 1; duct on wall, 1 | ELECTRICITY WATER WASTE_WATER VENT_OF_WASTE_PIPES LAMP_OUTDOORS TAP_OUTDOORS AIR_FOR_A_FIRE",
                "chimney on roof, 2; duct on wall, 2 | ELECTRICITY WATER WASTE_WATER VENT_OF_WASTE_PIPES LAMP_OUTDOORS TAP_OUTDOORS",
                "anchor bolt on wall, 40 | ELECTRICITY WATER WASTE_WATER VENT_OF_WASTE_PIPES VENTILATION LAMP_OUTDOORS TAP_OUTDOORS"
            })
    void onePointAnswersForOneService(String points, String missing) {
        MutableList<String> yaml = Lists.mutable.empty();
        for (String point : points.split("; ")) {
            String[] parts = point.split(" on |, ");
            yaml.add("  set " + yaml.size() + ": {kind: " + parts[0] + ", surface: "
                    + (parts[1].equals("roof") ? "roof" : "ground floor south wall") + ", number: " + parts[2] + "}\n");
        }
        assertEquals(
                missing,
                changed("junctions:\n", "points:\n" + yaml.makeString("") + "junctions:\n", Unlisted.SERVICES)
                        .makeString(" "));
    }

    @Test
    void windowsAsFoundOfNoSourceAreCounted() {
        String house = Sample.yaml()
                        .replace(
                                "junctions:\n",
                                "openings:\n  pane: {kind: window, surface: ground floor south wall, width: 1 m, height: 1 m,"
                                        + " sill: 1 m, transmittance: 1.2 W/(m²·K)}\njunctions:\n")
                + "retrofit:\n  found:\n    assemblies: {wall: wall}\n    openings: {pane: {transmittance: 5 W/(m²·K)SOURCE}}\n";
        assertEquals(
                1,
                in(house.replace("SOURCE", ""), WindowsAndDoors.FOUND_WITHOUT_SOURCE)
                        .size());
        assertEquals(
                Lists.immutable.empty(),
                in(house.replace("SOURCE", ", source: measured in the hall"), WindowsAndDoors.FOUND_WITHOUT_SOURCE));
        assertEquals(Lists.immutable.empty(), in(Sample.yaml(), WindowsAndDoors.FOUND_WITHOUT_SOURCE));
    }

    /** The thinner of two sheets was taken for both, and the other came off. */
    @Test
    void whatIsPlannedAsItWasFoundStays() {
        String house = Sample.yaml()
                        .replace(
                                "    - {material: polyisocyanurate board",
                                "    - {material: bitumen sheet, thickness: 4 mm, role: membrane}\n    - {material: polyisocyanurate board")
                + "retrofit: {found: {assemblies: {roof: roof}}}\n";
        assertEquals(Lists.immutable.empty(), in(house, OldParts.REMOVED));
    }

    @Test
    void ownPsisAreTold() {
        assertEquals(
                4,
                changed(
                                "junctions:\n",
                                "own-psi:\n- {kinds: [outside corner], psi: -0.04 W/(m·K), source: made up}\njunctions:\n",
                                OwnWord.PSI)
                        .size());
    }

    private static Audit own(String material) {
        return audit(Sample.yaml()
                .replace(
                        "assemblies:\n", "materials:\n  wall board: {" + material + ", source: made up}\nassemblies:\n")
                .replace("material: mineral wool board", "material: wall board"));
    }

    private static int withoutProduct(Audit audit) {
        return Materials.WITHOUT_PRODUCT.in(audit).getOnly().generic();
    }

    private static ImmutableList<String> overrides(Audit audit) {
        return Materials.OVERRIDE.in(audit).collect(Material::name);
    }

    @Test
    void materialsOfTheHousesOwnAreToldWhereTheyClaimMoreThanTheirValues() {
        Audit plain = own("conductivity: 0.035 W/(m·K)");
        assertEquals(Lists.immutable.of(new Materials.Generic(7, 8)), Materials.WITHOUT_PRODUCT.in(plain));
        assertEquals(Lists.immutable.empty(), overrides(plain));
        assertEquals(8, withoutProduct(own("conductivity: 0.035 W/(m·K), sureness: common practice")));
        assertEquals(8, withoutProduct(own("conductivity: 0.035 W/(m·K), sureness: from memory")));
        for (String claim : new String[] {
            "conductivity: 0.035 W/(m·K), controls: {air: a leaflet}",
            "conductivity: 0.035 W/(m·K), bears: {ground: a leaflet}",
            "conductivity: 0.09 W/(m·K), insulates: true, insulates-source: a leaflet"
        }) {
            assertEquals(Lists.immutable.of("wall board"), overrides(own(claim)), claim);
        }
    }

    /** It has no source of its own, so that it is no better known than what it is of. */
    @Test
    void aLayersDeclaredResistanceIsNoProductsSource() {
        String board = "material: mineral wool board, thickness: 200 mm";
        String declared = Sample.yaml().replace(board, board + ", resistance: 6 m²·K/W");
        assertEquals(8, withoutProduct(audit(declared)));
        String product =
                "materials:\n  mineral wool board: {conductivity: 0.035 W/(m·K), source: made up}\nassemblies:\n";
        assertEquals(7, withoutProduct(audit(declared.replace("assemblies:\n", product))));
    }

    /** A product of a listed name has the list's word for what it can; its own word is told. */
    @Test
    void aProductOfAListedNameIsToldWhereItClaimsForItself() {
        String product = "materials:\n  bitumen sheet: {conductivity: 0.17 W/(m·K)%s, source: made up}\nassemblies:\n";
        Audit listed = audit(Sample.yaml().replace("assemblies:\n", product.formatted("")));
        assertEquals(7, withoutProduct(listed));
        assertEquals(Lists.immutable.empty(), overrides(listed));
        Audit own = audit(Sample.yaml().replace("assemblies:\n", product.formatted(", controls: {water: a leaflet}")));
        assertEquals(Lists.immutable.of("bitumen sheet"), overrides(own));
    }
}
