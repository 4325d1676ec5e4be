package coldseam.envelope.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import coldseam.envelope.Assembly;
import coldseam.envelope.Body;
import coldseam.envelope.Compass;
import coldseam.envelope.Exposure;
import coldseam.envelope.House;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Point2;
import coldseam.envelope.Point3;
import coldseam.envelope.Vectors;
import java.util.Map;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.map.ImmutableMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What must be true of the junctions of every shell, reckoned from its surfaces' outlines: each house of {@link Shapes}
 * without its openings.
 */
class JunctionTruthsTest {

    /** m; nodes of a roof lie up to a tenth of a millimetre off. */
    private static final double NODES = 1e-3;

    private static final ImmutableMap<String, Shell> SHELLS = Lists.immutable
            .ofAll(Shapes.names())
            .toImmutableMap(name -> name, name -> ShellBuilder.build(house(name, body(name))));

    private static House house(String name, Body body) {
        House house = Shapes.house(name);
        return new House(
                house.name(),
                house.submittal(),
                house.site(),
                Optional.empty(),
                house.materials(),
                house.assemblies(),
                body,
                Lists.immutable.empty(),
                house.choices(),
                house.ownPsi(),
                Lists.immutable.empty(),
                house.points(),
                house.corners(),
                house.limits(),
                house.prices());
    }

    private static Body.Storeys body(String house) {
        return (Body.Storeys) Shapes.house(house).body();
    }

    private static Shell shell(String house) {
        return SHELLS.get(house);
    }

    private static boolean between(Edge edge, Surface one, Surface other) {
        ImmutableList<String> names = Lists.immutable.of(
                edge.first().name(), edge.second().orElseThrow().name());
        return names.contains(one.name()) && names.contains(other.name());
    }

    /** m, along which two outlines run against one another; of two walls alike in one plane what runs level. */
    private static double shared(Surface one, Surface other) {
        boolean level = one.use() == Body.Use.WALL
                && other.use() == Body.Use.WALL
                && inOnePlane(one, other)
                && one.assembly().equals(other.assembly());
        double sum = 0;
        for (int i = 0; i < one.outline().size(); i++) {
            Point3 a = one.outline().get(i);
            Point3 b = one.outline().get((i + 1) % one.outline().size());
            double length = Vectors.length(Vectors.minus(b, a));
            boolean counts = length > NODES && !(level && Math.abs(b.z() - a.z()) > NODES);
            for (int j = 0; counts && j < other.outline().size(); j++) {
                Point3 c = other.outline().get(j);
                Point3 d = other.outline().get((j + 1) % other.outline().size());
                Point3 along = Vectors.times(Vectors.minus(b, a), 1 / length);
                double from = Vectors.dot(Vectors.minus(d, a), along);
                double to = Vectors.dot(Vectors.minus(c, a), along);
                boolean against = to - from > NODES && off(c, a, along) < NODES && off(d, a, along) < NODES;
                sum += against ? Math.max(0, Math.min(length, to) - Math.max(0, from)) : 0;
            }
        }
        return sum;
    }

    private static double off(Point3 point, Point3 origin, Point3 along) {
        return Vectors.length(Vectors.cross(Vectors.minus(point, origin), along));
    }

    private static boolean inOnePlane(Surface one, Surface other) {
        return Vectors.dot(one.normal(), other.normal()) > 1 - 1e-6;
    }

    /** What is one surface but for a cut, so that it has no hole. */
    private static boolean goesOn(Surface one, Surface other) {
        return inOnePlane(one, other)
                && one.assembly().equals(other.assembly())
                && one.exposure().equals(other.exposure())
                && one.use() == other.use()
                && one.storey().equals(other.storey());
    }

    /** Floors and roofs with what they are cut from; each wall alone. */
    private static ImmutableList<ImmutableList<Surface>> wholes(Shell shell) {
        MutableList<ImmutableList<Surface>> wholes = Lists.mutable.empty();
        for (Surface surface : shell.surfaces()) {
            MutableList<ImmutableList<Surface>> same = wholes.select(whole -> surface.use() != Body.Use.WALL
                    && whole.anySatisfy(each -> goesOn(each, surface) && shared(each, surface) > NODES));
            wholes.removeAll(same);
            wholes.add(same.flatCollect(each -> each).with(surface).toImmutable());
        }
        return wholes.toImmutable();
    }

