package coldseam.cli;

import coldseam.files.AtomicFiles;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.eclipse.collections.api.factory.Lists;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes a house file to begin with: one of the demo houses, unbroken as it stands. */
@Command(
        name = "start",
        description = "Writes a house file that works, to begin with: change in it what differs in yours.",
        mixinStandardHelpOptions = true)
final class StartCommand implements Callable<Integer> {

    private final Terminal terminal;

    @Parameters(
            index = "0",
            paramLabel = "FILE",
            description = "House file to write, such as my-house.yaml; one that is there already stays.")
    Path file;

    @Option(
            names = "--old",
            description =
                    "An old brick house with a walk-out terrace over a room, insulated outside; without it a small new house.")
    boolean old;

    StartCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws IOException {
        if (Files.exists(file, LinkOption.NOFOLLOW_LINKS) && !Files.isDirectory(file)) {
            throw new RefusedException(file + ": is there already; name another file");
        }
        Outputs.refuse(Lists.immutable.empty(), Lists.immutable.of(file));
        AtomicFiles.write(file, house(old ? "brick-house.yaml" : "first-house.yaml"));
        terminal.written(Lists.immutable.of(file));
        terminal.out().println("Next:    coldseam check " + asTyped(file.toString()));
        terminal.out().println("Then:    coldseam audit " + asTyped(file.toString()) + " -o " + asTyped(pdf(file)));
        terminal.fold("Change a few lines of it and check again; with --watch it is checked each time it is saved.");
        return Exit.UNBROKEN.code();
    }

    private static String asTyped(String path) {
        return path.contains(" ") ? '"' + path + '"' : path;
    }

    /** Beside it, by its name. */
    private static String pdf(Path file) {
        return file.resolveSibling(file.getFileName().toString().replaceFirst("(?<=.)\\.[^.]*$", "") + ".pdf")
                .toString();
    }

    private static byte[] house(String name) {
        try (InputStream in = StartCommand.class.getResourceAsStream("houses/" + name)) {
            return in.readAllBytes();
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }
}
