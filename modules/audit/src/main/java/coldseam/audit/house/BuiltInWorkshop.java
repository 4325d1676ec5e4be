package coldseam.audit.house;

import coldseam.conduction.Accuracy;
import coldseam.conduction.Budget;
import coldseam.conduction.solid.BodySolver;
import coldseam.conduction.solve.Conduction;
import coldseam.envelope.House;
import coldseam.envelope.JunctionChoice;
import coldseam.envelope.JunctionKind;
import coldseam.files.KnownNames;
import coldseam.junctions.BodySolving;
import coldseam.junctions.BridgeComputer;
import coldseam.junctions.Keeping;
import coldseam.junctions.Once;
import coldseam.junctions.SectionSolving;
import coldseam.junctions.catalogue.Catalogue;
import coldseam.junctions.catalogue.CatalogueFile;
import coldseam.junctions.compute.BridgeComputers;
import coldseam.junctions.pair.PairComputer;
import coldseam.junctions.pair.PairComputing;
import coldseam.junctions.path.PathFinding;
import coldseam.junctions.path.WeakestPaths;
import coldseam.junctions.store.BodyStore;
import coldseam.junctions.store.KeptFolder;
import coldseam.junctions.store.PathStore;
import coldseam.junctions.store.ResultStore;
import coldseam.junctions.store.RunStore;
import coldseam.junctions.store.SolutionStore;
import coldseam.junctions.vertex.VertexComputer;
import coldseam.junctions.vertex.VertexComputing;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;

/** The catalogue that comes with the tool, details of files beside the house file, and the conduction core. */
public final class BuiltInWorkshop implements Workshop {

    private final Once<String, Optional<String>> identity;
    private final Budget budget;
    private final Optional<KeptFolder> folder;
    private final BridgeComputer computer;
    private final VertexComputing vertices;
    private final PairComputing pairs;
    private final Keeping results;

    /** Keeping what it solves in memory only, within what this JVM's memory allows. */
    public BuiltInWorkshop() {
        this(() -> RunStore.tool(System.getProperty("java.class.path")));
    }

    /** @param identity what tells its answers from those of another build; empty where nothing does */
    public BuiltInWorkshop(Supplier<Optional<String>> identity) {
        this(new Once<>(nothing -> identity.get()), Budget.ofThisJvm(), Optional.empty());
    }

    private BuiltInWorkshop(Once<String, Optional<String>> identity, Budget budget, Optional<KeptFolder> folder) {
        this.identity = identity;
        this.budget = budget;
        this.folder = folder;
        SectionSolving sections = (section, accuracy) -> Conduction.solve(section, accuracy, budget);
        BodySolving bodies = (body, accuracy) -> BodySolver.solve(body, accuracy, budget);
        SectionSolving ofSections = folder.<SectionSolving>map(each -> new SolutionStore(each, sections))
                .orElse(sections);
        BodySolving ofBodies = new BodyStore(folder, bodies);
        PathFinding ofPaths = folder.<PathFinding>map(each -> new PathStore(each, WeakestPaths::of))
                .orElse(WeakestPaths::of);
        this.results = folder.<Keeping>flatMap(
                        each -> identity().map(tool -> new ResultStore(each, tool, ofSections, ofBodies)))
                .orElse(Keeping.NOTHING);
        this.computer = BridgeComputers.computer(Accuracy.standard(), ofSections, ofBodies, ofPaths, results);
        this.vertices = new VertexComputer(BodySolver.STANDARD, ofBodies, ofSections, results);
        this.pairs = new PairComputer(Accuracy.standard(), ofSections, results);
    }

    @Override
    public KnownNames known(Path houseFile) {
        return CatalogueFile.names(CatalogueFile.builtIn().ids(JunctionKind.class), folder(houseFile))
                .otherwise("coldseam catalogue --kind lists those of one kind of junction");
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
    public Optional<PairComputing> pairs() {
        return Optional.of(pairs);
    }

    @Override
    public Keeping results() {
        return results;
    }

    @Override
    public Optional<String> identity() {
        return identity.answer("");
    }

    @Override
    public Budget budget() {
        return budget;
    }

    @Override
    public Workshop within(Budget other) {
        return other.equals(budget) ? this : new BuiltInWorkshop(identity, other, folder);
    }

    @Override
    public Workshop keepingIn(KeptFolder other) {
        return new BuiltInWorkshop(identity, budget, Optional.of(other));
    }

    private static Path folder(Path houseFile) {
        return houseFile.toAbsolutePath().getParent();
    }
}
