package coldseam.junctions.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import coldseam.conduction.Accuracy;
import coldseam.conduction.Boundary;
import coldseam.conduction.Point;
import coldseam.conduction.solid.BodySolver;
import coldseam.conduction.solve.Conduction;
import coldseam.envelope.Assembly;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Layer;
import coldseam.envelope.Material;
import coldseam.envelope.Role;
import coldseam.junctions.BridgeComputer;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.Keeping;
import coldseam.junctions.Samples;
import coldseam.junctions.WeakestPath;
import coldseam.junctions.catalogue.CatalogueFile;
import coldseam.junctions.compute.BridgeComputers;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.path.PathQuestion;
import coldseam.junctions.path.WeakestPaths;
import coldseam.junctions.section.Composer;
import coldseam.junctions.section.Composition;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.atomic.AtomicInteger;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Weakest paths kept on disk. */
class PathStoreTest {

    private static final Detail DETAIL =
            CatalogueFile.builtIn().find("outside-corner-solid-post").orElseThrow();
    private static final JunctionSetup SETUP = Samples.setup(JunctionKind.OUTSIDE_CORNER);
    private static final PathQuestion QUESTION = question(SETUP);

    @TempDir
    private Path folder;

    private final AtomicInteger searched = new AtomicInteger();

    private static PathQuestion question(JunctionSetup setup) {
        return PathQuestion.of(Composer.compose(DETAIL, setup));
    }

    private WeakestPath counted(PathQuestion question) {
        searched.incrementAndGet();
        return WeakestPaths.of(question);
    }

    /** As by a run of its own. */
    private WeakestPath found(PathQuestion question) {
        return new PathStore(KeptFolder.in(folder), this::counted).find(question);
    }

    /** Records of doubles are equal when every bit is. */
    @Test
    void theSecondQuestionIsNotSearched() {
        WeakestPath cold = WeakestPaths.of(QUESTION);
        assertEquals(cold, found(QUESTION));
        assertEquals(cold, found(QUESTION));
        assertEquals(1, searched.get());
    }

    @Test
    void aTornOrAlteredEntryIsSearchedAgain() throws IOException {
        WeakestPath first = found(QUESTION);
        Path entry = KeptFolder.in(folder).entry(PathStore.name(QUESTION));
        byte[] whole = Files.readAllBytes(entry);
        for (byte[] bytes : Spoilt.of(whole)) {
            Files.write(entry, bytes);
            int before = searched.get();
            assertEquals(first, found(QUESTION));
            assertEquals(first, found(QUESTION));
            assertEquals(before + 1, searched.get());
        }
    }

    /** All else that is asked is the same. */
    @Test
    void aMaterialsFlagAloneAsksAnew() {
        Layer boards = SETUP.first().layers().detect(each -> each.role() == Role.INSULATION);
        JunctionSetup other = with(SETUP, flagged(SETUP.first(), boards.material()));
        PathQuestion asked = question(other);
        assertNotEquals(PathStore.name(QUESTION), PathStore.name(asked));
        found(QUESTION);
        assertEquals(WeakestPaths.of(asked), found(asked));
        assertEquals(2, searched.get());
    }

    private static Assembly flagged(Assembly wall, Material turned) {
        return new Assembly(
                wall.name(),
                wall.layers()
                        .collect(layer -> layer.material().equals(turned) ? with(layer, !turned.insulates()) : layer),
                wall.fasteners(),
                wall.gaps(),
                wall.rain());
    }

    private static Layer with(Layer layer, boolean insulates) {
        Material of = layer.material();
        return new Layer(
                new Material(
                        of.name(),
                        of.conductivity(),
                        of.vapourResistanceFactor(),
                        of.density(),
                        of.compressiveStrength(),
                        insulates,
                        of.provenance()),
                layer.thickness(),
                layer.role(),
                layer.framing(),
                layer.air(),
                layer.taper(),
                layer.controls());
    }

    private static JunctionSetup with(JunctionSetup setup, Assembly wall) {
        return new JunctionSetup(
                setup.kind(),
                wall,
                Optional.of(wall),
                setup.angle(),
                setup.firstExposure(),
                setup.secondExposure(),
                setup.opening(),
                setup.floorThickness(),
                setup.upstand(),
                setup.ground(),
                setup.indoorTemperature(),
                setup.outdoorTemperature());
    }

    @Test
    void everyPartOfTheQuestionCounts() {
        Composition.Face face = QUESTION.faces().getFirst();
        Boundary boundary = QUESTION.boundaries().getFirst();
        ImmutableList<PathQuestion> others = Lists.immutable
                .of(
                        new Composition.Face(face.area(), face.conductivity(), !face.insulates()),
                        new Composition.Face(face.area(), Math.nextUp(face.conductivity()), face.insulates()),
                        new Composition.Face(face.area().buffer(0.01), face.conductivity(), face.insulates()))
                .collect(each -> new PathQuestion(
                        QUESTION.faces().drop(1).newWith(each),
                        QUESTION.boundaries(),
                        QUESTION.colder(),
                        QUESTION.neighbour()))
                .newWith(boundaries(new Boundary("elsewhere", boundary.path(), boundary.surfaceResistance())))
                .newWith(boundaries(new Boundary(
                        boundary.environment(),
                        boundary.path().newWith(new Point(9, 9)),
                        boundary.surfaceResistance())))
                .newWith(boundaries(new Boundary(boundary.environment(), boundary.path(), OptionalDouble.of(0.9))))
                .newWith(new PathQuestion(
                        QUESTION.faces(),
                        QUESTION.boundaries(),
                        QUESTION.colder().newWith("cellar"),
                        QUESTION.neighbour()))
                .newWith(new PathQuestion(
                        QUESTION.faces(), QUESTION.boundaries(), QUESTION.colder(), Math.nextUp(QUESTION.neighbour())));
        PathQuestion moved = new PathQuestion(
                QUESTION.faces().drop(1).newWith(face), QUESTION.boundaries(), QUESTION.colder(), QUESTION.neighbour());
        ImmutableList<String> names = others.newWith(moved).newWith(QUESTION).collect(PathStore::name);
        assertEquals(names.size(), names.distinct().size());
    }

    private static PathQuestion boundaries(Boundary first) {
        return new PathQuestion(
                QUESTION.faces(),
                QUESTION.boundaries().drop(1).newWith(first),
                QUESTION.colder(),
                QUESTION.neighbour());
    }

    /** Heat flow, surface temperature and path. */
    @Test
    void aComputerKeepsTheWholeJunction() {
        KeptFolder first = KeptFolder.in(folder);
        JunctionResult cold = keeping(first).compute(DETAIL, SETUP);
        KeptFolder second = KeptFolder.in(folder);
        JunctionResult kept = keeping(second).compute(DETAIL, SETUP);
        assertEquals(3, first.added());
        assertEquals(3, second.found());
        assertEquals(0, second.added());
        assertEquals(cold.weakestPath(), kept.weakestPath());
    }

    private static BridgeComputer keeping(KeptFolder folder) {
        return BridgeComputers.computer(
                new Accuracy(1e-3, 50_000),
                new SolutionStore(folder, Conduction::solve),
                BodySolver::solve,
                new PathStore(folder, WeakestPaths::of),
                Keeping.NOTHING);
    }
}
