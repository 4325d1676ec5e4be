package coldseam.audit.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.audit.Audit;
import coldseam.audit.JunctionRow;
import coldseam.audit.Touching;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.shell.ShellBuilder;
import coldseam.junctions.section.Composer;
import org.eclipse.collections.api.list.ImmutableList;
import org.junit.jupiter.api.Test;

/** Seams nearer than their sections reach leave H_T a least value, by a bound worked out by hand. */
class TouchingTest {

    private static final double FRAME_U = 0.9;

    private static String window(String name, String left) {
        return "  " + name + ": {kind: window, surface: ground floor south wall, width: 1 m, height: 1.5 m, left: "
                + left + ", sill: 1 m, transmittance: 0.9 W/(m²·K)}\n";
    }

    private static Audit windowsApart(String left) {
        return windowsApart(left, -0.05);
    }

    private static Audit windowsApart(String left, double psi) {
        return Sample.audit(
                Sample.yaml()
                        .replace(
                                "junctions:\n",
                                "openings:\n" + window("one", "1 m") + window("other", left)
                                        + "junctions:\n- {kinds: [jamb], detail: jamb-good}\n"),
                Sample.good()
                        .newWith(
                                Sample.Made.good("jamb-good", JunctionKind.JAMB).psi(psi)));
    }

    @Test
    void whatTwoJambsMayLoseLessIsTheirPsiOverWhatWallAndFramesLoseThere() {
        Audit audit = windowsApart("2.01 m");
        ImmutableList<JunctionRow> jambs =
                audit.junctions().select(row -> row.edge().kind() == JunctionKind.JAMB);
        double least = -(BoxByHand.transmittance("wall") * BoxByHand.WALL / 2 + FRAME_U * Composer.FRAME_WIDTH);
        // Four jambs, of which the two between the windows touch, over the windows' height.
        double byHand = 2 * 1.5 * (jambs.getFirst().psi().lower() - least);
        Unknown unknown = Unknown.of(audit);
        assertEquals(4, jambs.size());
        assertEquals(1, unknown.touching().sumOfInt(each -> each.pairs().size()));
        assertFalse(unknown.none());
        assertEquals(byHand, unknown.together(), 2e-3);
        assertTrue(unknown.together() > 0.25, "it is a bound that somebody sees: " + unknown.together());
    }

    @Test
    void windowsFurtherApartThanTheWallReachesAreKnown() {
        double reach = Touching.REACH * BoxByHand.WALL;
        Unknown unknown = Unknown.of(windowsApart(2 + reach + 0.01 + " m"));
        assertEquals(0, unknown.touching().size());
        assertEquals(0, unknown.together());
        assertTrue(Unknown.of(windowsApart(2 + reach - 0.01 + " m")).touching().notEmpty());
    }

    /** What is computed to lose less than the least that geometry allows has nothing left to lose less. */
    @Test
    void aJambUnderTheLeastTakesNothingOff() {
        Unknown unknown = Unknown.of(windowsApart("2.01 m", -0.2));
        assertEquals(1, unknown.touching().sumOfInt(each -> each.pairs().size()));
        assertEquals(0, unknown.together());
    }

    /** The corner disturbs the wall from its inner face on, a wall's thickness nearer to the window than its outer edge. */
    @Test
    void aJambBesideACornerIsNearAsItsInnerFaceIs() {
        double psi = 0.4;
        double decay = byTheCorner(0.6, psi).getFirst().decay();
        // Where share · psi is what may be out untold, share being 2 / (1 + exp(clear / decay)).
        double clear = decay * Math.log(2 * psi / Touching.LIMIT - 1);
        double from = BoxByHand.WALL + clear;
        assertTrue(2 * Touching.share(from, decay) * psi < Touching.LIMIT, "outdoors it would be far: " + from);
        assertTrue(byTheCorner(from - 0.01, psi).notEmpty());
        assertTrue(byTheCorner(from + 0.01, psi).isEmpty());
    }

    private static ImmutableList<Touching> byTheCorner(double left, double psi) {
        return Touching.of(
                ShellBuilder.build(Sample.house(cornered(left))),
                Sample.audit(
                                cornered(left),
                                Sample.goodBut(Sample.Made.good("corner-good", JunctionKind.OUTSIDE_CORNER)
                                                .psi(psi))
                                        .newWith(Sample.Made.good("jamb-good", JunctionKind.JAMB)
                                                .psi(psi)))
                        .junctions());
    }

    private static String cornered(double left) {
        return Sample.yaml()
                .replace(
                        "junctions:\n",
                        "openings:\n" + window("one", left + " m")
                                + "junctions:\n- {kinds: [jamb], detail: jamb-good}\n");
    }

    /** A gable under 45°: a window's corners near the slopes, to which its head and jambs are aslant. */
    @Test
    void aWindowsCornerUnderASlopeTouchesTheVergeForAsLongAsItIsNear() {
        double highest = 3.2;
        while (fits(highest + 0.01)) {
            highest += 0.01;
        }
        assertTrue(Unknown.of(gable(highest - 0.5)).touching().isEmpty());
        Unknown near = Unknown.of(gable(highest));
        ImmutableList<Touching.Pair> pairs = near.touching().flatCollect(Touching::pairs);
        // Each upper corner has a head and a jamb, and a verge over it.
        assertEquals(4, pairs.size());
        assertTrue(pairs.allSatisfy(pair -> pair.one().edge().kind() == JunctionKind.VERGE
                ^ pair.other().edge().kind() == JunctionKind.VERGE));
        assertTrue(pairs.allSatisfy(pair -> pair.length() < 0.1), "only its corners are near");
        assertTrue(near.together() > 0);
    }

    private static boolean fits(double sill) {
        try {
            ShellBuilder.build(Sample.house(gabled(sill)));
            return true;
        } catch (RuntimeException tooHigh) {
            return false;
        }
    }

    private static String gabled(double sill) {
        return Sample.yaml()
                .replace("{form: flat, assembly: roof}", "{form: gable, assembly: roof, pitch: 45 °, low-side: south}")
                .replace(
                        "junctions:\n",
                        "openings:\n  gable window: {kind: window, surface: gable over ground floor west wall, width: 1 m,"
                                + " height: 0.5 m, sill: " + sill
                                + " m, transmittance: 0.9 W/(m²·K)}\njunctions:\n- {kinds: [verge], detail: verge-good}\n"
                                + "- {kinds: [head], detail: head-good}\n- {kinds: [jamb], detail: jamb-good}\n");
    }

    private static Audit gable(double sill) {
        return Sample.audit(
                gabled(sill),
                Sample.good()
                        .newWith(Sample.Made.good("verge-good", JunctionKind.VERGE))
                        .newWith(Sample.Made.good("head-good", JunctionKind.HEAD))
                        .newWith(Sample.Made.good("jamb-good", JunctionKind.JAMB)));
    }
}
