package coldseam.cli;

import coldseam.envelope.House;
import coldseam.envelope.file.KnownNames;
import coldseam.junctions.Catalogue;
import coldseam.junctions.JunctionComputer;
import java.nio.file.Path;

/** Where details come from and what computes them. */
interface Workshop {

    /** What junction choices of a house file may name. */
    KnownNames known(Path houseFile);

    /** The catalogue, with the house's own details. */
    Catalogue catalogue(House house, Path houseFile);

    /** Computes details; asked from several threads at once. */
    JunctionComputer computer();

    /** The same, keeping what it solves in a folder for later runs. */
    default Workshop keepingIn(Path folder) {
        return this;
    }
}
