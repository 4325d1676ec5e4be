package coldseam.envelope.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.envelope.Body;
import coldseam.envelope.House;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Opening;
import coldseam.envelope.Point2;
import coldseam.envelope.Point3;
import coldseam.envelope.Vectors;
import coldseam.envelope.shell.fault.ShellException;
import coldseam.envelope.shell.lattice.Vertex;
import coldseam.envelope.shell.plan.Footprint;
import coldseam.envelope.shell.plan.Plan;
import java.util.OptionalDouble;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tag;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.factory.Maps;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Roofs over any plan against volumes, areas and lengths worked out apart.
 *
 * <p>Houses' assemblies: walls 0.4 m, roof 0.45 m of which 0.35 m lie outside the structure; footprints are outer faces. At 45°
 * the eaves lie 0.35·√2 − 0.4 m over the storey's height.
 */
class RoofsTest {

    /** m, m², m³: nodes lie on a lattice of a micrometre, ridges up to twice its reach off. */
    private static final double LATTICE = 2e-3;

    /** z of the eaves of one storey of 3 m under a roof of 45°. */
    private static final double EAVES = 3 + 0.35 * Math.sqrt(2) - 0.4;

    private static final Body.RoofSide GABLE = new Body.RoofSide(45, Double.POSITIVE_INFINITY);

    /** An L: 10 m by 4 m along the south, and a wing 4 m wide to the north, 9 m in all. */
    private static final ImmutableList<Point2> ELL = Houses.points(0, 0, 10, 0, 10, 4, 4, 4, 4, 9, 0, 9);

    static Body.Roof roof(Body.Roof.Form form, double pitch, int low, ImmutableMap<Integer, Body.RoofSide> sides) {
        return new Body.Roof(
                form,
                false,
                java.util.Optional.of("roof"),
                java.util.Optional.empty(),
                pitch,
                low,
                0,
                OptionalDouble.empty(),
                sides,
                java.util.Optional.empty(),
                Lists.immutable.empty());
    }

    private static Shell build(ImmutableList<Point2> plan, Body.Roof roof) {
        return build(plan, Lists.immutable.empty(), roof);
    }

    private static Shell build(
            ImmutableList<Point2> plan, ImmutableList<ImmutableList<Point2>> courts, Body.Roof roof) {
        return ShellBuilder.build(
                Houses.house(Houses.body(roof, Houses.around(Houses.storey("house", plan, 3, "wall"), courts))));
    }

    /** 10 m by 6 m under slopes of 45°, with a gable at each end. */
    private static Body gabled() {
        return Houses.body(
                roof(Body.Roof.Form.HIP, 45, 0, Maps.immutable.of(1, GABLE, 3, GABLE)),
                Houses.around(
                        Houses.storey("house", Houses.rectangle(0, 0, 10, 6), 3, "wall"), Lists.immutable.empty()));
    }

    private static ImmutableList<Surface> slopes(Shell shell) {
        return shell.surfaces().select(s -> s.use() == Body.Use.ROOF);
    }

    /** The box's six sides are no measure at 45°, where compass sides tie. */
    private static void assertClosed(Shell shell) {
        assertEquals(Lists.immutable.empty(), shell.openEdges());
        assertEquals(new Point3(0, 0, 0), shell.areaVectorSum());
    }

    private static double height(Shell shell) {
        return slopes(shell)
                .flatCollect(Surface::outline)
                .collectDouble(Point3::z)
                .max();
    }

    /** A dormer stands on a slope one side of which closes where a steeper one meets it, whatever round-off makes of that end. */
    @Test
    void aDormerBesideAnEndThatCloses() {
        ImmutableList<Point2> turned =
                Houses.points(3.19, 1.81, 3.19, 11.69, -0.69, 11.69, -0.69, 5.69, -3.69, 5.69, -3.69, 1.81);
        Body.Dormer dormer =
                new Body.Dormer("dormer", 5, false, OptionalDouble.empty(), 0, 2, 0, 1, 25, "thin", "roof");
        Body.Roof steeper = roof(Body.Roof.Form.HIP, 45, 0, Maps.immutable.of(0, new Body.RoofSide(50, 0)));
        assertClosed(build(turned, RareHouses.with(steeper, java.util.Optional.empty(), dormer)));
    }

