package coldseam.junctions.store;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.conduction.Accuracy;
import coldseam.conduction.Point;
import coldseam.conduction.Section;
import coldseam.conduction.Solution;
import coldseam.conduction.TemperatureField;
import coldseam.conduction.solve.Conduction;
import coldseam.envelope.JunctionKind;
import coldseam.files.JarDirectory;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.Samples;
import coldseam.junctions.catalogue.CatalogueFile;
import coldseam.junctions.section.Composer;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.stream.Stream;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Answers kept on disk. */
class SolutionStoreTest {

    private static final Accuracy ACCURACY = new Accuracy(1e-3, 50_000);
    private static final Section SECTION = Composer.compose(
                    CatalogueFile.builtIn().find("outside-corner-solid-post").orElseThrow(),
                    Samples.setup(JunctionKind.OUTSIDE_CORNER))
            .heatFlow();

    @TempDir
    private Path folder;

    private final AtomicInteger solved = new AtomicInteger();
    private SolutionStore store;

    @BeforeEach
    void open() {
        store = new SolutionStore(KeptFolder.in(folder), this::counted);
    }

    private Solution counted(Section section, Accuracy accuracy) {
        solved.incrementAndGet();
        return Conduction.solve(section, accuracy);
    }

    private ImmutableList<Path> entries() throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return Lists.immutable.withAll(all.filter(Files::isRegularFile).toList());
        }
    }

    /** Of what is only compared nobody asks the field: it would be unpacked in vain. */
    @Test
    void aKeptFieldIsUnpackedWhenItIsAskedFor() {
        TemperatureField field =
                new KeptField(() -> KeptField.unpacked("no field at all".getBytes(StandardCharsets.UTF_8), SECTION));
        assertThrows(UncheckedIOException.class, field::cells);
    }

    /** A class of any of the solver's packages counts: an answer of an older solver must not be found again. */
    @Test
    void everyClassOfTheSolverIsInTheHash() throws IOException {
        Path deep = Files.createDirectories(folder.resolve("solve"));
        Path one = Files.writeString(deep.resolve("Refinement.class"), "older");
        byte[] before = SolutionStore.Core.hash(folder);
        Files.writeString(one, "newer");
        assertFalse(Arrays.equals(before, SolutionStore.Core.hash(folder)));
    }

    /** In a jar no class is unpacked for it. */
    @Test
    void everyClassOfTheSolverInAJarIsInTheHash() throws IOException {
        byte[] before = hashOfJar("older");
        assertArrayEquals(before, hashOfJar("older"));
        assertFalse(Arrays.equals(before, hashOfJar("newer")));
    }

    private byte[] hashOfJar(String content) throws IOException {
        Path file = folder.resolve("tool.jar");
        try (JarOutputStream to = new JarOutputStream(Files.newOutputStream(file))) {
            for (String each : List.of("solver/solve/Refinement.class", "other/Words.class")) {
                to.putNextEntry(new JarEntry(each));
                to.write(content.getBytes(StandardCharsets.UTF_8));
                to.closeEntry();
            }
        }
        return SolutionStore.Core.hash(JarDirectory.of(file), "solver/", ".class");
    }

    @Test
    void theSecondQuestionIsNotSolved() throws IOException {
        Solution first = store.solve(SECTION, ACCURACY);
        Solution second = new SolutionStore(KeptFolder.in(folder), this::counted).solve(SECTION, ACCURACY);
        assertEquals(1, solved.get());
        assertEquals(1, entries().size());
        assertArrayEquals(SolutionBytes.write(first), SolutionBytes.write(second));
        assertEquals(first.couplings(), second.couplings());
        assertEquals(first.surfaces(), second.surfaces());
        assertEquals(first.notes(), second.notes());
        assertEquals(first.seconds(), second.seconds());
    }

    @Test
    void aKeptFieldIsTheSolvedOne() {
        TemperatureField solvedField = Conduction.solve(SECTION, ACCURACY).field();
        store.solve(SECTION, ACCURACY);
        TemperatureField kept = new SolutionStore(KeptFolder.in(folder), this::counted)
                .solve(SECTION, ACCURACY)
                .field();
        assertEquals(1, solved.get(), "the second comes from the folder");
        assertEquals(solvedField.cells(), kept.cells());
        for (TemperatureField.Cell cell : solvedField.cells()) {
            double x = 0.5 * cell.a().x() + 0.3 * cell.b().x() + 0.2 * cell.c().x();
            double y = 0.5 * cell.a().y() + 0.3 * cell.b().y() + 0.2 * cell.c().y();
            assertEquals(solvedField.temperatureAt(x, y), kept.temperatureAt(x, y));
        }
        assertTrue(Double.isNaN(kept.temperatureAt(50, 50)));
        ImmutableList<ImmutableList<Point>> lines = kept.isotherm(10);
        assertEquals(solvedField.isotherm(10), lines);
        assertEquals(1, lines.size());
        for (Point point : lines.getFirst()) {
            // The quadratic between two points of the finer grid bends by less than this.
            assertEquals(10, solvedField.temperatureAt(point.x(), point.y()), 0.05);
        }
    }

    /** An atlas asks no field, and 275 MB of them were kept for one. */
    @Test
    void whereNumbersAloneAreKeptAFieldIsSolvedAgain() throws IOException {
        Solution whole = store.solve(SECTION, ACCURACY);
        long fields = Files.size(entries().getOnly());
        SolutionStore.ofNumbers(KeptFolder.in(folder), this::counted).solve(SECTION, ACCURACY);
        assertEquals(2, solved.get(), "what keeps fields keeps them under another name");
        assertEquals(2, entries().size());
        assertTrue(entries().sumOfLong(each -> each.toFile().length()) - fields < fields / 10);
        Solution again =
                SolutionStore.ofNumbers(KeptFolder.in(folder), this::counted).solve(SECTION, ACCURACY);
        assertEquals(2, solved.get());
        assertEquals(whole.couplings(), again.couplings());
        assertEquals(whole.surfaces(), again.surfaces());
        assertEquals(whole.outcome(), again.outcome());
        assertEquals(whole.heatFlows(), again.heatFlows());
        assertEquals(2, solved.get());
        assertEquals(whole.field().cells(), again.field().cells());
        assertEquals(3, solved.get());
    }

    @Test
    void everyPartOfTheQuestionCounts() {
        String asked = store.name(SECTION, ACCURACY);
        assertNotEquals(asked, store.name(SECTION, new Accuracy(1e-4, 50_000)));
        assertNotEquals(
                asked, new SolutionStore(KeptFolder.in(folder), this::counted, new byte[] {1}).name(SECTION, ACCURACY));
        JunctionSetup colder = Samples.setup(JunctionKind.OUTSIDE_CORNER);
        Section other = Composer.compose(
                        CatalogueFile.builtIn().find("outside-corner-unbroken").orElseThrow(), colder)
                .heatFlow();
        assertNotEquals(asked, store.name(other, ACCURACY));
    }

    @Test
    void aTornOrAlteredEntryIsSolvedAgain() throws IOException {
        Solution first = store.solve(SECTION, ACCURACY);
        Path entry = KeptFolder.in(folder).entry(store.name(SECTION, ACCURACY));
        byte[] whole = Files.readAllBytes(entry);
        for (byte[] bytes : Spoilt.of(whole)) {
            Files.write(entry, bytes);
            int before = solved.get();
            assertEquals(first.couplings(), store.solve(SECTION, ACCURACY).couplings());
            assertEquals(before + 1, solved.get());
            assertEquals(first.couplings(), store.solve(SECTION, ACCURACY).couplings());
            assertEquals(before + 1, solved.get());
        }
    }

    @Test
    void manyAtOnceAgree() throws Exception {
        CountDownLatch start = new CountDownLatch(1);
        MutableList<Solution> answers = Lists.mutable.<Solution>empty().asSynchronized();
        MutableList<Thread> threads = Lists.mutable.empty();
        for (int i = 0; i < 6; i++) {
            Thread thread = new Thread(() -> {
                try {
                    start.await();
                } catch (InterruptedException stopped) {
                    return;
                }
                answers.add(new SolutionStore(KeptFolder.in(folder), this::counted).solve(SECTION, ACCURACY));
            });
            threads.add(thread);
            thread.start();
        }
        start.countDown();
        for (Thread thread : threads) {
            thread.join();
        }
        assertEquals(6, answers.size());
        answers.each(each -> assertEquals(answers.getFirst().couplings(), each.couplings()));
        assertEquals(1, entries().size(), "no temporary file is left");
        int before = solved.get();
        store.solve(SECTION, ACCURACY);
        assertEquals(before, solved.get());
    }

    @Test
    void aFolderThatCannotBeWrittenCostsTimeOnly() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "in the way");
        SolutionStore nowhere = new SolutionStore(KeptFolder.in(file), this::counted);
        assertTrue(nowhere.solve(SECTION, ACCURACY).met());
        assertTrue(nowhere.solve(SECTION, ACCURACY).met());
        assertEquals(2, solved.get());
    }
}
