package coldseam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.audit.Audit;
import coldseam.audit.Breach;
import coldseam.audit.Finding;
import coldseam.audit.house.HouseAudit;
import coldseam.envelope.JunctionKind;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.JunctionResult;
import coldseam.report.words.FindingWords;
import coldseam.report.words.HonestWords;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.UnaryOperator;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A façade insulated inside between façades insulated outside, with the details of the catalogue for it. */
@Tag("slow")
class SidesChangeTest {

    private static final Path HOUSES = CommittedReport.ROOT.resolve("fixtures/houses");

    @TempDir
    Path folder;

    /** The box with its façade on one side insulated inside. */
    private Audit audit(String side, String corner) throws IOException {
        return audit(side, corner, "");
    }

    private Audit audit(String side, String corner, String more) throws IOException {
        return audit(
                side, corner, "parapet-deck-stops-short", text -> text.replace("junctions:\n", more + "junctions:\n"));
    }

    private Audit audit(String side, String corner, String top, UnaryOperator<String> change) throws IOException {
        String inside = "  inner wall:\n    layers:\n"
                + "    - {material: gypsum plasterboard, thickness: 12.5 mm, role: finish}\n"
                + "    - {material: airtight membrane, thickness: 0.3 mm, role: membrane, controls: [air, vapour]}\n"
                + "    - {material: mineral wool board, thickness: 200 mm, role: insulation, controls: [heat]}\n"
                + "    - {material: clay brick, thickness: 240 mm, role: structure}\n"
                + "    - {material: cement render, thickness: 20 mm, role: cladding, controls: [water]}\n\n";
        String own = "- {kinds: [outside corner], surfaces: [room " + side + " wall], detail: " + corner + "}\n"
                + "- {kinds: [parapet], surfaces: [room " + side + " wall], detail: " + top + "}\n"
                + "- {kinds: [slab edge], surfaces: [room " + side + " wall], detail: slab-edge-board-inside}\n";
        Path file = folder.resolve("box.yaml");
        Files.writeString(
                file,
                change.apply(Files.readString(HOUSES.resolve("planted/box.yaml"))
                        .replace("  slab:\n", inside + "  slab:\n")
                        .replace("    walls: wall\n", "    walls: {all: wall, " + side + ": inner wall}\n")
                        .replace("junctions:\n", "junctions:\n" + own)));
        return HouseAudit.of(file, Bench.SHARED).compute();
    }

    private static double worstCorner(Audit audit) {
        return audit.junctions()
                .select(row -> row.edge().kind() == JunctionKind.OUTSIDE_CORNER)
                .collectDouble(row -> row.psi().upper())
                .max();
    }

    private static ImmutableList<String> titles(Path house) {
        return HouseAudit.of(house, Bench.SHARED)
                .compute()
                .findings()
                .collect(new FindingWords(UnitSystem.SI)::title)
                .toSortedList()
                .toImmutable();
    }

    /** A front that is kept between party walls, over a floor dug out within it and under rafters that stay. */
    @Test
    void aKeptFrontMeetsAllThatIsInsulatedOutside() throws IOException {
        Path house = HOUSES.resolve("old/front-kept.yaml");
        Audit audit = HouseAudit.of(house, Bench.SHARED).compute();
        assertTrue(audit.findings().isEmpty(), () -> audit.findings().makeString("\n"));
        // One inner wall is drawn in the middle of the front, beside a window's jamb: the file gives it no place.
        Path met = folder.resolve("met.yaml");
        Files.writeString(
                met,
                Files.readString(house)
                        + "seams:\n  inner wall: {kind: partition at inside insulation, surface: ground floor south wall,"
                        + " length: 2.8 m}\n");
        assertEquals(Lists.immutable.of("No detail chosen: partition at inside insulation"), titles(met));
        Path without = folder.resolve("without.yaml");
        Files.writeString(
                without,
                Files.readString(house)
                        .replace("slab-edge-in-old-walls-board-inside", "slab-edge-in-old-walls-tight")
                        .replace("slab-threshold-on-upright-board", "slab-threshold-on-concrete")
                        .replace("eaves-inner-boards-up-between-the-rafters", "eaves-rafters-through"));
        assertEquals(
                Lists.immutable.of(
                        "Insulation broken at the door threshold on a slab",
                        "Insulation broken at the slab edge",
                        "Insulation, air and vapour control broken at the eaves of an insulated roof",
                        "One frame drawn in two planes: \"front door\""),
                titles(without));
    }