    @Test
    void hipsOverAnEllMeetInAValley() {
        Shell shell = build(ELL, roof(Body.Roof.Form.HIP, 45, 0, Maps.immutable.empty()));
        ShellBuilderTest.assertClosed(shell);
        assertEquals(6, slopes(shell).size());
        // Two hipped roofs over 10 by 4 and 4 by 9, each a block less its ends, less what both cover: a hipped roof
        // over the
        // 4 by 4 corner, a pyramid with two of its sides, and half the blocks of the two others.
        double eastWest = 2 * 2 * 10 - 4.0 * 2 * 2 / 3 * 1;
        double northSouth = 2 * 2 * 9 - 4.0 * 2 * 2 / 3 * 1;
        double corner = 4.0 * 4 * 2 / 3;
        double common = corner / 4 + corner / 4 + 2 * (4.0 * 4 * 2 / 3) / 4;
        assertEquals((60 * (EAVES + 0.5)) + eastWest + northSouth - common, shell.externalVolume(), LATTICE * 60);
        assertEquals(EAVES + 2, height(shell), LATTICE);
        // In plan each slope's area is its area over √2.
        assertEquals(60 * Math.sqrt(2), slopes(shell).sumOfDouble(Surface::externalArea), LATTICE * 10);
        // A hip over 2 m by 2 m in plan and 2 m high: 2·√3. One valley, 4 hips at the ends, one at the outer corner.
        assertEquals(5 * 2 * Math.sqrt(3), ShellBuilderTest.length(shell, JunctionKind.HIP), LATTICE);
        assertEquals(2 * Math.sqrt(3), ShellBuilderTest.length(shell, JunctionKind.VALLEY), LATTICE);
        assertEquals((10 - 4) + (9 - 4), ShellBuilderTest.length(shell, JunctionKind.RIDGE), LATTICE);
        assertEquals(38, ShellBuilderTest.length(shell, JunctionKind.EAVES), LATTICE);
    }

    @Test
    void gablesOverAnEllStandOverItsEnds() {
        Shell shell = build(ELL, roof(Body.Roof.Form.HIP, 45, 0, Maps.immutable.of(1, GABLE, 4, GABLE)));
        ShellBuilderTest.assertClosed(shell);
        assertEquals(4, slopes(shell).size());
        assertEquals(2, shell.surfaces().count(s -> s.name().startsWith("gable over ")));
        assertEquals(
                2 * 4.0,
                shell.surfaces().select(s -> s.name().startsWith("gable over ")).sumOfDouble(Surface::externalArea),
                LATTICE);
        assertEquals(60 * Math.sqrt(2), slopes(shell).sumOfDouble(Surface::externalArea), LATTICE * 10);
        // Both gables' slopes are 2·√2 long.
        assertEquals(4 * 2 * Math.sqrt(2), ShellBuilderTest.length(shell, JunctionKind.VERGE), LATTICE);
        assertEquals((10 - 2) + (9 - 2), ShellBuilderTest.length(shell, JunctionKind.RIDGE), LATTICE);
        assertEquals(1, ShellBuilderTest.count(shell, JunctionKind.HIP));
        assertEquals(1, ShellBuilderTest.count(shell, JunctionKind.VALLEY));
        // Prisms of 4 m² over 8 m and over 7 m reach to the ridges' corner at (2, 2); there a hip and a valley: in the
        // square of
        // 2 m south-west of it a block of 2·2·2/3, north-east of it one of 2·2·2·2/3.
        double arms = 2 * 6 * 2 + 2 * 5 * 2;
        double square = 2 * 2 * 2 / 3.0 + 2 * 2 * 2 * 2 / 3.0 + 2 * (2 * 2 * 1.0);
        assertEquals(60 * (EAVES + 0.5) + arms + square, shell.externalVolume(), LATTICE * 60);
    }

