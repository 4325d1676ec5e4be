package coldseam.envelope.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.envelope.Body;
import coldseam.envelope.Exposure;
import coldseam.envelope.Opening;
import coldseam.envelope.Point2;
import coldseam.envelope.Point3;
import coldseam.envelope.Vectors;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;
import org.eclipse.collections.impl.factory.Sets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** Seen from the south-east, 30° above the horizon, unless said otherwise. */
class ShellViewTest {

    /** m²: pictures are rounded to 1 µm along some hundred metres of outline. */
    private static final double ROUNDED = 1e-3;

    private static final ImmutableMap<String, Shell> SHELLS = Shapes.SHELLS;

    private static final Body.Storey BOX = Houses.storey("ground floor", Houses.rectangle(0, 0, 10, 8), 3, "wall");

    private static double area(ImmutableList<Point2> p) {
        double sum = 0;
        for (int i = 0; i < p.size(); i++) {
            Point2 a = p.get(i);
            Point2 b = p.get((i + 1) % p.size());
            sum += (a.x() * b.y() - a.y() * b.x()) / 2;
        }
        return sum;
    }

    private static double shown(ShellView view, String surface) {
        return view.patches()
                .select(p -> p.surface().name().equals(surface) && p.opening().isEmpty())
                .sumOfDouble(p -> area(p.outline()) - p.holes().sumOfDouble(h -> Math.abs(area(h))));
    }

    /** Area of the shell's shadow on the picture plane: the union of all surfaces' shadows, those facing away too. */
    private static double shadow(Shell shell) {
        return shadow(shell, 135, 30);
    }

    private static double shadow(Shell shell, double azimuth, double elevation) {
        double c = Math.cos(Math.toRadians(elevation));
        double s = Math.sin(Math.toRadians(elevation));
        double east = Math.sin(Math.toRadians(azimuth));
        double north = Math.cos(Math.toRadians(azimuth));
        Geometry sum = new GeometryFactory().createPolygon();
        for (Surface surface : shell.surfaces().newWithAll(shell.steps())) {
            // Seen from the north, right is west; up leans away from the eye.
            Coordinate[] ring = surface.outline()
                    .newWith(surface.outline().getFirst())
                    .collect(p -> new Coordinate(
                            p.y() * east - p.x() * north, p.z() * c - (p.x() * east + p.y() * north) * s))
                    .toArray(new Coordinate[0]);
            sum = OverlayNGRobust.overlay(sum, new GeometryFactory().createPolygon(ring), OverlayNG.UNION);
        }
        return sum.getArea();
    }

    private static double length(ShellView view, boolean visible) {
        return view.traces()
                .select(t -> t.visible() == visible)
                .sumOfDouble(t -> Math.hypot(
                        t.to().x() - t.from().x(), t.to().y() - t.from().y()));
    }

    @Test
    void boxShowsThreeFacesAndNineEdges() {
        Shell shell = ShellBuilder.build(Houses.house(Houses.body(Houses.flat(), BOX)));
        ShellView view = ShellView.of(shell, 135, 30);
        assertEquals(
                Sets.mutable.of("ground floor wall 0", "ground floor wall 1", "roof"),
                view.patches().collect(p -> p.surface().name()).toSet());
        // A wall at 45° to the eye, 30° above it: area · cos 30° · cos 45°; a flat roof: area · sin 30°.
        assertEquals(38.5 * Math.sqrt(3) / 2 * Math.sqrt(0.5), shown(view, "ground floor wall 0"), ROUNDED);
        assertEquals(40, shown(view, "roof"), ROUNDED);
        assertEquals(9, view.traces().count(ShellView.Trace::visible));
        assertEquals(3, view.traces().count(t -> !t.visible()));
        ShellView opposite = ShellView.of(shell, 315, -30);
        assertEquals(
                6,
                view.patches()
                        .newWithAll(opposite.patches())
                        .collect(p -> p.surface().name())
                        .distinct()
                        .size());
        // From the east, north is to the right.
        ShellView east = ShellView.of(shell, 90, 0.5);
        Edge corner =
                shell.edges().detect(e -> e.name().equals("outside corner: ground floor wall 1 / ground floor wall 2"));
        assertEquals(
                8, east.traces().detect(t -> t.edge().equals(corner)).from().x(), 1e-6);
    }

