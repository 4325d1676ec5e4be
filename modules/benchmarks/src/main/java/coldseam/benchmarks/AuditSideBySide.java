package coldseam.benchmarks;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

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

    private final WholeProcess process;
    private final String house;
    private final Path folder;

    private AuditSideBySide(String classPath, String house, Path folder) {
        this.process = new WholeProcess(classPath, folder);
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
        process.run(commands[2]);
        List<List<WholeProcess.Taken>> all = new ArrayList<>();
        for (int i = 0; i < commands.length; i++) {
            all.add(new ArrayList<>());
        }
        for (int round = 0; round < rounds; round++) {
            for (int i = 0; i < commands.length; i++) {
                all.get(i).add(process.run(commands[i]));
            }
        }
        StringBuilder table =
                new StringBuilder("| | wall, s: least, median | times the floor | processor, s: least, median"
                        + " | times the floor | peak memory, MB: least, median |\n|---|---|---|---|---|---|\n");
        for (int i = 0; i < commands.length; i++) {
            double[] wall = all.get(i).stream()
                    .mapToDouble(WholeProcess.Taken::wall)
                    .sorted()
                    .toArray();
            double[] processor = all.get(i).stream()
                    .mapToDouble(WholeProcess.Taken::processor)
                    .sorted()
                    .toArray();
            double[] memory = all.get(i).stream()
                    .mapToDouble(WholeProcess.Taken::memory)
                    .sorted()
                    .toArray();
            double[] floorWall = all.get(0).stream()
                    .mapToDouble(WholeProcess.Taken::wall)
                    .sorted()
                    .toArray();
            double[] floorProcessor = all.get(0).stream()
                    .mapToDouble(WholeProcess.Taken::processor)
                    .sorted()
                    .toArray();
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

    private static double median(double[] sorted) {
        int n = sorted.length;
        return 0.5 * (sorted[(n - 1) / 2] + sorted[n / 2]);
    }
}
