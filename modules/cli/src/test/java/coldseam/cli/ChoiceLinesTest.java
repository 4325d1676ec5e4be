package coldseam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What {@code check} prints to be added to a house file. */
@Tag("slow")
class ChoiceLinesTest {

    @TempDir
    Path folder;

    /** The first house, nothing chosen, its west wall insulated inside and with a window: other details are best there. */
    private static String house() throws IOException {
        String text = Files.readString(CommittedReport.ROOT.resolve("fixtures/houses/first-house.yaml"));
        return text.substring(0, text.indexOf("junctions:"))
                .replace("  slab:\n", """
                          inner:
                            layers:
                            - {material: gypsum plaster, thickness: 15 mm, role: finish, controls: [air, vapour]}
                            - {material: wood fibre insulation board, thickness: 80 mm, role: insulation, controls: [heat]}
                            - {material: lightweight clay block, thickness: 240 mm, role: structure}
                            - {material: thin-coat render, thickness: 10 mm, role: cladding, controls: [water]}
                          slab:
                        """)
                .replace("walls: wall", "walls: {all: wall, west: inner}")
                .replace("openings:\n", """
                        openings:
                          "west: the small one": {kind: window, surface: house west wall, width: 0.8 m, height: 1.2 m,
                            sill: 0.9 m, transmittance: 1.0 W/(m²·K)}
                          south window: {kind: window, surface: house south wall, width: 1.5 m, height: 1.2 m,
                            sill: 0.9 m, transmittance: 1.0 W/(m²·K)}
                        """);
    }

    @Test
    void linesAsPrintedChooseForEverySeamWhatIsBestThere() throws IOException {
        Path file = Files.writeString(folder.resolve("house.yaml"), house());
        Run open = Run.with(Bench.SHARED, "check", file.toString());
        assertEquals(1, open.code(), open::err);
        assertTrue(open.out().contains("[detail-not-chosen]"), open::out);
        assertTrue(open.out().contains("nobody chose how they are built"), open::out);
        assertFalse(open.out().contains("Nobody chose how"), open::out);
        List<String> lines = open.out()
                .substring(open.out().indexOf("\njunctions:\n") + 1)
                .lines()
                .toList();
        assertTrue(lines.stream().anyMatch(each -> each.contains("surfaces: [house west wall]")), open::out);
        assertTrue(lines.contains("  detail: slab-edge-board-inside"), open::out);
        // What is best for few comes before what is best for the rest, and no entry twice.
        String all = String.join("\n", lines) + "\n";
        assertEquals(2, all.split("kinds: \\[jamb]", -1).length - 1, all);
        assertTrue(all.indexOf("- {kinds: [jamb]") > all.indexOf("- kinds: [jamb]"), all);

        Files.writeString(file, house() + all);
        Run chosen = Run.with(Bench.SHARED, "check", file.toString());
        assertFalse(chosen.out().contains("[detail-not-chosen]"), () -> all + chosen.out() + chosen.err());
        assertTrue(chosen.code() < 2 && !chosen.out().contains("\njunctions:"), chosen::err);
    }

    /** Without their marks the remarks are lines that the file takes, and nothing that serves the house is missing then. */
    @Test
    void whatServesTheHouseIsOfferedAsRemarksThatReadWithoutTheirMarks() throws IOException {
        Path file = Files.writeString(folder.resolve("services.yaml"), house());
        String out = Run.with(Bench.SHARED, "check", file.toString()).out();
        assertTrue(check(file).contains("that nothing that serves the house goes through the insulation"), out);
        String lines = out.substring(out.indexOf("\njunctions:\n") + 1);
        assertTrue(lines.lines().allMatch(each -> each.length() <= Terminal.WIDTH), out);
        String points = lines.substring(lines.indexOf("# points:\n")).replaceAll("(?m)^# ?", "");
        assertTrue(points.contains("vent of waste pipes: {surface: roof, "), points);
        assertTrue(points.contains("waste water: {surface: lowest floor, "), points);
        Files.writeString(file, house() + lines.substring(0, lines.indexOf("# points:\n")) + points);
        String listed = check(file);
        assertTrue(listed.contains("of it in points"), listed);
        assertFalse(listed.contains("goes through the insulation"), listed);
    }

