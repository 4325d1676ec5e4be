package coldseam.cli;

import coldseam.envelope.file.house.HouseFile;
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
        HOUSE
    }

    private final Terminal terminal;

    @Parameters(paramLabel = "house", defaultValue = "house", description = "Which file: ${COMPLETION-CANDIDATES}.")
    Of of;

    SchemaCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        terminal.out().println(HouseFile.schema().stripTrailing());
        return Exit.UNBROKEN.code();
    }
}
