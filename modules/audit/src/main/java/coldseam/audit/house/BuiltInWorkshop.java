package coldseam.audit.house;

import coldseam.conduction.Accuracy;
import coldseam.envelope.House;
import coldseam.envelope.JunctionChoice;
import coldseam.files.KnownNames;
import coldseam.junctions.BridgeComputer;
import coldseam.junctions.catalogue.Catalogue;
import coldseam.junctions.catalogue.CatalogueFile;
import coldseam.junctions.compute.BridgeComputers;
import coldseam.junctions.store.KeptFolder;
import java.nio.file.Path;

/** The catalogue that comes with the tool, details of files beside the house file, and the conduction core. */
public final class BuiltInWorkshop implements Workshop {

    private final BridgeComputer computer;

    /** Keeping what it solves in memory only. */
    public BuiltInWorkshop() {
        this(BridgeComputers.computer(Accuracy.standard()));
    }

    private BuiltInWorkshop(BridgeComputer computer) {
        this.computer = computer;
    }

    @Override
    public KnownNames known(Path houseFile) {
        return CatalogueFile.names(CatalogueFile.builtIn().junctions(), folder(houseFile));
    }

    @Override
    public Catalogue catalogue(House house, Path houseFile) {
        return CatalogueFile.withOwn(
                CatalogueFile.builtIn(),
                folder(houseFile),
                house.choices().collect(JunctionChoice::detail),
                house.points().flatCollect(points -> points.detail().stream().toList()));
    }

    @Override
    public BridgeComputer computer() {
        return computer;
    }

    @Override
    public Workshop keepingIn(KeptFolder folder) {
        return new BuiltInWorkshop(BridgeComputers.computer(Accuracy.standard(), folder));
    }

    private static Path folder(Path houseFile) {
        return houseFile.toAbsolutePath().getParent();
    }
}
