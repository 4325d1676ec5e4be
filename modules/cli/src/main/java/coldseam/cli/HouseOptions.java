package coldseam.cli;

import coldseam.envelope.quantity.UnitSystem;
import java.nio.file.Path;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What every command about a house takes. */
final class HouseOptions {

    @Parameters(paramLabel = "HOUSE", description = "House file, YAML or JSON.")
    Path house;

    @Option(
            names = "--units",
            paramLabel = "us|si",
            defaultValue = "si",
            description = "Units to print: us or si (default: ${DEFAULT-VALUE}).")
    UnitSystem units;

    @Option(
            names = "--store",
            paramLabel = "DIR",
            description = "Keeps solved sections in this folder, for later runs; may be emptied at any time.")
    Path store;

    /** The workshop, with the store that was asked for. */
    Workshop in(Workshop workshop) {
        return store == null ? workshop : workshop.keepingIn(store);
    }
}
