package coldseam.conduction;

import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.conduction.solve.Conduction;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
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
            Sketch sketch = Sketch.of("wall");
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

        /** One conductivity raised: 0 the wall's, 1 the first inclusion's, 2 the second's. */
        Wall raised(int which, double factor) {
            return new Wall(
                    which == 0 ? wall * factor : wall,
                    which == 1 ? first * factor : first,
                    which == 2 ? second * factor : second,
                    x0,
                    y0,
                    w0,
                    h0,
                    x1,
                    y1,
                    w1,
                    h1);
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

    /** Turned coordinates are snapped anew: thicknesses of 20 mm and more move by up to 0.02 µm, 2e-6 of the value. */
    @Property(tries = 15, seed = "2026")
    void turningAndMirroringChangeNothing(
            @ForAll("walls") Wall wall,
            @ForAll @DoubleRange(min = 0, max = 6.28) double angle,
            @ForAll boolean mirror) {
        agree(solve(wall.section(), 1e-3), solve(wall.moved(1, angle, mirror ? -1 : 1, 1234.5, -987.6), 1e-3), 2e-6);
    }

    @Property(tries = 15, seed = "2026")
    void scalingChangesNothing(@ForAll("walls") Wall wall, @ForAll @IntRange(min = 1, max = 12) int scale) {
        agree(solve(wall.section(), 1e-3), solve(wall.moved(scale, 0, 1, 0, 0), 1e-3), 1e-9);
    }

    /** Quarter turns and mirrors keep every point on the lattice, so only rounding may differ. */
    @Property(tries = 15, seed = "2026")
    void quarterTurnsAndMirrorsNeedNoSnapping(
            @ForAll("walls") Wall wall, @ForAll @IntRange(min = 0, max = 3) int quarters, @ForAll boolean mirror) {
        double angle = quarters * Math.PI / 2;
        agree(solve(wall.section(), 1e-4), solve(wall.moved(1, angle, mirror ? -1 : 1, 500, 250), 1e-4), 1e-9);
    }

    /** Conductivities times c and surface resistances over c: the coupling times c. */
    @Property(tries = 15, seed = "2026")
    void couplingIsProportionalToConductances(
            @ForAll("walls") Wall wall, @ForAll @DoubleRange(min = 0.01, max = 100) double c) {
        Section section = wall.section();
        Section scaled = new Section(
                section.name(),
                section.symmetry(),
                section.regions().collect(r -> new Region(r.material(), c * r.conductivity(), r.outline())),
                section.environments()
                        .collect(e -> new Environment(e.name(), e.temperature(), e.surfaceResistance() / c)),
                section.boundaries(),
                section.probes());
        agree(solve(section, 1e-4).times(c), solve(scaled, 1e-4), 1e-12);
    }

    @Tag("slow")
    @Property(tries = 30, seed = "2026")
    void raisingAConductivityNeverLowersTheCoupling(
            @ForAll("walls") Wall wall,
            @ForAll @IntRange(min = 0, max = 2) int which,
            @ForAll @DoubleRange(min = 1, max = 10) double factor) {
        Interval before = solve(wall.section(), 1e-4);
        Interval after = solve(wall.raised(which, factor).section(), 1e-4);
        assertTrue(after.upper() >= before.lower(), before + " then " + after);
    }

    /**
     * Raising all of them by half raises the coupling by more than the intervals' widths: of a resistance no more than
     * 0.17 m²·K/W in films, at least 0.003 of it in the wall, a third goes.
     */
    @Property(tries = 15, seed = "2026")
    void raisingAllConductivitiesRaisesTheCoupling(@ForAll("walls") Wall wall) {
        Interval before = solve(wall.section(), 1e-4);
        Interval after = solve(wall.raised(0, 1.5).raised(1, 1.5).raised(2, 1.5).section(), 1e-4);
        assertTrue(after.lower() > before.upper(), before + " then " + after);
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

    @Property(tries = 10, seed = "2026")
    void swappingEnvironmentsChangesNothing(@ForAll("walls") Wall wall) {
        Section section = wall.section();
        Section swapped = new Section(
                section.name(),
                section.symmetry(),
                section.regions(),
                section.environments().toReversed(),
                section.boundaries(),
                section.probes());
        agree(solve(section, 1e-4), solve(swapped, 1e-4), 0);
    }

    /**
     * Layers across the flow leave the temperature linear in each and the stream function linear throughout, so both
     * bounds are the series' conductance but for rounding, whatever the thicknesses.
     */
    @Property(tries = 40, seed = "2026")
    void layersInSeriesAreExactToRounding(
            @ForAll @Size(min = 1, max = 5) List<@IntRange(min = 1, max = 4000) Integer> tenths,
            @ForAll @Size(5) List<@DoubleRange(min = -2, max = 2.5) Double> powers,
            @ForAll @DoubleRange(min = 0, max = 0.5) double inner,
            @ForAll @IntRange(min = 100, max = 5000) int width) {
        Sketch sketch = Sketch.of("layers");
        double r = inner + 0.04;
        int at = 0;
        for (int i = 0; i < tenths.size(); i++) {
            double k = Math.pow(10, powers.get(i));
            sketch.rectangle(k, 0, 0.1 * at, width, 0.1 * (at + tenths.get(i)));
            at += tenths.get(i);
            r += 1e-4 * tenths.get(i) / k;
        }
        Interval l = sketch.environment("indoor", 20, inner)
                .environment("outdoor", -5, 0.04)
                .boundary("indoor", 0, 0, width, 0)
                .boundary("outdoor", 0, 0.1 * at, width, 0.1 * at)
                .solve(1e-4)
                .coupling("indoor", "outdoor");
        double exact = 1e-3 * width / r;
        double rounding = 1e-11 * exact;
        assertTrue(
                l.lower() - rounding <= exact && exact <= l.upper() + rounding && l.width() <= 1e-9 * exact,
                () -> l + " should be " + exact);
    }

    @Property(tries = 10, seed = "2026")
    void answersRepeatToTheBit(@ForAll("walls") Wall wall) {
        Interval first = solve(wall.section(), 1e-3);
        Interval again = solve(wall.section(), 1e-3);
        assertTrue(first.equals(again), first + " then " + again);
    }
}
