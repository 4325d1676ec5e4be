package coldseam.benchmarks;

import coldseam.conduction.Accuracy;
import coldseam.conduction.solid.BodyEnvironment;
import coldseam.conduction.solid.BodyField;
import coldseam.conduction.solid.BodySolution;
import coldseam.conduction.solid.BodySolver;
import coldseam.conduction.solid.Cuboid;
import coldseam.conduction.solid.Place;
import coldseam.conduction.solid.SolidBody;
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
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.eclipse.collections.impl.list.primitive.IntInterval;

/**
 * Times every reference body here and in FreeFEM, a general-purpose finite-element package, on the same geometry.
 *
 * <p>Arguments: a folder to work in, the FreeFEM command, seconds to warm up, rounds. Both are held to an error of what each
 * environment but the first loses to all others: here the proven one of the interval's middle, with all refinement and both
 * bounds in the time; there the true one of the energy of one solve for each with quadratic tetrahedra on the coarsest of this
 * core's own graded grids that reaches it, each box cut into six. Neither finding that grid nor any bound is in its time, and
 * the faster of its direct solver and its conjugate gradients counts. Times are processor time of the solving thread or
 * process, medians. Where no grid that it solves in the time allowed is good enough, the row says what was tried last.
 *
 * @param reference W/K, what each environment but the first loses to all others
 */
public record BodiesSideBySide(SolidBody body, double[] reference, FreeFem freefem, int rounds) {

    private static final double[] ERRORS = {1e-3, 3e-4};
    private static final double[] GRIDS = {
        0.1, 0.05, 0.03, 0.02, 0.012, 8e-3, 5e-3, 3e-3, 2e-3, 1.2e-3, 8e-4, 5e-4, 3e-4, 2e-4, 1.2e-4
    };
    private static final int MOST_UNKNOWNS = 1_600_000;
    /** s, after which a solve of FreeFEM is given up. */
    private static final int PATIENCE = 150;
    /** Quadratic tetrahedra have eight nodes to a cell; beyond as many cells nothing is tried. */
    private static final int MOST_CELLS = 75_000;

