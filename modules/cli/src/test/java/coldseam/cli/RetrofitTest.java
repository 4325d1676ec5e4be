package coldseam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.audit.AsFound;
import coldseam.audit.Audit;
import coldseam.audit.BridgeSheet;
import coldseam.audit.HeatLoss;
import coldseam.audit.engine.Progress;
import coldseam.audit.house.HouseAudit;
import coldseam.envelope.Body;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Retrofit;
import coldseam.envelope.shell.Surface;
import coldseam.files.FileFaultException;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.BridgeResult;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.detail.Rank;
import coldseam.options.Before;
import coldseam.options.Comparer;
import coldseam.options.Wish;
import coldseam.report.words.FindingWords;
import coldseam.report.words.FoundWords;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** An old house is told, and its savings are counted against, only what can be built in the structure that stays. */
@Tag("slow")
class RetrofitTest {

    private static final Path BOX = CommittedReport.ROOT.resolve("fixtures/houses/planted/box.yaml");

    @TempDir
    Path folder;

    private Audit audit(String retrofit, String slabEdge) throws IOException {
        return HouseAudit.of(written(retrofit, slabEdge), Bench.SHARED).compute();
    }

    private Path written(String retrofit, String slabEdge) throws IOException {
        Path file = folder.resolve("box.yaml");
        Files.writeString(
                file,
                Files.readString(BOX)
                        .replace("assemblies:\n", retrofit + "assemblies:\n")
                        .replace("detail: slab-edge-raft", "detail: " + slabEdge));
        return file;
    }

    private static BridgeSheet<?> slabEdge(Audit audit) {
        return audit.sheets().detect(sheet -> sheet.kind().equals("slab edge"));
    }

    private static Optional<String> best(Audit audit) {
        return slabEdge(audit).best().map((BridgeResult found) -> found.detail().id());
    }

    private static ImmutableList<String> options(Audit audit) {
        return slabEdge(audit)
                .options()
                .collect(option -> ((BridgeResult) option).detail().id());
    }

    /** Overhangs belong to the roof, and those of a new one are new; else what asks for them to come down is told beside what fits. */
    @ParameterizedTest
    @ValueSource(strings = {"taken-down", "built-new"})
    void whatComesDownWithTheRoofNeedNotBeNamed(String key) throws IOException {
        String chosen = "- {kinds: [eaves of an insulated roof], detail: eaves-boards-meet}\n";
        String larch = Files.readString(CommittedReport.ROOT.resolve("fixtures/houses/larch-house.yaml"));
        assertTrue(larch.contains(chosen));
        Path down = Files.writeString(
                folder.resolve("down.yaml"), larch.replace("body:\n", "retrofit: {" + key + ": [roof]}\nbody:\n"));
        Run roof = Run.with(Bench.SHARED, "check", down.toString());
        assertFalse(roof.out().contains("eaves overhang"), roof::out);
        Path kept = Files.writeString(
                folder.resolve("kept.yaml"),
                larch.replace("body:\n", "retrofit: {taken-down: [foot of the wall]}\nbody:\n")
                        .replace(chosen, ""));
        Run run = Run.with(Bench.SHARED, "check", kept.toString());
        assertTrue(run.out().contains("# eaves-boards-meet once taken down: eaves overhang"), run::out);
    }

    /** A wall that is built new has a new foot, though the deck that it stands on stays. */
    @ParameterizedTest
    @CsvSource({"'', true", "built-new: [upper], false"})
    void theFootOfANewWallNeedNotBeNamed(String key, boolean asked) throws IOException {
        String chosen = "- {kinds: [wall to terrace], detail: wall-to-terrace-kerb}\n";
        String larch = Files.readString(CommittedReport.ROOT.resolve("fixtures/houses/larch-house.yaml"));
        assertTrue(larch.contains(chosen));
        Path house = Files.writeString(
                folder.resolve("house.yaml"),
                larch.replace("body:\n", "retrofit: {" + key + "}\nbody:\n").replace(chosen, ""));
        Run run = Run.with(Bench.SHARED, "check", house.toString());
        assertEquals(asked, run.out().contains("# wall-to-terrace-kerb once taken down: foot of the wall"), run::out);
        assertEquals(!asked, run.out().replaceAll("\\s+", " ").contains("\"terrace over ground\", and what"), run::out);
    }

