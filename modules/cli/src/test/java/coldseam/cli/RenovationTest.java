package coldseam.cli;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.audit.Audit;
import coldseam.audit.JunctionRow;
import coldseam.audit.PointRow;
import coldseam.audit.engine.Progress;
import coldseam.audit.house.HouseAudit;
import coldseam.audit.house.Workshop;
import coldseam.conduction.Interval;
import coldseam.files.quantity.UnitSystem;
import coldseam.options.HeatSum;
import coldseam.options.Renovation;
import coldseam.options.Renovation.Cold;
import coldseam.options.Renovation.Group;
import coldseam.options.Renovation.Stage;
import coldseam.options.Renovation.Unlike;
import coldseam.options.Stages;
import coldseam.report.compare.RenovationJson;
import coldseam.report.compare.RenovationPdf;
import coldseam.report.pdf.Paper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;

/** The demo house as it was found, and as its file describes it, in the order of building that the file has. */
@Tag("slow")
@Execution(ExecutionMode.CONCURRENT)
class RenovationTest {

    private static final Path BEFORE = CommittedReport.ROOT.resolve("fixtures/houses/heron-row-as-found.yaml");
    private static final Path AFTER = CommittedReport.ROOT.resolve("fixtures/houses/heron-row.yaml");

    @TempDir
    static Path folder;

    private static Renovation renovation;

    @BeforeAll
    static void compare() {
        renovation = compare(BEFORE, AFTER);
    }

    private static Renovation compare(Path first, Path second) {
        return compare(Run.REAL, first, second);
    }

    private static Renovation compare(Workshop workshop, Path first, Path second) {
        HouseAudit before = HouseAudit.of(first, workshop);
        HouseAudit after = HouseAudit.of(second, workshop);
        return Stages.compare(
                before, after, after.house().retrofit().orElseThrow().order(), Progress.SILENT);
    }

    @Test
    void stagesAddUpToTheWholeChange() {
        assertEquals(
                Lists.immutable.of("windows and doors", "brick wall", "points"),
                renovation.stages().collect(Stage::name));
        assertTrue(renovation.more().upper() < -50, renovation.more()::toString);
        assertEquals(1, renovation.stages().sumOfDouble(stage -> stage.share().orElseThrow()), 1e-9);
        Interval sum = renovation.stages().collect(Stage::more).injectInto(Interval.of(0), Interval::plus);
        assertTrue(
                sum.lower() <= renovation.more().upper()
                        && sum.upper() >= renovation.more().lower(),
                () -> sum + " beside " + renovation.more());
    }

    /** Each side is what an audit of it alone says, corners and all. */
    @Test
    void bothSidesAreTheirOwnAudits() {
        assertEquals(
                HouseAudit.of(BEFORE, Run.REAL).compute().heatLoss().total(),
                renovation.before().heatLoss().total());
        assertEquals(
                HouseAudit.of(AFTER, Run.REAL).compute().heatLoss().total(),
                renovation.after().heatLoss().total());
        assertTrue(renovation.before().heatLoss().vertices().upper() < 0);
    }

    /** New windows in an old wall: nothing covers their frames until the wall is done. */
    @Test
    void aStageNamesTheSeamsThatWaitForTheNext() {
        ImmutableList<String> open = renovation
                .stages()
                .getFirst()
                .open()
                .collect(JunctionRow::kindLabel)
                .distinct();
        assertTrue(open.containsAllArguments("jamb", "head", "sill"), open::makeString);
        assertFalse(open.contains("parapet"), open::makeString);
        assertTrue(renovation.stages().getLast().open().isEmpty());
    }

    /** The old brackets are in the new boards until they are set anew; set first, they wait for the boards. */
    @Test
    void aStageNamesThePointsThatWaitForTheirWall() {
        ImmutableList<String> old = Lists.immutable.of("canopy over the front door", "awning over the kitchen window");
        assertEquals(
                Lists.immutable.of(Lists.immutable.empty(), old, Lists.immutable.empty()),
                renovation.stages().collect(RenovationTest::openPoints));
        Renovation pointsFirst = Stages.compare(
                HouseAudit.of(BEFORE, Run.REAL),
                HouseAudit.of(AFTER, Run.REAL),
                Lists.immutable.of("points", "brick wall"),
                Progress.SILENT);
        assertEquals(
                Lists.immutable.of(old, Lists.immutable.empty(), Lists.immutable.empty()),
                pointsFirst.stages().collect(RenovationTest::openPoints));
    }

