package coldseam.junctions.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import coldseam.conduction.Point;
import coldseam.conduction.Polygon;
import java.util.Random;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.Test;

class PlanarSubdivisionTest {

    private static Polygon polygon(double... xy) {
        MutableList<Point> corners = Lists.mutable.empty();
        for (int i = 0; i < xy.length; i += 2) {
            corners.add(new Point(xy[i], xy[i + 1]));
        }
        return new Polygon(corners.toImmutable());
    }

    @Test
    void theLaterPolygonCoversTheEarlier() {
        PlanarSubdivision two =
                PlanarSubdivision.of(Lists.immutable.of(Polygon.rectangle(0, 0, 4, 2), Polygon.rectangle(3, 1, 6, 3)));
        assertEquals(2, two.faces().size());
        assertEquals(7, two.faces().get(0).area(), 1e-12);
        assertEquals(6, two.faces().get(1).area(), 1e-12);
        // Their common line turns once; each side of it has the one on its left and the other on its right.
        ImmutableList<PlanarSubdivision.Edge> common = two.edges()
                .reject(edge -> edge.left() == PlanarSubdivision.NOTHING || edge.right() == PlanarSubdivision.NOTHING);
        assertEquals(2, common.sumOfDouble(PlanarSubdivision.Edge::length), 1e-12);
        assertEquals(2, common.size());
    }

    /** A frame around a window around a cross: a hole holds another face, and a polygon cut in two has two faces. */
    @Test
    void holesAndPartsAreKeptApart() {
        PlanarSubdivision frame = PlanarSubdivision.of(Lists.immutable.of(
                Polygon.rectangle(0, 0, 10, 10), Polygon.rectangle(2, 2, 8, 8), Polygon.rectangle(4, 2, 5, 8)));
        assertEquals(4, frame.faces().size());
        assertEquals(2, frame.faces().get(0).rings().size());
        assertEquals(64, frame.faces().get(0).area(), 1e-12);
        assertEquals(
                30, frame.faces().select(face -> face.painted() == 1).sumOfDouble(PlanarSubdivision.Face::area), 1e-12);
        assertEquals(2, frame.faces().count(face -> face.painted() == 1));
    }

    /** What is nearer than the tolerance is joined: no hair of nothing lies between two layers. */
    @Test
    void aHairBetweenTwoSidesCloses() {
        PlanarSubdivision joined = PlanarSubdivision.of(
                Lists.immutable.of(Polygon.rectangle(0, 0, 1, 1), Polygon.rectangle(1 + 1e-7, 0, 2, 1)));
        assertEquals(
                1,
                joined.edges()
                        .count(edge ->
                                edge.left() != PlanarSubdivision.NOTHING && edge.right() != PlanarSubdivision.NOTHING));
    }

    /** Against the definition: the last polygon that holds a place is seen there. */
    @Test
    void everyPlaceShowsTheLastPolygonThatHoldsIt() {
        Random random = new Random(7);
        for (int trial = 0; trial < 60; trial++) {
            MutableList<Polygon> painted = Lists.mutable.empty();
            for (int i = 0; i < 12; i++) {
                double x = random.nextInt(8);
                double y = random.nextInt(8);
                double w = 1 + random.nextInt(5);
                double h = 1 + random.nextInt(5);
                painted.add(
                        i % 3 == 2
                                ? polygon(x, y, x + w, y + 1, x + 0.5, y + h)
                                : Polygon.rectangle(x, y, x + w, y + h));
            }
            PlanarSubdivision seen = PlanarSubdivision.of(painted.toImmutable());
            for (int i = 0; i < 200; i++) {
                Point at = new Point(13 * random.nextDouble(), 13 * random.nextDouble());
                int face = seen.faceAt(at.x(), at.y());
                assertEquals(
                        top(painted, at),
                        face == PlanarSubdivision.NOTHING
                                ? -1
                                : seen.faces().get(face).painted());
            }
            sidesAreRight(seen);
        }
    }

    private static void sidesAreRight(PlanarSubdivision seen) {
        for (PlanarSubdivision.Edge edge : seen.edges().select(each -> each.length() > 1e-2)) {
            double x = -(edge.to().y() - edge.from().y()) / edge.length() * 1e-5;
            double y = (edge.to().x() - edge.from().x()) / edge.length() * 1e-5;
            Point left = new Point(edge.middle().x() + x, edge.middle().y() + y);
            Point right = new Point(edge.middle().x() - x, edge.middle().y() - y);
            assertEquals(seen.faceAt(left.x(), left.y()), edge.left());
            assertEquals(seen.faceAt(right.x(), right.y()), edge.right());
        }
    }

    private static int top(MutableList<Polygon> painted, Point at) {
        for (int i = painted.size() - 1; i >= 0; i--) {
            ImmutableList<Point> corners = painted.get(i).corners();
            boolean in = false;
            for (int a = 0, b = corners.size() - 1; a < corners.size(); b = a++) {
                Point p = corners.get(a);
                Point q = corners.get(b);
                if (p.y() > at.y() != q.y() > at.y()
                        && at.x() < (q.x() - p.x()) * (at.y() - p.y()) / (q.y() - p.y()) + p.x()) {
                    in = !in;
                }
            }
            if (in) {
                return i;
            }
        }
        return -1;
    }

    /** The boards over rafters, a wall's boards under them and a sheet on both, whose sides run in one line but for rounding. */
    @Test
    void sidesInOneLineAreCutAlike() {
        ImmutableList<Polygon> outlines = Lists.immutable.of(
                polygon(
                        0.255,
                        -2.104503589851694,
                        0.255,
                        0.27229380932606745,
                        0.455,
                        0.10447388309061145,
                        0.455,
                        -2.104503589851694),
                polygon(
                        -0.841054665185458,
                        0.930911416766867,
                        -0.71249714324815,
                        1.0841203053906625,
                        0.455,
                        0.10447388309061145,
                        0.455,
                        -0.15660757477584433),
                polygon(
                        -0.71249714324815,
                        1.0841203053906625,
                        -0.7121757494433067,
                        1.084503327612222,
                        0.8649999999999999,
                        -0.23890426204740728,
                        0.8649999999999999,
                        -0.2395569656920734));
        PlanarSubdivision eaves = PlanarSubdivision.of(outlines);
        assertEquals(Lists.immutable.of(0, 1, 2), eaves.faces().collect(PlanarSubdivision.Face::painted));
        // Nothing is painted over the boards but a sheet beside them.
        assertEquals(
                PlanarSubdivision.of(outlines.subList(1, 2).toImmutable())
                        .faces()
                        .getOnly()
                        .area(),
                eaves.faces().get(1).area(),
                1e-6);
    }

    /** Two holes that meet in a corner, one of them in a corner of what they are in: each is a ring of its own. */
    @Test
    void holesThatTouchAreRingsOfTheirOwn() {
        PlanarSubdivision seen = PlanarSubdivision.of(Lists.immutable.of(
                Polygon.rectangle(0, 0, 4, 4), polygon(0, 0, 2, 1, 1, 2), Polygon.rectangle(2, 1, 3, 2)));
        assertEquals(
                Lists.immutable.of(4, 3, 4), seen.faces().getFirst().rings().collect(ImmutableList::size));
    }
}
