package coldseam.benchmarks;

import coldseam.conduction.Accuracy;
import coldseam.conduction.solid.Body;
import coldseam.conduction.solid.BodyEnvironment;
import coldseam.conduction.solid.BodyField;
import coldseam.conduction.solid.BodySolution;
import coldseam.conduction.solid.BodySolver;
import coldseam.conduction.solid.Box;
import coldseam.conduction.solid.Place;
import java.io.IOException;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Times four bodies here and in FreeFEM, a general-purpose finite-element package, on the same geometry.
 *
 * <p>Arguments: a folder to work in, the FreeFEM command, seconds to warm up. Both are held to an error of the coupling:
 * here the proven one of the interval's middle, with all refinement and both bounds in the time; there the true one of the
 * energy of one solve with quadratic tetrahedra on the coarsest of this core's own graded grids that reaches it, each box
 * cut into six. Neither finding that grid nor any bound is in its time, and the faster of its direct solver and its
 * conjugate gradients counts. Times are processor time of the solving thread or process, medians of three.
 */
public final class BodiesSideBySide {

    private static final double[] ERRORS = {1e-3, 3e-4};
    private static final double[] GRIDS = {
        0.1, 0.05, 0.03, 0.02, 0.012, 8e-3, 5e-3, 3e-3, 2e-3, 1.2e-3, 8e-4, 5e-4, 3e-4, 2e-4, 1.2e-4
    };
    private static final int ROUNDS = 3;
    private static final int MOST_UNKNOWNS = 1_600_000;

    private static final ThreadMXBean CLOCK = ManagementFactory.getThreadMXBean();

    private BodiesSideBySide() {}