    /** A window higher than the eaves stands in a wall and the gable over it, which are one surface where they are built alike. */
    @ParameterizedTest
    @CsvSource({"house wall 1, 2, 1", "gable over house wall 1, 2, 1", "house wall 1, 0.5, 2"})
    void aWindowMayReachFromAWallIntoItsGable(String surface, double sill, int gables) {
        Body body = gabled();
        Shell bare = ShellBuilder.build(Houses.house(body));
        Shell shell = ShellBuilder.build(Houses.house(
                body,
                Lists.immutable.of(Houses.opening("window", Opening.Kind.WINDOW, surface, 1.2, 2, -1, sill)),
                Lists.immutable.empty()));
        ShellBuilderTest.assertClosed(shell);
        assertEquals(gables, shell.surfaces().count(s -> s.name().startsWith("gable over ")));
        assertEquals(bare.externalVolume(), shell.externalVolume(), LATTICE);
        assertEquals(
                ShellBuilderTest.length(bare, JunctionKind.VERGE),
                ShellBuilderTest.length(shell, JunctionKind.VERGE),
                LATTICE);
        if (gables == 1) {
            Surface wall = ShellBuilderTest.surface(shell, "house wall 1");
            assertEquals(6 * (EAVES + 0.5) + 9, wall.externalArea(), LATTICE);
            assertEquals(1.2 * 2, wall.openingArea(), LATTICE);
            assertEquals(Lists.immutable.of("window"), wall.openings());
            assertEquals(2, shell.edges().count(edge -> edge.kind() == JunctionKind.JAMB));
        }
    }

    /** There is none under a hip. */
    @Test
    void aGableThatIsNotThereIsNamedByNoWindow() {
        Body body = gabled();
        House house = Houses.house(
                body,
                Lists.immutable.of(
                        Houses.opening("window", Opening.Kind.WINDOW, "gable over house wall 0", 1.2, 1, -1, 1)),
                Lists.immutable.empty());
        assertTrue(assertThrows(ShellException.class, () -> ShellBuilder.build(house))
                .getMessage()
                .contains("the surface \"gable over house wall 0\" is not part of the shell"));
    }

    /** Its head stands in the slope; a deck before the wall was said to be in its way, at the height of the eaves. */
    @Test
    void aHeadInTheSlopeIsNotLaidToTheFoot() {
        Body body = gabled();
        String fault = assertThrows(
                        ShellException.class,
                        () -> ShellBuilder.build(Houses.house(
                                body,
                                Lists.immutable.of(
                                        Houses.opening("window", Opening.Kind.WINDOW, "house wall 1", 1.2, 3, 1.2, 2)),
                                Lists.immutable.empty())))
                .faults()
                .getOnly();
        assertTrue(fault.contains("does not fit") && !fault.contains("what lies before"), fault);
    }

    @Test
    void halfHipsBeginOverTheirGables() {
        Body.RoofSide half = new Body.RoofSide(45, 1.5);
        Shell shell = build(
                Houses.rectangle(0, 0, 10, 6), roof(Body.Roof.Form.HIP, 45, 0, Maps.immutable.of(1, half, 3, GABLE)));
        ShellBuilderTest.assertClosed(shell);
        assertEquals(3, slopes(shell).size());
        // A prism of 6 m by 3 m high; at the east a pyramid is cut off over the trapezoid of 1.5 m: 3 m wide, 1.5 m
        // high and deep.
        assertEquals(60 * (EAVES + 0.5) + 9 * 10 - 3 * 1.5 / 2 * 1.5 / 3, shell.externalVolume(), LATTICE * 60);
        Surface east = ShellBuilderTest.surface(shell, "gable over house wall 1");
        assertEquals(9 - 3 * 1.5 / 2, east.externalArea(), LATTICE);
        assertEquals(10 - 1.5, ShellBuilderTest.length(shell, JunctionKind.RIDGE), LATTICE);
        assertEquals(2 * 1.5 * Math.sqrt(3), ShellBuilderTest.length(shell, JunctionKind.HIP), LATTICE);
        // The half-hip's own eaves, 3 m, beside the long ones.
        assertEquals(2 * 10 + 3, ShellBuilderTest.length(shell, JunctionKind.EAVES), LATTICE);
    }

