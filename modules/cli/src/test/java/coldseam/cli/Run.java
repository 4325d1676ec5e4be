package coldseam.cli;

import coldseam.audit.house.BuiltInWorkshop;
import coldseam.audit.house.Workshop;
import coldseam.envelope.House;
import coldseam.files.KnownNames;
import coldseam.junctions.BridgeComputer;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.PointResult;
import coldseam.junctions.PointSetup;
import coldseam.junctions.catalogue.Catalogue;
import coldseam.junctions.catalogue.CatalogueFile;
import coldseam.junctions.detail.Detail;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import org.eclipse.collections.api.factory.Lists;

/** One run of the command, with what it printed. */
record Run(int code, String out, String err) {

    /** Shared, so that what one test has computed the next need not. */
    static final Workshop REAL = new BuiltInWorkshop();

    static Run with(Workshop workshop, String... arguments) {
        return with(workshop, Optional.empty(), arguments);
    }

    /** @param usual where solved sections are kept where nobody says */
    static Run with(Workshop workshop, Optional<Path> usual, String... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code = Coldseam.run(Terminal.of(out, err), workshop, usual, arguments);
        return new Run(code, out.toString(), err.toString());
    }

    static Run of(String... arguments) {
        return with(REAL, arguments);
    }

    /** A workshop that has the built-in catalogue and computes junctions with this; it has no answer for points. */
    static Workshop computing(BiFunction<Detail, JunctionSetup, JunctionResult> junctions) {
        return computing(new BridgeComputer() {
            @Override
            public JunctionResult compute(Detail detail, JunctionSetup setup) {
                return junctions.apply(detail, setup);
            }

            @Override
            public PointResult compute(Detail detail, PointSetup setup) {
                throw new UnsupportedOperationException("points");
            }
        });
    }

    /** A workshop that has the built-in catalogue and computes with this. */
    static Workshop computing(BridgeComputer computer) {
        return new Workshop() {
            @Override
            public KnownNames known(Path houseFile) {
                return KnownNames.of(Lists.immutable.empty());
            }

            @Override
            public Catalogue catalogue(House house, Path houseFile) {
                return CatalogueFile.builtIn();
            }

            @Override
            public BridgeComputer computer() {
                return computer;
            }
        };
    }

    List<String> lines() {
        return out.lines().toList();
    }
}
