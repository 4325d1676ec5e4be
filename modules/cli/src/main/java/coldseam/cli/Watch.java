package coldseam.cli;

import coldseam.audit.Audit;
import coldseam.audit.house.HouseAudit;
import coldseam.audit.house.Workshop;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.catalogue.CatalogueFile;
import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * Checks a house again each time that it is saved and says what changed, in one workshop: what is as before is not solved again.
 *
 * @param house its file
 * @param workshop remembers what it has solved
 */
record Watch(Path house, Workshop workshop, UnitSystem units, Terminal terminal, boolean verbose) {

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
        ImmutableList<Path> files = Lists.immutable.of(house);
        String state;
        Exit exit;
        do {
            // Before the files are read: what is saved meanwhile is read next.
            state = waiting.state(files);
            try {
                HouseAudit ready = HouseAudit.of(house, workshop);
                ImmutableList<Path> read = Lists.immutable
                        .of(house)
                        .newWithAll(CatalogueFile.own(ready.catalogue()).collect(house::resolveSibling));
                if (!read.equals(files)) {
                    files = read;
                    state = waiting.state(files);
                }
                Audit audit = audited(ready);
                VerdictText text = new VerdictText(audit, units);
                last.map(text::since).orElseGet(text::full).forEach(terminal.out()::println);
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

    private Audit audited(HouseAudit ready) {
        ProgressLines lines = new ProgressLines(terminal);
        try {
            return ready.compute(lines, () -> false);
        } finally {
            lines.close();
        }
    }
}
