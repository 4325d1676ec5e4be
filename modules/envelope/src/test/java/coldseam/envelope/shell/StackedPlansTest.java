package coldseam.envelope.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.envelope.Body;
import coldseam.envelope.Point2;
import coldseam.envelope.Vectors;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tag;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;

/**
 * Random stacks of storeys against a take-off worked out apart: slice by slice on the grid of all their coordinates, along
 * the axes, before the house is turned.
 */
class StackedPlansTest {

    /** Coordinates in millimetres; some storeys share a line, others miss it by one. */
    private static final Integer[] LINES = {0, 1, 1_200, 2_345, 2_346, 2_400, 4_711, 6_000, 6_001, 7_800, 9_000, 9_001};

    private static final double[] FLOORS = {0, 3, 5.8, 8.6};

    /** m, of the overhangs' build-up. */
    private static final double SOFFIT = 0.55;

    /** m², of a micrometre's lattice along some 100 m. */
    private static final double LATTICE = 2e-4;

    /** m² or m³, at corners where two walls are a hair apart: 1 mm wide and as high as a soffit, a few of them. */
    private static final double CORNERS = 0.02;

    /** m or m²: of two walls a millimetre out of line either may give a junction its inner ends. */
    private static final double ENDS = 0.004;

    /** Cells narrower than this, mm, are where walls are nearly flush. */
    private static final double NARROW = 5;

    /**
     * A rectangle with a rectangle taken out of it: at a corner, at a side, or not at all.
     *
     * @param x four lines from west to east
     * @param y four lines from south to north
     * @param cut what is taken out
     */
    record Outline(ImmutableList<Integer> x, ImmutableList<Integer> y, Cut cut) {

        enum Cut {
            NONE,
            CORNER,
            SIDE,
            SLOT,
            COURT
        }

        boolean covers(double px, double py) {
            boolean inside = px > x.get(0) && px < x.get(3) && py > y.get(0) && py < y.get(3);
            return inside
                    && switch (cut) {
                        case NONE -> true;
                        case CORNER -> px < x.get(1) || py < y.get(1);
                        case SIDE -> px < x.get(1) || px > x.get(2) || py < y.get(2);
                        case SLOT -> py < y.get(1) || py > y.get(2) || px > x.get(2);
                        case COURT -> py < y.get(1) || py > y.get(2) || px > x.get(2) || px < x.get(1);
                    };
        }

        ImmutableList<Point2> points() {
            int[][] corners = switch (cut) {
                case NONE, COURT -> new int[][] {{0, 0}, {3, 0}, {3, 3}, {0, 3}};
                case CORNER -> new int[][] {{0, 0}, {3, 0}, {3, 1}, {1, 1}, {1, 3}, {0, 3}};
                case SIDE -> new int[][] {{0, 0}, {3, 0}, {3, 3}, {2, 3}, {2, 2}, {1, 2}, {1, 3}, {0, 3}};
                case SLOT -> new int[][] {{0, 0}, {3, 0}, {3, 3}, {0, 3}, {0, 2}, {2, 2}, {2, 1}, {0, 1}};
            };
            return at(corners);
        }

        ImmutableList<ImmutableList<Point2>> courts() {
            return cut == Cut.COURT
                    ? Lists.immutable.of(at(new int[][] {{1, 1}, {1, 2}, {2, 2}, {2, 1}}))
                    : Lists.immutable.empty();
        }

        private ImmutableList<Point2> at(int[][] corners) {
            return Lists.immutable.of(corners).collect(c -> new Point2(x.get(c[0]) / 1000.0, y.get(c[1]) / 1000.0));
        }
    }

    /** A stack on the grid of all its coordinates. */
    private static final class Slices {

        private final ImmutableList<Outline> stack;
        private final ImmutableList<Integer> x;
        private final ImmutableList<Integer> y;
        double volume;
        double walls;
        double open;
        double over;
        double perimeter;

        Slices(ImmutableList<Outline> stack) {
            this.stack = stack;
            this.x = lines(stack.flatCollect(Outline::x));
            this.y = lines(stack.flatCollect(Outline::y));
            for (int i = 0; i + 1 < x.size(); i++) {
                for (int j = 0; j + 1 < y.size(); j++) {
                    double dx = (x.get(i + 1) - x.get(i)) / 1000.0;
                    double dy = (y.get(j + 1) - y.get(j)) / 1000.0;
                    MutableList<double[]> here = column(i, j);
                    volume += dx * dy * here.sumOfDouble(span -> span[1] - span[0]);
                    walls += dy * apart(column(i - 1, j), here) + dx * apart(column(i, j - 1), here);
                    perimeter += in(0, i, j) != in(0, i - 1, j) ? dy : 0;
                    perimeter += in(0, i, j) != in(0, i, j - 1) ? dx : 0;
                    for (int k = 0; k + 1 < stack.size(); k++) {
                        open += in(k, i, j) && !in(k + 1, i, j) ? dx * dy : 0;
                        over += !in(k, i, j) && in(k + 1, i, j) ? dx * dy : 0;
                    }
                }
            }
        }