    @Test
    void setBackStoreyHidesWhatLiesBehindIt() {
        Body.Storey tower = Houses.storey("tower", Houses.rectangle(3, 3, 3, 2), 2.8, "wall");
        Shell shell = ShellBuilder.build(Houses.house(Houses.body(Houses.flat(), BOX, tower)));
        ShellView view = ShellView.of(shell, 135, 30);
        double patches = shell.surfaces().sumOfDouble(s -> shown(view, s.name()));
        assertEquals(shadow(shell), patches, ROUNDED);
        double deck = shell.surfaces().select(s -> s.use() == Body.Use.TERRACE).sumOfDouble(s -> shown(view, s.name()));
        double free = 74 * 0.5;
        assertTrue(deck < free - 1, "the tower hides a part of the deck");
        // Walls of the tower that face the eye show whole.
        assertEquals(3 * 3.1 * Math.sqrt(3) / 2 * Math.sqrt(0.5), shown(view, "tower wall 0"), ROUNDED);
        double all = shell.edges().sumOfDouble(e -> {
            Point3 d = Vectors.minus(e.to(), e.from());
            double along = d.x() * Math.cos(Math.toRadians(30)) * Math.sqrt(0.5)
                    - d.y() * Math.cos(Math.toRadians(30)) * Math.sqrt(0.5)
                    + d.z() * 0.5;
            return Math.sqrt(Math.max(0, Vectors.dot(d, d) - along * along));
        });
        assertEquals(all, length(view, true) + length(view, false), 1e-3);
        // The tower's foot on its far sides is hidden, on its near sides it shows.
        assertEquals(
                2,
                view.traces()
                        .count(t -> !t.visible() && t.edge().kind() == coldseam.envelope.JunctionKind.WALL_TO_TERRACE));
    }

    @Test
    void openingsShowWhereTheirWallShows() {
        Opening window = Houses.opening("W", Opening.Kind.WINDOW, "ground floor wall 0", 2, 1, 4, 1);
        Opening door = Houses.opening("D", Opening.Kind.DOOR, "ground floor wall 2", 1, 2, 4, 0);
        Shell shell = ShellBuilder.build(Houses.house(
                Houses.body(Houses.flat(), BOX), Lists.immutable.of(window, door), Lists.immutable.empty()));
        ShellView south = ShellView.of(shell, 180, 10);
        ImmutableList<ShellView.Patch> panes =
                south.patches().select(p -> p.opening().isPresent());
        assertEquals(1, panes.size());
        assertEquals(2 * Math.cos(Math.toRadians(10)), area(panes.getFirst().outline()), ROUNDED);
        ShellView north = ShellView.of(shell, 0, 10);
        ShellView.Patch pane = north.patches().detect(p -> p.opening().isPresent());
        assertEquals("D", pane.opening().orElseThrow().name());
        assertEquals(2 * Math.cos(Math.toRadians(10)), area(pane.outline()), ROUNDED);
    }

    @Test
    void aPointShowsWhereNothingStandsBeforeIt() {
        Shell shell = ShellBuilder.build(Houses.house(Houses.body(Houses.flat(), BOX)));
        ShellView view = ShellView.of(shell, 135, 30);
        double top = shell.surfaces()
                .flatCollect(Surface::outline)
                .collectDouble(Point3::z)
                .max();
        assertTrue(view.shows(new Point3(5, 0, 1)), "on the south wall");
        assertTrue(view.shows(new Point3(5, 0, 0)), "at its foot");
        assertTrue(view.shows(new Point3(0, 4, top)), "on the far rim of the roof");
        assertTrue(!view.shows(new Point3(0, 4, 1)), "on the west wall, which faces away");
        assertTrue(!view.shows(new Point3(5, 8, 0)), "at the foot of the north wall");
        // To the right is north-east, up leans to the north-west.
        assertEquals(9 * Math.sqrt(0.5), view.picture(new Point3(5, 4, 0)).x(), 1e-6);
        assertEquals(-1 * Math.sqrt(0.5) / 2, view.picture(new Point3(5, 4, 0)).y(), 1e-6);
    }

    @Test
    void theRimOfAHoleIsSeenThroughTheHoleAndCutBehindWalls() {
        Shell closed = ShellBuilder.build(Houses.house(Houses.body(Houses.flat(), BOX)));
        assertEquals(0, ShellView.of(closed, 135, 30).rims().size());
        // The wall that is left out faces north, away from the eye: of its rim the upper edge shows, over the roof, and
        // the upright one at the end of the east wall.
        Shell open = ShellBuilder.build(Houses.house(Houses.body(
                Houses.flat(),
                Houses.storey(
                        "ground floor",
                        Houses.rectangle(0, 0, 10, 8),
                        3,
                        Lists.immutable.of("wall", "wall", "", "wall")))));
        ShellView view = ShellView.of(open, 135, 30);
        assertEquals(4, open.openEdges().size());
        double height = open.openEdges().collectDouble(OpenEdge::length).min();
        assertEquals(
                10 * Math.sqrt(0.5) * Math.hypot(1, 0.5) + height * Math.cos(Math.toRadians(30)),
                view.rims()
                        .select(ShellView.Stretch::visible)
                        .sumOfDouble(rim -> Math.hypot(
                                rim.to().x() - rim.from().x(),
                                rim.to().y() - rim.from().y())),
                1e-3);
    }

