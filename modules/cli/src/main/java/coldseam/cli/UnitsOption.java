package coldseam.cli;

import coldseam.files.quantity.UnitSystem;
import picocli.CommandLine.Option;

/** In which units numbers are printed. */
final class UnitsOption {

    @Option(
            names = "--units",
            paramLabel = "us|si",
            defaultValue = "si",
            description = "Units to print: us or si (default: ${DEFAULT-VALUE}).")
    UnitSystem units;
}