    /** An old frame insulated inside, its storey out over the street, over a cellar: all pass, and each other option is told of. */
    @Test
    void anOldFrameInsulatedInsideMeetsItsJoistedFloors() throws IOException {
        Path house = HOUSES.resolve("old/jettied-frame.yaml");
        Audit audit = HouseAudit.of(house, Bench.SHARED).compute();
        assertTrue(audit.findings().isEmpty(), () -> audit.findings().makeString("\n"));
        Path without = folder.resolve("without.yaml");
        Files.writeString(
                without,
                Files.readString(house)
                        .replace("in-frame-inner-boards-down", "in-frame-inner-boards-on-the-floor")
                        .replace("in-frame-boards-over-the-plate", "in-frame-bays-packed")
                        .replace("cold-threshold-in-frame-inner-boards", "cold-threshold-on-structure"));
        assertEquals(
                Lists.immutable.of(
                        "Insulation broken at the door threshold over a cold space",
                        "Insulation broken at the floor over an unheated space",
                        "Insulation broken at the overhang edge",
                        "Insulation broken at the wall under an overhang",
                        "One frame drawn in two planes: \"door\""),
                titles(without));
    }

    @Test
    void aColumnOfBlocksJoinsTheLayersOnWhicheverSide() throws IOException {
        Audit audit = audit("south", "outside-corner-break-column");
        assertTrue(audit.findings().isEmpty(), () -> audit.findings().makeString("\n"));
    }

    @Test
    void soItDoesWhereTheOtherWallComesFirst() throws IOException {
        Audit audit = audit("west", "outside-corner-break-column");
        assertTrue(audit.findings().isEmpty(), () -> audit.findings().makeString("\n"));
    }

    @Test
    void aFlatRoofsDeckStopsShortOfItsWall() throws IOException {
        Audit audit = audit(
                "south",
                "outside-corner-break-column",
                "flat-roof-edge-deck-stops-short",
                text -> text.replace("    parapet-height: 400 mm\n", "")
                        .replace("kinds: [parapet]", "kinds: [flat roof edge]")
                        .replace("parapet-on-break-blocks", "flat-roof-edge-wall-boards-past"));
        assertTrue(audit.findings().isEmpty(), () -> audit.findings().makeString("\n"));
    }

    private static final String RAFTERS = "  rafters:\n    layers:\n"
            + "    - {material: gypsum plasterboard, thickness: 12.5 mm, role: finish}\n"
            + "    - {material: airtight membrane, thickness: 0.3 mm, role: membrane, controls: [air, vapour]}\n"
            + "    - {material: mineral wool batt, thickness: 180 mm, role: structure, framing: {material: softwood,"
            + " share: 12 %}}\n"
            + "    - {material: wood fibre insulation board, thickness: 140 mm, role: insulation, controls: [heat]}\n"
            + "    - {material: breather membrane, thickness: 0.5 mm, role: membrane, controls: [water]}\n"
            + "    - {material: air, thickness: 40 mm, role: air layer, air: {ventilation: well ventilated}}\n"
            + "    - {material: clay roof tile, thickness: 20 mm, role: cladding}\n\n";

    /** Rafters that run along a gable need not bear on it, and those that run on to a façade may end on a purlin before it. */
    @ParameterizedTest
    @CsvSource({
        "east, verge-stiff-boards-at-the-last-rafter, verge, gable over room east wall",
        "south, eaves-rafters-on-a-purlin-inside, eaves of an insulated roof, room south wall"
    })
    void raftersStandClearOfAWallInsulatedInside(String side, String detail, String kind, String surface)
            throws IOException {
        Audit audit = audit(
                side,
                "outside-corner-break-column",
                detail,
                text -> text.replace("body:\n", RAFTERS + "body:\n")
                        .replace("form: flat\n", "form: gable\n    pitch: 35 °\n    low-side: south\n")
                        .replace("    assembly: roof\n    parapet-height: 400 mm\n", "    assembly: rafters\n")
                        .replace(
                                "[parapet], surfaces: [room " + side + " wall]",
                                "[" + kind + "], surfaces: [" + surface + "]")
                        .replace(
                                "- {kinds: [parapet], detail: parapet-on-break-blocks}",
                                "- {kinds: [eaves of an insulated roof], detail: eaves-boards-meet}\n"
                                        + "- {kinds: [verge], detail: verge-boards-meet}\n"
                                        + "- {kinds: [ridge], detail: ridge-mitred}"));
        assertTrue(audit.findings().isEmpty(), () -> audit.findings().makeString("\n"));
    }