    /** Points that say a kind alone: their detail, in the place of it. */
    @Test
    void pointsOfAKindAreOfferedTheirDetail() throws IOException {
        String text = Files.readString(CommittedReport.ROOT.resolve("fixtures/houses/first-house.yaml"));
        Path file = Files.writeString(
                folder.resolve("kind.yaml"),
                text + "points:\n  fresh air: {surface: house south wall, kind: duct, number: 1}\n");
        assertTrue(check(file).contains("# fresh air: detail: duct-insulated, instead of kind: duct"), check(file));
    }

    /** A box before thick boards leaves the frame farther out than the other sides have it: one line more makes it one. */
    @Test
    void whereNothingFitsInThePlaneOfTheOtherSidesTheLinesSayHowOneFrameIsMade() throws IOException {
        String text = Files.readString(CommittedReport.ROOT.resolve("fixtures/houses/first-house.yaml"))
                .replaceFirst("mineral wool board, thickness: 160 mm", "mineral wool board, thickness: 180 mm")
                .replace("openings:\n", """
                        openings:
                          boxed: {kind: window, surface: house west wall, width: 1.3 m, height: 1.3 m, sill: 0.9 m,
                            transmittance: 0.9 W/(m²·K), shutter-box: true}
                        """);
        String open = text.substring(0, text.indexOf("junctions:"));
        Path file = Files.writeString(folder.resolve("box.yaml"), open);
        String out = Run.with(Bench.SHARED, "check", file.toString()).out();
        String lines = out.substring(out.indexOf("\njunctions:\n") + 1);
        String told = lines.replaceAll("\n# +", " ");
        assertTrue(
                told.contains("\"boxed\": shutter-box-outside sets the frame back 55 mm from the wall's outer face, the"
                        + " lines for the other sides 100 mm, and nothing else fits; say under openings where it stands"
                        + " (set-back)"),
                out);
        Files.writeString(file, open + lines);
        assertTrue(check(file).contains("One frame drawn in two planes"), check(file));
        Files.writeString(file, open.replace("shutter-box: true", "shutter-box: true, set-back: 55 mm") + lines);
        assertFalse(check(file).contains("One frame drawn in two planes"), check(file));
    }

    /** Six hips alike: what differs by less than anybody builds it is as good, and the better rank is named for all. */
    @Test
    void hipsThatLoseTheSameGetTheSameLine() throws IOException {
        String text = Files.readString(CommittedReport.ROOT.resolve("fixtures/houses/first-house.yaml"));
        String rafters = "  rafters:\n    layers:\n"
                + "    - {material: clay plaster, thickness: 20 mm, role: finish}\n"
                + "    - {material: oriented strand board, thickness: 15 mm, role: structure, controls: [air, vapour]}\n"
                + "    - {material: straw bale, thickness: 360 mm, role: structure, framing: {material: softwood, share: 8 %}}\n"
                + "    - {material: wood fibre insulation board, thickness: 60 mm, role: insulation, controls: [heat]}\n"
                + "    - {material: breather membrane, thickness: 0.5 mm, role: membrane, controls: [water]}\n"
                + "    - {material: air, thickness: 50 mm, role: air layer, air: {ventilation: well ventilated}}\n"
                + "    - {material: clay roof tile, thickness: 20 mm, role: cladding}\n";
        Path file = Files.writeString(
                folder.resolve("tent.yaml"),
                text.substring(0, text.indexOf("openings:"))
                        .replace("body:\n", rafters + "body:\n")
                        .replace(
                                "{rectangle: [10 m, 8 m]}",
                                "[[5 m, 0 m], [10 m, 2.89 m], [10 m, 8.66 m], [5 m, 11.55 m], [0 m, 8.66 m], [0 m, 2.89 m]]")
                        .replace("form: flat, assembly: roof", "form: hip, assembly: rafters, pitch: 35 °"));
        Run run = Run.with(Bench.SHARED, "check", file.toString());
        String out = run.out();
        assertTrue(out.contains("- {kinds: [hip], detail: hip-mitred-lapped}"), () -> out + run.err());
        assertEquals(2, out.split("kinds: \\[hip]", -1).length, out);
    }

