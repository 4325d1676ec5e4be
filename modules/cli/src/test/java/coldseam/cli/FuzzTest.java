package coldseam.cli;

import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.envelope.file.house.HouseFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
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
 * to {@code fixtures/robust}.
 */
@Tag("slow")
class FuzzTest {

    private static final int COUNT = Integer.getInteger("coldseam.fuzz", 100);
    private static final long FROM = Long.getLong("coldseam.fuzz.from", 0);

    /** A guard against hanging, many times what any file takes; no speed is asserted. */
    private static final Duration HANGS = Duration.ofMinutes(2);

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

    private static Mutator mutator(Probe probe) throws IOException {
        String details = "modules/junctions/src/main/resources/";
        return switch (probe) {
            case HOUSE ->
                new Mutator(texts("fixtures/houses", "modules/envelope/src/test/resources/houses"))
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
        Map<String, String> finds = new TreeMap<>();
        int accepted = 0;
        ExecutorService one = Executors.newSingleThreadExecutor();
        try {
            for (long number = FROM; number < FROM + COUNT; number++) {
                String text = mutator.mutant(number);
                Path file = Files.writeString(folder.resolve("mutant.json"), text);
                Future<Boolean> run = one.submit(() -> probe.refusal(file).isEmpty());
                try {
                    accepted += run.get(HANGS.toSeconds(), TimeUnit.SECONDS) ? 1 : 0;
                } catch (TimeoutException hangs) {
                    finds.putIfAbsent("hangs", kept(probe, number, text));
                    break;
                } catch (java.util.concurrent.ExecutionException thrown) {
                    String what = signature(thrown.getCause());
                    if (!finds.containsKey(what)) {
                        finds.put(what, kept(probe, number, text));
                    }
                }
            }
        } finally {
            one.shutdownNow();
        }
        assertTrue(finds.isEmpty(), () -> finds.size() + " finds: " + finds);
        assertTrue(accepted > COUNT / 100, "hardly any is accepted, " + accepted + " of " + COUNT);
    }

    /** One find for each place in our code, however many mutants come there. */
    private static String signature(Throwable thrown) {
        String where = Stream.of(thrown.getStackTrace())
                .filter(each -> each.getClassName().startsWith("coldseam.")
                        && !each.getClassName().startsWith("coldseam.cli."))
                .findFirst()
                .map(StackTraceElement::toString)
                .orElse("in no code of ours");
        String said = String.valueOf(thrown).replaceAll("[0-9.E-]{4,}", "N");
        return where + ": " + said.substring(0, Math.min(160, said.length()));
    }

    private static String kept(Probe probe, long number, String text) throws IOException {
        Path folder = Files.createDirectories(Path.of("target", "fuzz"));
        return Files.writeString(
                        folder.resolve(probe.name().toLowerCase(java.util.Locale.ROOT) + "-" + number + ".json"), text)
                .toString();
    }

    /** The command's exit code, its data and its findings agree, and the data keep to their schema, on whole audits. */
    @Test
    void wholeAuditsHoldTogether() throws Exception {
        int count = Integer.getInteger("coldseam.fuzz.audits", 1);
        Mutator mutator = mutator(Probe.HOUSE);
        Map<String, String> finds = new TreeMap<>();
        int audited = 0;
        for (long number = FROM; audited < count; number++) {
            String text = mutator.mutant(number);
            Path file = Files.writeString(folder.resolve("mutant.json"), text);
            if (accepted(file)) {
                try {
                    WholeAudit.check(file, folder);
                } catch (RuntimeException | AssertionError thrown) {
                    finds.putIfAbsent(signature(thrown), kept(Probe.HOUSE, number, text));
                }
                audited++;
            }
        }
        assertTrue(finds.isEmpty(), () -> finds.size() + " finds: " + finds);
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
