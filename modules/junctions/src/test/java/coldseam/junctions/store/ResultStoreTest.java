package coldseam.junctions.store;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import coldseam.conduction.Accuracy;
import coldseam.conduction.Budget;
import coldseam.conduction.solid.BodySolver;
import coldseam.conduction.solve.Conduction;
import coldseam.envelope.Assembly;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Layer;
import coldseam.envelope.PointKind;
import coldseam.junctions.BridgeComputer;
import coldseam.junctions.BridgeResult;
import coldseam.junctions.DetailDoesNotFit;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.PointSetup;
import coldseam.junctions.Samples;
import coldseam.junctions.SectionSolving;
import coldseam.junctions.TypicalBuild;
import coldseam.junctions.catalogue.CatalogueFile;
import coldseam.junctions.compute.BridgeComputers;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.detail.PointDrawing;
import coldseam.junctions.kind.Chart;
import coldseam.junctions.pair.PairAnswer;
import coldseam.junctions.pair.PairComputer;
import coldseam.junctions.pair.PairSetup;
import coldseam.junctions.path.WeakestPaths;
import coldseam.junctions.section.Composer;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whole results kept on disk. */
class ResultStoreTest {

    private static final Accuracy ACCURACY = new Accuracy(1e-2, 50_000);
    private static final Detail DETAIL =
            CatalogueFile.builtIn().find("outside-corner-solid-post").orElseThrow();
    private static final JunctionSetup SETUP = Samples.setup(JunctionKind.OUTSIDE_CORNER);

    @TempDir
    private Path folder;

    private final AtomicInteger solved = new AtomicInteger();
    /** Not counted: only whoever draws asks it. */
    private final SectionSolving fields =
            (section, accuracy) -> Conduction.solve(section, Samples.wider(accuracy, 100));

    /** As by a run of its own, which keeps results alone. */
    private BridgeComputer run(String tool) {
        return BridgeComputers.computer(
                ACCURACY,
                (section, accuracy) -> {
                    solved.incrementAndGet();
                    return fields.solve(section, accuracy);
                },
                BodySolver::solve,
                WeakestPaths::of,
                new ResultStore(KeptFolder.in(folder), tool, fields, BodySolver::solve));
    }

    private static void same(BridgeResult cold, BridgeResult kept) {
        assertArrayEquals(RecordBytes.inFull((Record) cold), RecordBytes.inFull((Record) kept));
        for (double celsius : new double[] {-9, 0, 12.6, 19}) {
            assertEquals(
                    cold.solution().field().isotherm(celsius),
                    kept.solution().field().isotherm(celsius));
        }
        assertEquals(cold.solution().heatFlows(), kept.solution().heatFlows());
    }

    /** Of all the catalogue's kinds of junction, the option with the most that is drawn: every sort of piece and line. */
    @Test
    @Tag("slow")
    void whatIsReadIsWhatWasComputedToTheLastBit() {
        for (JunctionKind kind : JunctionKind.all()) {
            Detail detail = CatalogueFile.builtIn()
                    .options(kind)
                    .maxBy(each -> each.order().size());
            JunctionSetup setup = Samples.setup(detail);
            BridgeResult cold = run("build").compute(detail, setup);
            int before = solved.get();
            BridgeResult kept = run("build").compute(detail, setup);
            assertEquals(before, solved.get(), detail.id());
            same(cold, kept);
        }
    }

    /** Two in one section, and that they cannot be one. */
    @Test
    void pairsAreKeptToo() {
        Detail jamb = CatalogueFile.builtIn().find("jamb-middle-lapped").orElseThrow();
        PairSetup.End end = new PairSetup.End(jamb, Samples.setup(jamb), Chart.Cut.FIRST_AWAY);
        for (double distance : new double[] {0.2, 3}) {
            PairSetup setup = new PairSetup(end, end, distance);
            PairAnswer cold = pairs().compute(setup);
            int before = solved.get();
            PairAnswer kept = pairs().compute(setup);
            assertEquals(before, solved.get());
            assertArrayEquals(RecordBytes.inFull(cold), RecordBytes.inFull(kept));
            assertEquals(distance < 1, kept.result().isPresent());
        }
        assertEquals(2, solved.get());
    }

    private PairComputer pairs() {
        return new PairComputer(
                ACCURACY,
                (section, accuracy) -> {
                    solved.incrementAndGet();
                    return Conduction.solve(section, accuracy);
                },
                new ResultStore(KeptFolder.in(folder), "build", fields, BodySolver::solve));
    }

