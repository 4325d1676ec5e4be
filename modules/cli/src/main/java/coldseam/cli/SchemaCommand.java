package coldseam.cli;

import coldseam.envelope.file.house.HouseFile;
import coldseam.report.AuditJson;
import coldseam.report.compare.CompareJson;
import coldseam.report.compare.RenovationJson;
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
        AUDIT,
        /** What {@code compare --json} writes of one house. */
        COMPARISON,
        /** What {@code compare --json} writes of two. */
        RENOVATION
    }

    private final Terminal terminal;

    @Parameters(
            paramLabel = "house|audit|comparison|renovation",
            defaultValue = "house",
            description =
                    "house for house files, audit for what audit --json writes, comparison and renovation for what"
                            + " compare --json writes of one house and of two (default: ${DEFAULT-VALUE}).")
    Of of;

    SchemaCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        String schema = switch (of) {
            case HOUSE -> HouseFile.schema();
            case AUDIT -> AuditJson.schema();
            case COMPARISON -> CompareJson.schema();
            case RENOVATION -> RenovationJson.schema();
        };
        terminal.out().println(schema.stripTrailing());
        return Exit.UNBROKEN.code();
    }
}