    @Test
    void differentPitchesMoveTheRidge() {
        // tan 45° = 1 from the south, tan 26.565…° = 1/2 from the north: 6 m meet 2 m high, 2 m from the south side.
        Body.RoofSide shallow = new Body.RoofSide(Math.toDegrees(Math.atan(0.5)), 0);
        Shell shell =
                build(Houses.rectangle(0, 0, 10, 6), roof(Body.Roof.Form.GABLE, 45, 0, Maps.immutable.of(2, shallow)));
        ShellBuilderTest.assertClosed(shell);
        // Eaves go by the steeper: 0.35·√2 − 0.4 is 0.095 m, 0.35·√1.25 − 0.2 is 0.191 m over the storey.
        assertEquals(EAVES + 2, height(shell), LATTICE);
        assertEquals(60 * (EAVES + 0.5) + 10 * 6 * 2 / 2.0, shell.externalVolume(), LATTICE * 60);
        Edge ridge = shell.edges().detect(e -> e.kind() == JunctionKind.RIDGE);
        assertEquals(2, ridge.from().y(), LATTICE);
        assertEquals(180 - 45 - Math.toDegrees(Math.atan(0.5)), ridge.angle(), 0.01);
    }

    @Test
    void aGableBesideALowerWingStandsOnItsSlope() {
        // The main house 6 m by 8 m with gables north and south, a wing 4 m by 4 m at its south-east with eaves south
        // and north:
        // the wing's slopes run under the gable's plane, which goes on upright over them.
        ImmutableList<Point2> plan = Houses.points(0, 0, 6, 0, 6, 2, 10, 2, 10, 6, 6, 6, 6, 8, 0, 8);
        Shell shell = build(plan, roof(Body.Roof.Form.HIP, 45, 0, Maps.immutable.of(0, GABLE, 6, GABLE, 3, GABLE)));
        ShellBuilderTest.assertClosed(shell);
        // A prism of 6 m by 3 m high over 8 m; the wing's, 4 m by 2 m high, over 4 m and where it runs into the main
        // slope: its
        // ridge goes 2 m further in, a pyramid-like end of 4·2/2·2/3.
        assertEquals(
                (48 + 16) * (EAVES + 0.5) + 9 * 8 + 4 * 4 + 4 * 2 / 2.0 * 2 / 3, shell.externalVolume(), LATTICE * 60);
        assertEquals(2, ShellBuilderTest.count(shell, JunctionKind.VALLEY));
        assertEquals(2 * 2 * Math.sqrt(3), ShellBuilderTest.length(shell, JunctionKind.VALLEY), LATTICE);
    }

    @Test
    void aLeanToMayCrossTheTerraceBesideIt() {
        // 45° from 2.2 m on over 3 m of depth, so from 2.295 m outside; the deck lies at 3.05 m, which the slope
        // crosses.
        Body.LowerRoof lower = new Body.LowerRoof(
                java.util.Optional.of(Houses.rectangle(-5, -5, 11, 8)),
                "roof",
                45,
                0,
                2.2,
                java.util.Optional.empty(),
                coldseam.envelope.Exposure.outdoors());
        Body.Storey plain = Houses.storey("ground", Houses.rectangle(0, 0, 10, 8), 3, "wall");
        Body.Storey ground = new Body.Storey(
                plain.name(),
                plain.footprint(),
                plain.courts(),
                plain.height(),
                plain.walls(),
                plain.terrace(),
                true,
                plain.overhang(),
                0,
                plain.floor(),
                java.util.Optional.of(lower),
                java.util.Optional.empty());
        for (int degrees : new int[] {0, 31}) {
            Shell shell = ShellBuilder.build(Houses.house(AnyAngleTest.turned(
                    Houses.body(
                            Houses.flat(), ground, Houses.storey("upper", Houses.rectangle(0, 3, 10, 5), 4, "wall")),
                    degrees)));
            assertClosed(shell);
            double low = EAVES - 3 + 2.2;
            double cross = 3.05 - low;
            assertEquals(50 * 7.85 + 12 * 3.55 + 18 * (low + 1.5 + 0.5), shell.externalVolume(), LATTICE * 20);
            assertEquals(
                    18 * Math.sqrt(2),
                    ShellBuilderTest.surface(shell, "lower roof over ground").externalArea(),
                    LATTICE);
            // Triangles under and over the crossing.
            assertEquals(
                    cross * cross / 2 + (3 - cross) * (3 - cross) / 2,
                    shell.surfaces()
                            .select(s -> s.name().startsWith("wall beside"))
                            .sumOfDouble(Surface::externalArea),
                    LATTICE);
        }
    }

