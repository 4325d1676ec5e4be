package coldseam.conduction.solid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.conduction.Accuracy;
import coldseam.conduction.Interval;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.eclipse.collections.api.set.MutableSet;
import org.eclipse.collections.impl.factory.Sets;

/** What must hold of the coupling of any wall with two boxes in it. */
@Tag("slow")
class BodyInvariantsTest {

    private static final double WIDTH = 1e-3;

    /** A place of one of six faces after the axes were swapped and some of them turned round. */
    private record Turn(int[] axis, boolean[] mirror) {

        Cuboid box(Cuboid box) {
            double[] low = new double[3];
            double[] high = new double[3];
            for (int d = 0; d < 3; d++) {
                double a = box.low(axis[d]);
                double b = box.high(axis[d]);
                low[d] = mirror[d] ? -b : a;
                high[d] = mirror[d] ? -a : b;
            }
            return Cuboid.of(low[0], low[1], low[2], high[0], high[1], high[2]);
        }

        BoxSide side(BoxSide side) {
            for (int d = 0; d < 3; d++) {
                if (axis[d] == side.direction()) {
                    return BoxSide.values()[2 * d + (side.high() != mirror[d] ? 1 : 0)];
                }
            }
            throw new IllegalStateException();
        }
    }

    /** A wall of 600 × 400 × 300 mm between two environments at z = 0 and z = 300 mm, with two boxes in it. */
    record Wall(double wall, double first, double second, Cuboid one, Cuboid two) {

        SolidBody body(double conductance, double scale) {
            Blocks blocks = Blocks.of("wall", 0, 0, 0, 600, 400, 300)
                    .cut(BoxSide.X0, BoxSide.X1, BoxSide.Y0, BoxSide.Y1)
                    .air("indoor", 0, 0, -10, 600, 400, 0)
                    .air("outdoor", 0, 0, 300, 600, 400, 310)
                    .solid(conductance * wall, 0, 0, 0, 600, 400, 300)
                    .environment("indoor", 20, 0.13 / conductance)
                    .environment("outdoor", -5, 0.04 / conductance);
            SolidBody body = blocks.body();
            return scaled(
                    new SolidBody(
                            body.name(),
                            body.extent(),
                            1,
                            body.cutPlanes(),
                            body.painted()
                                    .newWith(new PaintedBox.Solid("first", conductance * first, one))
                                    .newWith(new PaintedBox.Solid("second", conductance * second, two)),
                            body.environments(),
                            body.patches(),
                            body.probes()),
                    scale);
        }

        private static SolidBody scaled(SolidBody body, double scale) {
            return new SolidBody(
                    body.name(),
                    times(body.extent(), scale),
                    1,
                    body.cutPlanes(),
                    body.painted().collect(each -> on(each, times(each.box(), scale))),
                    body.environments()
                            .collect(e -> BodyEnvironment.of(e.name(), e.temperature(), e.horizontal() * scale)),
                    body.patches(),
                    body.probes());
        }

        private static Cuboid times(Cuboid box, double scale) {
            return Cuboid.of(
                    box.low(0) * scale,
                    box.low(1) * scale,
                    box.low(2) * scale,
                    box.high(0) * scale,
                    box.high(1) * scale,
                    box.high(2) * scale);
        }

        private static PaintedBox on(PaintedBox painted, Cuboid box) {
            return painted.match(
                    solid -> new PaintedBox.Solid(solid.material(), solid.conductivity(), box),
                    air -> new PaintedBox.Air(air.environment(), box),
                    none -> new PaintedBox.Adiabatic(box));
        }

        SolidBody turned(Turn turn) {
            SolidBody body = body(1, 1);
            MutableSet<BoxSide> cuts = Sets.mutable.empty();
            body.cutPlanes().forEach(each -> cuts.add(turn.side(each)));
            return new SolidBody(
                    body.name(),
                    turn.box(body.extent()),
                    1,
                    cuts.toImmutable(),
                    body.painted().collect(each -> on(each, turn.box(each.box()))),
                    body.environments(),
                    body.patches(),
                    body.probes());
        }
    }

    @Provide
    Arbitrary<Wall> walls() {
        Arbitrary<Double> k = Arbitraries.doubles().between(-1.5, 1.7).map(e -> Math.pow(10, e));
        Arbitrary<Cuboid> box = Combinators.combine(
                        Arbitraries.integers().between(0, 5),
                        Arbitraries.integers().between(0, 3),
                        Arbitraries.integers().between(0, 5),
                        Arbitraries.integers().between(1, 3),
                        Arbitraries.integers().between(1, 3),
                        Arbitraries.integers().between(1, 6))
                .as((x, y, z, a, b, c) -> Cuboid.of(
                        0.1 * x,
                        0.1 * y,
                        0.05 * z,
                        Math.min(0.6, 0.1 * (x + a)),
                        Math.min(0.4, 0.1 * (y + b)),
                        Math.min(0.3, 0.05 * (z + c))));
        // Boxes that overlap do not touch along a line only.
        return Combinators.combine(k, k, k, box, box).as(Wall::new).filter(wall -> !linesTouch(wall.one, wall.two));
    }

