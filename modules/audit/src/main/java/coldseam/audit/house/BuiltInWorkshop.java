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
import coldseam.junctions.vertex.VertexComputer;
import coldseam.junctions.vertex.VertexComputing;
import java.nio.file.Path;
import java.util.Optional;

/** The catalogue that comes with the tool, details of files beside the house file, and the conduction core. */
public final class BuiltInWorkshop implements Workshop {

    private final BridgeComputer computer;
    private final VertexComputing vertices;

    /** Keeping what it solves in memory only. */
    public BuiltInWorkshop() {
        this(BridgeComputers.computer(Accuracy.standard()), VertexComputer.inMemory());
    }

    private BuiltInWorkshop(BridgeComputer computer, VertexComputing vertices) {
        this.computer = computer;
        this.vertices = vertices;
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
                house.points().flatCollect(points -> points.detail().stream().toList()),
                house.corners());
    }

    @Override
    public BridgeComputer computer() {
        return computer;
    }

    @Override
    public Optional<VertexComputing> vertices() {
        return Optional.of(vertices);
    }

    @Override
    public Workshop keepingIn(KeptFolder folder) {
        return new BuiltInWorkshop(
                BridgeComputers.computer(Accuracy.standard(), folder), VertexComputer.keepingIn(folder));
    }

    private static Path folder(Path houseFile) {
        return houseFile.toAbsolutePath().getParent();
    }
}
