package coldseam.report.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.Test;

class BendsTest {

    private static ImmutableList<Spot> line(double... places) {
        MutableList<Spot> spots = Lists.mutable.empty();
        for (int i = 0; i < places.length; i += 2) {
            spots.add(new Spot(places[i], places[i + 1]));
        }
        return spots.toImmutable();
    }

    @Test
    void whatLiesOnTheWayIsLeftOut() {
        assertEquals(line(0, 0, 10, 10, 20, 0), Bends.of(line(0, 0, 3, 3, 10, 10, 15, 5.005, 20, 0)));
    }

    @Test
    void whatIsSeenStays() {
        ImmutableList<Spot> bent = line(0, 0, 10, 0.02, 20, 0);
        assertEquals(bent, Bends.of(bent));
    }

    @Test
    void aLineThatTurnsBackGoesAsFarAsItWent() {
        ImmutableList<Spot> back = line(0, 0, 30, 0, 20, 0);
        assertEquals(back, Bends.of(back));
    }

    @Test
    void aClosedLineStaysClosed() {
        ImmutableList<Spot> square = line(0, 0, 10, 0, 10, 10, 0, 10, 0, 0);
        assertEquals(square, Bends.of(square));
        assertEquals(line(), Bends.of(line()));
        assertEquals(line(1, 1), Bends.of(line(1, 1)));
    }

    /** A hundredth of a point is the last digit that is written; of an arc of so many short pieces most go. */
    @Test
    void noSpotOfAnArcIsFartherThanAHundredthFromWhatIsLeft() {
        MutableList<Spot> arc = Lists.mutable.empty();
        for (int i = 0; i <= 900; i++) {
            double angle = Math.toRadians(i / 10.0);
            arc.add(new Spot(200 * Math.cos(angle), 200 * Math.sin(angle)));
        }
        ImmutableList<Spot> left = Bends.of(arc.toImmutable());
        assertTrue(left.size() < 90, "left: " + left.size());
        for (Spot spot : arc) {
            double nearest = left.toList().subList(1, left.size()).stream()
                    .mapToDouble(end -> toPiece(spot, left.get(left.indexOf(end) - 1), end))
                    .min()
                    .orElseThrow();
            assertTrue(nearest < 0.01, spot + " is off by " + nearest);
        }
    }

    private static double toPiece(Spot spot, Spot from, Spot to) {
        double dx = to.x() - from.x();
        double dy = to.y() - from.y();
        double share = ((spot.x() - from.x()) * dx + (spot.y() - from.y()) * dy) / (dx * dx + dy * dy);
        return spot.distance(from.towards(to, Math.min(1, Math.max(0, share))));
    }
}
