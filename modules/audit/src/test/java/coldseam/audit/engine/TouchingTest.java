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
        return Sample.audit(
                Sample.yaml()
                        .replace(
                                "junctions:\n",
                                "openings:\n" + window("one", "1 m") + window("other", left)
                                        + "junctions:\n- {kinds: [jamb], detail: jamb-good}\n"),
                Sample.good().newWith(Sample.Made.good("jamb-good", JunctionKind.JAMB)));
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
