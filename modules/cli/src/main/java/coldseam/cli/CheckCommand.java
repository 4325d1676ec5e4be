package coldseam.cli;

import coldseam.audit.Audit;
import coldseam.audit.house.Workshop;
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
    HouseOptions options;

    CheckCommand(Terminal terminal, Workshop workshop) {
        this.terminal = terminal;
        this.workshop = workshop;
    }

    @Override
    public Integer call() {
        Audit audit = options.audit(workshop, terminal);
        new VerdictText(audit, options.units).full().forEach(terminal.out()::println);
        return Exit.of(audit).code();
    }
}