    /** Runs everything and prints the table. */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        Path folder = Files.createDirectories(Path.of(arguments[0]));
        PrintStream out =
                new PrintStream(new java.io.FileOutputStream(java.io.FileDescriptor.out), true, StandardCharsets.UTF_8);
        long until = System.nanoTime() + Long.parseLong(arguments[2]) * 1_000_000_000L;
        while (System.nanoTime() < until) {
            Bodies.all().each(body -> BodySolver.solve(body, new Accuracy(1e-3, MOST_UNKNOWNS)));
        }
        out.println(
                "| body | error | ratio | here, s | unknowns | memory, MB | FreeFEM, s | FreeFEM unknowns | its error |");
        out.println("|---|---|---|---|---|---|---|---|---|");
        for (Body body : Bodies.all()) {
            double reference = coupling(BodySolver.solve(body, new Accuracy(4e-5, MOST_UNKNOWNS)));
            for (double error : ERRORS) {
                out.println(row(body, reference, error, folder, arguments[1]));
            }
        }
    }

    private static double coupling(BodySolution solution) {
        return solution.couplings().getOnly().value().middle();
    }

    private static String row(Body body, double reference, double error, Path folder, String command)
            throws IOException, InterruptedException {
        double[] here = new double[ROUNDS];
        BodySolution solution = null;
        long bytes = 0;
        for (int i = 0; i < ROUNDS; i++) {
            long allocated = allocated();
            long start = CLOCK.getCurrentThreadCpuTime();
            solution = BodySolver.solve(body, new Accuracy(2 * error, MOST_UNKNOWNS));
            here[i] = 1e-9 * (CLOCK.getCurrentThreadCpuTime() - start);
            bytes = allocated() - allocated;
        }
        Arrays.sort(here);
        Optional<String[]> there = there(body, reference, error, folder, command);
        double time = there.map(each -> Double.parseDouble(each[1])).orElse(Double.NaN);
        return String.format(
                Locale.ROOT,
                "| %s | %.0e | **%.1f** | %.2f | %d | %.0f | %.2f | %s | %s |",
                body.name(),
                error,
                time / here[ROUNDS / 2],
                here[ROUNDS / 2],
                solution.unknowns(),
                1e-6 * bytes,
                time,
                there.map(each -> each[2]).orElse("–"),
                there.map(each -> each[3]).orElse("not reached"));
    }

    private static long allocated() {
        return ((com.sun.management.ThreadMXBean) CLOCK)
                .getThreadAllocatedBytes(Thread.currentThread().getId());
    }

    /** The result of the coarsest grid that is good enough, timed in turns of both solvers. */
    private static Optional<String[]> there(Body body, double reference, double error, Path folder, String command)
            throws IOException, InterruptedException {
        int before = 0;
        for (double width : GRIDS) {
            BodySolution graded = BodySolver.solve(body, new Accuracy(width, MOST_UNKNOWNS));
            if (graded.unknowns() == before) {
                continue;
            }
            before = graded.unknowns();
            Path mesh = folder.resolve(body.name() + ".mesh");
            Files.writeString(mesh, mesh(graded));
            String[] first = run(body, reference, mesh, "CG, eps = 1e-10", folder, command);
            if (Double.parseDouble(first[3]) > error) {
                continue;
            }
            String[][] runs = new String[2 * ROUNDS][];
            for (int i = 0; i < ROUNDS; i++) {
                runs[2 * i] = run(body, reference, mesh, "CG, eps = 1e-10", folder, command);
                runs[2 * i + 1] = run(body, reference, mesh, "sparsesolver", folder, command);
            }
            return Optional.of(
                    Double.compare(median(runs, 0), median(runs, 1)) < 0 ? middle(runs, 0) : middle(runs, 1));
        }
        return Optional.empty();
    }

    private static double median(String[][] runs, int solver) {
        return Double.parseDouble(middle(runs, solver)[1]);
    }

    private static String[] middle(String[][] runs, int solver) {
        String[][] of = {runs[solver], runs[2 + solver], runs[4 + solver]};
        Arrays.sort(of, (a, b) -> Double.compare(Double.parseDouble(a[1]), Double.parseDouble(b[1])));
        return of[1];
    }

    private static String[] run(Body body, double reference, Path mesh, String solver, Path folder, String command)
            throws IOException, InterruptedException {
        Path script = folder.resolve(body.name() + ".edp");
        Files.writeString(script, script(body, mesh, reference, solver));
        Process process = new ProcessBuilder(command, "-nw", "-v", "0", script.toString())
                .redirectErrorStream(true)
                .start();
        String text = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        process.waitFor();
        List<String> lines = text.lines().filter(l -> l.startsWith("RESULT")).toList();
        if (lines.isEmpty()) {
            throw new IOException("no result of " + script + ":\n" + text);
        }
        return lines.get(0).trim().split("\\s+");
    }

    private static String script(Body body, Path mesh, double reference, String solver) {
        String conductivities = body.painted()
                .collect(each -> each.match(solid -> "" + solid.conductivity(), air -> "0", none -> "0"))
                .makeString(", ");
        BodyEnvironment indoor = body.environments().getFirst();
        BodyEnvironment outdoor = body.environments().getLast();
        return String.format(
                Locale.ROOT,
                """
                // %s: quadratic tetrahedra on a graded mesh that is given; its energy against the reference.
                real start = clock();
                mesh3 Th = readmesh3("%s");
                real[int] ks = [%s];
                real Ra = %s, Rb = %s, reference = %.12g;
                fespace Vh(Th, P23d);
                fespace Ph(Th, P03d);
                Vh u, v;
                Ph k = ks[region];
                problem heat(u, v, solver = %s)
                  = int3d(Th)(k * (dx(u) * dx(v) + dy(u) * dy(v) + dz(u) * dz(v)))
                  + int2d(Th, 1)(u * v / Ra) - int2d(Th, 1)(v / Ra) + int2d(Th, 2)(u * v / Rb);
                heat;
                real used = clock() - start;
                real energy = int3d(Th)(k * (dx(u)^2 + dy(u)^2 + dz(u)^2))
                  + int2d(Th, 1)((u - 1)^2 / Ra) + int2d(Th, 2)(u^2 / Rb);
                cout << "RESULT " << used << " " << Vh.ndof << " " << energy / reference - 1 << endl;
                """,
                body.name(),
                mesh,
                conductivities,
                indoor.horizontal(),
                outdoor.horizontal(),
                reference,
                solver);
    }

    /** The corners of the six tetrahedra of a box, all along one diagonal, so that neighbours fit. */
    private static final int[][] SIX = {
        {0, 1, 3, 7}, {0, 3, 2, 7}, {0, 2, 6, 7}, {0, 6, 4, 7}, {0, 4, 5, 7}, {0, 5, 1, 7}
    };

    /** The grid in the package's own text format: indoor is label 1, outdoor 2, adiabatic 3; regions are painted boxes. */
    private static String mesh(BodySolution solution) {
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
            int label = face.environment()
                    .map(name -> name.equals("indoor") ? 1 : 2)
                    .orElse(3);
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

    private static Place corner(Box box, int bits) {
        return new Place(
                (bits & 1) == 0 ? box.low(0) : box.high(0),
                (bits & 2) == 0 ? box.low(1) : box.high(1),
                (bits & 4) == 0 ? box.low(2) : box.high(2));
    }
}
