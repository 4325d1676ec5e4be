package coldseam.audit.house;

import coldseam.envelope.House;
import coldseam.files.KnownNames;
import coldseam.junctions.JunctionComputer;
import coldseam.junctions.catalogue.Catalogue;
import coldseam.junctions.point.PointCatalogue;
import coldseam.junctions.point.PointComputer;
import java.nio.file.Path;

/** Where details come from and what computes them. */
public interface Workshop {

    /** What junction choices of a house file may name. */
    KnownNames known(Path houseFile);

    /** The catalogue, with the house's own details. */
    Catalogue catalogue(House house, Path houseFile);

    /** Computes details; asked from several threads at once. */
    JunctionComputer computer();

    /** What the points of a house file may name. */
    default KnownNames knownPoints(Path houseFile) {
        return PointCatalogue.builtIn().names(houseFile.toAbsolutePath().getParent());
    }

    /** The point details, with the house's own. */
    default PointCatalogue points(House house, Path houseFile) {
        return PointCatalogue.builtIn()
                .withOwn(
                        houseFile.toAbsolutePath().getParent(),
                        house.points()
                                .flatCollect(points -> points.detail().stream().toList()));
    }

    /** Computes point details; asked from several threads at once. */
    default PointComputer pointComputer() {
        return PointComputer.standard();
    }

    /** The same, keeping what it solves in a folder for later runs. */
    default Workshop keepingIn(Path folder) {
        return this;
    }
}
