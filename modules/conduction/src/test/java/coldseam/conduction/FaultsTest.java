package coldseam.conduction;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.conduction.solve.Conduction;
import org.eclipse.collections.api.list.ImmutableList;
import org.junit.jupiter.api.Test;

/** Sections that must be refused, with their places; and ones that must not. */
class FaultsTest {

    private static Sketch slab() {
        return Sketch.of("slab")
                .environment("indoor", 20, 0.13)
                .environment("outdoor", 0, 0.04)
                .boundary("indoor", 0, 0, 1000, 0)
                .boundary("outdoor", 0, 200, 1000, 200);
    }

    private static void refused(Sketch sketch, String... parts) {
        ImmutableList<String> faults =
                assertThrows(SectionException.class, () -> sketch.solve(1e-2)).faults();
        assertEquals(1, faults.size(), faults::toString);
        for (String part : parts) {
            assertTrue(faults.get(0).contains(part), () -> faults.get(0) + "\nshould say: " + part);
        }
    }

    @Test
    void boundaryOffTheOutline() {
        refused(
                slab().rectangle(1, 0, 0, 1000, 200).boundary("outdoor", 0, 300, 1000, 300),
                "boundary 3 (outdoor)",
                "(0.5, 0.3) m",
                "nothing is painted");
    }

    @Test
    void boundaryInside() {
        refused(
                slab().rectangle(1, 0, 0, 1000, 200).boundary("outdoor", 0, 100, 1000, 100),
                "(0.5, 0.1) m",
                "both sides are painted");
    }

    @Test
    void overlappingBoundaries() {
        refused(
                slab().rectangle(1, 0, 0, 1000, 200).boundary("outdoor", 400, 0, 600, 0),
                "over another boundary",
                "(0.5, 0) m");
    }

    @Test
    void unknownEnvironment() {
        refused(
                slab().rectangle(1, 0, 0, 1000, 200).boundary("attic", 0, 0, 0, 200),
                "boundary 3 (attic)",
                "there are indoor, outdoor");
    }