    /** Where two surfaces meet there is a junction, as long as that; there is none where one surface goes on, or two party walls meet. */
    @ParameterizedTest
    @MethodSource("coldseam.envelope.shell.Shapes#names")
    void everySharedLineIsOneJunction(String house) {
        Shell shell = shell(house);
        ImmutableList<ImmutableList<Surface>> all = wholes(shell);
        for (int i = 0; i < all.size(); i++) {
            for (int j = i + 1; j < all.size(); j++) {
                Surface one = all.get(i).getFirst();
                Surface other = all.get(j).getFirst();
                double shared = 0;
                double length = 0;
                for (Surface part : all.get(i)) {
                    for (Surface otherPart : all.get(j)) {
                        shared += shared(part, otherPart);
                        length += shell.edges()
                                .select(edge -> between(edge, part, otherPart))
                                .sumOfDouble(Edge::externalLength);
                    }
                }
                String names = one.name() + " / " + other.name();
                boolean party = one.exposure().kind() == Exposure.Kind.PARTY
                        && other.exposure().kind() == Exposure.Kind.PARTY;
                if (shared < NODES) {
                    assertTrue(
                            length == 0
                                    || inOnePlane(one, other) && shell.steps().notEmpty(),
                            names);
                } else if (party || goesOn(one, other)) {
                    assertEquals(0, length, names);
                } else if (!inOnePlane(one, other) || length > 0) {
                    // A hair's breadth between two walls in one plane shortens what both have by as much at either end.
                    double hair = inOnePlane(one, other)
                            ? Math.abs(Vectors.dot(
                                    Vectors.minus(
                                            one.outline().getFirst(),
                                            other.outline().getFirst()),
                                    one.normal()))
                            : 0;
                    assertEquals(shared, length, NODES + 2 * hair, names);
                }
            }
        }
    }

    private static boolean alike(Surface one, Surface other) {
        return one == other || one.use() != Body.Use.WALL && goesOn(one, other);
    }

    /** Pieces that run on from one another are one, past cuts through what is one surface too. */
    @ParameterizedTest
    @MethodSource("coldseam.envelope.shell.Shapes#names")
    void aJunctionEndsWhereItTurns(String house) {
        ImmutableList<Edge> edges = shell(house).edges();
        for (Edge one : edges) {
            assertTrue(one.externalLength() > 0, one.name());
            Point3 along = Vectors.unit(Vectors.minus(one.to(), one.from()));
            for (Edge other : edges) {
                boolean alike = one.kind() == other.kind()
                        && alike(one.first(), other.first())
                        && alike(one.second().orElseThrow(), other.second().orElseThrow());
                boolean follows = Vectors.length(Vectors.minus(other.from(), one.to())) < 1e-6;
                double straight = Vectors.dot(along, Vectors.unit(Vectors.minus(other.to(), other.from())));
                assertFalse(alike && follows && straight > 1 - 1e-9, one.name() + ", " + other.name());
            }
        }
        assertEquals(edges.size(), edges.collect(Edge::name).distinct().size());
        ImmutableList<Integer> kinds = edges.collect(edge -> edge.kind().ordinal());
        assertEquals(kinds.toSortedList(), kinds.toList());
    }

    /**
     * Along the inner outlines, whichever of the two surfaces one looks at, where no wall of another thickness goes on at its ends; nothing
     * where none of it is indoors.
     */
    @ParameterizedTest
    @MethodSource("coldseam.envelope.shell.Shapes#names")
    void aJunctionIsAsLongIndoorsAsItsInnerOutlines(String house) {
        ImmutableList<Point3> changes = shell(house)
                .edges()
                .select(edge -> edge.kind() == JunctionKind.WALL_THICKNESS_CHANGE)
                .flatCollect(edge -> Lists.immutable.of(edge.from(), edge.to()));
        for (Edge edge : shell(house).edges()) {
            along(edge.first(), edge.from(), edge.to())
                    .ifPresent(inside -> assertEquals(Math.max(0, inside), edge.internalLength(), NODES, edge.name()));
            if (edge.angle() != 180 && !changes.contains(edge.from()) && !changes.contains(edge.to())) {
                along(edge.second().orElseThrow(), edge.to(), edge.from())
                        .ifPresent(
                                inside -> assertEquals(Math.max(0, inside), edge.internalLength(), NODES, edge.name()));
            }
        }
    }