    /** Boards under the screed of a new house, not under its slab: the wall stands on what insulates in line with them. */
    @Test
    void aNewSlabInsulatedAboveIsOfferedACourseUnderTheWall() throws IOException {
        String text = Files.readString(CommittedReport.ROOT.resolve("fixtures/houses/first-house.yaml"));
        String concrete = "    - {material: reinforced concrete, thickness: 180 mm, role: structure}\n";
        String board =
                "    - {material: extruded polystyrene board, thickness: 160 mm, role: insulation, controls: [heat";
        String above = text.replace(board + ", water]}\n", "")
                .replace(
                        concrete,
                        board
                                + "]}\n    - {material: bitumen sheet, thickness: 4 mm, role: membrane, controls: [water]}\n"
                                + concrete);
        Path file = Files.writeString(folder.resolve("above.yaml"), above.substring(0, above.indexOf("junctions:")));
        String lines = Run.with(Bench.SHARED, "check", file.toString()).out();
        assertTrue(lines.contains("- {kinds: [slab edge], detail: slab-edge-on-a-course}"), lines);
    }

    /** Boards thin beside what lies under the slab: only a slab that stands back leaves room for an edge board as good. */
    @Test
    void aLengthThatMendsWhatTheBestMissesIsPrinted() throws IOException {
        String text = Files.readString(CommittedReport.ROOT.resolve("fixtures/houses/first-house.yaml"));
        String thin = text.substring(0, text.indexOf("junctions:"))
                .replaceFirst("mineral wool board, thickness: 160 mm", "mineral wool board, thickness: 80 mm")
                .replaceFirst(
                        "lightweight clay block, thickness: 240 mm, role: structure",
                        "mineral wool batt, thickness: 240 mm, role: structure,"
                                + " framing: {material: softwood, share: 12 %}")
                .replaceFirst("polystyrene board, thickness: 160 mm", "polystyrene board, thickness: 200 mm");
        Path file = Files.writeString(folder.resolve("house.yaml"), thin);
        String open = Run.with(Bench.SHARED, "check", file.toString()).out();
        String lines = open.substring(open.indexOf("\njunctions:\n") + 1);
        String raised = "- {kinds: [slab edge], detail: slab-edge-raft, parameters: {set back: 70 mm}}\n";
        assertTrue(lines.contains(raised), open);
        Files.writeString(file, thin + lines);
        assertFalse(check(file).contains("A short way out at the slab edge"), check(file));
        Files.writeString(file, thin + lines.replace(raised, "- {kinds: [slab edge], detail: slab-edge-raft}\n"));
        assertTrue(check(file).contains("A short way out at the slab edge"), check(file));
        assertTrue(check(file).contains("(slab-edge-raft) with set back 70 mm, psi "), check(file));
    }

    private static String check(Path file) {
        return Run.with(Bench.SHARED, "check", file.toString()).out().replaceAll("\\s+", " ");
    }

    /** A deck that bears on a wall insulated inside is there in an old house. */
    @Test
    void whereNothingUnbrokenFitsItIsTold() throws IOException {
        Path file = Files.writeString(
                folder.resolve("house.yaml"), house().replace("\nbody:\n", "\nretrofit: {}\nbody:\n"));
        Run open = Run.with(Bench.SHARED, "check", file.toString());
        assertTrue(
                open.out()
                        .contains("- kinds: [flat roof edge]\n  surfaces: [house west wall]\n  detail:"
                                + " flat-roof-edge-inner-boards-band-outside  # nothing unbroken fits\n"
                                + "  # flat-roof-edge-inner-boards-on-a-course once taken down: roof\n"
                                + "- {kinds: [flat roof edge], "),
                open::out);
    }