    /** Rectangles with a piece cut out, in millimetres. */
    @Provide
    Arbitrary<StackedPlansTest.Outline> outlines() {
        Arbitrary<ImmutableList<Integer>> lines = Arbitraries.of(0, 3_000, 5_345, 9_711, 10_800, 14_000, 19_001, 24_000)
                .set()
                .ofSize(4)
                .map(set -> Lists.immutable.ofAll(set).toSortedList().toImmutable())
                .filter(four -> four.get(1) - four.get(0) > 1_000
                        && four.get(2) - four.get(1) > 1_000
                        && four.get(3) - four.get(2) > 1_000);
        return Combinators.combine(lines, lines, Arbitraries.of(StackedPlansTest.Outline.Cut.class))
                .as(StackedPlansTest.Outline::new);
    }

    /**
     * Where all sides of an outline along the axes rise alike, the roof lies over a point as high as the largest square around
     * the point that the outline holds is wide: half its width times the slope.
     */
    @Property(tries = 150)
    @Tag("slow")
    void hipsAreAsHighAsTheirSquares(
            @ForAll("outlines") StackedPlansTest.Outline outline,
            @ForAll("turns") int degrees,
            @ForAll("pitches") int pitch) {
        assertSquares(outline, degrees, pitch);
    }

    /** A few of the same. */
    @Property(tries = 10, seed = "2026", edgeCases = EdgeCasesMode.NONE)
    void someHipsAreAsHighAsTheirSquares(
            @ForAll("outlines") StackedPlansTest.Outline outline,
            @ForAll("turns") int degrees,
            @ForAll("pitches") int pitch) {
        assertSquares(outline, degrees, pitch);
    }

    private static void assertSquares(StackedPlansTest.Outline outline, int degrees, int pitch) {
        Shell shell = build(
                outline.points().collect(p -> AnyAngleTest.turned(p, degrees)),
                outline.courts().collect(court -> court.collect(p -> AnyAngleTest.turned(p, degrees))),
                roof(Body.Roof.Form.HIP, pitch, 0, Maps.immutable.empty()));
        assertClosed(shell);
        double slope = Math.tan(Math.toRadians(pitch));
        double eaves = 3 + 0.35 / Math.cos(Math.toRadians(pitch)) - 0.4 * slope;
        for (double x = 137; x < 24_000; x += 1_731) {
            for (double y = 171; y < 24_000; y += 1_677) {
                if (outline.covers(x, y)) {
                    Point2 p = AnyAngleTest.turned(new Point2(x / 1000, y / 1000), degrees);
                    // mm in the plane of a snapped roof of up to 60°.
                    assertEquals(eaves + slope * square(outline, x, y) / 1000, over(shell, p), 0.003);
                }
            }
        }
    }