    /** A row of blocks is cut into an old gable in bays: a course of it comes down. */
    @ParameterizedTest
    @CsvSource({"foot of the wall, true", "course of the gable, false"})
    void aRowOfBlocksNeedsACourseOfTheGable(String part, boolean refused) throws IOException {
        Path house = folder.resolve("house.yaml");
        Files.writeString(
                house,
                Files.readString(CommittedReport.ROOT.resolve("fixtures/houses/twice/cold-loft-by-storeys.yaml"))
                        .replace("body:\n", "retrofit: {taken-down: [" + part + "]}\nbody:\n"));
        Run run = Run.with(Bench.SHARED, "check", house.toString());
        assertEquals(refused, run.out().replaceAll("\\s+", " ").contains("course of the gable"), run::out);
    }

    @Test
    void anOldHouseIsNotToldToPutBoardsUnderItsWalls() throws IOException {
        String turnedUp = "slab-edge-in-old-walls-return";
        Audit fresh = audit("", "slab-edge-bare");
        assertEquals(Optional.of("slab-edge-raft"), best(fresh));
        assertFalse(options(fresh).anySatisfy(id -> id.contains("in-old-walls")));

        Audit old = audit("retrofit: {built-new: [lowest floor]}\n", turnedUp);
        assertEquals(Optional.empty(), best(old), "nothing better leaves the walls as they are");
        ImmutableList<String> steps = old.findings().collect(new FindingWords(UnitSystem.SI)::toDo);
        assertTrue(
                steps.anySatisfy(step -> step.contains(
                        "; more of this one's skirt (now 800 mm, at most 2000 mm), strip (now 80 mm, at most 160 mm) and"
                                + " return (now 500 mm, at most 1200 mm) may lessen what it loses")),
                steps::toString);
        assertTrue(options(old).allSatisfy(id -> id.contains("in-old-walls")), options(old)::toString);

        Audit cut = audit("retrofit: {built-new: [lowest floor], taken-down: [foot of the wall]}\n", turnedUp);
        assertEquals(Optional.of("slab-edge-in-old-walls-course"), best(cut));
    }

    @Test
    void theEdgeOfAFloorThatStaysIsAKindOfItsOwn() throws IOException {
        Audit kept = audit("retrofit: {}\n", "slab-edge-raft");
        assertFalse(kept.sheets().anySatisfy(sheet -> sheet.kind().equals("slab edge")));
        assertTrue(kept.sheets().anySatisfy(sheet -> sheet.kind().equals("existing slab edge")));
        // The choice for a new slab's edge means it no more, so it is a seam that nobody handled.
        assertTrue(kept.findings()
                .flatCollect(finding -> finding.breaches())
                .anySatisfy(breach -> breach.rule().equals("detail-not-chosen")));
    }

    /** Where the studs of an old frame run past the floors, its floors' edges are of a kind of their own; new walls' are not. */
    @Test
    void aBalloonFrameHasItsOwnFloorLines() throws IOException {
        assertEquals(4, balloonFrame("retrofit: {balloon-frame: true, taken-down"));
        assertEquals(0, balloonFrame("retrofit: {taken-down"));
        String walls = Lists.immutable
                .of("south", "north", "east", "west")
                .flatCollect(
                        side -> Lists.immutable.of("ground floor " + side + " wall", "upper floor " + side + " wall"))
                .makeString(", ");
        String refused = assertThrows(
                        FileFaultException.class,
                        () -> balloonFrame("retrofit: {balloon-frame: true, built-new: [" + walls + "], taken-down"))
                .getMessage();
        assertTrue(refused.contains("balloon-frame: true in a house where no floor meets such a wall"), refused);
        assertTrue(refused.matches("(?s).*balloon\\.yaml:\\d+:\\d+: .*"), refused);
    }

    private long balloonFrame(String retrofit) throws IOException {
        Path file = folder.resolve("balloon.yaml");
        Files.writeString(
                file,
                Files.readString(CommittedReport.ROOT.resolve("fixtures/houses/old/boards-over-siding.yaml"))
                        .replace("retrofit: {taken-down", retrofit));
        return HouseAudit.of(file, Bench.SHARED)
                .shell()
                .edges()
                .count(edge -> edge.kind() == JunctionKind.BALLOON_FRAME_AT_FLOOR
                        && edge.name().contains("balloon frame at a floor"));
    }

    @Test
    void namesOfWhatComesDownAreKnown() throws IOException {
        Path file = written("retrofit: {built-new: [lowest flor], taken-down: [parapets]}\n", "slab-edge-raft");
        FileFaultException refused = assertThrows(FileFaultException.class, () -> HouseAudit.of(file, Bench.SHARED));
        assertEquals(2, refused.faults().size());
        assertEquals(
                "did you mean \"lowest floor\"?",
                refused.faults().getFirst().next().toString());
        assertEquals(
                "did you mean \"parapet\"?", refused.faults().getLast().next().toString());
    }

