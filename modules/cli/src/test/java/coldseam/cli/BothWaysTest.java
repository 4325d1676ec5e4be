package coldseam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.audit.Audit;
import coldseam.envelope.Assembly;
import coldseam.envelope.Point3;
import coldseam.envelope.Vectors;
import coldseam.envelope.shell.Edge;
import coldseam.envelope.shell.Shell;
import coldseam.envelope.shell.Surface;
import coldseam.files.quantity.UnitSystem;
import coldseam.report.words.FindingWords;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Houses written by storeys and once more by surfaces: the same edges, between the same build-ups, and the same heat loss. */
@Tag("slow")
class BothWaysTest {

    /** m, m² and m³ per m of the house: corners of explicit surfaces lie on a lattice of 0.1 mm. */
    private static final double LATTICE = 2e-4;

    private static final FindingWords WORDS = new FindingWords(UnitSystem.SI);

    @ParameterizedTest
    @ValueSource(strings = {"parapet", "cold-loft", "cellar", "part-cellar", "court", "slope"})
    void storeysAndSurfacesAreOneHouse(String name) {
        Audit one = Bench.shared("twice/" + name + "-by-storeys");
        Audit other = Bench.shared("twice/" + name + "-by-surfaces");
        same(one.shell(), other.shell());
        assertTrue(one.shell().closed() && other.shell().closed());
        assertEquals(titles(one), titles(other));
        assertEquals(one.sheets().size(), other.sheets().size(), "sheets");
        assertEquals(one.heatLoss().total().middle(), other.heatLoss().total().middle(), Bench.OF_ONE_HOUSE);
    }

    /** A seam; where surfaces of one plane part it, all of it. */
    private record Whole(Edge edge, Point3 from, Point3 to, double external, double internal) {

        static Whole of(Edge edge) {
            return new Whole(edge, edge.from(), edge.to(), edge.externalLength(), edge.internalLength());
        }

        boolean goesOn(Whole other) {
            Point3 along = Vectors.minus(to, from);
            Point3 on = Vectors.minus(other.to, other.from);
            boolean straight = Vectors.length(Vectors.cross(along, on)) < LATTICE && Vectors.dot(along, on) > 0;
            return words(edge).equals(words(other.edge)) && to.equals(other.from) && straight;
        }

        Whole with(Whole other) {
            return new Whole(edge, from, other.to, external + other.external, internal + other.internal);
        }

        String words() {
            return words(edge) + " at " + Math.round(5 * (from.x() + to.x())) + ", "
                    + Math.round(5 * (from.y() + to.y())) + ", " + Math.round(5 * (from.z() + to.z()));
        }

        private static String words(Edge edge) {
            return edge.kind().label() + ": " + BothWaysTest.words(edge.first()) + " / "
                    + edge.second().map(BothWaysTest::words).orElse("") + " " + edge.upperStorey();
        }
    }

    private static void same(Shell storeys, Shell surfaces) {
        ImmutableList<Whole> one = sorted(storeys);
        ImmutableList<Whole> other = sorted(surfaces);
        assertEquals(one.collect(Whole::words), other.collect(Whole::words));
        one.zip(other).forEach(pair -> {
            Edge a = pair.getOne().edge();
            Edge b = pair.getTwo().edge();
            assertEquals(pair.getOne().external(), pair.getTwo().external(), LATTICE, a.name());
            assertEquals(pair.getOne().internal(), pair.getTwo().internal(), LATTICE, a.name());
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

    /** By what they are between and by their middles, in decimetres: names are the files' own. */
    private static ImmutableList<Whole> sorted(Shell shell) {
        MutableList<Whole> all = shell.edges().collect(Whole::of).toList();
        for (int i = 0; i < all.size(); i++) {
            Whole here = all.get(i);
            Whole next = all.detect(here::goesOn);
            if (next != null) {
                all.set(i, here.with(next));
                all.remove(next);
                i = -1;
            }
        }
        return all.toSortedListBy(whole -> whole.words() + whole.external()).toImmutable();
    }

    private static String words(Surface surface) {
        return surface.use() + " of " + surface.assembly().map(Assembly::name).orElse("none") + " to "
                + surface.exposure() + " in " + surface.storey();
    }

    private static ImmutableList<String> titles(Audit audit) {
        return audit.findings().collect(WORDS::title).toSortedList().toImmutable();
    }
}
