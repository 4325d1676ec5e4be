package coldseam.cli;

import coldseam.conduction.Accuracy;
import coldseam.envelope.House;
import coldseam.envelope.file.KnownNames;
import coldseam.junctions.Catalogue;
import coldseam.junctions.Detail;
import coldseam.junctions.DetailFile;
import coldseam.junctions.JunctionComputer;
import coldseam.junctions.Junctions;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/** The catalogue that comes with the tool, and the conduction core. */
final class BuiltInWorkshop implements Workshop {

    private final JunctionComputer computer = Junctions.computer(Accuracy.standard());
    private final ImmutableList<Detail> details = read();

    private static ImmutableList<Detail> read() {
        try (Stream<Path> files = Files.list(Path.of("modules/junctions/src/main/resources/details"))) {
            return Lists.immutable.fromStream(
                    files.filter(each -> each.toString().endsWith(".yaml"))
                            .sorted()
                            .map(DetailFile::read)
                            .sorted(java.util.Comparator.comparing(Detail::kind).thenComparing(Detail::rank)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public KnownNames known(Path houseFile) {
        return KnownNames.of(details.collect(Detail::id));
    }

    @Override
    public Catalogue catalogue(House house, Path houseFile) {
        return new Catalogue(details);
    }

    @Override
    public JunctionComputer computer() {
        return computer;
    }
}
