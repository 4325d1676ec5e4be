package coldseam.cli;

import coldseam.audit.Audit;
import coldseam.audit.house.HouseAudit;
import coldseam.audit.house.Workshop;
import coldseam.files.quantity.UnitSystem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * Checks a house again each time that it is saved and says what changed, in one workshop: what is as before is not solved again.
 *
 * @param printed in which units; asked each time, since they may be the file's own
 * @param workshop remembers what it has solved
 */
record Watch(Path house, Workshop workshop, Supplier<UnitSystem> printed, Terminal terminal, boolean verbose) {

    /** A file's name as a value in YAML or JSON. */
    private static final Pattern NAMED =
            Pattern.compile("[^-\\s,:{}\\[\\]\"'#<>|?*][^\\n,:{}\\[\\]\"'#<>|?*]*?\\.(?:yaml|yml|json)\\b");

    /** Waits for a change of files. */
    interface Waiting {
        /** What changes when one of the files does. */
        String state(ImmutableList<Path> files);

        /** Waits until their state is another one; false where nobody waits any more. */
        boolean saved(ImmutableList<Path> files, String state);
    }

    /**
     * Checks until nobody waits any more.
     *
     * @return the last exit code
     */
    int run(Waiting waiting) {
        Optional<Audit> last = Optional.empty();
        ImmutableList<Path> files;
        String state;
        Exit exit;
        do {
            // Before the files are read: what is saved meanwhile is read next.
            files = files();
            state = waiting.state(files);
            UnitSystem units = printed.get();
            try {
                Audit audit = audited(HouseAudit.of(house, workshop));
                VerdictText text = new VerdictText(audit, units);
                terminal.lines(last.map(text::since).orElseGet(text::full));
                exit = Exit.of(audit);
                last = Optional.of(audit);
            } catch (RuntimeException thrown) {
                exit = Failures.report(thrown, terminal, units, verbose);
            }
            terminal.out().println();
            terminal.out().println("Waiting for " + house + " to be saved; Ctrl+C ends.");
            terminal.flush();
        } while (waiting.saved(files, state));
        return exit.code();
    }

    /** The house's file and those beside it that its text names, whether they are there and can be read or not. */
    private ImmutableList<Path> files() {
        try {
            return Lists.immutable
                    .of(house)
                    .newWithAll(Lists.immutable.fromStream(NAMED.matcher(Files.readString(house))
                            .results()
                            .flatMap(name -> beside(name.group()).stream())
                            .distinct()));
        } catch (IOException gone) {
            return Lists.immutable.of(house);
        }
    }

    /** Empty where the name is none that a file can have on this machine. */
    private Optional<Path> beside(String name) {
        try {
            return Optional.of(house.resolveSibling(name));
        } catch (InvalidPathException noName) {
            return Optional.empty();
        }
    }

    private Audit audited(HouseAudit ready) {
        ProgressLines lines = new ProgressLines(terminal);
        try {
            return ready.compute(lines);
        } finally {
            lines.close();
        }
    }
}
