package coldseam.cli;

import coldseam.audit.house.HouseAudit;
import coldseam.audit.house.Workshop;
import coldseam.junctions.TypicalBuild;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;

/** Between which layers an option of the catalogue is computed. */
final class LayerOptions {

    @Option(names = "--house", paramLabel = "HOUSE", description = "Between the layers of this house file.")
    Optional<Path> house;

    @Option(
            names = "--first",
            paramLabel = "ASSEMBLY",
            description = "The first surface's build-up, by its name in the house file or among the typical ones.")
    Optional<String> first;

    @Option(names = "--second", paramLabel = "ASSEMBLY", description = "The second surface's build-up, likewise.")
    Optional<String> second;

    @Option(
            names = "--build",
            paramLabel = "masonry|frame",
            defaultValue = "masonry",
            description = "Which typical build-ups stand in where no house gives any (default: ${DEFAULT-VALUE}).")
    TypicalBuild build;

    private Optional<HouseAudit> read = Optional.empty();

    /** Whether neither a house nor a build-up is named. */
    boolean notNamed() {
        return house.isEmpty() && first.isEmpty() && second.isEmpty();
    }

    /** The house that was named, read and checked once for all that ask; empty where none was. */
    Optional<HouseAudit> house(Workshop workshop) {
        if (read.isEmpty()) {
            read = house.map(path -> HouseAudit.of(path, workshop));
        }
        return read;
    }

    Layers layers(Workshop workshop) {
        return Layers.of(house(workshop), first, second, build);
    }
}
