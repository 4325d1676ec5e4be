package coldseam.cli;

import coldseam.audit.house.Workshop;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.eclipse.collections.api.factory.Lists;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;

/** Audits a house and prints its findings, without documents. */
@Command(
        name = "check",
        description = "Audits a house and prints what it finds; writes nothing.",
        mixinStandardHelpOptions = true)
final class CheckCommand implements Callable<Integer> {

    private final Terminal terminal;

    @Mixin
    final HouseOptions options;

    @ParentCommand
    Coldseam root;

    @Option(
            names = "--watch",
            description =
                    "Checks again each time the house file, or a detail of its own, is saved, and says what changed.")
    boolean watch;

    CheckCommand(Terminal terminal, Workshop workshop, Optional<Path> usual) {
        this.terminal = terminal;
        this.options = new HouseOptions(terminal, workshop, usual);
    }

    @Override
    public Integer call() {
        if (watch) {
            if (options.timed) {
                throw new RefusedException(
                        "--watch: got it with --timings; allowed: one of them. Leave --watch out for the phases of one run");
            }
            return options.living(within ->
                    new Watch(options.house, within, options::units, terminal, root.verbose).run(Polling.USUAL));
        }
        Timings timings = Timings.when(options.timed);
        Told told = options.tell(
                timings,
                Lists.immutable.of("check", options.units().name()),
                () -> {},
                shell -> (audit, drawn) -> new Told(
                        Exit.of(audit).code(),
                        new VerdictText(audit, options.units()).full(),
                        Lists.immutable.empty()));
        terminal.lines(told.lines());
        options.say(timings);
        return told.code();
    }
}