    @Test
    void roundPointsAreKeptToo() {
        Detail detail = CatalogueFile.builtIn()
                .options(PointKind.all().getFirst())
                .detect(each -> each.drawing() instanceof PointDrawing drawing && drawing.isRound());
        PointSetup setup = TypicalBuild.MASONRY.setup(detail.point());
        BridgeResult cold = run("build").compute(detail, setup);
        int before = solved.get();
        same(cold, run("build").compute(detail, setup));
        assertEquals(before, solved.get());
    }

    @Test
    void whyADetailDoesNotFitIsKept() {
        Detail other =
                CatalogueFile.builtIn().options(JunctionKind.OUTSIDE_CORNER).getFirst();
        JunctionSetup steep = SETUP.at(12);
        String why = assertThrows(DetailDoesNotFit.class, () -> run("build").compute(other, steep))
                .getMessage();
        KeptFolder second = KeptFolder.in(folder);
        DetailDoesNotFit kept = assertThrows(
                DetailDoesNotFit.class,
                () -> BridgeComputers.computer(
                                ACCURACY,
                                Conduction::solve,
                                BodySolver::solve,
                                WeakestPaths::of,
                                new ResultStore(second, "build", fields, BodySolver::solve))
                        .compute(other, steep));
        assertEquals(why, kept.getMessage());
        assertEquals(1, second.found());
    }

    @Test
    void anotherToolsOrATornEntryIsNotBelieved() throws IOException {
        JunctionResult first = run("build").compute(DETAIL, SETUP);
        run("other").compute(DETAIL, SETUP);
        assertEquals(4, solved.get());
        ImmutableList<Path> entries = entries();
        assertEquals(2, entries.size());
        for (Path entry : entries) {
            byte[] whole = Files.readAllBytes(entry);
            for (byte[] bytes : Spoilt.of(whole)) {
                Files.write(entry, bytes);
                int before = solved.get();
                alike(first, run("build").compute(DETAIL, SETUP));
                alike(first, run("other").compute(DETAIL, SETUP));
                alike(first, run("build").compute(DETAIL, SETUP));
                assertEquals(before + 2, solved.get());
            }
        }
    }

    /** The same but for the time that it took. */
    private static void alike(JunctionResult first, JunctionResult second) {
        assertEquals(first.psiExternal(), second.psiExternal());
        assertEquals(first.plan().drawn(), second.plan().drawn());
        assertEquals(first.controls(), second.controls());
    }

    private ImmutableList<Path> entries() throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return Lists.immutable.ofAll(
                    all.filter(Files::isRegularFile).sorted().toList());
        }
    }

    /** One that a limit of memory held wider would be another's answer, who has more. */
    @Test
    void nothingIsKeptOnceMemoryHeldASolve() throws IOException {
        Budget little = Budget.of(Budget.LEAST);
        KeptFolder kept = KeptFolder.in(folder);
        BridgeComputers.computer(
                        new Accuracy(1e-7, 400_000),
                        new SolutionStore(kept, (section, accuracy) -> Conduction.solve(section, accuracy, little)),
                        BodySolver::solve,
                        WeakestPaths::of,
                        new ResultStore(kept, "build", fields, BodySolver::solve))
                .compute(DETAIL, SETUP);
        assertEquals(0, kept.added());
        assertEquals(0, entries().size());
    }

    @Test
    void equalsHaveEqualNamesAndOthersDoNot() {
        JunctionResult result = run("build").compute(DETAIL, SETUP);
        byte[] name = RecordBytes.inFull(SETUP);
        assertArrayEquals(name, RecordBytes.inFull(Samples.setup(JunctionKind.OUTSIDE_CORNER)));
        Assembly renamed = Samples.assembly(
                SETUP.first().name() + " ", SETUP.first().layers().toArray(new Layer[0]));
        for (JunctionSetup other : Lists.immutable.of(
                SETUP.at(Math.nextUp(SETUP.angle())), SETUP.stepped(1e-9), SETUP.between(renamed, SETUP.second()))) {
            assertFalse(Arrays.equals(name, RecordBytes.inFull(other)), () -> other.angle() + " " + other.innerStep());
        }
        assertThrows(
                IllegalArgumentException.class,
                () -> RecordBytes.inFull(Lists.immutable.of(result, Composer.class)),
                "of a sort that has no bytes nothing is guessed");
    }
}
