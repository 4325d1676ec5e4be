package coldseam.conduction;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.conduction.solve.Conduction;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

/**
 * The interval of a finer run lies inside that of a coarser one, for sections of every kind; and couplings do not depend
 * on the order the environments are named in.
 *
 * <p>Bisection keeps the quadratic functions of the coarser mesh, so the minimum over the finer one is no higher and the
 * maximum no lower. Of two runs of one width with different limits of unknowns this holds strictly: the smaller run's last
 * mesh is one the larger went through. Runs of different widths choose their bisections apart; there it is what is seen,
 * not what must be, since a mesh for 1e-4 is finer all over than one for 1e-2.
 */
@Tag("slow")
class NestingTest {

    private static double k(double power) {
        return Math.pow(10, power);
    }

    private static void nested(Sketch sketch) {
        Section section = sketch.section();
        Solution least = Conduction.solve(section, new Accuracy(1e-7, 300));
        Solution more = Conduction.solve(section, new Accuracy(1e-7, 1500));
        Solution most = Conduction.solve(section, new Accuracy(1e-7, 6000));
        assertTrue(least.unknowns() <= more.unknowns() && more.unknowns() <= most.unknowns());
        assertTrue(most.met() || most.unknowns() > least.unknowns(), "nothing was refined");
        inside(more, least);
        inside(most, more);
        inside(
                Conduction.solve(section, new Accuracy(1e-4, 100_000)),
                Conduction.solve(section, new Accuracy(1e-2, 100_000)));
    }

    private static void inside(Solution fine, Solution coarse) {
        double largest =
                coarse.couplings().collectDouble(c -> c.value().upper()).max();
        double rounding = 1e-10 * largest;
        for (int i = 0; i < fine.couplings().size(); i++) {
            Interval f = fine.couplings().get(i).value();
            Interval c = coarse.couplings().get(i).value();
            String pair = fine.couplings().get(i).first() + "–"
                    + fine.couplings().get(i).second();
            assertTrue(
                    f.lower() >= c.lower() - rounding && f.upper() <= c.upper() + rounding,
                    () -> pair + ": " + f + " is not inside " + c);
        }
    }

    private static Sketch twoInclusions(List<Double> powers, int x, int y, int w, int h) {
        return Sketch.of("two inclusions")
                .rectangle(k(powers.get(0)), 0, 0, 1000, 300)
                .rectangle(k(powers.get(1)), 50 * x, 20 * y, Math.min(1000, 50 * (x + w)), Math.min(300, 20 * (y + h)))
                .rectangle(k(powers.get(2)), 300, 0, 340, 20 * y + 10)
                .environment("indoor", 1, 0.13)
                .environment("outdoor", 0, 0.04)
                .boundary("indoor", 0, 0, 1000, 0)
                .boundary("outdoor", 0, 300, 1000, 300);
    }

    /** Conductivities from 1e-3 to 1e3, so up to a million apart. */
    @Property(tries = 12, seed = "2026")
    void inclusionsOfSteepRatios(
            @ForAll @Size(3) List<@DoubleRange(min = -3, max = 3) Double> powers,
            @ForAll @IntRange(min = 0, max = 18) int x,
            @ForAll @IntRange(min = 0, max = 13) int y,
            @ForAll @IntRange(min = 1, max = 20) int w,
            @ForAll @IntRange(min = 1, max = 15) int h) {
        nested(twoInclusions(powers, x, y, w, h));
    }

    private static Sketch fourEnvironments(List<Double> powers, int gap, int x, int y) {
        return Sketch.of("four environments")
                .rectangle(k(powers.get(0)), 0, 0, 1000, 600)
                .rectangle(k(powers.get(1)), 20 * x, 20 * y, 20 * x + 300, 20 * y + 200)
                .environment("a", 20, 0.1)
                .environment("b", 10, 0)
                .environment("c", 0, 0.04)
                .environment("d", 5, 0.17)
                .boundary("a", 0, gap, 0, 600 - gap)
                .boundary("b", 10 * gap, 600, 1000 - gap, 600)
                .boundary("c", 1000, 500, 1000, 100)
                .boundary("d", 800, 0, gap, 0);
    }

    @Property(tries = 12, seed = "2026")
    void severalEnvironmentsWithArcsBetween(
            @ForAll @Size(2) List<@DoubleRange(min = -2, max = 2) Double> powers,
            @ForAll @IntRange(min = 1, max = 50) int gap,
            @ForAll @IntRange(min = 0, max = 35) int x,
            @ForAll @IntRange(min = 0, max = 20) int y) {
        nested(fourEnvironments(powers, gap, x, y));
    }