    /**
     * What shows of all surfaces is the house's shadow; every edge shows or is hidden over its whole length in the picture, and
     * its middle is where it is said to be.
     */
    @ParameterizedTest
    @MethodSource("coldseam.envelope.shell.Shapes#names")
    void allThatShowsIsTheShadow(String house) {
        Shell shell = SHELLS.get(house);
        for (double[] eye : new double[][] {{127, 33}, {286, -21}}) {
            ShellView view = ShellView.of(shell, eye[0], eye[1]);
            double panes = view.patches().select(p -> p.opening().isPresent()).sumOfDouble(p -> area(p.outline()));
            double patches = view.patches().sumOfDouble(ShellViewTest::area) - panes;
            assertEquals(shadow(shell, eye[0], eye[1]), patches, 10 * ROUNDED);
            view.patches()
                    .forEach(p -> p.opening()
                            .ifPresent(o -> assertTrue(p.surface().name().startsWith(o.surface()), o.name())));
            double a = Math.toRadians(eye[0]);
            double e = Math.toRadians(eye[1]);
            Point3 way = new Point3(Math.cos(e) * Math.sin(a), Math.cos(e) * Math.cos(a), Math.sin(e));
            for (Edge edge : shell.edges()) {
                ImmutableList<ShellView.Trace> traces = view.traces().select(t -> t.edge() == edge);
                Point3 along = Vectors.minus(edge.to(), edge.from());
                double length = Vectors.length(Vectors.cross(along, way));
                assertEquals(length, traces.sumOfDouble(ShellViewTest::length), ROUNDED, edge.name());
                double sofar = 0;
                for (ShellView.Trace trace : traces) {
                    double middle = (sofar + length(trace) / 2) / length;
                    Point3 at = Vectors.plus(edge.from(), Vectors.times(along, middle));
                    assertEquals(trace.visible(), view.shows(at), edge.name());
                    sofar += length(trace);
                }
            }
        }
    }

    private static double area(ShellView.Patch patch) {
        return area(patch.outline()) - patch.holes().sumOfDouble(h -> Math.abs(area(h)));
    }

    private static double length(ShellView.Trace t) {
        return Math.hypot(t.to().x() - t.from().x(), t.to().y() - t.from().y());
    }

    /** Seen level from the east, what runs from east to west is a point and no line. */
    @Test
    void anEdgeSeenFromItsEndIsNoLine() {
        Shell shell = ShellBuilder.build(Houses.house(Houses.body(Houses.flat(), BOX)));
        ShellView view = ShellView.of(shell, 90, 0);
        assertEquals(8, view.traces().collect(ShellView.Trace::edge).distinct().size());
        assertTrue(view.traces()
                .allSatisfy(t -> Math.abs(t.edge().from().x() - t.edge().to().x()) < 1e-9));
    }

    /** Half a metre of the cellar stands out of the ground: the line runs along both walls that are seen. */
    @Test
    void theGroundIsALineOnTheWallsThatStandInIt() {
        Body.Storey cellar = Houses.storey("cellar", Houses.rectangle(0, 0, 10, 8), 2.5, "wall");
        Shell shell = ShellBuilder.build(Houses.house(Houses.storeys(
                Body.FootprintLine.OUTER_FACE,
                Lists.immutable.of(cellar, BOX),
                Houses.base(Body.Base.Kind.HEATED_CELLAR, 2.0, Exposure.ground()),
                Houses.flat())));
        ShellView view = ShellView.of(shell, 135, 30);
        ImmutableList<ShellView.Stretch> seen = view.ground().select(ShellView.Stretch::visible);
        assertEquals(2, seen.size());
        assertEquals(
                (10 + 8) * Math.sqrt(0.5) * Math.hypot(1, 0.5),
                seen.sumOfDouble(line -> Math.hypot(
                        line.to().x() - line.from().x(),
                        line.to().y() - line.from().y())),
                1e-3);
        assertEquals(4, view.ground().size());
        assertEquals(
                view.picture(new Point3(10, 0, 0)).y(),
                seen.collectDouble(line -> line.from().y()).min(),
                1e-3);
        assertTrue(ShellView.of(ShellBuilder.build(Houses.house(Houses.body(Houses.flat(), BOX))), 135, 30)
                .ground()
                .isEmpty());
    }

    /** A threshold that parts two walls runs the other way than one over a slab; half over a cellar, half over open air, it is two. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 5})
    void doorsOverACellarAreWhole(double cellarFrom) {
        Body.Storey cellar = Houses.storey("cellar", Houses.rectangle(cellarFrom, 0, 10 - cellarFrom, 8), 2.5, "wall");
        Opening door = Houses.opening("D", Opening.Kind.DOOR, "ground floor wall 2", 1, 2, 4.5, 0);
        Shell shell = ShellBuilder.build(Houses.house(
                Houses.storeys(
                        Body.FootprintLine.OUTER_FACE,
                        Lists.immutable.of(cellar, BOX),
                        Houses.base(Body.Base.Kind.HEATED_CELLAR, 2.4, Exposure.ground()),
                        Houses.flat()),
                Lists.immutable.of(door),
                Lists.immutable.empty()));
        ImmutableList<ShellView.Patch> panes =
                ShellView.of(shell, 0, 10).patches().select(p -> p.opening().isPresent());
        assertEquals(1, panes.size());
        assertEquals(2 * Math.cos(Math.toRadians(10)), area(panes.getFirst().outline()), ROUNDED);
    }
}
