package coldseam.cli;

import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.audit.house.HouseAudit;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Searches small houses for those that take the most time and memory to be read, shaped and planned: the dearest so far are
 * altered on, each by its number alone. {@code mvn -Pfuzz test -Dcoldseam.fuzz.search=20000} as many as one likes.
 */
@Tag("slow")
class DearestTest {

    private static final int COUNT = Integer.getInteger("coldseam.fuzz.search", 60);
    private static final long FROM = Long.getLong("coldseam.fuzz.from", 0);

    /** Letters of JSON without spaces: what one types on a page. */
    private static final int MOST_LETTERS = 1000;

    private static final int KEPT = 24;

    /** Many times what the dearest of 5,563 took, 0.5 s and 104 MB; a minute and two gigabytes were once found. */
    private static final double MOST_SECONDS = 10;

    private static final double MOST_MEGABYTES = 1500;
    private static final Duration HANGS = Duration.ofMinutes(2);

    private static final String HEAD = """
            house: S
            site: {indoor-temperature: 20 °C, outdoor-temperature: -10 °C}
            assemblies: {w: {layers: [{material: mineral wool board, thickness: 200 mm, role: insulation}]}}
            """;

    private static final List<String> SEEDS = List.of(HEAD + """
            body:
              footprint-line: outer face
              storeys: [{name: g, height: 3 m, footprint: {rectangle: [8 m, 6 m]}, walls: {all: w}}]
              base: {kind: slab on ground, assembly: w}
              roof: {form: gable, pitch: 40 °, low-side: south, assembly: w}
            """, HEAD + """
            body:
              footprint-line: inner face
              storeys:
              - {name: g, height: 3 m, footprint: {corners: [[0 m, 0 m], [9 m, 0 m], [9 m, 4 m], [5 m, 4 m], [5 m, 9 m], [0 m, 9 m]]}, walls: {all: w}}
              base: {kind: slab on ground, assembly: w}
              roof: {form: hip, pitch: 40 °, assembly: w}
            """, HEAD + """
            body:
              footprint-line: outer face
              storeys:
              - {name: g, height: 3 m, footprint: {rectangle: [8 m, 6 m]}, walls: {all: w}, terrace: w}
              - {name: u, height: 3 m, footprint: {rectangle: [5 m, 6 m]}, walls: {all: w}, floor-thickness: 300 mm}
              base: {kind: slab on ground, assembly: w}
              roof: {form: flat, assembly: w}
            openings:
              a: {kind: window, surface: g south wall, width: 1 m, height: 1 m, transmittance: 1 W/(m²·K), number: 3, spacing: 2 m}
            points:
              p: {surface: g south wall, kind: anchor, spacing: 0.5 m, along: u floor}
            """, HEAD + """
            body:
              footprint-line: outer face
              storeys: [{name: g, height: 3 m, footprint: {rectangle: [8 m, 6 m]}, walls: {all: w}}]
              base: {kind: slab on ground, assembly: w}
              roof:
                form: gable
                pitch: 45 °
                low-side: south
                assembly: w
                dormers:
                  d: {form: gabled, side: south, width: 2 m, height: 1 m, pitch: 30 °, walls: w}
            """);

    @TempDir
    Path folder;

    /** A house and what it took. */
    private record Tried(String text, Spent spent) {}

    @Test
    void smallHousesTakeLittle() throws Exception {
        Mutator mutator = FuzzTest.mutator(Probe.HOUSE);
        Tally tally = new Tally("dearest", FROM, 10_000);
        List<Tried> dearest = new ArrayList<>();
        ExecutorService one = Executors.newSingleThreadExecutor();
        try {
            for (long number = FROM; number < FROM + COUNT; number++) {
                Random random = new Random(number * 0x9E3779B97F4A7C15L);
                String from = number - FROM < SEEDS.size()
                        ? SEEDS.get((int) (number - FROM))
                        : random.nextInt(8) == 0 || dearest.isEmpty()
                                ? SEEDS.get(random.nextInt(SEEDS.size()))
                                : dearest.get(random.nextInt(dearest.size())).text();
                String text = number - FROM < SEEDS.size() ? from : mutator.mutant(from, random);
                if (text.replaceAll("\\s", "").length() > MOST_LETTERS) {
                    continue;
                }
                Path file = Files.writeString(folder.resolve("small.json"), text);
                Future<Spent.On<Boolean>> run = one.submit(() -> Spent.on(() -> planned(file)));
                try {
                    Spent.On<Boolean> read = run.get(HANGS.toSeconds(), TimeUnit.SECONDS);
                    tally.read(number, read.result(), read.spent());
                    dear(dearest, new Tried(text, read.spent()), read.result());
                    if (read.spent().seconds() > MOST_SECONDS || read.spent().megabytes() > MOST_MEGABYTES) {
                        tally.found(number, "takes " + read.spent(), text);
                    }
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
            for (Tried each : dearest) {
                tally.keep("dear-" + dearest.indexOf(each), each.text() + "\n" + each.spent());
            }
        }
        assertTrue(tally.finds().isEmpty(), tally::toString);
        assertTrue(tally.accepted() >= SEEDS.size() - 1, () -> "hardly any is accepted: " + tally);
    }

    /** Whether it is accepted; then what is to be solved is counted too. */
    private static boolean planned(Path file) throws java.io.IOException {
        if (Probe.HOUSE.refusal(file).isPresent()) {
            return false;
        }
        HouseAudit.sections(List.of(HouseAudit.of(file, Run.REAL)));
        return true;
    }

    /** The half that took the most memory and the half that took the most time; those that are refused go on only so. */
    private static void dear(List<Tried> dearest, Tried tried, boolean accepted) {
        if (!accepted && tried.spent().megabytes() < 20) {
            return;
        }
        dearest.add(tried);
        if (dearest.size() > KEPT) {
            Comparator<Tried> cheaper = tried.text().length() % 2 == 0
                    ? Comparator.comparing((Tried each) -> each.spent().megabytes())
                    : Comparator.comparing((Tried each) -> each.spent().seconds());
            dearest.remove(dearest.stream().min(cheaper).orElseThrow());
        }
    }
}
