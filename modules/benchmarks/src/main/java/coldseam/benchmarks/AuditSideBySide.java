package coldseam.benchmarks;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * Times whole processes: an audit from a cold start beside the {@link Floor} program, one after the other in each round, so
 * that a busy spell of the machine meets all of them.
 *
 * <p>Arguments: the class path of the jar and of this program, the house file, a folder to work in, and how many rounds.
 * Processor time and peak memory are read from {@code /proc}, so they need Linux; elsewhere they are left out.
 */
public final class AuditSideBySide {

    private static final String AUDITED = "coldseam.cli.Main";
    private static final String[] NAMES = {"floor", "audit", "audit, kept", "check", "check, kept"};

    /** Processor time is counted by the kernel in hundredths of a second. */
    private static final double TICK = 0.01;

    private final String classPath;
    private final String house;
    private final Path folder;

    private AuditSideBySide(String classPath, String house, Path folder) {
        this.classPath = classPath;
        this.house = house;
        this.folder = folder;
    }

    /** Runs everything and prints the table. */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        PrintStream out = new PrintStream(new FileOutputStream(FileDescriptor.out), true, StandardCharsets.UTF_8);
        AuditSideBySide here =
                new AuditSideBySide(arguments[0], arguments[1], Files.createDirectories(Path.of(arguments[2])));
        out.println(here.table(Integer.parseInt(arguments[3])));
    }

    /** One process that ran, and those it started: s, s, MB; NaN or zero where it is not known. */
    private record Taken(double wall, double processor, double memory) {}

    private String table(int rounds) throws IOException, InterruptedException {
        String pdf = folder.resolve("out.pdf").toString();
        String store = folder.resolve("store").toString();
        String[][] commands = {
            {"coldseam.benchmarks.Floor", house, pdf},
            {AUDITED, "audit", house, "-o", pdf, "--no-store"},
            {AUDITED, "audit", house, "-o", pdf, "--store", store},
            {AUDITED, "check", house, "--no-store"},
            {AUDITED, "check", house, "--store", store},
        };
        run(commands[2]);
        List<List<Taken>> all = new ArrayList<>();
        for (int i = 0; i < commands.length; i++) {
            all.add(new ArrayList<>());
        }
        for (int round = 0; round < rounds; round++) {
            for (int i = 0; i < commands.length; i++) {
                all.get(i).add(run(commands[i]));
            }
        }
        StringBuilder table =
                new StringBuilder("| | wall, s: least, median | times the floor | processor, s: least, median"
                        + " | times the floor | peak memory, MB: least, median |\n|---|---|---|---|---|---|\n");
        for (int i = 0; i < commands.length; i++) {
            double[] wall =
                    all.get(i).stream().mapToDouble(Taken::wall).sorted().toArray();
            double[] processor =
                    all.get(i).stream().mapToDouble(Taken::processor).sorted().toArray();
            double[] memory =
                    all.get(i).stream().mapToDouble(Taken::memory).sorted().toArray();
            double[] floorWall =
                    all.get(0).stream().mapToDouble(Taken::wall).sorted().toArray();
            double[] floorProcessor =
                    all.get(0).stream().mapToDouble(Taken::processor).sorted().toArray();
            table.append(String.format(
                    Locale.ROOT,
                    "| %s | %.2f, %.2f | %.1f | %.2f, %.2f | %.1f | %.0f, %.0f |%n",
                    NAMES[i],
                    wall[0],
                    median(wall),
                    median(wall) / median(floorWall),
                    processor[0],
                    median(processor),
                    median(processor) / median(floorProcessor),
                    memory[0],
                    median(memory)));
        }
        return table.append("\nRounds: ").append(rounds).append(".").toString();
    }

    private Taken run(String... command) throws IOException, InterruptedException {
        List<String> line = new ArrayList<>(
                List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-cp", classPath));
        line.addAll(Arrays.asList(command));
        double before = childrensProcessorTime();
        long start = System.nanoTime();
        Process process = new ProcessBuilder(line)
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("said.txt").toFile())
                .start();
        double memory = 0;
        while (process.isAlive()) {
            double now = Stream.concat(Stream.of(process.toHandle()), process.descendants())
                    .mapToDouble(each -> peakMemory(each.pid()))
                    .filter(each -> !Double.isNaN(each))
                    .sum();
            memory = Math.max(memory, now);
            Thread.sleep(10);
        }
        int code = process.waitFor();
        double wall = 1e-9 * (System.nanoTime() - start);
        if (code > 1) {
            throw new IOException(String.join(" ", line) + " ended with " + code + ": "
                    + Files.readString(folder.resolve("said.txt")));
        }
        return new Taken(wall, childrensProcessorTime() - before, memory);
    }

    /** s, of this process's children that have ended. */
    private static double childrensProcessorTime() throws IOException {
        Path own = Path.of("/proc/self/stat");
        if (!Files.isReadable(own)) {
            return Double.NaN;
        }
        String all = Files.readString(own);
        // The second field is the program's name in brackets, which may hold blanks.
        String[] fields = all.substring(all.lastIndexOf(')') + 2).split(" ");
        return TICK * (Long.parseLong(fields[13]) + Long.parseLong(fields[14]));
    }

    /** MB, the most a process has held so far. */
    private static double peakMemory(long process) {
        try (Stream<String> lines = Files.lines(Path.of("/proc", Long.toString(process), "status"))) {
            return lines.filter(line -> line.startsWith("VmHWM:"))
                    .mapToDouble(line -> Double.parseDouble(line.replaceAll("\\D", "")) / 1024)
                    .findFirst()
                    .orElse(Double.NaN);
        } catch (IOException | java.io.UncheckedIOException ended) {
            return Double.NaN;
        }
    }

    private static double median(double[] sorted) {
        int n = sorted.length;
        return 0.5 * (sorted[(n - 1) / 2] + sorted[n / 2]);
    }
}
