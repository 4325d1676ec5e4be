package coldseam.cli;

import coldseam.files.quantity.UnitSystem;
import picocli.CommandLine;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Option;

/** In which units numbers are printed. */
final class UnitsOption {

    @Option(
            names = "--units",
            paramLabel = "us|si",
            defaultValue = "si",
            description = "Units to print: us or si (default: ${DEFAULT-VALUE}).")
    UnitSystem units;

    /** What was asked of a command; SI where it has no such option. */
    static UnitSystem of(CommandLine command) {
        OptionSpec option = command.getCommandSpec().findOption("--units");
        return option == null || option.getValue() == null ? UnitSystem.SI : option.getValue();
    }
}