    /** A roof has a slope to each side, none of them called roof alone. */
    @Test
    void aRoofIsBuiltNewByItsName() throws IOException {
        Path file = folder.resolve("ell.yaml");
        String ell = Files.readString(CommittedReport.ROOT.resolve("fixtures/houses/shapes/ell-roof.yaml"));
        Files.writeString(file, ell.replaceFirst("assemblies:\n", "retrofit: {built-new: [roof]}\nassemblies:\n"));
        HouseAudit house = HouseAudit.of(file, Bench.SHARED);
        Retrofit old = house.house().retrofit().orElseThrow();
        ImmutableList<String> slopes = house.shell()
                .surfaces()
                .select(each -> each.use() == Body.Use.ROOF)
                .collect(Surface::name);
        assertTrue(slopes.size() > 4 && !slopes.contains("roof"), slopes::toString);
        assertEquals(
                slopes,
                house.shell().surfaces().reject(each -> each.staysIn(old)).collect(Surface::name));
    }

    /** A house whose wall was insulated thinly, then thickly. */
    private HouseAudit thickened(String retrofit) throws IOException {
        Path file = folder.resolve("thickened.yaml");
        String box = Files.readString(BOX);
        String layers = box.substring(box.indexOf("  wall:"), box.indexOf("  slab:"));
        Files.writeString(
                file,
                box.replace("assemblies:\n", retrofit + "assemblies:\n")
                        .replace("slab-edge-raft", "slab-edge-in-old-walls-course")
                        .replace(
                                "  slab:",
                                layers.replace("wall:", "old wall:").replace("200 mm", "60 mm") + "  slab:"));
        return HouseAudit.of(file, Bench.SHARED);
    }

    private static String found(String junctions) {
        return "retrofit:\n  built-new: [lowest floor]\n  taken-down: [foot of the wall, parapet]\n"
                + "  found: {assemblies: {wall: old wall, roof: roof}, junctions: " + junctions + "}\n";
    }

    private static AsFound.Seam seam(Audit audit, String kind) {
        return audit.found()
                .orElseThrow()
                .of(audit.sheets().detect(sheet -> sheet.kind().equals(kind)))
                .getOnly();
    }

    /** The box with the thin boards and the posts that it is found with. */
    private HouseAudit asItStood() throws IOException {
        Path stood = folder.resolve("stood.yaml");
        Files.writeString(
                stood,
                Files.readString(BOX)
                        .replace("mineral wool board, thickness: 200 mm", "mineral wool board, thickness: 60 mm")
                        .replace("outside-corner-unbroken", "outside-corner-solid-post"));
        return HouseAudit.of(stood, Bench.SHARED);
    }

    /** What was found is what the audit of the house as it stood says of it. */
    @Test
    void aSeamAsFoundIsThatOfTheHouseAsItStood() throws IOException {
        Audit planned = thickened(found("[{kinds: [outside corner], detail: outside-corner-solid-post}]"))
                .compute();
        Audit before = asItStood().compute();
        BridgeSheet<JunctionResult> was =
                before.sheets().detect(sheet -> sheet.kind().equals("outside corner"));
        BridgeSheet<JunctionResult> found =
                seam(planned, "outside corner").sheet().orElseThrow();
        assertEquals(was.result().psiExternal(), found.result().psiExternal());
        assertEquals(was.temperatureFactor(), found.temperatureFactor());
        assertEquals(was.mouldHumidity(), found.mouldHumidity());
        assertTrue(found.chosen());
        assertTrue(found.temperatureFactor()
                < planned.sheets()
                                .detect(sheet -> sheet.kind().equals("outside corner"))
                                .temperatureFactor()
                        - 0.05);
    }

    /** Beside the options stands what the house as it stood loses more, of all seams but the slab's, which is not said. */
    @Test
    void theHouseAsFoundStandsBesideItsOptions() throws IOException {
        HouseAudit planned = thickened(
                found(
                        "[{kinds: [outside corner], detail: outside-corner-solid-post}, {kinds: [parapet], detail: parapet-on-break-blocks}]"));
        Before before = Comparer.compare(
                        planned,
                        new Wish(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty()),
                        Progress.SILENT)
                .before()
                .orElseThrow();
        double more = known(asItStood().compute()) - known(planned.compute());
        assertTrue(more > 10, () -> more + " W/K");
        // Each line of the tables is rounded to a thousandth.
        assertEquals(more, before.more().middle(), 0.01);
        // Boards and render of 0.21 m stand round the brickwork of 8 m by 6 m.
        assertEquals(2 * (8.42 + 6.42), before.unknown(), 1e-6);
    }