    private static ImmutableList<String> openPoints(Stage stage) {
        return stage.openPoints().collect(PointRow::name);
    }

    /**
     * The bare reveals are as cold with new windows as with old ones, which the limit of the critical month does not allow;
     * what is behind new frames is colder than it was found at the threshold of the front door.
     */
    @Test
    void mouldIsJudgedAsFoundAndAtEachStage() {
        assertTrue(mould(renovation.cold()).containsAllArguments("jamb", "head", "sill"));
        Stage windows = renovation.stages().getFirst();
        assertTrue(mould(windows.cold()).containsAllArguments("jamb", "head", "sill"));
        Cold threshold = windows.cold().minBy(Cold::now);
        assertEquals("door threshold on a slab", threshold.row().kindLabel());
        assertTrue(threshold.colder() && threshold.now() < threshold.before().orElseThrow());
        // By months, ISO 13788: what the audit of the same house says of its critical month.
        assertEquals(
                renovation.after().mould().monthly().orElseThrow().critical().temperatureFactor(), threshold.need());
        assertTrue(renovation.stages().getLast().cold().noneSatisfy(Cold::mould));
        assertTrue(renovation.stages().allSatisfy(stage -> stage.notJudged().isEmpty()));
    }

    private static ImmutableList<String> mould(ImmutableList<Cold> cold) {
        return cold.select(Cold::mould).collect(each -> each.row().kindLabel());
    }

    @Test
    void partsStandInTheOrderOfTheTable() {
        ImmutableList<Group> groups = renovation.parts().collect(Renovation.Part::group);
        assertEquals(groups.toSortedList(), groups);
        assertEquals(Lists.immutable.with(Group.values()), groups.distinct());
        assertTrue(renovation.unlike().isEmpty(), renovation.unlike()::makeString);
    }

    @Test
    void theCommandWritesWhatIsCommitted() throws IOException {
        Path csv = folder.resolve("changes.csv");
        Path svg = folder.resolve("stages.svg");
        Path json = folder.resolve("changes.json");
        Run run = Run.of(
                "compare",
                BEFORE.toString(),
                AFTER.toString(),
                "--csv",
                csv.toString(),
                "--svg",
                svg.toString(),
                "--json",
                json.toString());
        assertEquals(Exit.of(renovation.after()).code(), run.code(), run::err);
        assertTrue(run.lines().stream()
                .allMatch(line ->
                        line.codePointCount(0, line.length()) <= Terminal.WIDTH || line.startsWith("Written:")));
        CommittedReport.check("heron-row-stages.txt", run.out().replaceFirst("(?s)\nWritten: .*", ""));
        CommittedReport.check("heron-row-stages.svg", Files.readString(svg));
        assertEquals(renovation.parts().size() + 1, Files.readAllLines(csv).size());
        assertEquals(RenovationJson.text(renovation), Files.readString(json));
        DataSchemas.check("renovation", RenovationJson.schema(), Files.readString(json));
        assertArrayEquals(
                RenovationPdf.bytes(renovation, UnitSystem.SI, Paper.A4),
                RenovationPdf.bytes(compare(BEFORE, AFTER), UnitSystem.SI, Paper.A4));
    }

