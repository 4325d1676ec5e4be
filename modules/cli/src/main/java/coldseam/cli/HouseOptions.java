package coldseam.cli;

import coldseam.audit.Audit;
import coldseam.audit.Work;
import coldseam.audit.engine.Progress;
import coldseam.audit.house.HouseAudit;
import coldseam.audit.house.Workshop;
import coldseam.conduction.Budget;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.store.KeptFolder;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.BiFunction;
import org.eclipse.collections.api.factory.Lists;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What every command about a house takes. */
final class HouseOptions {

    @Parameters(paramLabel = "HOUSE", description = "House file, YAML or JSON.")
    Path house;

    @Mixin
    UnitsOption printed;

    @Option(
            names = "--store",
            paramLabel = "DIR",
            description = "Keeps solved sections in this folder, for later runs; may be emptied at any time. Default:"
                    + " the user's folder for caches, of which at most 256 MB are used.")
    Path store;

    @Option(names = "--no-store", description = "Keeps nothing and takes nothing that was kept.")
    boolean noStore;

    @Option(names = "--timings", description = "Says on standard error where the time went.")
    boolean timed;

    @Option(
            names = "--unknowns",
            paramLabel = "N",
            description =
                    "Most unknowns of one section or body; an interval that would need more stays wider, and that is said."
                            + " Default: as many as the Java machine's memory allows.")
    Optional<Integer> unknowns = Optional.empty();

    private final Optional<Path> usual;

    /** @param usual where solved sections are kept where nobody says; empty for nowhere */
    HouseOptions(Optional<Path> usual) {
        this.usual = usual;
    }

    /** What numbers are printed in. */
    UnitSystem units() {
        return printed.units;
    }

    /**
     * Audits the house, saying how far it has come.
     *
     * @param timings hears of each phase
     * @throws coldseam.files.FileFaultException with every fault of the file, or of the shape it describes
     * @throws RefusedException where options contradict each other
     */
    Audit audit(Workshop workshop, Terminal terminal, Timings timings) {
        return working(workshop, terminal, (shop, lines) -> {
            timings.begin("read");
            HouseAudit ready = HouseAudit.of(house, shop);
            timings.begin("plan");
            return ready.compute(new Timed(lines, timings), () -> false);
        });
    }

    /** Says when each step begins, and beforehand what there is to do where somebody wants timings. */
    private final class Timed implements Progress {

        private final Progress lines;
        private final Timings timings;

        Timed(Progress lines, Timings timings) {
            this.lines = lines;
            this.timings = timings;
        }

        @Override
        public void begins(Work work) {
            if (timed) {
                timings.plans(work);
            }
            lines.begins(work);
        }

        @Override
        public void at(String step, int done, int of) {
            if (done == 0) {
                timings.begin(step);
            } else if (done == of) {
                timings.begin("findings");
            }
            lines.at(step, done, of);
        }
    }

    /**
     * Does work that solves sections, saying how far it has come and what is kept of it.
     *
     * @throws RefusedException where options contradict each other
     */
    <T> T working(Workshop workshop, Terminal terminal, BiFunction<Workshop, Progress, T> work) {
        Optional<KeptFolder> kept = kept();
        ProgressLines lines = new ProgressLines(terminal);
        try {
            Workshop within = workshop.within(budget(workshop));
            return work.apply(kept.map(within::keepingIn).orElse(within), lines);
        } finally {
            lines.close();
            kept.ifPresent(folder -> say(folder, terminal));
        }
    }

    private Budget budget(Workshop workshop) {
        if (unknowns.filter(each -> each < Budget.LEAST).isPresent()) {
            throw new RefusedException(Lists.immutable.of("--unknowns must be at least " + Budget.LEAST + ", got "
                    + unknowns.get() + "; leave it out for as many as the memory allows"));
        }
        return unknowns.map(Budget::of).orElse(workshop.budget());
    }

    private Optional<KeptFolder> kept() {
        if (noStore && store != null) {
            throw new RefusedException(
                    Lists.immutable.of("--no-store and --store " + store + " contradict each other; give one of them"));
        }
        return noStore
                ? Optional.empty()
                : Optional.ofNullable(store)
                        .map(KeptFolder::in)
                        .or(() -> usual.map(folder -> KeptFolder.in(folder, KeptFolder.USUAL_LIMIT)));
    }

    /** One line: somebody who is not told of a folder cannot delete it. */
    private static void say(KeptFolder folder, Terminal terminal) {
        folder.trouble()
                .ifPresentOrElse(why -> terminal.err().println("Nothing is kept for the next run: " + why), () -> {
                    if (folder.found() + folder.added() > 0) {
                        terminal.err()
                                .println("Kept results: " + folder.found() + " found, " + folder.added() + " added in "
                                        + folder.folder() + " (safe to delete)");
                    }
                });
        terminal.err().flush();
    }

    /** Says where the time went, if somebody asked. */
    void say(Timings timings, Terminal terminal) {
        if (timed) {
            terminal.err().print(timings.text());
            terminal.err().flush();
        }
    }
}