    /**
     * A house between two others under a pitched roof that they share: at its party walls insulation passes floors, is turned where
     * walls meet them, and for the roof's angle nothing fits. No line may mean the roof's seams, and a storey's two sides are one line.
     */
    @Test
    void noLineMeansASeamThatItsDetailDoesNotFit() throws IOException {
        String text = house();
        Path file = Files.writeString(
                folder.resolve("house.yaml"),
                text.replace("  slab:\n", """
                          party wall:
                            layers:
                            - {material: lime plaster, thickness: 15 mm, role: finish, controls: [air, vapour]}
                            - {material: old solid brick, thickness: 240 mm, role: structure}
                            - {material: lime plaster, thickness: 15 mm, role: finish}
                          slab:
                        """)
                        .replace("body:\n", "neighbours: {next door: {heated: true}}\nbody:\n")
                        .replace(
                                "walls: {all: wall, west: inner}",
                                "walls: {all: wall, west: {assembly: party wall, faces: next door},"
                                        + " east: {assembly: party wall, faces: next door}}")
                        .replaceFirst("(?s)openings:.*", "")
                        .replace(
                                "form: flat, assembly: roof",
                                "form: gable, assembly: roof, pitch: 65 °, low-side: west"));
        Run open = Run.with(Bench.SHARED, "check", file.toString());
        String lines = open.out().substring(open.out().indexOf("\njunctions:\n") + 1);
        assertFalse(lines.contains("- {kinds: [party wall], detail"), open::out);
        assertTrue(
                lines.contains("# party wall of \"roof, west slope\" and house west wall: nothing of the catalogue\n"
                        + "#   fits; name a detail file of your own\n"),
                open::out);
        Files.writeString(file, Files.readString(file) + lines);
        Run chosen = Run.with(Bench.SHARED, "check", file.toString());
        assertFalse(chosen.out().contains("[detail-does-not-fit]"), chosen::out);
        assertEquals(1, chosen.out().split("\\[detail-not-chosen]", -1).length - 1, chosen.out());
        assertTrue(lines.contains("- kinds: [party wall]\n  surfaces: [lowest floor]\n"), open::out);
    }

    /** The first house on a cellar of thicker walls, structure over structure. */
    private String onACellar(String insulation) throws IOException {
        String text = Files.readString(CommittedReport.ROOT.resolve("fixtures/houses/first-house.yaml"));
        Path file = Files.writeString(
                folder.resolve("house.yaml"),
                text.replace("footprint-line: outer face", "footprint-line: structure")
                        .replace("  storeys:\n", """
                          storeys:
                          - {name: cellar, footprint: {rectangle: [10 m, 8 m]}, height: 2.6 m, walls: thick}
                        """)
                        .replace("height: 2.8 m, walls", "height: 2.8 m, floor-thickness: 300 mm, walls")
                        .replace("  slab:\n", """
                          thick:
                            layers:
                            - {material: lime plaster, thickness: 15 mm, role: finish, controls: [air, vapour]}
                            - {material: old solid brick, thickness: 380 mm, role: structure}
                        """ + insulation + """
                            - {material: thin-coat render, thickness: 10 mm, role: cladding, controls: [water]}
                          slab:
                        """));
        return check(file);
    }

    /** Where nothing of the catalogue fits, what hinders it is told, once for all the edges of a kind. */
    @Test
    void whereNothingFitsTheReasonIsTold() throws IOException {
        String told = onACellar("");
        String why = "(floor-change-slab-through) needs insulation in the wall; its assembly has none";
        assertTrue(told.contains("nothing stands in for it: \"") && told.contains(why), told);
        assertEquals(1, told.split(Pattern.quote(why), -1).length - 1, told);
    }

    /** Walls whose inner faces step have the same options as those that are flush. */
    @Test
    void whereInnerFacesStepTheBestIsOffered() throws IOException {
        String told = onACellar(
                "    - {material: mineral wool board, thickness: 160 mm, role: insulation, controls: [heat]}\n");
        assertTrue(told.contains("- {kinds: [change of wall at a floor], detail: floor-change-boards-overlap}"), told);
    }
}
