package coldseam.benchmarks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/**
 * Runs whole processes and says what they took. Processor time and peak memory are read from {@code /proc}, so they need Linux;
 * elsewhere they are left out.
 *
 * @param classPath of the jar and of the programs here
 * @param folder for what a process says
 */
record WholeProcess(String classPath, Path folder) {

    /** Processor time is counted by the kernel in hundredths of a second. */
    private static final double TICK = 0.01;

    /** One process that ran, and those it started: s, s, MB; NaN or zero where it is not known. */
    record Taken(double wall, double processor, double memory) {}

    /**
     * Runs a program to its end.
     *
     * @throws IOException where it ends with a fault
     */
    Taken run(String... command) throws IOException, InterruptedException {
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
}
