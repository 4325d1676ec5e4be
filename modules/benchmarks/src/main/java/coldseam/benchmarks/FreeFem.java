package coldseam.benchmarks;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;

/**
 * FreeFEM, a general-purpose finite-element package.
 *
 * @param folder to work in
 * @param command that starts it
 */
record FreeFem(Path folder, String command) {

    /** Writes a mesh and says where it is. */
    Path mesh(String name, String content) throws IOException {
        return Files.writeString(folder.resolve(name), content);
    }

    /** The words of each line of results that a script prints; none where it takes longer than so many seconds. */
    ImmutableList<String[]> results(String name, String script, long patience)
            throws IOException, InterruptedException {
        Path file = Files.writeString(folder.resolve(name + ".edp"), script);
        Path said = folder.resolve(name + ".out");
        Process process = new ProcessBuilder(command, "-nw", "-v", "0", file.toString())
                .redirectErrorStream(true)
                .redirectOutput(said.toFile())
                .start();
        if (!process.waitFor(patience, TimeUnit.SECONDS)) {
            process.destroyForcibly().waitFor();
            return Lists.immutable.empty();
        }
        return Lists.immutable
                .withAll(Files.readAllLines(said, StandardCharsets.ISO_8859_1))
                .select(line -> line.startsWith("RESULT"))
                .collect(line -> line.strip().split("\\s+"));
    }
}