    @Test
    void badConductivities() {
        for (double k : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY}) {
            refused(slab().rectangle(k, 0, 0, 1000, 200), "region 1 (material 1)", k + " W/(m·K)", "greater than 0");
        }
    }

    @Test
    void selfCrossingRegion() {
        refused(slab().polygon(1, 0, 0, 1000, 200, 1000, 0, 0, 200), "crosses itself", "(0.5, 0.1) m");
    }

    @Test
    void probeOutside() {
        refused(
                slab().rectangle(1, 0, 0, 1000, 200).probe("far", 2000, 0),
                "probe far",
                "(2, 0) m",
                "outside the section");
    }

    @Test
    void partWithoutEnvironment() {
        refused(
                slab().rectangle(1, 0, 0, 1000, 200).rectangle(1, 3000, 0, 3300, 300),
                "touches no environment",
                "around (3.1, ");
    }

    @Test
    void hairThinGap() {
        refused(
                slab().rectangle(1, 0, 0, 500, 200).rectangle(1, 500.01, 0, 1000, 200),
                "gap 0.01 mm wide",
                "at least 0.02 mm");
    }

    /** A corner rounded to a millimetre off the line it stands on leaves a crack of up to that. */
    @Test
    void crackThatNarrowsToNothing() {
        refused(
                slab().polygon(1, 0, 0, 1000, 0, 1000, 100, 0, 100)
                        .polygon(1, 0, 100, 500, 100.7, 1000, 100, 1000, 200, 0, 200),
                "gap that narrows to nothing",
                "0.7 mm",
                "more digits");
    }

    @Test
    void regionTooThinToBeThere() {
        refused(
                slab().rectangle(1, 0, 0, 1000, 200).rectangle(50, 300, 0, 300.001, 200),
                "region 2 (material 2)",
                "(0.3, 0) m",
                "closer than 0.005 mm is one");
    }

    @Test
    void moreEnvironmentsThanAreToldApart() {
        Sketch sketch = Sketch.of("many").rectangle(1, 0, 0, 6500, 200);
        for (int i = 0; i < 65; i++) {
            sketch.environment("e" + i, i, 0.1).boundary("e" + i, 100 * i, 0, 100 * i + 100, 0);
        }
        refused(sketch, "65 environments", "at most 64");
    }

    @Test
    void moreHolesThanAreToldApart() {
        refused(holes(33), "more than 32 holes", "split the section");
    }

    /** As many as are told apart work: each hole's heat flow is that of its like, since all lie alike in a long strip. */
    @Test
    void asManyHolesAsAreToldApart() {
        Solution solution = holes(32).solve(1e-2);
        Interval all = solution.coupling("outdoor", "indoor");
        Interval one = holes(1).solve(1e-2).coupling("outdoor", "indoor");
        assertTrue(all.lower() <= 32 * one.upper() && all.upper() >= 32 * one.lower(), () -> all + " and " + one);
    }

    /** A row of square holes, each in the middle of a square of its own with adiabatic left and right sides. */
    private static Sketch holes(int count) {
        Sketch sketch = Sketch.of("holes").environment("indoor", 20, 0.1).environment("outdoor", 0, 0.1);
        for (int i = 0; i < count; i++) {
            int x = 400 * i;
            sketch.rectangle(1, x, 0, x + 400, 100)
                    .rectangle(1, x, 300, x + 400, 400)
                    .rectangle(1, x, 100, x + 100, 300)
                    .rectangle(1, x + 300, 100, x + 400, 300)
                    .boundary("indoor", x + 100, 100, x + 300, 100, x + 300, 300, x + 100, 300, x + 100, 100);
        }
        return sketch.boundary("outdoor", 0, 0, 400 * count, 0).boundary("outdoor", 0, 400, 400 * count, 400);
    }

    @Test
    void negativeRadius() {
        refused(
                slab().axisymmetric().polygon(1, 0, 0, 1000, 0, 1000, 200, 0, 200, -100, 100),
                "radius",
                "(-0.1, 0.1) m");
    }

    @Test
    void boundaryAlongTheAxis() {
        refused(
                slab().axisymmetric().rectangle(1, 0, 0, 1000, 200).boundary("indoor", 0, 0, 0, 200),
                "runs along the axis");
    }

    @Test
    void allFaultsAtOnce() {
        SectionException refused = assertThrows(
                SectionException.class,
                () -> slab().rectangle(-1, 0, 0, 1000, 200)
                        .polygon(1, 0, 0, 1, 0)
                        .environment("indoor", Double.NaN, -1)
                        .boundary("attic", 0, 0, 0, 200)
                        .solve(1e-2));
        assertEquals(6, refused.faults().size(), refused::getMessage);
    }

    @Test
    void accuracyOutOfRange() {
        Section section = slab().rectangle(1, 0, 0, 1000, 200).section();
        assertThrows(IllegalArgumentException.class, () -> Conduction.solve(section, new Accuracy(0, 1000)));
        assertThrows(IllegalArgumentException.class, () -> Conduction.solve(section, new Accuracy(1e-3, 10)));
    }

    /** A crack of the drawing's own rounding is closed and noted, and changes nothing. */
    @Test
    void roundingCracksAreClosed() {
        Solution solution = slab().rectangle(1, 0, 0, 500, 200)
                .polygon(1, 500.001, 0, 1000, 0, 1000, 200, 499.999, 200)
                .solve(1e-6);
        Interval l = solution.coupling("indoor", "outdoor");
        assertTrue(l.contains(1 / (0.13 + 0.2 + 0.04)) || l.width() < 1e-9, l::toString);
        assertEquals(1 / 0.37, l.middle(), 1e-8);
        assertTrue(solution.notes().anySatisfy(n -> n.contains("moved onto")), solution.notes()::toString);
    }

    /** A turned drawing's last bits are no news to who reads the sheet. */
    @Test
    void roundingOfNumbersIsNotTold() {
        Solution solution = slab().rectangle(1, 0, 0, 500, 200)
                .polygon(1, 500.0001, 0, 1000, 0, 1000, 200, 499.9999, 200)
                .solve(1e-6);
        assertTrue(solution.notes().noneSatisfy(n -> n.contains("moved onto")), solution.notes()::toString);
    }

    @Test
    void unmetAccuracyGivesTheBestInterval() {
        Solution solution = Conduction.solve(CornerTest.corner(100, 100, 900).section(), new Accuracy(1e-9, 2000));
        assertTrue(!solution.met() && solution.unknowns() <= 2000, () -> "unknowns " + solution.unknowns());
        assertTrue(solution.notes().anySatisfy(n -> n.contains("allow more unknowns")));
        assertTrue(solution.coupling("indoor", "outdoor").contains(18.5587287996947));
    }
}