    /**
     * Boards of 40 mm are too thin for some details: a seam whose detail does not fit has no value, which is not the value
     * nothing, and no temperature, which is not warm enough.
     */
    @Test
    void whatHasNoValueIsNotTakenForNothing() throws IOException {
        Path thin = Files.writeString(
                folder.resolve("thin.yaml"),
                Files.readString(AFTER)
                        .replace(
                                "thickness: 200 mm, role: insulation, controls: [heat]}\n    - {material: thin-coat",
                                "thickness: 40 mm, role: insulation, controls: [heat]}\n    - {material: thin-coat")
                        .replace("heating-degree-days: 3600", "heating-degree-days: 3000")
                        .replace("heat: 0.12 EUR", "heat: 0.10 EUR"));
        Renovation thick = compare(Bench.SHARED, thin, AFTER);
        assertTrue(thick.parts()
                .noneSatisfy(part -> part.name().equals("jamb") && part.before().isPresent()));
        // Limits of U follow from the degree days.
        assertEquals(Lists.immutable.with(Unlike.SITE, Unlike.LIMITS, Unlike.PRICE), thick.unlike());
        assertEquals(Lists.immutable.of("windows and doors", "points"), thick.idle());
        assertEquals(Lists.immutable.of("brick wall"), thick.stages().collect(Stage::name));
        Run run = Run.with(Bench.SHARED, "compare", thin.toString(), AFTER.toString(), "--order", "brick wall");
        String said = run.out().replaceAll("\\s+", " ");
        assertTrue(said.contains("H_T = at least"), run::out);
        assertTrue(said.contains("after it loses, of what has a value, "), run::out);
        assertTrue(said.contains("; not known, since before 30.40 m of seams have no value"), run::out);
        assertTrue(said.contains("no temperature is known, so mould is not judged, at: head (5), jamb (10)"), run::out);
        assertTrue(said.contains("take care: the two files differ in their site"), run::out);
        Run feet = Run.with(Bench.SHARED, "compare", thin.toString(), AFTER.toString(), "--units", "us");
        assertTrue(
                feet.out().replaceAll("\\s+", " ").contains("since before 99 ft 8 7/8 in of seams have no value"),
                feet::out);
    }

    /**
     * Walls of a house before that are of concrete, where those that stay are of brick, lose what nobody ever saves; nor does anybody
     * save by a window whose old U is a guess. New windows without a way for air in make rooms damper.
     */
    @Test
    void whatIsSavedIsOfWhatIsBuilt() throws IOException {
        Path after = CommittedReport.ROOT.resolve("fixtures/houses/ferry-cottage.yaml");
        String text = Files.readString(after)
                .replace("    source: declared by the maker of the windows, invented\n", "")
                .replace("    transmittance: 0.9 W", "    transmittance: 2.8 W")
                .replace(
                        "thickness: 180 mm, role: insulation, controls: [heat]}\n    - {material: thin-coat",
                        "thickness: 80 mm, role: insulation, controls: [heat]}\n    - {material: thin-coat");
        String brick = "material: old solid brick, thickness: 240 mm";
        Path same = Files.writeString(folder.resolve("same.yaml"), text);
        Path other = Files.writeString(
                folder.resolve("other.yaml"), text.replace(brick, "material: reinforced concrete, thickness: 240 mm"));
        Path thinner = Files.writeString(
                folder.resolve("thinner.yaml"), text.replace(brick, brick.replace("240 mm", "115 mm")));
        String care = "take care: the two files differ in what carries, though it is said to stay";
        String damper = "no duct for ventilation is listed";
        for (Path before : Lists.immutable.of(same, other, thinner)) {
            String said = Run.with(Bench.SHARED, "compare", before.toString(), after.toString())
                    .out()
                    .replaceAll("\\s+", " ");
            assertEquals(before != same, said.contains(care), said);
            assertTrue(
                    said.contains("Of it assumed besides: the U of 1 window or door without a product's source"), said);
            assertTrue(said.contains(damper), said);
        }
        Path aired = Files.writeString(
                folder.resolve("aired.yaml"),
                Files.readString(after)
                        + "points:\n  fresh air: {surface: cottage north wall, detail: duct-insulated, number: 1}\n");
        Run run = Run.with(
                Bench.SHARED, "compare", same.toString(), aired.toString(), "--order", "points,windows and doors");
        assertFalse(run.out().replaceAll("\\s+", " ").contains(damper), run::out);
    }

    /** A smaller house loses less, whatever it is built of. */
    @Test
    void housesOfTwoSizesAreToldApart() throws IOException {
        Path house = CommittedReport.ROOT.resolve("fixtures/houses/planted/box.yaml");
        Path small = Files.writeString(
                folder.resolve("small.yaml"), Files.readString(house).replace("[8 m, 6 m]", "[7 m, 6 m]"));
        Run run = Run.with(Bench.SHARED, "compare", house.toString(), small.toString());
        // External: 8.42 m by 6.42 m and 7.42 m by 6.42 m, 3.622 m high.
        assertTrue(
                run.out()
                        .replaceAll("\\s+", " ")
                        .contains(
                                "take care: the two files differ in their shape, what they stand on, the names in it or their seams (215.6 m²"
                                        + " of surfaces before, 195.5 m² after)"),
                run::out);
    }

