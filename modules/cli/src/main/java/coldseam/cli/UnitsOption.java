package coldseam.cli;

import coldseam.files.WrittenIn;
import coldseam.files.quantity.UnitSystem;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Option;

/** In which units numbers are printed. */
final class UnitsOption {

    @Option(
            names = "--units",
            paramLabel = "us|si",
            description = "Units to print: us or si (default: those that the house file is written in, else si).")
    UnitSystem units;

    /** What was asked for, else what the house file is written in. */
    UnitSystem of(Path house) {
        return units == null ? WrittenIn.of(house) : units;
    }

    /** The same; SI where neither is given. */
    UnitSystem of(Optional<Path> house) {
        return house.map(this::of).orElse(units == null ? UnitSystem.SI : units);
    }

    /** What was asked of a command, or its house file is written in; SI where it has no such option. */
    static UnitSystem of(CommandLine command) {
        OptionSpec option = command.getCommandSpec().findOption("--units");
        UnitsOption printed = new UnitsOption();
        printed.units = option == null ? UnitSystem.SI : option.getValue();
        return printed.of(house(command));
    }

    private static Optional<Path> house(CommandLine command) {
        for (ArgSpec each : command.getCommandSpec().args()) {
            if (each.paramLabel().equals("HOUSE")) {
                Object given = each.getValue();
                return given instanceof Optional<?> some
                        ? some.map(Path.class::cast)
                        : Optional.ofNullable(given).map(Path.class::cast);
            }
        }
        return Optional.empty();
    }
}