    /** W/K of surfaces and of seams but the slab's. */
    private static double known(Audit audit) {
        return audit.heatLoss()
                .lines()
                .select(line -> line.part() instanceof HeatLoss.Part.OfSurface
                        || line.part() instanceof HeatLoss.Part.OfJunction of
                                && !of.edges().getFirst().edge().kind().equals(JunctionKind.SLAB_EDGE))
                .sumOfDouble(line -> line.loss().middle());
    }

    /** Neither a build-up nor a detail is made up in silence: the slab's is not said, the parapet's detail is not. */
    @Test
    void whatWasFoundAndIsNotSaidIsNotKnown() throws IOException {
        Audit planned = thickened(found("[]")).compute();
        AsFound.Seam slab = seam(planned, "slab edge");
        assertEquals(Optional.empty(), slab.sheet());
        assertEquals(Optional.empty(), slab.source());
        assertTrue(
                FoundWords.state(slab, UnitSystem.SI).startsWith("not known: it is built new"),
                FoundWords.state(slab, UnitSystem.SI));
        AsFound.Seam parapet = seam(planned, "parapet");
        assertEquals(Rank.WORST, parapet.sheet().orElseThrow().result().detail().rank());
        assertFalse(parapet.sheet().orElseThrow().chosen());
        assertTrue(
                FoundWords.state(parapet, UnitSystem.SI).contains("a stand-in"),
                FoundWords.state(parapet, UnitSystem.SI));
        assertEquals(Optional.empty(), thickened("").compute().found());
    }

    @Test
    void whyWhatWasFoundDoesNotFitIsTold() throws IOException {
        AsFound.Seam corner = seam(
                thickened(found("[{kinds: [outside corner], detail: outside-corner-pier-beside-blocks}]"))
                        .compute(),
                "outside corner");
        assertEquals(Optional.empty(), corner.sheet());
        String told = FoundWords.state(corner, UnitSystem.SI);
        assertTrue(told.matches("not known: .*the detail does not fit these layers: .*nothing closes it.*"), told);
    }

    /** The cottage's walls are bare: there is no insulation for a detail to ask for, and mould grows at any usual humidity. */
    @Test
    void bareWallsHaveNumbersToo() {
        // Where it is coldest hangs on a finer aim than the shared bench's; the cottage's work is counted by another
        // test.
        Audit cottage = HouseAudit.of(CommittedReport.ROOT.resolve("fixtures/houses/ferry-cottage.yaml"), Bench.NARROW)
                .compute();
        BridgeSheet<JunctionResult> jamb = seam(cottage, "jamb").sheet().orElseThrow();
        assertTrue(jamb.chosen());
        assertFalse(jamb.result().penLine().unbroken());
        assertTrue(jamb.mouldHumidity() < 0.40, () -> "" + jamb.mouldHumidity());
        assertEquals("on the old solid brick of the wall", FoundWords.coldest(jamb.result()));
        // The old frame's own U, not the new one's.
        assertEquals(2.2, jamb.result().setup().opening().orElseThrow().frameTransmittance());
        ImmutableList<String> lines = new FoundWords(cottage, UnitSystem.SI).lines();
        assertEquals(7, lines.size(), "six seams, and what is not named");
        assertEquals(
                "Under found the house file says nothing of \"floor\": name what was there, or itself where it stays as it is"
                        + " (floor: floor).",
                lines.getLast());
        assertTrue(
                lines.anySatisfy(line -> line.startsWith("J5 jamb") && line.contains("; planned: psi")),
                lines::toString);
        // Its corner is not said: what stands in tells of insulation.
        assertTrue(
                lines.anySatisfy(line -> line.contains(" outside corner, ")
                        && line.contains(
                                "(no insulation, drawn as \"Timber in the insulation at the corner\", a stand-in")),
                lines::toString);
        ImmutableList<String> steps = cottage.findings().collect(new FindingWords(UnitSystem.SI)::toDo);
        assertTrue(
                steps.anySatisfy(step -> step.contains(
                        "(J1, J2), by more of existing-slab-edge-skirt's skirt (now 600 mm, at most 2000 mm)")),
                steps::toString);
    }
}
