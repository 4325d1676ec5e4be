package coldseam.report.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import coldseam.conduction.Point;
import coldseam.envelope.Control;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.ControlLine;
import coldseam.junctions.detail.Connection;
import coldseam.junctions.plan.SectionPlan.Zone;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.Test;

class ControlLineWordsTest {

    private static final ImmutableList<Point> WAY = Lists.immutable.of(new Point(0, 0), new Point(0.15, 0.2));

    private static ControlLineWords taped(ControlLine line) {
        return ControlLineWords.of(Connection.TAPED, Optional.of(line), UnitSystem.SI);
    }

    @Test
    void theLineIsSaidBesideTheDetailsWord() {
        assertEquals(
                new ControlLineWords("taped", true),
                taped(new ControlLine.Continuous(Control.AIR, WAY, Lists.immutable.empty(), Lists.immutable.empty())));
        // 150 mm across and 200 mm up are 250 mm of tape.
        assertEquals(
                new ControlLineWords("taped, over 250 mm of what cannot control it", true),
                taped(new ControlLine.Continuous(Control.AIR, WAY, Lists.immutable.of(WAY), Lists.immutable.empty())));
        assertEquals(
                new ControlLineWords("taped by sheet round the edge, over 250 mm of what cannot control it", true),
                taped(new ControlLine.Continuous(
                        Control.AIR, WAY, Lists.immutable.of(WAY), Lists.immutable.of("sheet round the edge"))));
        assertEquals(
                new ControlLineWords("taped, yet it changes sides of the insulation", false),
                taped(new ControlLine.ChangesSide(Control.AIR, WAY, Zone.INSIDE, Zone.OUTSIDE)));
        assertEquals(
                new ControlLineWords("taped, yet its line does not reach across", false),
                taped(new ControlLine.Broken(Control.AIR, WAY, ControlLine.Broken.Reason.OUT_OF_REACH)));
    }

    @Test
    void whatTheDetailDoesNotCarryAcrossStaysSo() {
        assertEquals(
                new ControlLineWords("not shown", false),
                ControlLineWords.of(Connection.NOT_SHOWN, Optional.empty(), UnitSystem.SI));
        assertEquals(
                new ControlLineWords("broken", false),
                ControlLineWords.of(
                        Connection.BROKEN,
                        Optional.of(new ControlLine.Broken(Control.AIR, WAY, ControlLine.Broken.Reason.SAID)),
                        UnitSystem.SI));
    }
}
