package coldseam.cli;

import coldseam.audit.Audit;
import coldseam.audit.house.HouseAudit;
import coldseam.audit.house.Workshop;
import coldseam.files.quantity.UnitSystem;
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

    /**
     * Audits the house, saying how far it has come.
     *
     * @throws coldseam.files.FileFaultException with every fault of the file, or of the shape it describes
     */
    Audit audit(Workshop workshop, Terminal terminal) {
        HouseAudit ready = HouseAudit.of(house, store == null ? workshop : workshop.keepingIn(store));
        ProgressLines progress = new ProgressLines(terminal);
        try {
            return ready.compute(progress, () -> false);
        } finally {
            progress.close();
        }
    }
}