    /** m, of a side of the inner outline; empty where the outline has no such side, or steps within it. */
    private static Optional<Double> along(Surface surface, Point3 from, Point3 to) {
        ImmutableList<Point3> outline = surface.outline();
        int first = outline.indexOf(from);
        int last = outline.indexOf(to);
        boolean twice = outline.distinct().size() != outline.size();
        boolean side = first >= 0 && last >= 0 && !twice && last == (first + 1) % outline.size();
        Point3 way = Vectors.unit(Vectors.minus(to, from));
        return side
                ? Optional.of(Vectors.dot(
                        way,
                        Vectors.minus(
                                surface.innerOutline().get(last),
                                surface.innerOutline().get(first))))
                : Optional.empty();
    }

    /** Kind, surfaces, and where a person looks for it: its storeys, and the side or corner by the way the surfaces face. */
    @ParameterizedTest
    @MethodSource("coldseam.envelope.shell.Shapes#names")
    void junctionsAreNamedAndFound(String house) {
        for (Edge edge : shell(house).edges()) {
            Surface first = edge.first();
            Surface second = edge.second().orElseThrow();
            assertTrue(
                    edge.name().startsWith(edge.kind().label() + ": " + first.name() + " / " + second.name()),
                    edge.name());
            String place = edge.place();
            if (edge.kind() == JunctionKind.OUTSIDE_CORNER && place.contains(" corner, ")) {
                double east = first.normal().x() + second.normal().x();
                double north = first.normal().y() + second.normal().y();
                assertEquals(Compass.of(east, north).word() + " corner, " + first.storey(), place);
            } else if (edge.kind() == JunctionKind.INTERMEDIATE_FLOOR) {
                assertEquals(
                        way(first) + " side, between the " + first.storey() + " and the " + second.storey(), place);
                assertEquals(second.storey(), edge.upperStorey());
                assertTrue(edge.floorThickness() > 0);
            } else if (edge.kind() == JunctionKind.SLAB_EDGE || edge.kind() == JunctionKind.EAVES) {
                assertTrue(place.startsWith(way(second) + " side, " + first.storey() + ", where the "), place);
                assertTrue(place.contains(edge.kind() == JunctionKind.EAVES ? "roof meets" : "floor meets"), place);
            } else if (edge.kind() == JunctionKind.RIDGE) {
                assertEquals("ridge between " + first.name() + " and " + second.name(), place);
            } else if (edge.kind() == JunctionKind.INSIDE_CORNER) {
                assertEquals(
                        "inside corner between " + first.name() + " and " + second.name() + ", " + first.storey(),
                        place);
            }
        }
    }

    private static String way(Surface wall) {
        return Compass.of(wall.normal().x(), wall.normal().y()).word();
    }

    /** Mirrored from east to west it is as large, with as many junctions as long. */
    @ParameterizedTest
    @MethodSource("coldseam.envelope.shell.Shapes#names")
    void mirroredItIsTheSame(String house) {
        Shell here = shell(house);
        Shell there = ShellBuilder.build(house(house, Mirror.of(body(house))));
        AnyAngleTest.assertSame(AnyAngleTest.takeOff(here), AnyAngleTest.takeOff(there), NODES, house);
        assertEquals(here.floorArea(), there.floorArea(), NODES);
        assertEquals(here.groundFloorArea(), there.groundFloorArea(), NODES);
        assertEquals(Lists.immutable.empty(), there.openEdges());
        for (Surface surface : there.surfaces()) {
            Surface other = here.surfaces()
                    .detectOptional(each -> Math.abs(each.externalArea() - surface.externalArea()) < 10 * NODES
                            && each.use() == surface.use()
                            && Vectors.length(Vectors.minus(
                                            each.normal(),
                                            new Point3(
                                                    -surface.normal().x(),
                                                    surface.normal().y(),
                                                    surface.normal().z())))
                                    < 1e-4)
                    .orElseThrow(() -> new AssertionError(surface.name()));
            assertEquals(
                    other.assembly().map(Assembly::name), surface.assembly().map(Assembly::name), surface.name());
        }
    }

