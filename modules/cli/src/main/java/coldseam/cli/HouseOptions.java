package coldseam.cli;

import coldseam.audit.Audit;
import coldseam.audit.Work;
import coldseam.audit.engine.Progress;
import coldseam.audit.house.HouseAudit;
import coldseam.audit.house.Workshop;
import coldseam.conduction.Budget;
import coldseam.envelope.shell.Shell;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.Keeping;
import coldseam.junctions.catalogue.CatalogueFile;
import coldseam.junctions.store.KeptFolder;
import coldseam.junctions.store.RunStore;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.ForkJoinTask;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
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

    private final Terminal terminal;
    private final Workshop workshop;
    private final Optional<Path> usual;

    /** @param usual where solved sections are kept where nobody says; empty for nowhere */
    HouseOptions(Terminal terminal, Workshop workshop, Optional<Path> usual) {
        this.terminal = terminal;
        this.workshop = workshop;
        this.usual = usual;
    }

    /** What numbers are printed in: what was asked for, else what the house is written in. */
    UnitSystem units() {
        return printed.of(house);
    }

    /**
     * Audits the house, saying how far it has come, and tells of it; or tells what an earlier run told that read the very same.
     *
     * @param timings hears of each phase
     * @param asked what decides beside the house what is told
     * @param meanwhile done on another core while the house is read, and over before it is told of; what it throws is thrown
     * @param telling given the shell before anything of the house is solved: everything that is printed and written of its audit,
     *     with what earlier runs drew
     * @throws coldseam.files.FileFaultException with every fault of the file, or of the shape it describes
     * @throws RefusedException where options contradict each other
     */
    Told tell(
            Timings timings,
            ImmutableList<String> asked,
            Runnable meanwhile,
            Function<Shell, BiFunction<Audit, Keeping, Told>> telling) {
        timings.begin("look up");
        Optional<KeptFolder> kept = kept();
        Optional<RunStore> before = kept.flatMap(folder ->
                workshop.identity().flatMap(tool -> RunStore.of(folder, tool, house, asked.newWithAll(limits()))));
        Optional<Told> known = before.flatMap(RunStore::find).map(Told::read);
        if (known.isPresent()) {
            terminal.err()
                    .println("Kept results: all of this audit, in "
                            + kept.orElseThrow().folder() + " (safe to delete)");
            return known.get();
        }
        return working(kept, (shop, lines) -> {
            timings.begin("read");
            ForkJoinTask<?> beside = ForkJoinTask.adapt(meanwhile);
            HouseAudit ready = HouseAudit.of(house, shop, beside::fork);
            BiFunction<Audit, Keeping, Told> teller = telling.apply(ready.shell());
            timings.begin("plan");
            Audit audit = ready.compute(new Timed(lines, timings));
            timings.begin("documents");
            beside.join();
            Told told = teller.apply(audit, shop.results());
            before.ifPresent(run -> run.keep(audit.inputDigest(), CatalogueFile.own(ready.catalogue()), told.write()));
            return told;
        });
    }

    /** What solves are held to: another run with more memory may tell more. */
    private ImmutableList<String> limits() {
        return Lists.immutable.of(
                budget().toString(), Long.toString(Runtime.getRuntime().maxMemory()));
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
            HeapRoom.suit(work.unknowns());
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
    <T> T working(BiFunction<Workshop, Progress, T> work) {
        return working(kept(), work);
    }

    private <T> T working(Optional<KeptFolder> kept, BiFunction<Workshop, Progress, T> work) {
        ProgressLines lines = new ProgressLines(terminal);
        try {
            return work.apply(within(kept), lines);
        } finally {
            lines.close();
            kept.ifPresent(folder -> say(folder));
        }
    }

    /** Does work that goes on for as long as somebody wants it. */
    int living(Function<Workshop, Integer> work) {
        return work.apply(within(kept()));
    }

    private Workshop within(Optional<KeptFolder> kept) {
        Workshop within = workshop.within(budget());
        return kept.map(within::keepingIn).orElse(within);
    }

    private Budget budget() {
        if (unknowns.filter(each -> each < Budget.LEAST).isPresent()) {
            throw new RefusedException("--unknowns must be at least " + Budget.LEAST + ", got " + unknowns.get()
                    + "; leave it out for as many as the memory allows");
        }
        return unknowns.map(Budget::of).orElse(workshop.budget());
    }

    private Optional<KeptFolder> kept() {
        if (noStore && store != null) {
            throw new RefusedException("--no-store and --store " + store + " contradict each other; give one of them");
        }
        return noStore
                ? Optional.empty()
                : Optional.ofNullable(store)
                        .map(KeptFolder::in)
                        .or(() -> usual.map(folder -> KeptFolder.in(folder, KeptFolder.USUAL_LIMIT)));
    }

    /** One line: somebody who is not told of a folder cannot delete it. */
    private void say(KeptFolder folder) {
        folder.trouble()
                .ifPresentOrElse(
                        why -> terminal.err().println("Nothing is kept for the next run: " + Failures.io(why)), () -> {
                            if (folder.found() + folder.added() > 0) {
                                terminal.err()
                                        .println("Kept results: " + folder.found() + " found, " + folder.added()
                                                + " added in " + folder.folder() + " (safe to delete)");
                            }
                        });
        terminal.err().flush();
    }

    /** Says where the time went, if somebody asked. */
    void say(Timings timings) {
        if (timed) {
            terminal.err().print(timings.text());
            terminal.err().flush();
        }
    }
}
