package coldseam.benchmarks;

import java.io.FileDescriptor;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/**
 * Times whole audits to PDF of generated houses of growing size, from a cold start and then with everything kept.
 *
 * <p>Arguments: the class path of the jar and of this program, and a folder to work in.
 */
public final class Growth {

    /** From few to many surfaces with the same sections, then more sections and points. */
    private static final List<HouseGenerator> HOUSES = List.of(
            new HouseGenerator(100, 8, 60),
            new HouseGenerator(200, 8, 60),
            new HouseGenerator(500, 8, 60),
            new HouseGenerator(1000, 8, 60),
            new HouseGenerator(1000, 28, 300));

    private Growth() {}

    /** Runs everything and prints the table. */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        PrintStream out = Measured.printing(FileDescriptor.out);
        Path folder = Files.createDirectories(Path.of(arguments[1]));
        WholeProcess process = new WholeProcess(arguments[0], folder);
        Path house = folder.resolve("house.yaml");
        Path pdf = folder.resolve("out.pdf");
        out.println(
                "| walls | build-ups | sets of points | cold: wall, s | processor, s | peak memory, MB"
                        + " | kept: wall, s | processor, s | peak memory, MB | PDF, MB |\n|---|---|---|---|---|---|---|---|---|---|");
        for (HouseGenerator each : HOUSES) {
            Files.writeString(house, each.text());
            String[] command = {
                "coldseam.cli.Main",
                "audit",
                house.toString(),
                "-o",
                pdf.toString(),
                "--store",
                folder.resolve(each.surfaces() + "-" + each.walls()).toString()
            };
            WholeProcess.Taken cold = process.run(command);
            WholeProcess.Taken kept = process.run(command);
            out.printf(
                    Locale.ROOT,
                    "| %d | %d | %d | %.1f | %.1f | %.0f | %.1f | %.1f | %.0f | %.1f |%n",
                    each.surfaces(),
                    each.walls(),
                    each.points(),
                    cold.wall(),
                    cold.processor(),
                    cold.memory(),
                    kept.wall(),
                    kept.processor(),
                    kept.memory(),
                    1e-6 * Files.size(pdf));
        }
    }
}
