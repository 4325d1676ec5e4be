package coldseam.cli;

import coldseam.envelope.file.house.HouseFile;
import coldseam.report.AuditJson;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Prints the JSON Schema of a kind of file. */
@Command(
        name = "schema",
        description = "Prints the JSON Schema of a file, for editors and programs.",
        mixinStandardHelpOptions = true)
final class SchemaCommand implements Callable<Integer> {

    /** Files with a schema. */
    enum Of {
        /** What people write. */
        HOUSE,
        /** What {@code audit --json} writes. */
        AUDIT
    }

    private final Terminal terminal;

    @Parameters(
            paramLabel = "house|audit",
            defaultValue = "house",
            description = "house for house files, audit for what --json writes (default: ${DEFAULT-VALUE}).")
    Of of;

    SchemaCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        String schema = of == Of.HOUSE ? HouseFile.schema() : AuditJson.schema();
        terminal.out().println(schema.stripTrailing());
        return Exit.UNBROKEN.code();
    }
}
