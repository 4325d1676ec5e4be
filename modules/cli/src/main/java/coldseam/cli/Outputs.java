package coldseam.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;

/** Looks before the work begins whether its results can be written where they were asked for. */
final class Outputs {

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
        MutableList<Path> seen =
                inputs.collect(input -> input.toAbsolutePath().normalize()).toList();
        for (Path output : outputs) {
            Path path = output.toAbsolutePath().normalize();
            if (seen.contains(path)) {
                faults.add(output + ": named twice, as input or another output; name another file");
            }
            seen.add(path);
            fault(path).ifPresent(fault -> faults.add(output + ": " + fault));
        }
        if (faults.notEmpty()) {
            throw new RefusedException(faults.toImmutable());
        }
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