    /** Insulation that only overlaps is a gap, and loses more than the column: psi says so. */
    @Test
    void aReturnIsNoJoint() throws IOException {
        Audit audit = audit("south", "outside-corner-return-inside");
        ImmutableList<String> rules = audit.findings()
                .flatCollect(Finding::breaches)
                .collect(Breach::rule)
                .distinct();
        assertEquals(Lists.immutable.of("layer-broken"), rules);
        assertTrue(worstCorner(audit) > -0.06, "psi " + worstCorner(audit));
    }

    /** A cellar of block insulated inside, a frame wall on it outside: they overlap at the rim, lose little, and do not join. */
    @Test
    void boardsThatOverlapAtTheRimAreNoJoint() throws IOException {
        String cape = Files.readString(HOUSES.resolve("shapes/cape-over-cellar.yaml"));
        int from = cape.indexOf("  block wall:\n");
        String inside = "  block wall:\n    layers:\n"
                + "    - {material: gypsum plasterboard, thickness: 1/2 in, role: finish}\n"
                + "    - {material: airtight membrane, thickness: 0.2 mm, role: membrane, controls: [air, vapour]}\n"
                + "    - {material: extruded polystyrene board, thickness: 5 in, role: insulation, controls: [heat]}\n"
                + "    - {material: concrete block, thickness: 7 5/8 in, role: structure}\n"
                + "    - {material: bitumen sheet, thickness: 4 mm, role: membrane, controls: [water]}\n"
                + "    - {material: cement render, thickness: 1/2 in, role: cladding}\n";
        String house = cape.substring(0, from)
                + inside
                + cape.substring(cape.indexOf("  frame wall:\n"))
                        .replace("foundation-rim-boards-pass", "foundation-top-boards-overlap-at-the-floor");
        Path file = folder.resolve("cape.yaml");
        Files.writeString(file, house);
        Audit audit = HouseAudit.of(file, Bench.SHARED).compute();
        ImmutableList<String> steps = steps(audit);
        assertTrue(
                steps.anySatisfy(step -> step.startsWith("Carry it across; the catalogue's best here is")
                        && step.contains("(foundation-top-inner-boards-on-a-course)")),
                steps::toString);
        // Where the cellar's wall stays whole no course goes into it.
        Files.writeString(file, "retrofit: {}\n" + house);
        ImmutableList<String> kept = steps(HouseAudit.of(file, Bench.SHARED).compute());
        assertTrue(
                kept.anySatisfy(
                        step -> step.contains("insulation that stays on one side of what carries needs no such seam")),
                kept::toString);
        JunctionResult rim = audit.junctions()
                .detect(row -> row.edge().kind() == JunctionKind.FOUNDATION_WALL_TOP)
                .sheet()
                .orElseThrow()
                .result();
        // The blocks' inner face lies 5 in behind the boards'; the studs' stands back from it.
        assertEquals(8.625 * 0.0254, rim.setup().innerStep(), 0.001);
        assertFalse(rim.penLine().unbroken());
        assertTrue(
                rim.controls().allSatisfy(line -> line.match(way -> true, end -> false, side -> false, not -> false)));
        assertTrue(rim.psiExternal().upper() < 0.01, () -> "psi " + rim.psiExternal());
        assertTrue(rim.temperatureFactor() > 0.8, () -> "fRsi " + rim.temperatureFactor());
    }

    private static ImmutableList<String> steps(Audit audit) {
        return audit.findings().collect(new FindingWords(UnitSystem.SI)::toDo);
    }

    /** No shape can show a house's inner walls. */
    @Test
    void whatMeetsTheInsideOfAWallIsAskedFor() throws IOException {
        String silent = assumed(audit("south", "outside-corner-break-column"));
        assertTrue(silent.contains("that no inner wall, stair or joist bay meets "), silent);
        String seams = "seams:\n  inner wall: {kind: partition at inside insulation, surface: room south wall,"
                + " length: 2.8 m}\n\n";
        String said = assumed(audit("south", "outside-corner-break-column", seams));
        assertFalse(said.contains("inner wall, stair"), said);
    }

    private static String assumed(Audit audit) {
        return new HonestWords(audit, UnitSystem.SI).assumed().orElse("");
    }
}
