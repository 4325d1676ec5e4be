package coldseam.benchmarks;

import coldseam.conduction.Accuracy;
import coldseam.conduction.Boundary;
import coldseam.conduction.Point;
import coldseam.conduction.Section;
import coldseam.conduction.Solution;
import coldseam.conduction.TemperatureField;
import coldseam.conduction.solve.Conduction;
import java.io.FileDescriptor;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * Times the eight sections here and in FreeFEM, a general-purpose finite-element package, on the same geometry.
 *
 * <p>Arguments: a folder to work in and the FreeFEM command. Both are stopped at an error of 1e-4 of the coupling:
 * here the proven one of the interval's middle, there the true one of the energy, which FreeFEM is told from a solution of 1e-6 made here; it
 * need not bound anything. Its adaptive loop starts from the coarse mesh of the drawing. Times are processor time of the
 * solving thread or process, without starting either: medians of five rounds that take turns, in a warm machine, and the
 * fastest.
 */
public final class SideBySide {

    /** The middle of an interval of this width is proven to be within 1e-4, which is what FreeFEM is held to. */
    private static final Accuracy PROVEN = new Accuracy(2e-4, 400_000);

    private SideBySide() {}

    /** Runs everything and prints the table. */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        FreeFem there = new FreeFem(Files.createDirectories(Path.of(arguments[0])), arguments[1]);
        PrintStream out = Measured.printing(FileDescriptor.out);
        ImmutableList<Timed> all = Sections.all().collect(Timed::new);
        Measured.warm(arguments[2], () -> all.each(timed -> Conduction.solve(timed.section, PROVEN)));
        for (int round = 0; round < ROUNDS; round++) {
            for (Timed timed : all) {
                timed.run(there);
            }
        }
        out.println("| section | ratio | here, ms | fastest, ms | FreeFEM, ms | fastest, ms | unknowns | unknowns/s |"
                + " FreeFEM unknowns | its error | memory, MB |");
        out.println("|---|---|---|---|---|---|---|---|---|---|---|");
        all.each(timed -> out.println(timed.row()));
        out.printf(
                Locale.ROOT,
                "%nRatio: median %.0f, least %.0f. Here: median %.2f ms, worst %.2f ms; fastest runs: median %.2f ms,"
                        + " worst %.2f ms.%n",
                Measured.median(all.collectDouble(Timed::ratio).toArray()),
                all.collectDouble(Timed::ratio).min(),
                Measured.median(all.collectDouble(t -> Measured.median(t.here)).toArray()),
                all.collectDouble(t -> Measured.median(t.here)).max(),
                Measured.median(all.collectDouble(t -> Measured.least(t.here)).toArray()),
                all.collectDouble(t -> Measured.least(t.here)).max());
    }

    private static final int ROUNDS = 5;
    private static final int SOLVES = 11;

    /** One section's times, gathered in rounds so that a busy spell of the machine meets both sides and all sections. */
    private static final class Timed {
        private final Section section;
        private final double reference;
        private final double[] here = new double[ROUNDS * SOLVES];
        private final double[] there = new double[ROUNDS];
        private int solves;
        private int runs;
        private Measured<Solution> last;
        private Optional<String[]> result = Optional.empty();

        Timed(Section section) {
            this.section = section;
            this.reference = Conduction.solve(section, new Accuracy(1e-6, 4_000_000))
                    .couplings()
                    .get(0)
                    .value()
                    .middle();
        }

        void run(FreeFem freefem) throws IOException, InterruptedException {
            for (int i = 0; i < SOLVES; i++) {
                last = Measured.of(() -> Conduction.solve(section, PROVEN));
                here[solves++] = 1e3 * last.seconds();
            }
            Path mesh = freefem.mesh(section.name() + ".msh", mesh(section));
            result = freefem.results(section.name(), script(section, mesh, reference), Integer.MAX_VALUE)
                    .getFirstOptional();
            there[runs++] =
                    result.map(words -> 1e3 * Double.parseDouble(words[1])).orElse(Double.NaN);
        }

        double ratio() {
            return Measured.median(there) / Measured.median(here);
        }

        String row() {
            return String.format(
                    Locale.ROOT,
                    "| %s | **%.0f** | %.2f | %.2f | %.0f | %.0f | %d | %.2g | %s | %s | %.1f |",
                    section.name(),
                    ratio(),
                    Measured.median(here),
                    Measured.least(here),
                    Measured.median(there),
                    Measured.least(there),
                    last.result().unknowns(),
                    1e3 * last.result().unknowns() / Measured.median(here),
                    result.map(words -> words[2]).orElse("–"),
                    result.map(words -> words[3]).orElse("not reached"),
                    last.megabytes());
        }
    }

    private static String script(Section section, Path mesh, double reference) {
        String conductivities =
                section.regions().collect(r -> "" + r.conductivity()).makeString(", ");
        return String.format(
                Locale.ROOT,
                """
                // %s: adapted quadratic elements until the energy is within 1e-4 of the reference.
                mesh Th = readmesh("%s");
                real[int] ks = [%s];
                real Ra = %s, Rb = %s, reference = %.12g;
                fespace Vh(Th, P2);
                fespace Ph(Th, P0);
                Vh u, v;
                Ph k = ks[region];
                problem heat(u, v, solver = sparsesolver)
                  = int2d(Th)(k * (dx(u) * dx(v) + dy(u) * dy(v)))
                  + int1d(Th, 1)(u * v / Ra) - int1d(Th, 1)(v / Ra) + int1d(Th, 2)(u * v / Rb);
                real start = clock(), tolerance = 0.02, error = 1;
                for (int i = 0; i < 40; i++) {
                  k = ks[region];
                  heat;
                  real energy = int2d(Th)(k * (dx(u)^2 + dy(u)^2))
                    + int1d(Th, 1)((u - 1)^2 / Ra) + int1d(Th, 2)(u^2 / Rb);
                  error = energy / reference - 1;
                  if (error < 1e-4) break;
                  tolerance = tolerance * 0.5;
                  Th = adaptmesh(Th, u, err = tolerance, nbvx = 500000, hmin = 1e-6, ratio = 0, iso = false);
                }
                if (error < 1e-4) cout << "RESULT " << clock() - start << " " << Vh.ndof << " " << error << endl;
                """,
                section.name(),
                mesh,
                conductivities,
                section.environments().get(0).surfaceResistance(),
                section.environments().get(1).surfaceResistance(),
                reference);
    }

    /** The drawing's coarse mesh in the package's own text format: indoor is label 1, outdoor 2, interfaces 4. */
    private static String mesh(Section section) {
        TemperatureField field =
                Conduction.solve(section, new Accuracy(0.9, 100)).field();
        Map<Point, Integer> points = new LinkedHashMap<>();
        Map<String, int[]> sides = new LinkedHashMap<>();
        StringBuilder triangles = new StringBuilder();
        for (TemperatureField.Cell cell : field.cells()) {
            int[] v = new int[3];
            Point[] corners = {cell.a(), cell.b(), cell.c()};
            for (int i = 0; i < 3; i++) {
                v[i] = points.computeIfAbsent(corners[i], p -> points.size() + 1);
            }
            triangles.append(v[0] + " " + v[1] + " " + v[2] + " " + cell.region() + "\n");
            for (int i = 0; i < 3; i++) {
                int a = v[i];
                int b = v[(i + 1) % 3];
                sides.computeIfAbsent(Math.min(a, b) + " " + Math.max(a, b), s -> new int[] {cell.region(), -1, 0});
                int[] side = sides.get(Math.min(a, b) + " " + Math.max(a, b));
                side[1] = side[2] == 0 ? -1 : cell.region();
                side[2]++;
            }
        }
        Point[] at = points.keySet().toArray(new Point[0]);
        StringBuilder edges = new StringBuilder();
        int count = 0;
        for (Map.Entry<String, int[]> side : sides.entrySet()) {
            int[] s = side.getValue();
            if (s[2] == 2 && s[0] == s[1]) {
                continue;
            }
            String[] ends = side.getKey().split(" ");
            int label = s[2] == 2
                    ? 4
                    : label(section, at[Integer.parseInt(ends[0]) - 1], at[Integer.parseInt(ends[1]) - 1]);
            edges.append(side.getKey() + " " + label + "\n");
            count++;
        }
        StringBuilder text = new StringBuilder();
        text.append(points.size() + " " + field.cells().size() + " " + count + "\n");
        for (Point p : at) {
            text.append(p.x() + " " + p.y() + " 0\n");
        }
        return text.append(triangles).append(edges).toString();
    }

    private static int label(Section section, Point a, Point b) {
        double x = 0.5 * (a.x() + b.x());
        double y = 0.5 * (a.y() + b.y());
        for (Boundary boundary : section.boundaries()) {
            for (int i = 0; i + 1 < boundary.path().size(); i++) {
                Point p = boundary.path().get(i);
                Point q = boundary.path().get(i + 1);
                double length = Math.hypot(q.x() - p.x(), q.y() - p.y());
                double along = ((x - p.x()) * (q.x() - p.x()) + (y - p.y()) * (q.y() - p.y())) / length;
                double away = ((x - p.x()) * (q.y() - p.y()) - (y - p.y()) * (q.x() - p.x())) / length;
                if (Math.abs(away) < 1e-6 && along > 0 && along < length) {
                    return boundary.environment()
                                    .equals(section.environments().get(0).name())
                            ? 1
                            : 2;
                }
            }
        }
        return 3;
    }
}