    /** Runs everything and prints the table. */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        FreeFem freefem = new FreeFem(Files.createDirectories(Path.of(arguments[0])), arguments[1]);
        PrintStream out = Measured.printing(FileDescriptor.out);
        Map<String, SolidBody> bodies = new LinkedHashMap<>();
        Bodies.all().forEach((name, body) -> bodies.put(name, drawn(name, body)));
        Measured.warm(
                arguments[2],
                () -> bodies.values().forEach(body -> BodySolver.solve(body, new Accuracy(1e-3, MOST_UNKNOWNS))));
        out.println(
                "| body | error | ratio | here, s | unknowns | memory, MB | FreeFEM, s | FreeFEM unknowns | its error |");
        out.println("|---|---|---|---|---|---|---|---|---|");
        for (SolidBody body : bodies.values()) {
            double[] reference = losses(BodySolver.solve(body, new Accuracy(4e-5, MOST_UNKNOWNS)));
            for (double error : ERRORS) {
                out.println(new BodiesSideBySide(body, reference, freefem, Integer.parseInt(arguments[3])).row(error));
            }
        }
    }

    /** The part that is drawn, with its couplings alone to find. */
    private static SolidBody drawn(String name, SolidBody body) {
        return new SolidBody(
                name,
                body.extent(),
                1,
                body.cutPlanes(),
                body.painted(),
                body.environments(),
                Lists.immutable.empty(),
                Lists.immutable.empty());
    }

    /** What each environment but the first loses to all others, W/K. */
    private static double[] losses(BodySolution solution) {
        ImmutableList<BodyEnvironment> environments = solution.body().environments();
        double[] losses = new double[environments.size() - 1];
        for (int i = 0; i < losses.length; i++) {
            String name = environments.get(i + 1).name();
            losses[i] = solution.couplings()
                    .select(each -> each.first().equals(name) || each.second().equals(name))
                    .sumOfDouble(each -> each.value().middle());
        }
        return losses;
    }

    private String row(double error) throws IOException, InterruptedException {
        ImmutableList<Measured<BodySolution>> here = IntInterval.oneTo(rounds)
                .collect(round -> Measured.of(() -> BodySolver.solve(body, new Accuracy(2 * error, MOST_UNKNOWNS))));
        double seconds = Measured.median(here.collectDouble(Measured::seconds).toArray());
        Answer there = there(error);
        boolean reached = there.error() <= error;
        return String.format(
                Locale.ROOT,
                "| %s | %.0e | %s | %.2f | %d | %.0f | %.2f | %d | %s |",
                body.name(),
                error,
                reached ? String.format(Locale.ROOT, "**%.1f**", there.seconds() / seconds) : "–",
                seconds,
                here.getLast().result().unknowns(),
                here.getLast().megabytes(),
                there.seconds(),
                there.unknowns(),
                String.format(Locale.ROOT, reached ? "%.2e" : "%.2e, not reached", there.error()));
    }

    /** What FreeFEM makes of one grid: processor time of all solves, s. */
    private record Answer(double seconds, int unknowns, double error) {}

    /** The result of the coarsest grid that is good enough, timed in turns of both solvers; the last one tried where none is. */
    private Answer there(double error) throws IOException, InterruptedException {
        Answer last = new Answer(Double.NaN, 0, Double.NaN);
        int before = 0;
        for (double width : GRIDS) {
            BodySolution graded = BodySolver.solve(body, new Accuracy(width, MOST_UNKNOWNS));
            int cells = graded.field().cells().size();
            if (graded.unknowns() == before || cells > MOST_CELLS) {
                continue;
            }
            before = graded.unknowns();
            Path mesh = freefem.mesh(body.name() + ".mesh", mesh(graded));
            Optional<Answer> first = run(mesh, "CG, eps = 1e-10");
            if (first.isEmpty()) {
                return last;
            }
            last = first.get();
            if (last.error() <= error) {
                return fastest(mesh);
            }
        }
        return last;
    }

    private Answer fastest(Path mesh) throws IOException, InterruptedException {
        MutableList<Answer> iterated = Lists.mutable.empty();
        MutableList<Answer> direct = Lists.mutable.empty();
        for (int i = 0; i < rounds; i++) {
            run(mesh, "CG, eps = 1e-10").ifPresent(iterated::add);
            run(mesh, "sparsesolver").ifPresent(direct::add);
        }
        Answer one = median(iterated);
        return direct.size() < rounds || one.seconds() < median(direct).seconds() ? one : median(direct);
    }

    private static Answer median(MutableList<Answer> answers) {
        return answers.sortThisByDouble(Answer::seconds).get(answers.size() / 2);
    }

    /** Empty where it took too long or gave no result. */
    private Optional<Answer> run(Path mesh, String solver) throws IOException, InterruptedException {
        ImmutableList<String[]> results = freefem.results(body.name(), script(mesh, solver), PATIENCE);
        // The energy of an approximation lies above the true one.
        return results.size() == reference.length
                ? Optional.of(new Answer(
                        results.sumOfDouble(words -> Double.parseDouble(words[1])),
                        Integer.parseInt(results.getLast()[2]),
                        Math.max(
                                0,
                                results.collectDouble(words -> Double.parseDouble(words[3]))
                                        .max())))
                : Optional.empty();
    }

    private String script(Path mesh, String solver) {
        StringBuilder text = new StringBuilder(String.format(
                Locale.ROOT,
                """
                // %s: quadratic tetrahedra on a graded mesh that is given; their energies against the references.
                real start = clock();
                mesh3 Th = readmesh3("%s");
                real[int] ks = [%s];
                fespace Vh(Th, P23d);
                fespace Ph(Th, P03d);
                Vh u, v;
                Ph k = ks[region];
                real used = clock() - start;
                """,
                body.name(),
                mesh,
                body.painted()
                        .collect(each -> each.match(solid -> "" + solid.conductivity(), air -> "0", none -> "0"))
                        .makeString(", ")));
        for (int warm = 0; warm < reference.length; warm++) {
            StringBuilder form = new StringBuilder("int3d(Th)(k * (dx(u) * dx(v) + dy(u) * dy(v) + dz(u) * dz(v)))");
            StringBuilder energy = new StringBuilder("int3d(Th)(k * (dx(u)^2 + dy(u)^2 + dz(u)^2))");
            for (int i = 0; i < body.environments().size(); i++) {
                String resistance = "" + body.environments().get(i).horizontal();
                int one = i == warm + 1 ? 1 : 0;
                form.append(" + int2d(Th, " + (i + 1) + ")(u * v / " + resistance + ")");
                form.append(one == 1 ? " - int2d(Th, " + (i + 1) + ")(v / " + resistance + ")" : "");
                energy.append(" + int2d(Th, " + (i + 1) + ")((u - " + one + ")^2 / " + resistance + ")");
            }
            text.append(String.format(
                    Locale.ROOT, """
                    start = clock();
                    solve heat%d(u, v, solver = %s) = %s;
                    used = %s + clock() - start;
                    cout << "RESULT " << used << " " << Vh.ndof << " " << (%s) / %.12g - 1 << endl;
                    """, warm, solver, form, warm == 0 ? "used" : "0", energy, reference[warm]));
        }
        return text.toString();
    }

    /** The corners of the six tetrahedra of a box, all along one diagonal, so that neighbours fit. */
    private static final int[][] SIX = {
        {0, 1, 3, 7}, {0, 3, 2, 7}, {0, 2, 6, 7}, {0, 6, 4, 7}, {0, 4, 5, 7}, {0, 5, 1, 7}
    };

    /** The grid in the package's own text format: label 1 for the first environment and so on, the last one adiabatic; regions are painted boxes. */
    private String mesh(BodySolution solution) {
        ImmutableList<String> names = body.environments().collect(BodyEnvironment::name);
        Map<Place, Integer> points = new LinkedHashMap<>();
        StringBuilder tetrahedra = new StringBuilder();
        int boxes = 0;
        for (BodyField.Cell cell : solution.field().cells()) {
            int[] v = new int[8];
            for (int i = 0; i < 8; i++) {
                v[i] = points.computeIfAbsent(corner(cell.box(), i), p -> points.size() + 1);
            }
            for (int[] t : SIX) {
                tetrahedra.append(v[t[0]] + " " + v[t[1]] + " " + v[t[2]] + " " + v[t[3]] + " " + cell.piece() + "\n");
            }
            boxes++;
        }
        StringBuilder triangles = new StringBuilder();
        int faces = 0;
        for (BodyField.Face face : solution.field().faces()) {
            int label = face.environment().map(name -> names.indexOf(name) + 1).orElse(names.size() + 1);
            int d = face.side().direction();
            int base = face.side().high() ? 1 << d : 0;
            int e = 1 << (d + 1) % 3;
            int f = 1 << (d + 2) % 3;
            for (int[] corners : new int[][] {{0, e, e + f}, {0, e + f, f}}) {
                for (int corner : corners) {
                    triangles
                            .append(points.get(corner(face.cell(), base + corner)))
                            .append(' ');
                }
                triangles.append(label).append('\n');
                faces++;
            }
        }
        StringBuilder text = new StringBuilder("MeshVersionFormatted 2\nDimension 3\nVertices\n");
        text.append(points.size()).append('\n');
        points.keySet().forEach(p -> text.append(p.x() + " " + p.y() + " " + p.z() + " 0\n"));
        text.append("Tetrahedra\n").append(6 * boxes).append('\n').append(tetrahedra);
        return text.append("Triangles\n")
                .append(faces)
                .append('\n')
                .append(triangles)
                .append("End\n")
                .toString();
    }

    private static Place corner(Cuboid box, int bits) {
        return new Place(
                (bits & 1) == 0 ? box.low(0) : box.high(0),
                (bits & 2) == 0 ? box.low(1) : box.high(1),
                (bits & 4) == 0 ? box.low(2) : box.high(2));
    }
}
