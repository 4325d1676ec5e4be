package coldseam.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * Makes the archive of the classes that an audit loads, beside the jar that it loads them from, as {@link Restart} takes it.
 *
 * <p>The JVM writes it when an audit ends that runs as anybody's does. It holds for this jar in this place and this JVM alone, so it
 * is no part of what is released; where it cannot be made, all works without it.
 */
final class ClassArchive {

    private ClassArchive() {}

    /** Arguments: the jar and a house to audit. */
    public static void main(String... arguments) throws IOException, InterruptedException {
        if (!make(Path.of(arguments[0]), Path.of(arguments[1]))) {
            System.err.println("No archive of the classes could be made; all works without it.");
        }
    }

    /**
     * Makes it anew, without the one that was.
     *
     * @return whether there is one
     */
    static boolean make(Path jar, Path house) throws IOException, InterruptedException {
        Path real = jar.toRealPath();
        Path archive = Restart.archive(real);
        Files.deleteIfExists(archive);
        Path folder = Files.createTempDirectory("coldseam");
        Path whole = archive.resolveSibling(archive.getFileName() + ".part");
        try {
            List<String> line = new ArrayList<>(Restart.line(
                            Path.of(System.getProperty("java.home"), "bin", "java"),
                            List.of(),
                            real.toString(),
                            List.of(
                                    "audit",
                                    house.toString(),
                                    "-o",
                                    folder.resolve("audit.pdf").toString(),
                                    "--store",
                                    folder.resolve("store").toString()))
                    .orElseThrow());
            line.addAll(1, List.of("-Xlog:disable", "-XX:ArchiveClassesAtExit=" + whole));
            int code = new ProcessBuilder(line)
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start()
                    .waitFor();
            if (code > Exit.FOUND.code() || !Files.exists(whole)) {
                return false;
            }
            // Only now, by this stamp, is it known for whole.
            Files.setLastModifiedTime(whole, Files.getLastModifiedTime(real));
            Files.move(whole, archive, StandardCopyOption.REPLACE_EXISTING);
            return true;
        } finally {
            Files.deleteIfExists(whole);
            try (Stream<Path> all = Files.walk(folder)) {
                for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(each);
                }
            }
        }
    }
}
