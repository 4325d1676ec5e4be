package coldseam.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import coldseam.audit.engine.Sample;
import coldseam.audit.engine.Sample.Made;
import coldseam.envelope.Exposure;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Material;
import coldseam.envelope.Opening;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whatever rests on the house file's word alone is told: a house that leaves out or relaxes something says so. */
class AssumedTest {

    private static final ImmutableList<Made> DETAILS =
            Sample.good().newWith(Made.good("inner-good", JunctionKind.of("partition at inside insulation")));

    /** m, of the box outside. */
    private static final double HEIGHT = audit(Sample.yaml()).shell().externalVolume() / 48;

    private static Audit audit(String yaml) {
        return Sample.audit(yaml, DETAILS);
    }

    private static Assumed of(String yaml) {
        return Assumed.of(audit(yaml));
    }

    private static Assumed changed(String from, String to) {
        return of(Sample.yaml().replace(from, to));
    }

    @Test
    void thePlainBoxRestsOnItsListedMaterialsAndHasNoOpenings() {
        Assumed box = of(Sample.yaml());
        assertEquals(0, box.besideHeated());
        assertEquals(0, box.besideWarm());
        assertEquals(Lists.immutable.empty(), box.warm());
        assertEquals(0, box.nothingMeets());
        assertEquals(Lists.immutable.of(Opening.Kind.WINDOW, Opening.Kind.DOOR), box.notThere());
        assertEquals(Lists.immutable.empty(), box.relaxed());
        assertEquals(Lists.immutable.with(Assumed.Side.values()), box.untouched());
        // Plaster, brick, wool, render, concrete, extruded and polyisocyanurate board, bitumen.
        assertEquals(8, box.conductivities());
        assertEquals(8, box.withoutProduct());
        assertEquals(Lists.immutable.empty(), box.ownSeams());
        assertEquals(Lists.immutable.empty(), box.overrides());
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
        Assumed.Leaf found = of(leaf).leaves().getOnly();
        assertEquals("wall", found.assembly().name());
        assertEquals("clay brick", found.layer().material().name());
        assertEquals(0, found.ledge());
        assertEquals(0, found.angles());
        Assumed.Leaf borne = of(leaf
                        + "seams: {ledge: {kind: masonry veneer ledge, surface: ground floor south wall, length: 7 m}}\n"
                        + "points: {over the door: {surface: ground floor north wall, detail: angle-steel, number: 3}}\n")
                .leaves()
                .getOnly();
        assertEquals(7, borne.ledge());
        assertEquals(3, borne.angles());
        assertEquals(
                Lists.immutable.empty(),
                of(leaf.replace("thickness: 100 mm, role: cladding", "thickness: 22 mm, role: cladding"))
                        .leaves());
        assertEquals(Lists.immutable.empty(), of(Sample.yaml()).leaves());
        // Nothing lies outside the insulation of a wall that has none.
        assertEquals(
                Lists.immutable.empty(),
                of(Sample.yaml().replace("{all: wall}", "{all: wall, south: bare wall}"))
                        .leaves());
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
    void aLimitThatIsLaxerThanUsualIsTold(String limit, Assumed.Limit relaxed) {
        assertEquals(
                Lists.immutable.of(relaxed),
                of(Sample.yaml() + "limits: {" + limit + "}\n").relaxed());
    }

    @Test
    void stricterLimitsAreNotTold() {
        String strict = "limits: {neck-share: 51 %, path-share: 51 %, psi: 0.009 W/(m·K), geometry-psi: 0.09 W/(m·K),"
                + " opening-psi: 0.04 W/(m·K), chi: 0.04 W/K, temperature-factor: 0.71, mean-share: 51 %, walls: 0.34"
                + " W/(m²·K), roofs: 0.189 W/(m²·K), floors: 0.266 W/(m²·K), ground: 0.335 W/(m²·K), windows: 1.81"
                + " W/(m²·K), doors: 1.81 W/(m²·K)}\n";
        assertEquals(Lists.immutable.empty(), of(Sample.yaml() + strict).relaxed());
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
        Assumed warm = of(facing("  garage: {temperature-factor: 0.79}\n  other: {temperature-factor: 0.8}\n"));
        assertEquals(8 * HEIGHT, warm.besideWarm(), 1e-3);
        assertEquals(Lists.immutable.of(new Exposure(Exposure.Kind.UNHEATED, "garage", 0.79)), warm.warm());
        assertEquals(0, warm.besideHeated());
    }

    @Test
    void wallsBesideHeatedNeighboursAreTold() {
        Assumed party = of(facing("  garage: {temperature-factor: 0.8}\n  other: {heated: true}\n"));
        assertEquals(6 * HEIGHT, party.besideHeated(), 1e-3);
        assertEquals(0, party.besideWarm());
        assertEquals(Lists.immutable.empty(), party.warm());
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
                Assumed.of(audit).besideHeated(),
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
        assertEquals(28 * HEIGHT, of(inside).nothingMeets(), 1e-3);
        String met = "seams:\n  inner wall: {kind: partition at inside insulation, surface: ground floor south wall,"
                + " length: 2.8 m}\n";
        assertEquals(20 * HEIGHT, of(inside + met).nothingMeets(), 1e-3);
        // What meets a wall that it is not a seam of says nothing about its insulation.
        assertEquals(
                28 * HEIGHT,
                of(inside + met.replace("partition at inside insulation", "balcony"))
                        .nothingMeets(),
                1e-3);
        assertEquals(
                22 * HEIGHT,
                of(inside.replace("{all: wall}", "{all: wall, east: {assembly: wall, faces: other}}")
                                .replace("body:\n", "neighbours:\n  other: {heated: true}\nbody:\n"))
                        .nothingMeets(),
                1e-3);
    }

    /** Where two floors meet a wall may go down between them; in an old house with a wing one stands there. */
    @Test
    void floorsThatMeetWithoutAWallAreTold() {
        String thinner = Sample.yaml()
                .replace(
                        "  roof: {",
                        "  other-bases:\n  - {kind: slab on ground, assembly: roof, area: {rectangle: [4 m, 8 m], at: [-1 m,"
                                + " -1 m]}}\n  roof: {");
        assertEquals(6, of(thinner).unparted(), 1e-3);
        String wall = "seams:\n  old wall: {kind: bearing wall through the slab's insulation, surface: lowest floor,"
                + " length: 6 m}\n";
        assertEquals(0, of(thinner + wall).unparted());
        assertEquals(
                6, of(thinner + wall.replace("length: 6 m", "length: 0.9 m")).unparted(), 1e-3);
    }

    @Test
    void openingsThatAreThereAreNotMissed() {
        String door = "openings:\n  way in: {kind: door, surface: ground floor south wall, width: 1 m, height: 2 m,"
                + " sill: 0 m, transmittance: 1.2 W/(m²·K)}\njunctions:\n";
        assertEquals(
                Lists.immutable.of(Opening.Kind.WINDOW),
                changed("junctions:\n", door).notThere());
    }

    /** Nobody walks through a door of 599 mm, or of 1.59 m. */
    @ParameterizedTest
    @CsvSource({"600 mm, 1.6 m, 1", "599 mm, 1.6 m, 2", "600 mm, 1.59 m, 2"})
    void aDoorIsWalkedThrough(String width, String height, int missing) {
        String door = "openings:\n  way in: {kind: door, surface: ground floor south wall, width: " + width
                + ", height: " + height + ", sill: 0 m, transmittance: 1.2 W/(m²·K)}\njunctions:\n";
        assertEquals(missing, changed("junctions:\n", door).notThere().size());
    }

    @Test
    void pointsThatAreListedAreNotMissed() {
        assertEquals(
                Lists.immutable.of(Assumed.Side.ROOFS, Assumed.Side.FLOORS),
                changed(
                                "junctions:\n",
                                "points:\n  pipe: {kind: pipe, surface: ground floor south wall, number: 1}\njunctions:\n")
                        .untouched());
    }

    @Test
    void windowsAsFoundOfNoSourceAreCounted() {
        String house = Sample.yaml()
                        .replace(
                                "junctions:\n",
                                "openings:\n  pane: {kind: window, surface: ground floor south wall, width: 1 m, height: 1 m,"
                                        + " sill: 1 m, transmittance: 1.2 W/(m²·K)}\njunctions:\n")
                + "retrofit:\n  found:\n    assemblies: {wall: wall}\n    openings: {pane: {transmittance: 5 W/(m²·K)SOURCE}}\n";
        assertEquals(1, of(house.replace("SOURCE", "")).foundUndeclared());
        assertEquals(
                0, of(house.replace("SOURCE", ", source: measured in the hall")).foundUndeclared());
        assertEquals(0, of(Sample.yaml()).foundUndeclared());
    }

    @Test
    void ownPsisAreTold() {
        Assumed own = changed(
                "junctions:\n",
                "own-psi:\n- {kinds: [outside corner], psi: -0.04 W/(m·K), source: made up}\njunctions:\n");
        assertEquals(4, own.ownSeams().size());
    }

    private static Assumed own(String material) {
        return of(Sample.yaml()
                .replace(
                        "assemblies:\n", "materials:\n  wall board: {" + material + ", source: made up}\nassemblies:\n")
                .replace("material: mineral wool board", "material: wall board"));
    }

    @Test
    void materialsOfTheHousesOwnAreToldWhereTheyClaimMoreThanTheirValues() {
        Assumed plain = own("conductivity: 0.035 W/(m·K)");
        assertEquals(8, plain.conductivities());
        assertEquals(7, plain.withoutProduct());
        assertEquals(Lists.immutable.empty(), plain.overrides());
        assertEquals(
                8, own("conductivity: 0.035 W/(m·K), sureness: common practice").withoutProduct());
        assertEquals(
                8, own("conductivity: 0.035 W/(m·K), sureness: from memory").withoutProduct());
        for (String claim : new String[] {
            "conductivity: 0.035 W/(m·K), controls: {air: a leaflet}",
            "conductivity: 0.035 W/(m·K), bears: {ground: a leaflet}",
            "conductivity: 0.09 W/(m·K), insulates: true, insulates-source: a leaflet"
        }) {
            assertEquals(
                    Lists.immutable.of("wall board"), own(claim).overrides().collect(Material::name), claim);
        }
    }

    /** It has no source of its own, so that it is no better known than what it is of. */
    @Test
    void aLayersDeclaredResistanceIsNoProductsSource() {
        String board = "material: mineral wool board, thickness: 200 mm";
        assertEquals(8, changed(board, board + ", resistance: 6 m²·K/W").withoutProduct());
        String product =
                "materials:\n  mineral wool board: {conductivity: 0.035 W/(m·K), source: made up}\nassemblies:\n";
        assertEquals(
                7,
                of(Sample.yaml().replace("assemblies:\n", product).replace(board, board + ", resistance: 6 m²·K/W"))
                        .withoutProduct());
    }

    /** A product of a listed name has the list's word for what it can; its own word is told. */
    @Test
    void aProductOfAListedNameIsToldWhereItClaimsForItself() {
        String product = "materials:\n  bitumen sheet: {conductivity: 0.17 W/(m·K)%s, source: made up}\nassemblies:\n";
        Assumed listed = changed("assemblies:\n", product.formatted(""));
        assertEquals(7, listed.withoutProduct());
        assertEquals(Lists.immutable.empty(), listed.overrides());
        Assumed own = changed("assemblies:\n", product.formatted(", controls: {water: a leaflet}"));
        assertEquals(Lists.immutable.of("bitumen sheet"), own.overrides().collect(Material::name));
    }
}
