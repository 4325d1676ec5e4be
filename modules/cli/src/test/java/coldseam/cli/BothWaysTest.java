package coldseam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.audit.Audit;
import coldseam.audit.house.HouseAudit;
import coldseam.audit.house.Workshop;
import coldseam.envelope.Assembly;
import coldseam.envelope.shell.Edge;
import coldseam.envelope.shell.Shell;
import coldseam.envelope.shell.Surface;
import coldseam.files.quantity.UnitSystem;
import coldseam.report.words.FindingWords;
import java.nio.file.Path;
import org.eclipse.collections.api.list.ImmutableList;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Houses written by storeys and once more by surfaces: the same edges, between the same build-ups, and the same heat loss. */
class BothWaysTest {

    /** m, m² and m³ per m of the house: corners of explicit surfaces lie on a lattice of 0.1 mm. */
    private static final double LATTICE = 2e-4;

    private static final FindingWords WORDS = new FindingWords(UnitSystem.SI);
    private static final Path HOUSES = CommittedReport.ROOT.resolve("fixtures/houses/twice");
    private static final Workshop BENCH = new Bench();

    @ParameterizedTest
    @ValueSource(strings = {"parapet", "cold-loft", "cellar"})
    void storeysAndSurfacesAreOneHouse(String name) {
        HouseAudit storeys = HouseAudit.of(HOUSES.resolve(name + "-by-storeys.yaml"), BENCH);
        HouseAudit surfaces = HouseAudit.of(HOUSES.resolve(name + "-by-surfaces.yaml"), BENCH);
        same(storeys.shell(), surfaces.shell());
        Audit one = storeys.compute();
        Audit other = surfaces.compute();
        assertTrue(one.shell().closed() && other.shell().closed());
        assertEquals(titles(one), titles(other));
        assertEquals(one.sheets().size(), other.sheets().size(), "sheets");
        assertEquals(
                one.heatLoss().total().middle(),
                other.heatLoss().total().middle(),
                one.heatLoss().total().width());
    }

    private static void same(Shell storeys, Shell surfaces) {
        ImmutableList<Edge> one = sorted(storeys);
        ImmutableList<Edge> other = sorted(surfaces);
        assertEquals(one.collect(BothWaysTest::words), other.collect(BothWaysTest::words));
        one.zip(other).forEach(pair -> {
            Edge a = pair.getOne();
            Edge b = pair.getTwo();
            assertEquals(a.externalLength(), b.externalLength(), LATTICE, a.name());
            assertEquals(a.internalLength(), b.internalLength(), LATTICE, a.name());
            assertEquals(a.angle(), b.angle(), 0.01, a.name());
            assertEquals(a.firstSetBack(), b.firstSetBack(), LATTICE, a.name());
            assertEquals(a.secondSetBack(), b.secondSetBack(), LATTICE, a.name());
            assertEquals(a.floorThickness(), b.floorThickness(), a.name());
        });
        assertEquals(storeys.floorArea(), surfaces.floorArea(), 100 * LATTICE);
        assertEquals(storeys.externalVolume(), surfaces.externalVolume(), 100 * LATTICE);
        assertEquals(storeys.internalVolume(), surfaces.internalVolume(), 100 * LATTICE);
        assertEquals(storeys.exposedPerimeter(), surfaces.exposedPerimeter(), LATTICE);
    }

    /** By what they are between, then by their middles: names are the files' own. */
    private static ImmutableList<Edge> sorted(Shell shell) {
        return shell.edges()
                .toSortedListBy(edge -> words(edge) + edge.externalLength())
                .toImmutable();
    }

    private static String words(Edge edge) {
        return edge.kind().label() + " " + middle(edge) + ": " + words(edge.first()) + " / "
                + edge.second().map(BothWaysTest::words).orElse("") + " " + edge.upperStorey();
    }

    /** In decimetres. */
    private static String middle(Edge edge) {
        return Math.round(5 * (edge.from().x() + edge.to().x())) + ", "
                + Math.round(5 * (edge.from().y() + edge.to().y())) + ", "
                + Math.round(5 * (edge.from().z() + edge.to().z()));
    }

    private static String words(Surface surface) {
        return surface.use() + " of " + surface.assembly().map(Assembly::name).orElse("none") + " to "
                + surface.exposure() + " in " + surface.storey();
    }

    private static ImmutableList<String> titles(Audit audit) {
        return audit.findings().collect(WORDS::title).toSortedList().toImmutable();
    }
}
