package coldseam.conduction;

import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;

/**
 * What must hold for every section. Two intervals of one unknown value must overlap; that is the sharpest statement two
 * proven intervals allow.
 */
class InvariantsTest {

    /** A wall of 1 m × 0.3 m with two inclusions, in millimetres. */
    record Wall(
            double wall, double first, double second, int x0, int y0, int w0, int h0, int x1, int y1, int w1, int h1) {

        Section section() {
            return section(1, 0, 1, 0, 0);
        }

        /** The wall scaled, turned by (cos, sin), mirrored if sign is −1, and moved. */
        Section moved(double scale, double angle, int sign, double dx, double dy) {
            return section(scale, angle, sign, dx, dy);
        }

        private Section section(double scale, double angle, int sign, double dx, double dy) {
            Sketch sketch = Sketch.of("wall").snap(1e-6 * scale);
            double c = scale * Math.cos(angle);
            double s = scale * Math.sin(angle);
            java.util.function.Function<double[], double[]> map = p -> {
                double[] q = new double[p.length];
                for (int i = 0; i < p.length; i += 2) {
                    q[i] = c * p[i] - s * sign * p[i + 1] + dx;
                    q[i + 1] = s * p[i] + c * sign * p[i + 1] + dy;
                }
                return q;
            };
            // Films scale with length, so that the coupling does not change.
            return sketch.polygon(wall, map.apply(box(0, 0, 1000, 300)))
                    .polygon(first, map.apply(box(x0, y0, x0 + w0, y0 + h0)))
                    .polygon(second, map.apply(box(x1, y1, x1 + w1, y1 + h1)))
                    .environment("indoor", 1, 0.13 * scale)
                    .environment("outdoor", 0, 0.04 * scale)
                    .boundary("indoor", map.apply(new double[] {0, 0, 1000, 0}))
                    .boundary("outdoor", map.apply(new double[] {0, 300, 1000, 300}))
                    .section();
        }

        private static double[] box(double a, double b, double c, double d) {
            return new double[] {a, b, c, b, c, d, a, d};
        }

        Wall raised(double factor) {
            return new Wall(wall, first * factor, second, x0, y0, w0, h0, x1, y1, w1, h1);
        }
    }

    @Provide
    Arbitrary<Wall> walls() {
        Arbitrary<Double> k = Arbitraries.doubles().between(-1.5, 2).map(e -> Math.pow(10, e));
        Arbitrary<ImmutableList<Integer>> box = Combinators.combine(
                        Arbitraries.integers().between(0, 19),
                        Arbitraries.integers().between(0, 14),
                        Arbitraries.integers().between(1, 20),
                        Arbitraries.integers().between(1, 15))
                .as((x, y, w, h) -> Lists.immutable.of(
                        50 * x, 20 * y, Math.min(50 * w, 1000 - 50 * x), Math.min(20 * h, 300 - 20 * y)));
        return Combinators.combine(k, k, k, box, box)
                .as((a, b, c, p, q) -> new Wall(
                        a, b, c, p.get(0), p.get(1), p.get(2), p.get(3), q.get(0), q.get(1), q.get(2), q.get(3)));
    }

    private static Interval solve(Section section, double width) {
        return Conduction.solve(section, new Accuracy(width, 100_000)).coupling("indoor", "outdoor");
    }

    private static void agree(Interval a, Interval b, double relativeSlack) {
        double slack = relativeSlack * a.upper();
        assertTrue(a.lower() <= b.upper() + slack && b.lower() <= a.upper() + slack, () -> a + " and " + b + " differ");
    }

    /** Turned coordinates are snapped anew: thicknesses of 20 mm and more move by up to 2 µm, 2e-4 of the value. */
    @Property(tries = 15, seed = "2026")
    void turningAndMirroringChangeNothing(
            @ForAll("walls") Wall wall,
            @ForAll @DoubleRange(min = 0, max = 6.28) double angle,
            @ForAll boolean mirror) {
        agree(solve(wall.section(), 1e-3), solve(wall.moved(1, angle, mirror ? -1 : 1, 1234.5, -987.6), 1e-3), 2e-4);
    }

    @Property(tries = 15, seed = "2026")
    void scalingChangesNothing(@ForAll("walls") Wall wall, @ForAll @IntRange(min = 1, max = 12) int scale) {
        agree(solve(wall.section(), 1e-3), solve(wall.moved(scale, 0, 1, 0, 0), 1e-3), 1e-9);
    }

    @Property(tries = 20, seed = "2026")
    void raisingAConductivityNeverLowersTheCoupling(
            @ForAll("walls") Wall wall, @ForAll @DoubleRange(min = 1, max = 10) double factor) {
        Interval before = solve(wall.section(), 1e-3);
        Interval after = solve(wall.raised(factor).section(), 1e-3);
        assertTrue(after.upper() >= before.lower(), before + " then " + after);
    }

    /** Strips that exchange nothing conduct less, layers of one temperature each conduct more (W. Thomson's bounds). */
    @Property(tries = 20, seed = "2026")
    void couplingLiesBetweenStripsAndLayers(@ForAll("walls") Wall wall) {
        double strips = 0;
        for (int x = 0; x < 1000; x += 50) {
            double r = 0.17;
            for (int y = 0; y < 300; y += 20) {
                r += 0.02 / at(wall, x, y);
            }
            strips += 0.05 / r;
        }
        double layers = 0.17;
        for (int y = 0; y < 300; y += 20) {
            double sum = 0;
            for (int x = 0; x < 1000; x += 50) {
                sum += 0.05 * at(wall, x, y);
            }
            layers += 0.02 / sum;
        }
        double most = 1 / layers;
        Interval l = solve(wall.section(), 1e-3);
        double least = strips;
        assertTrue(
                l.upper() >= least * (1 - 1e-12) && l.lower() <= most * (1 + 1e-12),
                () -> l + " should lie between " + least + " and " + most);
    }

    private static double at(Wall wall, int x, int y) {
        boolean second = x >= wall.x1 && x < wall.x1 + wall.w1 && y >= wall.y1 && y < wall.y1 + wall.h1;
        boolean first = x >= wall.x0 && x < wall.x0 + wall.w0 && y >= wall.y0 && y < wall.y0 + wall.h0;
        return second ? wall.second : first ? wall.first : wall.wall;
    }

    /** The spaces of a refined mesh hold those of the coarser one; rounding is allowed for. */
    @Property(tries = 20, seed = "2026")
    void finerIntervalsLieInsideCoarserOnes(@ForAll("walls") Wall wall) {
        Interval coarse = solve(wall.section(), 1e-2);
        Interval fine = solve(wall.section(), 1e-4);
        double rounding = 1e-11 * coarse.upper();
        assertTrue(
                fine.lower() >= coarse.lower() - rounding && fine.upper() <= coarse.upper() + rounding,
                () -> fine + " is not inside " + coarse);
    }

    @Property(tries = 10, seed = "2026")
    void swappingEnvironmentsChangesNothing(@ForAll("walls") Wall wall) {
        Section section = wall.section();
        Section swapped = new Section(
                section.name(),
                section.symmetry(),
                section.snap(),
                section.regions(),
                section.environments().toReversed(),
                section.boundaries(),
                section.probes());
        agree(solve(section, 1e-4), solve(swapped, 1e-4), 0);
    }

    @Property(tries = 10, seed = "2026")
    void answersRepeatToTheBit(@ForAll("walls") Wall wall) {
        Interval first = solve(wall.section(), 1e-3);
        Interval again = solve(wall.section(), 1e-3);
        assertTrue(first.equals(again), first + " then " + again);
    }
}
