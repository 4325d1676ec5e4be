package coldseam.audit.house;

import coldseam.conduction.Budget;
import coldseam.envelope.CornerKind;
import coldseam.envelope.House;
import coldseam.envelope.PointKind;
import coldseam.files.KnownNames;
import coldseam.junctions.BridgeComputer;
import coldseam.junctions.Keeping;
import coldseam.junctions.catalogue.Catalogue;
import coldseam.junctions.catalogue.CatalogueFile;
import coldseam.junctions.pair.PairComputing;
import coldseam.junctions.store.KeptFolder;
import coldseam.junctions.vertex.VertexComputing;
import java.nio.file.Path;
import java.util.Optional;

/** Where details come from and what computes them. */
public interface Workshop {

    /** What junction choices of a house file may name. */
    KnownNames known(Path houseFile);

    /** What the points of a house file may name. */
    default KnownNames knownPoints(Path houseFile) {
        return CatalogueFile.names(
                        CatalogueFile.builtIn().ids(PointKind.class),
                        houseFile.toAbsolutePath().getParent())
                .otherwise("coldseam catalogue --points lists them");
    }

    /** What the corners of a house file may name. */
    default KnownNames knownCorners(Path houseFile) {
        return CatalogueFile.names(
                        CatalogueFile.builtIn().ids(CornerKind.class),
                        houseFile.toAbsolutePath().getParent())
                .otherwise("coldseam catalogue --corners lists them");
    }

    /** The catalogue, with the house's own details. */
    Catalogue catalogue(House house, Path houseFile);

    /** Computes details; asked from several threads at once. */
    BridgeComputer computer();

    /** Computes vertices; asked from several threads at once. Empty where they are only named. */
    default Optional<VertexComputing> vertices() {
        return Optional.empty();
    }

    /** Computes seams that touch, two in one section; asked from several threads at once. Empty where they are only named. */
    default Optional<PairComputing> pairs() {
        return Optional.empty();
    }

    /** The same, keeping what it solves in a folder for later runs. */
    default Workshop keepingIn(KeptFolder folder) {
        return this;
    }

    /** What earlier runs computed or drew, whole; nothing where nothing is kept, or nothing tells whose it is. */
    default Keeping results() {
        return Keeping.NOTHING;
    }

    /** What tells its answers from those of any other, of another build too; empty where nothing does, such as in a test. */
    default Optional<String> identity() {
        return Optional.empty();
    }

    /** How many unknowns its solves may have. */
    default Budget budget() {
        return Budget.ofThisJvm();
    }

    /** The same, whose solves may have so many; it remembers nothing of what this one has solved, unless they may have as many. */
    default Workshop within(Budget budget) {
        return this;
    }
}
