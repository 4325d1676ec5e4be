package coldseam.cli;

import coldseam.audit.house.Workshop;
import coldseam.files.quantity.UnitSystem;
import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;

/** The command with its subcommands. */
@Command(
        name = "coldseam",
        description = "Audits a house's continuous insulation and thermal bridges.",
        mixinStandardHelpOptions = true,
        versionProvider = VersionProvider.class,
        sortOptions = false)
final class Coldseam implements Runnable {

    @Spec
    CommandSpec spec;

    @Option(names = "--verbose", scope = ScopeType.INHERIT, description = "Show where a fault of our own happened.")
    boolean verbose;

    private Coldseam() {}

    /**
     * Runs the command.
     *
     * @param usual where solved sections are kept where nobody says; empty for nowhere
     * @return its exit code, one of {@link Exit}
     */
    static int run(Terminal terminal, Workshop workshop, Optional<Path> usual, String... arguments) {
        Coldseam root = new Coldseam();
        CommandLine command = new CommandLine(root);
        ImmutableList<Object> all = Lists.immutable.of(
                new StartCommand(terminal),
                new AuditCommand(terminal, workshop, usual),
                new CheckCommand(terminal, workshop, usual),
                new CompareCommand(terminal, workshop, usual),
                new SectionCommand(terminal),
                new CatalogueCommand(terminal, workshop),
                new DetailCommand(terminal, workshop),
                new SchemaCommand(terminal));
        // To look through the options of all of them takes longer than to tell what an earlier run kept.
        ImmutableList<Object> asked = all.select(each -> arguments.length > 0
                && each.getClass().getAnnotation(Command.class).name().equals(arguments[0]));
        (asked.isEmpty() ? all : asked).forEach(command::addSubcommand);
        command.setCaseInsensitiveEnumValuesAllowed(true)
                .setOut(terminal.out())
                .setErr(terminal.err())
                .setUsageHelpWidth(Terminal.WIDTH)
                .setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF))
                .setParameterExceptionHandler((thrown, args) -> Failures.refuseArguments(thrown, terminal))
                .setExecutionExceptionHandler(
                        (thrown, at, parsed) -> Failures.report(thrown, terminal, UnitsOption.of(at), root.verbose)
                                .code());
        exitCodesInHelp(command);
        int code;
        try {
            code = command.execute(arguments);
        } catch (Error fatal) {
            code = Failures.report(fatal, terminal, UnitSystem.SI, root.verbose).code();
        }
        terminal.flush();
        return code;
    }

    private static void exitCodesInHelp(CommandLine command) {
        java.util.Map<String, String> codes = new java.util.LinkedHashMap<>();
        for (Exit exit : Exit.values()) {
            codes.put(" " + exit.code(), exit.meaning());
        }
        command.getCommandSpec()
                .usageMessage()
                .exitCodeListHeading("%nExit codes:%n")
                .exitCodeList(codes)
                .footer(
                        "",
                        "To begin: coldseam start my-house.yaml, then coldseam check my-house.yaml.",
                        "Of one command: coldseam check --help.");
    }

    @Override
    public void run() {
        throw new ParameterException(
                spec.commandLine(),
                "Which command? start, audit, check, compare, section, catalogue, detail or"
                        + "\nschema. To begin: coldseam start my-house.yaml");
    }
}
