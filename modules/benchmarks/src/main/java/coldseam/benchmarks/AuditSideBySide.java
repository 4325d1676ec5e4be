package coldseam.benchmarks;

import java.io.File;
import java.io.FileDescriptor;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.eclipse.collections.api.block.function.primitive.DoubleFunction;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.multimap.list.MutableListMultimap;
import org.eclipse.collections.impl.factory.Multimaps;

/**
 * Times whole processes: an audit from a cold start beside the {@link Floor} program, one after the other in each round, so
 * that a busy spell of the machine meets all of them.
 *
 * <p>Arguments: the class path of the jar and of this program, in this order, the house file, which names no details beside it,
 * a folder to work in, and how many rounds.
 * Processor time and peak memory are read from {@code /proc}, so they need Linux; elsewhere they are left out.
 */
public final class AuditSideBySide {

    private static final String AUDITED = "coldseam.cli.Main";
    private static final String[] NAMES = {
        "floor",
        "audit to PDF",
        "of a changed file, sections kept",
        "of the same, kept",
        "check",
        "of a changed file, sections kept",
        "of the same, kept"
    };

    private final WholeProcess floor;
    private final WholeProcess tool;
    private final String house;
    private final Path folder;

    private AuditSideBySide(String classPath, String house, Path folder) {
        this.floor = new WholeProcess(classPath, folder);
        // The tool runs from its jar alone, as it does for everyone: beside folders of classes it keeps no whole runs.
        this.tool = new WholeProcess(classPath.substring(0, classPath.indexOf(File.pathSeparatorChar)), folder);
        this.house = house;
        this.folder = folder;
    }

    /** Runs everything and prints the table. */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        PrintStream out = Measured.printing(FileDescriptor.out);
        AuditSideBySide here =
                new AuditSideBySide(arguments[0], arguments[1], Files.createDirectories(Path.of(arguments[2])));
        out.println(here.table(Integer.parseInt(arguments[3])));
    }

    private String table(int rounds) throws IOException, InterruptedException {
        String pdf = folder.resolve("out.pdf").toString();
        String store = folder.resolve("store").toString();
        // A comment is changed in each round: nothing is new to solve, and all else is to be done.
        Path changed = folder.resolve("changed.yaml");
        String[][] commands = {
            {"coldseam.benchmarks.Floor", house, pdf},
            {AUDITED, "audit", house, "-o", pdf, "--no-store"},
            {AUDITED, "audit", changed.toString(), "-o", pdf, "--store", store},
            {AUDITED, "audit", house, "-o", pdf, "--store", store},
            {AUDITED, "check", house, "--no-store"},
            {AUDITED, "check", changed.toString(), "--store", store},
            {AUDITED, "check", house, "--store", store},
        };
        tool.run(commands[3]);
        tool.run(commands[6]);
        MutableListMultimap<Integer, WholeProcess.Taken> all = Multimaps.mutable.list.empty();
        for (int round = 0; round < rounds; round++) {
            Files.writeString(changed, Files.readString(Path.of(house)) + "\n# round " + round + "\n");
            for (int i = 0; i < commands.length; i++) {
                all.put(i, (i == 0 ? floor : tool).run(commands[i]));
            }
        }
        StringBuilder table =
                new StringBuilder("| | wall, s: least, median | times the floor | processor, s: least, median"
                        + " | times the floor | peak memory, MB: least, median |\n|---|---|---|---|---|---|\n");
        for (int i = 0; i < commands.length; i++) {
            double[] wall = times(all.get(i), WholeProcess.Taken::wall);
            double[] processor = times(all.get(i), WholeProcess.Taken::processor);
            double[] memory = times(all.get(i), WholeProcess.Taken::memory);
            table.append(String.format(
                    Locale.ROOT,
                    "| %s | %.2f, %.2f | %.1f | %.2f, %.2f | %.1f | %.0f, %.0f |%n",
                    NAMES[i],
                    Measured.least(wall),
                    Measured.median(wall),
                    Measured.median(wall) / Measured.median(times(all.get(0), WholeProcess.Taken::wall)),
                    Measured.least(processor),
                    Measured.median(processor),
                    Measured.median(processor) / Measured.median(times(all.get(0), WholeProcess.Taken::processor)),
                    Measured.least(memory),
                    Measured.median(memory)));
        }
        return table.append("\nRounds: ").append(rounds).append(".").toString();
    }

    private static double[] times(MutableList<WholeProcess.Taken> runs, DoubleFunction<WholeProcess.Taken> what) {
        return runs.collectDouble(what).toArray();
    }
}