    /** A reviewer reads in a revision what became another: each build-up, window, detail, area and input that did, and no other. */
    @Test
    void aRevisionSaysWhatDiffersInTheFiles() throws IOException {
        Path old = CommittedReport.ROOT.resolve("fixtures/houses/planted/box.yaml");
        String text = Files.readString(old);
        Path revised = Files.writeString(
                folder.resolve("revised.yaml"),
                text.replace("house: ", "submittal: {revision: B}\n\nhouse: ")
                        .replaceFirst("mineral wool board, thickness: 200 mm", "mineral wool board, thickness: 220 mm")
                        .replaceFirst("indoor-humidity: 50 %", "indoor-humidity: 45 %"));
        String same = Run.with(Bench.SHARED, "compare", old.toString(), old.toString())
                .out();
        assertTrue(same.contains("What differs in the two files\n  nothing\n"), same);
        String said = Run.with(Bench.SHARED, "compare", old.toString(), revised.toString())
                .out();
        // External: 8.42 m by 6.42 m, 3.622 m high; 8.46 m by 6.46 m where the boards are 20 mm thicker.
        assertTrue(said.contains("""
                        What differs in the two files
                          Revision: new, B
                          Build-up wall: mineral wool board 200 mm, insulation, controls heat, now
                            mineral wool board 220 mm, insulation, controls heat
                          Area of all surfaces, net: 215.62 m², now 217.39 m²
                          Indoor humidity at the design condition: 50 % (house file), now 45 % (house
                            file)

                        """), said);
    }

    /**
     * A parapet is done with its wall and its roof, whatever becomes of the slab after that: also where both houses call its drawing
     * by one name, and where what it loses was the first file's own word.
     */
    @Test
    void aSeamIsDoneWithWhatIsBesideItWhicheverWayItsLossIsKnown() throws IOException {
        String box = Files.readString(CommittedReport.ROOT.resolve("fixtures/houses/planted/box.yaml"));
        String built = box.replace("mineral wool board, thickness: 200", "mineral wool board, thickness: 240")
                .replace("polyisocyanurate board, thickness: 200", "polyisocyanurate board, thickness: 220")
                .replace("extruded polystyrene board, thickness: 200", "extruded polystyrene board, thickness: 220");
        Path of = CommittedReport.ROOT.resolve("modules/junctions/src/main/resources/details");
        Path old = Files.createDirectories(folder.resolve("old"));
        Path fresh = Files.createDirectories(folder.resolve("fresh"));
        Files.copy(of.resolve("parapet-bare.yaml"), old.resolve("edge.yaml"));
        Files.copy(of.resolve("parapet-on-break-blocks.yaml"), fresh.resolve("edge.yaml"));
        Path named = Files.writeString(old.resolve("house.yaml"), box.replace("parapet-on-break-blocks", "edge.yaml"));
        Path renewed =
                Files.writeString(fresh.resolve("house.yaml"), built.replace("parapet-on-break-blocks", "edge.yaml"));
        Path surveyed = Files.writeString(
                folder.resolve("surveyed.yaml"),
                box + "\nown-psi:\n- {kinds: [parapet], psi: 0.4 W/(m·K), source: a survey of the old parapet}\n");
        Path planned = Files.writeString(folder.resolve("planned.yaml"), built);
        assertAll(Stream.of(Lists.immutable.of(named, renewed), Lists.immutable.of(surveyed, planned))
                .map(houses -> () -> {
                    Renovation done = inOrder(houses, "wall", "roof", "slab");
                    Stage roof = done.stages().get(1);
                    // The parapet alone loses 9 W/K less and more.
                    assertTrue(roof.more().upper() < -9, () -> houses + " " + roof.more());
                    assertTrue(
                            roof.audit().findings().isEmpty(),
                            () -> roof.audit().findings().makeString());
                    assertTrue(done.stages().getLast().more().lower() > -2, houses::toString);
                }));
        String details = box.replace("parapet-on-break-blocks", "edge.yaml");
        Path same = Files.writeString(fresh.resolve("same.yaml"), details);
        assertEquals(
                Lists.immutable.of("details"),
                inOrder(Lists.immutable.of(named, same)).stages().collect(Stage::name));
        assertEquals(
                Lists.immutable.of("details"),
                inOrder(Lists.immutable.of(surveyed, Files.writeString(folder.resolve("box.yaml"), box)))
                        .stages()
                        .collect(Stage::name));
    }

