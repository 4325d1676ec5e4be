package coldseam.cli;

import coldseam.audit.house.BuiltInWorkshop;
import coldseam.audit.house.Workshop;
import coldseam.conduction.Accuracy;
import coldseam.conduction.solid.BodySolver;
import coldseam.conduction.solve.Conduction;
import coldseam.envelope.House;
import coldseam.envelope.file.house.MaterialLibrary;
import coldseam.files.KnownNames;
import coldseam.junctions.BridgeComputer;
import coldseam.junctions.catalogue.Catalogue;
import coldseam.junctions.compute.BridgeComputers;
import coldseam.junctions.vertex.VertexComputer;
import coldseam.junctions.vertex.VertexComputing;
import java.nio.file.Path;
import java.util.Optional;

/**
 * The built-in workshop for tests of many whole houses: what several of them have in common is solved once, sections to a
 * thousandth and corners to three, since no verdict of theirs hangs on the fourth digit.
 */
final class Bench implements Workshop {

    /** For all whose houses have build-ups and details in common. */
    static final Bench SHARED = new Bench();

    private final Workshop builtIn = new BuiltInWorkshop();
    private final BridgeComputer computer;
    private final VertexComputing corners;

    Bench() {
        this(
                BridgeComputers.computer(new Accuracy(1e-3, 400_000)),
                new VertexComputer(
                        new Accuracy(3e-3, 800_000), BodySolver::solve, Conduction::solve, MaterialLibrary::named));
    }

    /** One that computes with these. */
    Bench(BridgeComputer computer, VertexComputing corners) {
        this.computer = computer;
        this.corners = corners;
    }

    @Override
    public KnownNames known(Path houseFile) {
        return builtIn.known(houseFile);
    }

    @Override
    public Catalogue catalogue(House house, Path houseFile) {
        return builtIn.catalogue(house, houseFile);
    }

    @Override
    public Optional<VertexComputing> vertices() {
        return Optional.of(corners);
    }

    @Override
    public BridgeComputer computer() {
        return computer;
    }
}
