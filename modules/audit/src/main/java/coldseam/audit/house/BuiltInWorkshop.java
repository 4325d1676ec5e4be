package coldseam.audit.house;

import coldseam.conduction.Accuracy;
import coldseam.envelope.House;
import coldseam.envelope.JunctionChoice;
import coldseam.files.KnownNames;
import coldseam.junctions.JunctionComputer;
import coldseam.junctions.catalogue.Catalogue;
import coldseam.junctions.catalogue.CatalogueFile;
import coldseam.junctions.compute.JunctionComputers;
import coldseam.junctions.point.PointComputer;
import java.nio.file.Path;

/** The catalogue that comes with the tool, details of files beside the house file, and the conduction core. */
public final class BuiltInWorkshop implements Workshop {

    private final JunctionComputer computer;
    private final PointComputer pointComputer;

    /** Keeping what it solves in memory only. */
    public BuiltInWorkshop() {
        this(JunctionComputers.computer(Accuracy.standard()), PointComputer.standard());
    }

    private BuiltInWorkshop(JunctionComputer computer, PointComputer pointComputer) {
        this.computer = computer;
        this.pointComputer = pointComputer;
    }

    @Override
    public KnownNames known(Path houseFile) {
        return CatalogueFile.names(CatalogueFile.builtIn(), folder(houseFile));
    }

    @Override
    public Catalogue catalogue(House house, Path houseFile) {
        return CatalogueFile.withOwn(
                CatalogueFile.builtIn(), folder(houseFile), house.choices().collect(JunctionChoice::detail));
    }

    @Override
    public JunctionComputer computer() {
        return computer;
    }

    @Override
    public PointComputer pointComputer() {
        return pointComputer;
    }

    @Override
    public Workshop keepingIn(Path folder) {
        return new BuiltInWorkshop(
                JunctionComputers.computer(Accuracy.standard(), folder),
                PointComputer.standard(JunctionComputers.solving(folder)));
    }

    private static Path folder(Path houseFile) {
        return houseFile.toAbsolutePath().getParent();
    }
}
