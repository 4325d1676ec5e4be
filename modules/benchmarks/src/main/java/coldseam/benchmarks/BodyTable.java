package coldseam.benchmarks;

import coldseam.conduction.Accuracy;
import coldseam.conduction.Coupling;
import coldseam.conduction.solid.BodySolution;
import coldseam.conduction.solid.BodySolver;
import coldseam.conduction.solid.SolidBody;
import coldseam.files.AtomicFiles;
import java.io.FileDescriptor;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.list.primitive.IntInterval;

/**
 * Times every body of {@code fixtures/sections} that has couplings from outside the project, at three widths, and writes a
 * table: time, true error, proven width and memory, beside FreeFEM's time where an earlier table has measured it.
 *
 * <p>Arguments: seconds to warm up, where to write. Run in the project's folder. Times are processor time of the solving thread, all
 * levels of refinement and both bounds in them, medians of three; memory is what one solve allocates in all.
 */
public final class BodyTable {

    private static final Path MEASURED = Path.of("reports", "performance.md");

    private static final double[] WIDTHS = {1e-3, 3e-4, 1e-4};
    private static final int ROUNDS = 3;
    private static final int MOST_UNKNOWNS = 1_600_000;

    private BodyTable() {}

    /** Runs everything and writes the table. */
    public static void main(String[] arguments) throws IOException {
        Map<String, Map<String, Double>> references = Bodies.references();
        Map<String, SolidBody> bodies = Bodies.all();
        Measured.warm(
                arguments[0],
                () -> bodies.values().forEach(body -> BodySolver.solve(body, new Accuracy(WIDTHS[0], MOST_UNKNOWNS))));
        PrintStream progress = Measured.printing(FileDescriptor.err);
        StringBuilder table = new StringBuilder(HEAD);
        List<String> measured = Files.readAllLines(MEASURED, StandardCharsets.UTF_8);
        bodies.forEach((name, body) -> {
            for (double width : WIDTHS) {
                String row = row(name, body, references.get(name), width, measured);
                progress.println(row);
                table.append(row).append('\n');
            }
        });
        AtomicFiles.write(Path.of(arguments[1]), table.toString());
    }

    private static final String HEAD = """
            # Bodies in three dimensions

            Every reference body, solved to a proven width of its couplings: the widest of them, as a share of its middle, and what its middle
            is off the published one by (`fixtures/published/conduction.csv`, good to about 1e-5 itself). Processor time with
            both bounds, medians of three; memory is what one solve allocates in all. FreeFEM's time is that of `performance.md`, for an error of the same size and no
            bound; its own column there says on how busy a machine. Written by `modules/benchmarks/side-by-side/bodies`.

            | body | asked | time, s | unknowns | proven width | error | memory, MB | FreeFEM, s |
            |---|---|---|---|---|---|---|---|
            """;

    private static String row(
            String name, SolidBody body, Map<String, Double> references, double width, List<String> measured) {
        ImmutableList<Measured<BodySolution>> rounds = IntInterval.oneTo(ROUNDS)
                .collect(round -> Measured.of(() -> BodySolver.solve(body, new Accuracy(width, MOST_UNKNOWNS))));
        BodySolution solution = rounds.getLast().result();
        double widest = 0;
        double error = 0;
        for (Map.Entry<String, Double> reference : references.entrySet()) {
            String[] pair = reference.getKey().split("–");
            Coupling proven = coupling(solution, pair[0], pair[1]);
            widest = Math.max(widest, proven.relativeWidth());
            error = Math.max(error, Math.abs(proven.value().middle() / reference.getValue() - 1));
        }
        return String.format(
                Locale.ROOT,
                "| %s | %.0e | %.2f | %d | %.1e%s | %.1e | %.0f | %s |",
                name,
                width,
                Measured.median(rounds.collectDouble(Measured::seconds).toArray()),
                solution.unknowns(),
                widest,
                solution.met() ? "" : ", not met",
                error,
                rounds.getLast().megabytes(),
                there(name, width, measured).orElse("–"));
    }

    private static Coupling coupling(BodySolution solution, String first, String second) {
        return solution.couplings()
                .detectOptional(each -> is(each, first, second) || is(each, second, first))
                .orElseThrow(() -> new IllegalStateException("no coupling " + first + "–" + second));
    }

    private static boolean is(Coupling coupling, String first, String second) {
        return coupling.first().equals(first) && coupling.second().equals(second);
    }

    /** FreeFEM's seconds for the smallest error measured that is no smaller than half the width. */
    private static Optional<String> there(String name, double width, List<String> measured) {
        return measured.stream()
                .map(line -> line.split("\\|", -1))
                .filter(cells -> cells.length > 9 && cells[1].strip().equals(name))
                .filter(cells -> Double.parseDouble(cells[2].strip()) >= 0.5 * width
                        && Double.parseDouble(cells[2].strip()) <= width)
                .min(Comparator.comparingDouble(cells -> Double.parseDouble(cells[2].strip())))
                .map(cells -> cells[7].strip() + " at " + cells[2].strip());
    }
}
