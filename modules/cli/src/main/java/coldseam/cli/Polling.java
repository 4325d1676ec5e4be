package coldseam.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.Duration;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * Looks at files every now and then: what the platform tells of changes differs, and tells of folders, not of files that are
 * replaced as a whole.
 *
 * @param between two looks
 */
record Polling(Duration between) implements Watch.Waiting {

    /** Sooner than a person notices. */
    static final Polling USUAL = new Polling(Duration.ofMillis(150));

    @Override
    public boolean saved(ImmutableList<Path> files, String state) {
        try {
            String now = state(files);
            while (now.equals(state)) {
                Thread.sleep(between.toMillis());
                now = state(files);
            }
            // Some programs write a file in pieces, or take the old one away first.
            String then = now;
            do {
                now = then;
                Thread.sleep(between.toMillis());
                then = state(files);
            } while (!then.equals(now));
            return true;
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    @Override
    public String state(ImmutableList<Path> files) {
        return files.collect(Polling::state).makeString();
    }

    private static String state(Path file) {
        try {
            BasicFileAttributes of = Files.readAttributes(file, BasicFileAttributes.class);
            return of.lastModifiedTime() + " " + of.size();
        } catch (IOException gone) {
            return "none";
        }
    }
}