    /** Naming the environments backwards changes no coupling. */
    @Property(tries = 8, seed = "2026")
    void couplingsDoNotDependOnTheOrderOfEnvironments(
            @ForAll @Size(2) List<@DoubleRange(min = -2, max = 2) Double> powers,
            @ForAll @IntRange(min = 1, max = 50) int gap,
            @ForAll @IntRange(min = 0, max = 35) int x,
            @ForAll @IntRange(min = 0, max = 20) int y) {
        Section section = fourEnvironments(powers, gap, x, y).section();
        Section backwards = new Section(
                section.name(),
                section.symmetry(),
                section.regions(),
                section.environments().toReversed(),
                section.boundaries(),
                section.probes());
        Solution one = Conduction.solve(section, new Accuracy(1e-3, 100_000));
        Solution other = Conduction.solve(backwards, new Accuracy(1e-3, 100_000));
        assertEquals(6, one.couplings().size());
        for (Coupling c : one.couplings()) {
            Interval there = other.coupling(c.first(), c.second());
            assertTrue(
                    c.value().lower() <= there.upper()
                            && there.lower() <= c.value().upper(),
                    () -> c + " and " + there);
        }
    }

    /** A ring of four walls around a hole: an environment of its own, whose flow crosses a cut, or adiabatic. */
    @Property(tries = 12, seed = "2026")
    void holes(
            @ForAll @Size(2) List<@DoubleRange(min = -2, max = 2) Double> powers,
            @ForAll @IntRange(min = 1, max = 40) int left,
            @ForAll @IntRange(min = 1, max = 40) int below,
            @ForAll @IntRange(min = 2, max = 18) int side,
            @ForAll boolean adiabatic,
            @ForAll boolean closed) {
        double x0 = 10 * left;
        double y0 = 10 * below;
        double x1 = x0 + 30 * side;
        double y1 = y0 + 30 * side;
        Sketch sketch = Sketch.of("hole")
                .rectangle(k(powers.get(0)), 0, 0, 1000, y0)
                .rectangle(k(powers.get(0)), 0, y1, 1000, 1000)
                .rectangle(k(powers.get(1)), 0, y0, x0, y1)
                .rectangle(k(powers.get(0)), x1, y0, 1000, y1)
                .environment("left", 1, 0.1)
                .environment("right", 0, 0.05)
                .environment("hole", 0.5, 0.2);
        if (closed) {
            sketch.boundary("left", 0, 1000, 0, 0).boundary("right", 0, 0, 1000, 0, 1000, 1000, 0, 1000);
        } else {
            sketch.boundary("left", 0, 1000, 0, 0).boundary("right", 1000, 0, 1000, 1000);
        }
        if (!adiabatic) {
            sketch.boundary("hole", x0, y0, x1, y0, x1, y1, x0, y1, x0, y0);
        }
        nested(sketch);
    }

    /** A metal sheet of 0.1 to 1 mm from a face into or through a board, with a flap along it. */
    @Property(tries = 12, seed = "2026")
    void thinSheets(
            @ForAll @DoubleRange(min = 1, max = 2.5) double metal,
            @ForAll @IntRange(min = 1, max = 10) int tenths,
            @ForAll @IntRange(min = 5, max = 200) int depth,
            @ForAll @IntRange(min = 1, max = 100) int flap) {
        double t = 0.1 * tenths;
        nested(Sketch.of("sheet")
                .rectangle(0.035, 0, 0, 160, 1000)
                .rectangle(0.8, 160, 0, 360, 1000)
                .rectangle(k(metal), 0, 500, depth, 500 + t)
                .rectangle(k(metal), depth - t, 500, depth, 500 + flap)
                .environment("indoor", 1, 0.13)
                .environment("outdoor", 0, 0.04)
                .boundary("outdoor", 0, 1000, 0, 0)
                .boundary("indoor", 360, 0, 360, 1000));
    }

    /** A pin with a head through a board around the axis, and a third environment around the rim. */
    @Property(tries = 12, seed = "2026")
    void axisymmetric(
            @ForAll @DoubleRange(min = -1, max = 2.5) double pin,
            @ForAll @IntRange(min = 1, max = 20) int radius,
            @ForAll @IntRange(min = 20, max = 180) int depth,
            @ForAll boolean rim) {
        Sketch sketch = Sketch.of("pin")
                .axisymmetric()
                .rectangle(0.035, 0, 0, 300, 200)
                .rectangle(k(pin), 0, 0, 0.5 * radius, depth)
                .rectangle(k(pin), 0, 0, 3 * radius, 2)
                .environment("indoor", 20, 0.13)
                .environment("outdoor", 0, 0.04)
                .environment("rim", 5, 0.1)
                .boundary("indoor", 0, 200, 250, 200)
                .boundary("outdoor", 0, 0, 300, 0);
        if (rim) {
            sketch.boundary("rim", 300, 50, 300, 150);
        }
        nested(sketch);
    }
}
