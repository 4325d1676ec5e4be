package coldseam.cli;

import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.envelope.file.house.HouseFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Files that are nearly right are read or refused in words, and what is accepted is as it must be.
 *
 * <p>A few hundred in each build; {@code mvn -Pfuzz test -Dcoldseam.fuzz=100000 -Dcoldseam.fuzz.audits=2000} as many as one
 * likes, {@code -Dcoldseam.fuzz.from=N} others. A find is written to {@code target/fuzz}; its number makes it again. Once mended it goes
 * to {@code fixtures/robust}. Beside the finds {@code tally.txt} says how many mutants there were and what the dearest took.
 */
@Tag("slow")
class FuzzTest {

    private static final int COUNT = Integer.getInteger("coldseam.fuzz", 100);
    private static final long FROM = Long.getLong("coldseam.fuzz.from", 0);

    /** A guard against hanging, many times what any file takes; no speed is asserted. */
    private static final Duration HANGS = Duration.ofMinutes(2);

    /** Every so many whole audits one is made from nothing, too. */
    private static final int ANEW = 10;

    private static final Path ROOT = CommittedReport.ROOT;

    @TempDir
    Path folder;

    private static List<String> texts(String... folders) throws IOException {
        List<String> texts = new ArrayList<>();
        for (String each : folders) {
            try (Stream<Path> files = Files.list(ROOT.resolve(each))) {
                for (Path file : files.filter(one -> one.toString().endsWith(".yaml"))
                        .sorted()
                        .toList()) {
                    texts.add(Files.readString(file));
                }
            }
        }
        return texts;
    }

    static Mutator mutator(Probe probe) throws IOException {
        String details = "modules/junctions/src/main/resources/";
        return switch (probe) {
            case HOUSE ->
                new Mutator(texts(
                                "fixtures/houses",
                                "fixtures/houses/shapes",
                                "modules/envelope/src/test/resources/houses"))
                        .withSchema(HouseFile.schema());
            case SECTION -> new Mutator(texts("fixtures/sections"));
            case DETAIL -> new Mutator(texts(details + "details"));
            case POINT -> new Mutator(texts(details + "points"));
        };
    }

    @ParameterizedTest
    @EnumSource
    void isReadOrRefusedInWords(Probe probe) throws Exception {
        Mutator mutator = mutator(probe);
        Tally tally = new Tally(probe.name().toLowerCase(Locale.ROOT), FROM, 10_000);
        ExecutorService one = Executors.newSingleThreadExecutor();
        try {
            for (long number = FROM; number < FROM + COUNT; number++) {
                String text = mutator.mutant(number);
                Path file = Files.writeString(folder.resolve("mutant.json"), text);
                Future<Spent.On<Boolean>> run =
                        one.submit(() -> Spent.on(() -> probe.refusal(file).isEmpty()));
                try {
                    Spent.On<Boolean> read = run.get(HANGS.toSeconds(), TimeUnit.SECONDS);
                    tally.read(number, read.result(), read.spent());
                } catch (TimeoutException hangs) {
                    tally.found(number, "hangs", text);
                    break;
                } catch (ExecutionException thrown) {
                    tally.found(number, thrown.getCause(), text);
                }
            }
        } finally {
            one.shutdownNow();
            tally.write();
        }
        assertTrue(tally.finds().isEmpty(), tally::toString);
        assertTrue(tally.accepted() > COUNT / 100, () -> "hardly any is accepted: " + tally);
    }

    /**
     * The command's exit code, its data and its findings agree, and the data keep to their schema, on whole audits; what mutants
     * have in common is solved once for all, and every tenth by number is solved anew to be the same.
     */
    @Test
    void wholeAuditsHoldTogether() throws Exception {
        Path store = folder.resolve("store");
        int count = Integer.getInteger("coldseam.fuzz.audits", 1);
        Mutator mutator = mutator(Probe.HOUSE);
        Tally tally = new Tally("audit", FROM, 20);
        try {
            for (long each = FROM; tally.count() < count; each++) {
                long number = each;
                String text = mutator.mutant(number);
                Path file = Files.writeString(folder.resolve("mutant.json"), text);
                if (accepted(file)) {
                    try {
                        tally.read(
                                number,
                                true,
                                Spent.byAll(() -> {
                                            WholeAudit.check(file, folder, store, number % ANEW == 0);
                                            return true;
                                        })
                                        .spent());
                    } catch (RuntimeException | AssertionError | VirtualMachineError thrown) {
                        tally.found(number, thrown, text);
                    }
                }
            }
        } finally {
            tally.write();
        }
        assertTrue(tally.finds().isEmpty(), tally::toString);
    }

    /** What reading alone finds is the other test's. */
    private static boolean accepted(Path file) throws IOException {
        try {
            return Probe.HOUSE.refusal(file).isEmpty();
        } catch (RuntimeException | AssertionError other) {
            return false;
        }
    }

    @Test
    void mutantDependsOnItsNumberAlone() throws IOException {
        Mutator one = mutator(Probe.POINT);
        one.mutant(1);
        assertTrue(one.mutant(7).equals(mutator(Probe.POINT).mutant(7))
                && !one.mutant(7).equals(one.mutant(8)));
    }
}