    private static boolean linesTouch(Cuboid a, Cuboid b) {
        int touching = 0;
        for (int d = 0; d < 3; d++) {
            touching += a.high(d) < b.low(d) + 1e-9 || b.high(d) < a.low(d) + 1e-9 ? 1 : 0;
        }
        return touching > 1;
    }

    private static Interval solve(SolidBody body) {
        return BodySolver.solve(body, new Accuracy(WIDTH, 400_000)).coupling("indoor", "outdoor");
    }

    private static void agree(Interval a, Interval b) {
        assertTrue(a.lower() <= b.upper() && b.lower() <= a.upper(), () -> a + " and " + b + " differ");
        // Both are as narrow as asked, so their middles are as near as that, too.
        assertEquals(a.middle(), b.middle(), WIDTH * a.middle());
    }

    @Property(tries = 6, seed = "2026")
    void turningMirroringAndSwappingAxesChangesNothing(
            @ForAll("walls") Wall wall, @ForAll @IntRange(max = 5) int axes, @ForAll @IntRange(max = 7) int mirrors) {
        int first = axes % 3;
        int second = (first + 1 + axes / 3) % 3;
        Turn turn = new Turn(
                new int[] {first, second, 3 - first - second},
                new boolean[] {(mirrors & 1) > 0, (mirrors & 2) > 0, (mirrors & 4) > 0});
        agree(solve(wall.body(1, 1)), solve(wall.turned(turn)));
    }

    /** Lengths and surface resistances times s: the coupling times s. */
    @Property(tries = 4, seed = "2026")
    void scalingScales(@ForAll("walls") Wall wall, @ForAll @DoubleRange(min = 0.1, max = 10) double scale) {
        agree(solve(wall.body(1, 1)).times(scale), solve(wall.body(1, scale)));
    }

    /** Conductivities times c and surface resistances over c: the coupling times c, by the same steps. */
    @Property(tries = 4, seed = "2026")
    void couplingIsProportionalToConductances(@ForAll("walls") Wall wall) {
        Interval single = solve(wall.body(1, 1));
        Interval twice = solve(wall.body(2, 1));
        assertEquals(2 * single.lower(), twice.lower(), 1e-9 * twice.lower());
        assertEquals(2 * single.upper(), twice.upper(), 1e-9 * twice.upper());
    }

    @Property(tries = 6, seed = "2026")
    void moreInsulationNeverRaisesTheCoupling(
            @ForAll("walls") Wall wall, @ForAll @DoubleRange(min = 0.1, max = 1) double factor) {
        Interval before = solve(wall.body(1, 1));
        Interval after = solve(new Wall(wall.wall, factor * wall.first, wall.second, wall.one, wall.two).body(1, 1));
        assertTrue(after.lower() <= before.upper(), () -> before + " then " + after);
        Interval less =
                solve(new Wall(wall.wall * 0.5, wall.first * 0.5, wall.second * 0.5, wall.one, wall.two).body(1, 1));
        // Half of all conductivities: well below, since films are a small part of the resistance or nothing is left of
        // it.
        assertTrue(less.upper() < before.lower(), () -> before + " then " + less);
    }

    private static boolean holds(Cuboid box, Place at) {
        return IntStream.range(0, 3).allMatch(d -> at.along(d) >= box.low(d) && at.along(d) <= box.high(d));
    }

    /** Between columns that exchange nothing and layers of one temperature each (W. Thomson's bounds). */
    @Property(tries = 6, seed = "2026")
    void couplingLiesBetweenColumnsAndLayers(@ForAll("walls") Wall wall) {
        double columns = 0;
        double[] layers = new double[6];
        for (int x = 0; x < 6; x++) {
            for (int y = 0; y < 4; y++) {
                double r = 0.17;
                for (int z = 0; z < 6; z++) {
                    Place middle = new Place(0.1 * x + 0.05, 0.1 * y + 0.05, 0.05 * z + 0.025);
                    double k = holds(wall.two, middle) ? wall.second : holds(wall.one, middle) ? wall.first : wall.wall;
                    r += 0.05 / k;
                    layers[z] += 0.01 * k;
                }
                columns += 0.01 / r;
            }
        }
        double most = 0.17 / 0.24;
        for (double each : layers) {
            most += 0.05 / each;
        }
        double least = columns;
        double highest = 1 / most;
        Interval proven = solve(wall.body(1, 1));
        assertTrue(
                proven.upper() >= least * (1 - 1e-12) && proven.lower() <= highest * (1 + 1e-12),
                () -> proven + " should lie between " + least + " and " + highest);
    }

    @Property(tries = 2, seed = "2026")
    void answersRepeatToTheBit(@ForAll("walls") Wall wall) {
        assertEquals(solve(wall.body(1, 1)), solve(wall.body(1, 1)));
    }
}
