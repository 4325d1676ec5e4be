package coldseam.cli;

import coldseam.audit.Audit;
import coldseam.audit.house.BuiltInWorkshop;
import coldseam.audit.house.HouseAudit;
import coldseam.audit.house.Workshop;
import coldseam.conduction.Accuracy;
import coldseam.conduction.Section;
import coldseam.conduction.Solution;
import coldseam.conduction.solid.BodySolution;
import coldseam.conduction.solid.BodySolver;
import coldseam.conduction.solid.SolidBody;
import coldseam.conduction.solve.Conduction;
import coldseam.envelope.House;
import coldseam.files.KnownNames;
import coldseam.junctions.BodySolving;
import coldseam.junctions.BridgeComputer;
import coldseam.junctions.Keeping;
import coldseam.junctions.Once;
import coldseam.junctions.SectionSolving;
import coldseam.junctions.catalogue.Catalogue;
import coldseam.junctions.compute.BridgeComputers;
import coldseam.junctions.pair.PairComputer;
import coldseam.junctions.pair.PairComputing;
import coldseam.junctions.path.WeakestPaths;
import coldseam.junctions.store.BodyStore;
import coldseam.junctions.vertex.VertexComputer;
import coldseam.junctions.vertex.VertexComputing;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.eclipse.collections.api.factory.Sets;

/**
 * The built-in workshop for tests of many whole houses: what several of them have in common is solved once, sections to a
 * hundredth, corners to a tenth and surface temperatures to a thirtieth, since no verdict of theirs hangs on the second digit.
 */
final class Bench implements Workshop {

    /**
     * W/K, by which H_T of one house written in two ways may differ, however wide its interval is: its questions are the same but
     * for what lengths are rounded to, and its lines are rounded to thousandths.
     */
    static final double OF_ONE_HOUSE = 5e-3;

    /** For all whose houses have build-ups and details in common. */
    static final Bench SHARED = new Bench(new Accuracy(1e-2, 400_000), new Accuracy(0.1, 800_000), 30);

    /**
     * For those that read what a coupling changes by, and no temperature: aiming at one takes most of a solve's time. Alike
     * sections are refined alike, so that their differences are known far better than each interval tells.
     */
    static final Bench OF_HEAT = new Bench(new Accuracy(5e-4, 400_000), new Accuracy(3e-3, 800_000), 100);

    /** As narrow as the command solves: what other tests solve so narrowly is not solved again, whoever counts it. */
    static final Bench NARROW = narrow(Bench::once, Bench::once);

    private static final Map<List<Object>, Solution> SECTIONS = new ConcurrentHashMap<>();
    private static final Map<List<Object>, BodySolution> BODIES = new ConcurrentHashMap<>();

    /** What the shared one says of fixture houses as they are. */
    private static final Once<Path, Audit> AUDITS =
            new Once<>(house -> HouseAudit.of(house, SHARED).compute());

    private final Workshop builtIn = new BuiltInWorkshop();
    private final BridgeComputer computer;
    private final VertexComputing corners;
    private final PairComputing pairs;

    /** @param wider how many times as wide as usual surface temperatures are */
    Bench(Accuracy accuracy, Accuracy ofCorners, double wider) {
        this(computer(accuracy, wider), corners(ofCorners, wider, BodySolver::solve), pairs(accuracy, wider));
    }

    static Bench narrow(SectionSolving sections, BodySolving bodies) {
        return new Bench(
                BridgeComputers.computer(Accuracy.standard(), sections, bodies, WeakestPaths::of, Keeping.NOTHING),
                new VertexComputer(BodySolver.STANDARD, bodies, sections, Keeping.NOTHING),
                new PairComputer(Accuracy.standard(), sections, Keeping.NOTHING));
    }

    /** The shared audit of a fixture house, by its path from their folder, without its ending. */
    static Audit shared(String house) {
        return shared(CommittedReport.ROOT.resolve("fixtures/houses/" + house + ".yaml"));
    }

    /** The shared audit of a house whose file no test changes. */
    static Audit shared(Path house) {
        return AUDITS.answer(house);
    }

    /**
     * The audit of a house without the details that are only compared with what it chooses: for those that read neither options nor
     * the best of them, since two thirds of an audit's sections are theirs.
     */
    static Audit ofChosen(Path house, Workshop workshop) {
        HouseAudit whole = HouseAudit.of(house, workshop);
        return whole.changed(whole.house(), Sets.immutable.empty()).compute();
    }

    static Solution once(Section section, Accuracy accuracy) {
        return SECTIONS.computeIfAbsent(List.of(section, accuracy), asked -> Conduction.solve(section, accuracy));
    }

    static BodySolution once(SolidBody body, Accuracy accuracy) {
        return BODIES.computeIfAbsent(List.of(body, accuracy), asked -> BodySolver.solve(body, accuracy));
    }

    private static BodySolving once(BodySolving bodies) {
        return new BodyStore(Optional.empty(), bodies);
    }

    /** Junctions and points, their surface temperatures that many times as wide as usual. */
    static BridgeComputer computer(Accuracy accuracy, double wider) {
        return BridgeComputers.computer(
                accuracy,
                (section, asked) -> Conduction.solve(section, wider(asked, wider)),
                once((body, asked) -> BodySolver.solve(body, wider(asked, wider))),
                WeakestPaths::of,
                Keeping.NOTHING);
    }

    static PairComputing pairs(Accuracy accuracy, double wider) {
        return new PairComputer(
                accuracy, (section, asked) -> Conduction.solve(section, wider(asked, wider)), Keeping.NOTHING);
    }

    /** Corners and, as much coarser as they are, the planes they are cut at; their surface temperatures so many times as wide. */
    static VertexComputing corners(Accuracy accuracy, double wider, BodySolving bodies) {
        double coarser = Math.max(1, accuracy.relativeWidth() / BodySolver.STANDARD.relativeWidth());
        return new VertexComputer(
                accuracy,
                once((body, asked) -> bodies.solve(body, wider(asked, wider))),
                (section, asked) -> Conduction.solve(
                        section,
                        new Accuracy(
                                coarser * asked.relativeWidth(),
                                asked.maximumUnknowns(),
                                asked.aim(),
                                asked.temperatures())),
                Keeping.NOTHING);
    }

    private static Accuracy wider(Accuracy asked, double wider) {
        return asked.aim()
                .map(aim -> asked.aimedAt(aim.environment(), wider * aim.kelvin()))
                .orElse(asked);
    }

    /** One that computes with these. */
    Bench(BridgeComputer computer, VertexComputing corners, PairComputing pairs) {
        this.computer = computer;
        this.corners = corners;
        this.pairs = pairs;
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
    public Optional<PairComputing> pairs() {
        return Optional.of(pairs);
    }

    @Override
    public BridgeComputer computer() {
        return computer;
    }
}