        /** With a margin all round. */
        private static ImmutableList<Integer> lines(ImmutableList<Integer> all) {
            MutableList<Integer> sorted = all.distinct().toSortedList();
            return sorted.with(sorted.getLast() + 1_000)
                    .toImmutable()
                    .newWith(sorted.getFirst() - 1_000)
                    .toSortedList()
                    .toImmutable();
        }

        private boolean in(int k, int i, int j) {
            if (i < 0 || j < 0) {
                return false;
            }
            return stack.get(k).covers((x.get(i) + x.get(i + 1)) / 2.0, (y.get(j) + y.get(j + 1)) / 2.0);
        }

        /** Whether a cell that one storey covers and the next does not lies between two walls a hair apart. */
        private boolean hair(int k, int i, int j) {
            boolean acrossX = x.get(i + 1) - x.get(i) < NARROW && between(k, i - 1, j, i + 1, j);
            boolean acrossY = y.get(j + 1) - y.get(j) < NARROW && between(k, i, j - 1, i, j + 1);
            return acrossX || acrossY;
        }

        private boolean between(int k, int i, int j, int i2, int j2) {
            boolean both = in(k, i, j) && in(k + 1, i, j);
            boolean none = !in(k, i, j) && !in(k + 1, i, j);
            boolean both2 = in(k, i2, j2) && in(k + 1, i2, j2);
            boolean none2 = !in(k, i2, j2) && !in(k + 1, i2, j2);
            return both && none2 || none && both2;
        }

        private boolean wide(int k, boolean above) {
            for (int i = 0; i + 1 < x.size(); i++) {
                for (int j = 0; j + 1 < y.size(); j++) {
                    boolean there = in(k, i, j) != in(k + 1, i, j) && in(k, i, j) == above;
                    if (there && !hair(k, i, j)) {
                        return true;
                    }
                }
            }
            return false;
        }

        /** Heated heights over a cell. */
        private MutableList<double[]> column(int i, int j) {
            MutableList<double[]> spans = Lists.mutable.empty();
            for (int k = 0; k < stack.size(); k++) {
                if (!in(k, i, j)) {
                    continue;
                }
                boolean onFloor = k == 0 || in(k - 1, i, j);
                double bottom = k == 0 ? -0.5 : FLOORS[k];
                if (!onFloor) {
                    bottom = hair(k - 1, i, j) ? step(k - 1) : FLOORS[k] - SOFFIT;
                }
                double top = k + 1 == stack.size() ? FLOORS[k] + 3 + 0.35 : FLOORS[k + 1];
                if (k + 1 < stack.size() && !in(k + 1, i, j) && hair(k, i, j)) {
                    top = step(k);
                }
                if (onFloor && spans.notEmpty()) {
                    spans.getLast()[1] = top;
                } else {
                    spans.add(new double[] {bottom, top});
                }
            }
            return spans;
        }

        /** Where walls a hair apart take over from one another. */
        private double step(int k) {
            return !wide(k, true) && wide(k, false) ? FLOORS[k + 1] - SOFFIT : FLOORS[k + 1];
        }

        private static double apart(MutableList<double[]> one, MutableList<double[]> other) {
            double common = 0;
            for (double[] a : one) {
                for (double[] b : other) {
                    common += Math.max(0, Math.min(a[1], b[1]) - Math.max(a[0], b[0]));
                }
            }
            return one.sumOfDouble(s -> s[1] - s[0]) + other.sumOfDouble(s -> s[1] - s[0]) - 2 * common;
        }
    }

    @Provide
    Arbitrary<ImmutableList<Outline>> stacks() {
        Arbitrary<ImmutableList<Integer>> lines = Arbitraries.of(LINES)
                .set()
                .ofSize(4)
                .map(set -> Lists.immutable.ofAll(set).toSortedList().toImmutable())
                .filter(four -> four.get(1) - four.get(0) > 1_000
                        && four.get(2) - four.get(1) > 1_000
                        && four.get(3) - four.get(2) > 1_000);
        return Combinators.combine(lines, lines, Arbitraries.of(Outline.Cut.class))
                .as(Outline::new)
                .list()
                .ofMinSize(1)
                .ofMaxSize(4)
                .map(Lists.immutable::ofAll)
                .filter(StackedPlansTest::standing);
    }

    private static boolean standing(ImmutableList<Outline> stack) {
        for (int k = 0; k + 1 < stack.size(); k++) {
            boolean stands = false;
            for (int px = 500; px < 9_000; px += 500) {
                for (int py = 500; py < 9_000; py += 500) {
                    stands |= stack.get(k).covers(px, py) && stack.get(k + 1).covers(px, py);
                }
            }
            if (!stands) {
                return false;
            }
        }
        return true;
    }

