package coldseam.cli;

import coldseam.envelope.House;
import coldseam.envelope.file.KnownNames;
import coldseam.junctions.Catalogue;
import coldseam.junctions.DetailDoesNotFit;
import coldseam.junctions.JunctionComputer;
import java.nio.file.Path;
import org.eclipse.collections.api.factory.Lists;

/** The catalogue that comes with the tool, and the conduction core. */
final class BuiltInWorkshop implements Workshop {

    @Override
    public KnownNames known(Path houseFile) {
        return KnownNames.of(Lists.immutable.empty());
    }

    @Override
    public Catalogue catalogue(House house, Path houseFile) {
        return new Catalogue(Lists.immutable.empty());
    }

    @Override
    public JunctionComputer computer() {
        return (detail, setup) -> {
            throw new DetailDoesNotFit(Lists.immutable.of("not yet"));
        };
    }
}
