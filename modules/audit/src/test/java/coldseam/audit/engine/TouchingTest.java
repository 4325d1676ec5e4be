package coldseam.audit.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.audit.Audit;
import coldseam.audit.JunctionRow;
import coldseam.audit.Touching;
import coldseam.envelope.JunctionKind;
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
        assertEquals(byHand, unknown.below(), 2e-3);
        assertTrue(unknown.below() > 0.25, "it is a bound that somebody sees: " + unknown.below());
    }

    @Test
    void windowsFurtherApartThanTheWallReachesAreKnown() {
        double reach = Touching.REACH * BoxByHand.WALL;
        Unknown unknown = Unknown.of(windowsApart(2 + reach + 0.01 + " m"));
        assertEquals(0, unknown.touching().size());
        assertEquals(0, unknown.below());
        assertTrue(Unknown.of(windowsApart(2 + reach - 0.01 + " m")).touching().notEmpty());
    }
}
