package coldseam.cli;

import coldseam.files.AtomicFiles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;

/** Looks before the work begins whether its results can be written where they were asked for, and writes them when it is done. */
final class Outputs {

    /**
     * A file that was asked for.
     *
     * @param content made when its turn comes
     */
    record Document(Path path, Supplier<byte[]> content) {}

    private Outputs() {}

    /** The same for one input. */
    static void refuse(Path input, ImmutableList<Path> outputs) {
        refuse(Lists.immutable.of(input), outputs);
    }

    /**
     * Refuses places that cannot be written.
     *
     * @param inputs that must not be written over
     * @throws RefusedException with every one
     */
    static void refuse(ImmutableList<Path> inputs, ImmutableList<Path> outputs) {
        MutableList<String> faults = Lists.mutable.empty();
        MutableList<Path> seen = inputs.collect(Outputs::place).toList();
        for (Path output : outputs) {
            Path path = place(output);
            if (seen.contains(path)) {
                faults.add(output + ": named twice, as input or another output; name another file");
            } else if (seen.anySatisfy(each -> each.toString().equalsIgnoreCase(path.toString()))) {
                faults.add(output + ": differs from another file named by capitals alone, which many machines take for"
                        + " the same file; name another one");
            }
            seen.add(path);
            fault(path).ifPresent(fault -> faults.add(output + ": " + fault));
        }
        RefusedException.throwIfAny(faults);
    }

    /** Where a path leads through links, as far as it is there. */
    private static Path place(Path path) {
        Path whole = path.toAbsolutePath();
        for (Path there = whole; there != null; there = there.getParent()) {
            try {
                return there.toRealPath().resolve(there.relativize(whole)).normalize();
            } catch (IOException notThere) {
                continue;
            }
        }
        return whole.normalize();
    }

    /**
     * Writes each document that can be written, and says so of it: that one is open in another program loses no other.
     *
     * @throws RefusedException with why each of the others could not be written
     */
    static void write(Terminal terminal, Iterable<Document> documents) {
        MutableList<String> faults = Lists.mutable.empty();
        for (Document each : documents) {
            try {
                AtomicFiles.write(each.path(), each.content().get());
                terminal.written(Lists.immutable.of(each.path()));
            } catch (IOException failed) {
                faults.add(Failures.io(failed));
            }
        }
        RefusedException.throwIfAny(faults);
    }

    private static Optional<String> fault(Path path) {
        if (Files.isDirectory(path)) {
            return Optional.of("is a folder; name a file in it");
        }
        if (Files.exists(path) && !Files.isWritable(path)) {
            return Optional.of("is there and may not be written over; name another file, or let it be written");
        }
        Path folder = path.getParent();
        while (folder != null && !Files.exists(folder)) {
            folder = folder.getParent();
        }
        if (folder == null || !Files.isDirectory(folder)) {
            return Optional.of("cannot be made, since " + folder + " is not a folder; choose another place");
        }
        return Files.isWritable(folder)
                ? Optional.empty()
                : Optional.of(
                        "cannot be made, since the folder " + folder + " may not be written; choose another place");
    }
}