    /** Written with every side as two in one line it is the same: as large, its junctions as long. */
    @ParameterizedTest
    @MethodSource("coldseam.envelope.shell.Shapes#names")
    void sidesInOneLineAreOne(String house) {
        assumeTrue(body(house)
                .stacks()
                .allSatisfy(stack -> stack.roof().dormers().isEmpty()
                        && stack.storeys()
                                .allSatisfy(storey -> storey.outlines().allSatisfy(JunctionTruthsTest::wide))));
        Map<String, Double> whole = AnyAngleTest.takeOff(shell(house));
        Map<String, Double> halves = AnyAngleTest.takeOff(ShellBuilder.build(house(house, Halves.of(body(house)))));
        whole.keySet().removeIf(what -> what.endsWith("number"));
        halves.keySet().removeIf(what -> what.endsWith("number"));
        AnyAngleTest.assertSame(whole, halves, NODES, house);
    }

    /** Whether half of each side is longer than walls are thick. */
    private static boolean wide(ImmutableList<Point2> outline) {
        return outline.zip(outline.drop(1).newWith(outline.getFirst()))
                .allSatisfy(side -> Math.hypot(
                                side.getTwo().x() - side.getOne().x(),
                                side.getTwo().y() - side.getOne().y())
                        > 1.2);
    }

    /** Indoors nothing is open, either; and the rooms are what the inner faces enclose. */
    @ParameterizedTest
    @MethodSource("coldseam.envelope.shell.Shapes#names")
    void theInnerFacesEncloseTheRooms(String house) {
        Shell shell = shell(house);
        // Beside a floor that ends at the head of a cellar's wall a wall's inner face has a spike as thick as that
        // floor.
        assumeTrue(shell.steps().isEmpty()
                && shell.surfaces().noneSatisfy(each -> each.name().endsWith(", under the floor beside it")));
        // What is level indoors between walls of two thicknesses has no surface: only what stands upright counts.
        double east = 0;
        double north = 0;
        double volume = 0;
        for (Surface surface : shell.surfaces()) {
            ImmutableList<Point3> inner = surface.innerOutline();
            for (int i = 1; i + 1 < inner.size(); i++) {
                Point3 a = inner.getFirst();
                Point3 b = inner.get(i);
                Point3 c = inner.get(i + 1);
                Point3 twice = Vectors.cross(Vectors.minus(b, a), Vectors.minus(c, a));
                east += twice.x() / 2;
                north += twice.y() / 2;
                volume += ((a.x() + b.x() + c.x()) * twice.x() + (a.y() + b.y() + c.y()) * twice.y()) / 12;
            }
        }
        assertEquals(0, east, 10 * NODES);
        assertEquals(0, north, 10 * NODES);
        assertEquals(volume, shell.internalVolume(), 50 * NODES);
    }

    /** Where one surface is cut so that it has no hole, the cut runs on indoors as it does outside. */
    @ParameterizedTest
    @MethodSource("coldseam.envelope.shell.Shapes#names")
    void cutsRunAlikeIndoors(String house) {
        assertCuts(shell(house));
    }

    @Test
    void theCutsOfARingOfTerraceRunAlikeIndoors() {
        Body.Storey box = Houses.storey("ground floor", Houses.rectangle(0, 0, 10, 8), 3, "wall");
        Body.Storey tower = Houses.storey("tower", Houses.points(3, 3, 6, 2, 7, 5, 4, 6), 2.8, "wall");
        assertTrue(assertCuts(ShellBuilder.build(Houses.house(Houses.body(Houses.flat(), box, tower)))) > 0);
    }

    private static int assertCuts(Shell shell) {
        int cuts = 0;
        for (Surface one : shell.surfaces().select(each -> each.use() != Body.Use.WALL)) {
            ImmutableList<Surface> others = shell.surfaces().select(each -> each != one && goesOn(one, each));
            int corners = one.outline().size();
            for (int i = 0; i < corners; i++) {
                Point3 a = one.outline().get(i);
                Point3 b = one.outline().get((i + 1) % corners);
                if (others.anySatisfy(other -> has(other, b, a))) {
                    Point3 inner = Vectors.minus(
                            one.innerOutline().get((i + 1) % corners),
                            one.innerOutline().get(i));
                    Point3 along = Vectors.unit(Vectors.minus(b, a));
                    assertEquals(0, Vectors.length(Vectors.cross(inner, along)), NODES, one.name());
                    cuts++;
                }
            }
        }
        return cuts;
    }

    private static boolean has(Surface surface, Point3 from, Point3 to) {
        int first = surface.outline().indexOf(from);
        return first >= 0
                && surface.outline().get((first + 1) % surface.outline().size()).equals(to);
    }
}