    private static double square(StackedPlansTest.Outline outline, double x, double y) {
        Footprint plan = Footprint.of(Lists.immutable.of(outline.points()).newWithAll(outline.courts()));
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < plan.corners().size(); i++) {
            Point2 a = plan.corners().get(i);
            Point2 b = plan.end(i);
            double dx = Math.max(0, Math.max(Math.min(a.x(), b.x()) * 1000 - x, x - Math.max(a.x(), b.x()) * 1000));
            double dy = Math.max(0, Math.max(Math.min(a.y(), b.y()) * 1000 - y, y - Math.max(a.y(), b.y()) * 1000));
            least = Math.min(least, Math.max(dx, dy));
        }
        return least;
    }

    /** z of the slope over a point. */
    private static double over(Shell shell, Point2 p) {
        Surface slope = slopes(shell)
                .detectOptional(s -> {
                    var polygon =
                            Plan.polygon(s.outline().collect(v -> Vertex.of(v).at(0)));
                    return polygon.covers(Plan.point(Vertex.inPlan(p)));
                })
                .orElseThrow();
        Point3 a = slope.outline().getFirst();
        Point3 n = slope.normal();
        return a.z() - (n.x() * (p.x() - a.x()) + n.y() * (p.y() - a.y())) / n.z();
    }

    @Provide
    Arbitrary<Integer> turns() {
        return Arbitraries.of(0, 4, 17, 45, 133);
    }

    @Provide
    Arbitrary<Integer> pitches() {
        return Arbitraries.of(8, 30, 45, 60);
    }

    /** How each side rises: many outlines, every mix of gables, half-hips and pitches that closes. */
    @Property(tries = 300)
    @Tag("slow")
    void slopesCoverTheFootprintEachWithItsPitch(
            @ForAll("outlines") StackedPlansTest.Outline outline,
            @ForAll("turns") int degrees,
            @ForAll("rises") ImmutableList<Body.RoofSide> rises) {
        assertSlopes(outline, degrees, rises);
    }

    /** A few of the same. */
    @Property(tries = 16, seed = "2026", edgeCases = EdgeCasesMode.NONE)
    void someSlopesCoverTheFootprintEachWithItsPitch(
            @ForAll("outlines") StackedPlansTest.Outline outline,
            @ForAll("turns") int degrees,
            @ForAll("rises") ImmutableList<Body.RoofSide> rises) {
        assertSlopes(outline, degrees, rises);
    }

    private static void assertSlopes(
            StackedPlansTest.Outline outline, int degrees, ImmutableList<Body.RoofSide> rises) {
        ImmutableList<Point2> plan = outline.points().collect(p -> AnyAngleTest.turned(p, degrees));
        ImmutableList<ImmutableList<Point2>> courts =
                outline.courts().collect(court -> court.collect(p -> AnyAngleTest.turned(p, degrees)));
        Body.Roof roof = roof(
                Body.Roof.Form.HIP,
                45,
                0,
                Lists.immutable
                        .fromStream(java.util.stream.IntStream.range(0, plan.size() + 4 * courts.size())
                                .boxed())
                        .toImmutableMap(i -> i, rises::get));
        Shell shell;
        try {
            shell = build(plan, courts, roof);
        } catch (ShellException refused) {
            assertTrue(
                    refused.faults()
                            .allSatisfy(f -> f.contains("gables alone")
                                    || f.contains("need one pitch")
                                    || f.contains("but no slope rises so far beside it")
                                    || f.contains("nothing is left of it")),
                    refused.faults()::toString);
            return;
        }
        assertClosed(shell);
        double area = Footprint.of(Lists.immutable.of(plan).newWithAll(courts)).area();
        assertEquals(
                area,
                slopes(shell).sumOfDouble(s -> s.externalArea() * s.normal().z()),
                LATTICE * 50);
        // What the slopes enclose with the eaves, by the prisms under their triangles, and the volume by flux.
        double prisms = slopes(shell).sumOfDouble(RoofsTest::prism);
        assertEquals(shell.externalVolume(), prisms + 0.5 * area, LATTICE * 200);
        for (Surface slope : slopes(shell)) {
            double pitch = Math.toDegrees(Math.acos(slope.normal().z()));
            assertTrue(
                    rises.anySatisfy(rise -> Math.abs(rise.pitch() - pitch) < 0.05),
                    () -> slope.name() + " has " + pitch + "°");
            for (Point3 corner : slope.outline()) {
                Point3 off = Vectors.minus(corner, slope.outline().getFirst());
                assertEquals(0, Vectors.dot(off, slope.normal()), 0.001, slope.name());
            }
        }
    }

    /** m³ down to z = 0. */
    private static double prism(Surface slope) {
        ImmutableList<Point3> c = slope.outline();
        double sum = 0;
        for (int i = 1; i + 1 < c.size(); i++) {
            Point3 a = Vectors.minus(c.get(i), c.get(0));
            Point3 b = Vectors.minus(c.get(i + 1), c.get(0));
            sum += Vectors.cross(a, b).z()
                    / 2
                    * (c.get(0).z() + c.get(i).z() + c.get(i + 1).z())
                    / 3;
        }
        return sum;
    }

    @Provide
    Arbitrary<ImmutableList<Body.RoofSide>> rises() {
        return Arbitraries.of(
                        new Body.RoofSide(45, 0),
                        new Body.RoofSide(45, 0),
                        new Body.RoofSide(30, 0),
                        GABLE,
                        new Body.RoofSide(60, 0.8))
                .list()
                .ofSize(8)
                .map(Lists.immutable::ofAll);
    }
}
