package coldseam.audit.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;

import coldseam.audit.Audit;
import coldseam.audit.engine.Sample.Made;
import coldseam.envelope.JunctionKind;
import java.util.OptionalDouble;
import org.eclipse.collections.api.list.ImmutableList;
import org.junit.jupiter.api.Test;

/** What is best at a window stands in one plane all round it. */
class FramePlanesTest {

    private static final JunctionKind JAMB = JunctionKind.JAMB;
    private static final JunctionKind HEAD = JunctionKind.HEAD;

    /** By itself a jamb is best with its frame in, a head with its frame out, where it wins more than the jambs lose. */
    private static final ImmutableList<Made> DETAILS = Sample.good()
            .newWith(Made.good("jamb-frame-in", JAMB).psi(0.00))
            .newWith(Made.good("jamb-frame-out", JAMB).psi(0.01))
            .newWith(Made.good("head-frame-in", HEAD).psi(0.30))
            .newWith(Made.good("head-frame-out", HEAD).psi(0.00))
            .newWith(Made.good("sill-anywhere", JunctionKind.SILL));

    private static final String WITH_WINDOW = Sample.yaml()
            .replace(
                    "junctions:\n",
                    "openings:\n  one: {kind: window, surface: ground floor south wall, width: 1 m, height: 1 m,"
                            + " sill: 1 m, transmittance: 0.8 W/(m²·K)}\njunctions:\n");

    private static Audit audit(String choices) {
        return Sample.audit(WITH_WINDOW.replace("junctions:\n", "junctions:\n" + choices), DETAILS);
    }

    private static String best(Audit audit, JunctionKind kind) {
        return audit.junctions()
                .detect(row -> row.edge().kind() == kind)
                .sheet()
                .map(sheet -> sheet.best().orElse(sheet.result()).detail().id())
                .orElseThrow();
    }

    @Test
    void allSidesTogetherDecideWhereAFrameStandsBest() {
        Audit open = audit("");
        assertEquals("head-frame-out", best(open, HEAD));
        assertEquals("jamb-frame-out", best(open, JAMB));
        assertEquals("sill-anywhere", best(open, JunctionKind.SILL));
    }

    /** A side that has nothing in the plane of the others is told so, and no other is. */
    @Test
    void aSideThatHasNothingInThePlaneOfTheOthersIsTold() {
        Audit apart = Sample.audit(
                WITH_WINDOW.replace("junctions:\n", "junctions:\n- {kinds: [jamb], detail: jamb-frame-out}\n"),
                DETAILS.reject(each -> each.id().equals("head-frame-out")));
        assertEquals(OptionalDouble.of(0.1), elsewhere(apart, HEAD));
        assertEquals(OptionalDouble.empty(), elsewhere(apart, JAMB));
        assertEquals(OptionalDouble.empty(), elsewhere(apart, JunctionKind.SILL));
        assertEquals(OptionalDouble.empty(), elsewhere(audit(""), HEAD));
    }

    private static OptionalDouble elsewhere(Audit audit, JunctionKind kind) {
        return audit.junctions()
                .detect(row -> row.edge().kind() == kind)
                .sheet()
                .orElseThrow()
                .framesElsewhere();
    }

    @Test
    void aSideThatSomebodyChoseDecidesForTheOthers() {
        Audit chosen = audit("- {kinds: [jamb], detail: jamb-frame-in}\n");
        assertEquals("jamb-frame-in", best(chosen, JAMB));
        assertEquals("head-frame-in", best(chosen, HEAD));
    }
}
