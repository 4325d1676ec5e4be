package coldseam.cli;

import coldseam.audit.Audit;
import coldseam.audit.house.Workshop;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Audits a house and prints its findings, without documents. */
@Command(
        name = "check",
        description = "Audits a house and prints what it finds; writes nothing.",
        mixinStandardHelpOptions = true)
final class CheckCommand implements Callable<Integer> {

    private final Terminal terminal;
    private final Workshop workshop;

    @Mixin
    final HouseOptions options;

    CheckCommand(Terminal terminal, Workshop workshop, Optional<Path> usual) {
        this.terminal = terminal;
        this.options = new HouseOptions(usual);
        this.workshop = workshop;
    }

    @Override
    public Integer call() {
        Timings timings = new Timings();
        Audit audit = options.audit(workshop, terminal, timings);
        timings.begin("words");
        new VerdictText(audit, options.units()).full().forEach(terminal.out()::println);
        options.say(timings, terminal);
        return Exit.of(audit).code();
    }
}