    /** Decks as thick as the internal floor and soffits of next to nothing: what is open ends level with the floors. */
    private static Body.Storeys body(ImmutableList<Outline> stack) {
        return Houses.storeys(
                Body.FootprintLine.OUTER_FACE,
                stack.collectWithIndex((outline, k) -> {
                    Body.Storey storey = Houses.around(
                            Houses.storey("storey " + k, outline.points(), k == 0 ? 3 : 2.8, "wall"), outline.courts());
                    double height = k + 1 == stack.size() ? 3 : FLOORS[k + 1] - FLOORS[k];
                    return new Body.Storey(
                            storey.name(),
                            storey.footprint(),
                            storey.courts(),
                            height,
                            storey.walls(),
                            storey.terrace(),
                            true,
                            storey.overhang(),
                            0.35,
                            storey.floor(),
                            Optional.empty(),
                            Optional.empty());
                }),
                Houses.slab(),
                Houses.flat());
    }

    @Property(tries = 300, seed = "2026")
    @Tag("slow")
    void everyStackIsItsSlices(
            @ForAll("stacks") ImmutableList<Outline> stack,
            @ForAll @net.jqwik.api.constraints.DoubleRange(min = 0, max = 360) double degrees) {
        assertSlices(stack, degrees);
    }

    /** A few of the same. */
    @Property(tries = 10, seed = "2028", edgeCases = EdgeCasesMode.NONE)
    void someStacksAreTheirSlices(
            @ForAll("stacks") ImmutableList<Outline> stack,
            @ForAll @net.jqwik.api.constraints.DoubleRange(min = 0, max = 360) double degrees) {
        assertSlices(stack, degrees);
    }

    private static void assertSlices(ImmutableList<Outline> stack, double degrees) {
        Slices apart = new Slices(stack);
        Shell shell = ShellBuilder.build(Houses.house(AnyAngleTest.turned(body(stack), degrees)));
        assertEquals(Lists.immutable.empty(), shell.openEdges());
        assertEquals(0, Vectors.length(shell.areaVectorSum()));
        ImmutableList<Surface> all = shell.surfaces().newWithAll(shell.steps());
        assertEquals(apart.perimeter, shell.exposedPerimeter(), LATTICE);
        assertEquals(apart.open, level(all, 1).sumOfDouble(Surface::externalArea), LATTICE);
        assertEquals(apart.over, level(all, -1).sumOfDouble(Surface::externalArea), LATTICE);
        assertEquals(apart.volume, shell.externalVolume(), CORNERS);
        assertEquals(
                apart.walls,
                all.select(s -> Math.abs(s.normal().z()) < 0.1).sumOfDouble(Surface::externalArea),
                CORNERS);
        // No wall is called a step: what steps there are stand where walls are a hair apart.
        assertTrue(shell.steps().sumOfDouble(Surface::externalArea) < 0.2);
        assertTrue(shell.edges().allSatisfy(e -> e.externalLength() > 0));
    }

    @Property(tries = 120, seed = "2027")
    @Tag("slow")
    void turnedAndMirroredItIsTheSameHouse(
            @ForAll("stacks") ImmutableList<Outline> stack,
            @ForAll @net.jqwik.api.constraints.DoubleRange(min = 0, max = 360) double degrees) {
        assertTurnedAndMirrored(stack, degrees);
    }

    /** A few of the same. */
    @Property(tries = 4, seed = "2029", edgeCases = EdgeCasesMode.NONE)
    void turnedAndMirroredSomeAreTheSameHouses(
            @ForAll("stacks") ImmutableList<Outline> stack,
            @ForAll @net.jqwik.api.constraints.DoubleRange(min = 0, max = 360) double degrees) {
        assertTurnedAndMirrored(stack, degrees);
    }

    private static void assertTurnedAndMirrored(ImmutableList<Outline> stack, double degrees) {
        Body.Storeys body = body(stack);
        Body.Storeys mirrored = Houses.storeys(
                body.line(),
                body.main().storeys().collect(ShellPropertiesTest::mirrored),
                body.main().base(),
                body.main().roof());
        var straight = AnyAngleTest.takeOff(ShellBuilder.build(Houses.house(body)));
        AnyAngleTest.assertSame(
                straight,
                AnyAngleTest.takeOff(ShellBuilder.build(Houses.house(AnyAngleTest.turned(body, degrees)))),
                ENDS,
                "turned");
        AnyAngleTest.assertSame(
                straight,
                AnyAngleTest.takeOff(ShellBuilder.build(Houses.house(AnyAngleTest.turned(mirrored, degrees)))),
                ENDS,
                "mirrored");
    }

    /** What lies open or hangs over, steps included, without the lowest floor and the roof, each in parts around a court. */
    private static ImmutableList<Surface> level(ImmutableList<Surface> some, int way) {
        return some.select(s -> s.normal().z() * way > 0.9)
                .reject(s -> s.name().startsWith("lowest floor") || s.name().startsWith("roof"));
    }
}
