package coldseam.cli;

import coldseam.audit.house.BuiltInWorkshop;
import coldseam.audit.house.Workshop;
import coldseam.conduction.Accuracy;
import coldseam.conduction.Section;
import coldseam.conduction.Solution;
import coldseam.conduction.solid.BodySolution;
import coldseam.conduction.solid.BodySolver;
import coldseam.conduction.solid.SolidBody;
import coldseam.conduction.solve.Conduction;
import coldseam.envelope.House;
import coldseam.envelope.file.house.MaterialLibrary;
import coldseam.files.KnownNames;
import coldseam.junctions.BodySolving;
import coldseam.junctions.BridgeComputer;
import coldseam.junctions.Keeping;
import coldseam.junctions.SectionSolving;
import coldseam.junctions.catalogue.Catalogue;
import coldseam.junctions.compute.BridgeComputers;
import coldseam.junctions.pair.PairComputer;
import coldseam.junctions.pair.PairComputing;
import coldseam.junctions.path.WeakestPaths;
import coldseam.junctions.vertex.VertexComputer;
import coldseam.junctions.vertex.VertexComputing;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The built-in workshop for tests of many whole houses: what several of them have in common is solved once, sections to a
 * thousandth, corners and surface temperatures to a hundredth, since no verdict of theirs hangs on the third digit.
 */
final class Bench implements Workshop {

    /** For all whose houses have build-ups and details in common. */
    static final Bench SHARED = new Bench(new Accuracy(1e-3, 400_000), new Accuracy(1e-2, 800_000), 10);

    /** For those that read couplings to the last digit, and no temperature: aiming at one takes most of a solve's time. */
    static final Bench OF_HEAT = new Bench(Accuracy.standard(), BodySolver.STANDARD, 100);

    /** As narrow as the command solves: what other tests solve so narrowly is not solved again, whoever counts it. */
    static final Bench NARROW = narrow(Bench::once, Bench::once);

    private static final Map<List<Object>, Solution> SECTIONS = new ConcurrentHashMap<>();
    private static final Map<List<Object>, BodySolution> BODIES = new ConcurrentHashMap<>();

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
                new VertexComputer(BodySolver.STANDARD, bodies, sections, Keeping.NOTHING, MaterialLibrary::named),
                new PairComputer(Accuracy.standard(), sections, Keeping.NOTHING, MaterialLibrary::named));
    }

    static Solution once(Section section, Accuracy accuracy) {
        return SECTIONS.computeIfAbsent(List.of(section, accuracy), asked -> Conduction.solve(section, accuracy));
    }

    static BodySolution once(SolidBody body, Accuracy accuracy) {
        return BODIES.computeIfAbsent(List.of(body, accuracy), asked -> BodySolver.solve(body, accuracy));
    }

    /** Junctions and points, their surface temperatures that many times as wide as usual. */
    static BridgeComputer computer(Accuracy accuracy, double wider) {
        return BridgeComputers.computer(
                accuracy,
                (section, asked) -> Conduction.solve(section, wider(asked, wider)),
                (body, asked) -> BodySolver.solve(body, wider(asked, wider)),
                WeakestPaths::of,
                Keeping.NOTHING);
    }

    static PairComputing pairs(Accuracy accuracy, double wider) {
        return new PairComputer(
                accuracy,
                (section, asked) -> Conduction.solve(section, wider(asked, wider)),
                Keeping.NOTHING,
                MaterialLibrary::named);
    }

    /** Corners and, as much coarser as they are, the planes they are cut at; their surface temperatures so many times as wide. */
    static VertexComputing corners(Accuracy accuracy, double wider, BodySolving bodies) {
        double coarser = Math.max(1, accuracy.relativeWidth() / BodySolver.STANDARD.relativeWidth());
        return new VertexComputer(
                accuracy,
                (body, asked) -> bodies.solve(body, wider(asked, wider)),
                (section, asked) -> Conduction.solve(
                        section, new Accuracy(coarser * asked.relativeWidth(), asked.maximumUnknowns(), asked.aim())),
                Keeping.NOTHING,
                MaterialLibrary::named);
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