    private static Renovation inOrder(ImmutableList<Path> houses, String... order) {
        return Stages.compare(
                HouseAudit.of(houses.getFirst(), Bench.SHARED),
                HouseAudit.of(houses.getLast(), Bench.SHARED),
                Lists.immutable.with(order),
                Progress.SILENT);
    }

    /** A garage that is taken for warmer is no other shape. */
    @Test
    void spacesBesideTheHouseAreToldApart() throws IOException {
        Path house = CommittedReport.ROOT.resolve("fixtures/houses/shapes/over-the-garage.yaml");
        Path warmer = Files.writeString(
                folder.resolve("warmer.yaml"),
                Files.readString(house).replace("temperature-factor: 0.8", "temperature-factor: 0.7"));
        String said = Run.with(Bench.SHARED, "compare", house.toString(), warmer.toString())
                .out()
                .replaceAll("\\s+", " ");
        assertTrue(
                said.contains("take care: the two files differ in the spaces beside the house (which there are"), said);
        assertFalse(said.contains("their shape, "), said);
    }

    /** What a seam comes to whose detail does not fit is known within its kind's other options only, in sums as in audits. */
    @Test
    void theSumKeepsTheIntervalOfWhatDoesNotFit() throws IOException {
        Path thin = Files.writeString(
                folder.resolve("thin-as-found.yaml"),
                Files.readString(BEFORE)
                        .replace("thickness: 60 mm, role: insulation", "thickness: 40 mm, role: insulation"));
        Audit audit = HouseAudit.of(thin, Bench.SHARED).computeSections();
        Interval total = audit.heatLoss().total();
        Interval sum = HeatSum.of(audit).value();
        assertTrue(total.width() > 1, total::toString);
        // A line of the table is rounded outwards to a thousandth, a sum is not.
        double lines = 1e-3 * audit.heatLoss().lines().size();
        assertEquals(total.lower(), sum.lower(), lines);
        assertEquals(total.upper(), sum.upper(), lines);
        assertEquals(Interval.of(0), HeatSum.of(audit).minus(HeatSum.of(audit)).value());
    }

    @Test
    void anOrderOfWhatDoesNotDifferIsRefused() throws IOException {
        Run asked = Run.of("compare", BEFORE.toString(), AFTER.toString(), "--order", "new roof");
        assertEquals(Exit.REFUSED.code(), asked.code());
        assertEquals(
                "--order: a measure by which the houses differ is needed; got \"new roof\"; one of brick wall, windows and"
                        + " doors, points; correct it\n",
                asked.err());

        Run same = Run.of("compare", AFTER.toString(), AFTER.toString(), "--order", "brick wall");
        assertEquals(
                "--order: a measure by which the houses differ is needed; got \"brick wall\"; there is none, since the shapes"
                        + " differ or nothing does; leave --order out\n",
                same.err());
    }

    @Test
    void whatIsOfOneHouseIsRefusedWithTwo() {
        Run run = Run.of("compare", BEFORE.toString(), AFTER.toString(), "--budget", "3000");
        assertEquals(Exit.REFUSED.code(), run.code());
        assertEquals(
                "--budget, --heat-loss and --energy are about the alternatives of one house; leave them out, or the second"
                        + " house file\n",
                run.err());
        Run order = Run.of("compare", AFTER.toString(), "--order", "brick wall");
        assertEquals(
                "--order needs two houses; name the house file of what it is to become as a second one\n", order.err());
        Run over = Run.of("compare", BEFORE.toString(), AFTER.toString(), "--json", AFTER.toString());
        assertEquals(AFTER + ": named twice, as input or another output; name another file\n", over.err());
    }
}
