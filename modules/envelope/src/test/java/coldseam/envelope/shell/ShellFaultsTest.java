package coldseam.envelope.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.envelope.Body;
import coldseam.envelope.shell.fault.ShellException;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.factory.Maps;
import org.eclipse.collections.api.list.ImmutableList;
import org.junit.jupiter.api.Test;

/** Bodies by storeys that cannot be built. */
class ShellFaultsTest {

    private static ImmutableList<String> faults(Body body) {
        return assertThrows(ShellException.class, () -> ShellBuilder.build(Houses.house(body)))
                .faults();
    }

    private static void refused(Body body, String... parts) {
        ImmutableList<String> faults = faults(body);
        assertEquals(1, faults.size(), faults.toString());
        for (String part : parts) {
            assertTrue(faults.get(0).contains(part), faults.get(0));
        }
    }

    @Test
    void pitchedRoofsMustClose() {
        Body.Storey el = Houses.storey("upper", Houses.points(0, 0, 9, 0, 9, 4, 5, 4, 5, 8, 0, 8), 3, "wall");
        Shell flat = ShellBuilder.build(Houses.house(Houses.body(Houses.roof(Body.Roof.Form.GABLE, 40, 0, true), el)));
        assertTrue(flat.closed(), "a cold loft's ceiling may have any outline");
        Body.RoofSide gable = new Body.RoofSide(40, Double.POSITIVE_INFINITY);
        refused(
                Houses.body(
                        RoofsTest.roof(
                                Body.Roof.Form.HIP,
                                40,
                                0,
                                Lists.immutable.of(0, 1, 2, 3, 4, 5).toImmutableMap(i -> i, i -> gable)),
                        el),
                "a hip roof cannot be built over \"upper\"",
                "enclosed by gables alone");
        Body.Storey half = Houses.storey("half", Houses.points(0, 0, 4, 0, 9, 0, 9, 8, 0, 8), 3, "wall");
        refused(
                Houses.body(
                        RoofsTest.roof(Body.Roof.Form.HIP, 40, 0, Maps.immutable.of(0, new Body.RoofSide(30, 0))),
                        half),
                "two sides in one line need one pitch, but at [4.000 m, 0.000 m] of the outer faces");
        Body.Storey bay =
                Houses.storey("bay", Houses.points(0, 0, 3, 0, 3, -1, 6, -1, 6, 0, 9, 0, 9, 12, 0, 12), 3, "wall");
        refused(
                Houses.body(Houses.roof(Body.Roof.Form.MONO_PITCH, 20, 0, false), bay),
                "its low side is side 1, but the corner at [3.000 m, -1.000 m] of the outer faces lies lower");
        Body.Storey jog = Houses.storey(
                "jog",
                Houses.points(0, 0, 4, 0, 9, 0, 9, 8, 0, 8),
                3,
                Lists.immutable.of("wall", "thin", "wall", "wall", "wall"));
        refused(
                Houses.storeys(
                        Body.FootprintLine.INNER_FACE,
                        Lists.immutable.of(jog),
                        Houses.slab(),
                        Houses.roof(Body.Roof.Form.HIP, 40, 0, false)),
                "sides 1 and 2 lie in one line but are walls of different thickness");
    }

    @Test
    void footprintsMustBeSimple() {
        refused(
                Houses.body(Houses.flat(), Houses.storey("a", Houses.points(0, 0, 5, 5, 5, 0, 0, 5), 3, "wall")),
                "crosses itself once its walls are moved");
        // A slot 1 m wide between walls 0.9 m thick.
        var slot = Houses.points(0, 0, 9, 0, 9, 9, 5, 9, 5, 4, 4, 4, 4, 9, 0, 9);
        refused(
                Houses.storeys(
                        Body.FootprintLine.INNER_FACE,
                        org.eclipse.collections.api.factory.Lists.immutable.of(Houses.storey("a", slot, 3, "thick")),
                        Houses.slab(),
                        Houses.flat()),
                "crosses itself once its walls are moved");
        refused(
                Houses.body(Houses.flat(), Houses.storey("a", Houses.rectangle(0, 0, 1.5, 1), 3, "thick")),
                "no room between their inner faces");
        assertTrue(ShellBuilder.build(Houses.house(
                        Houses.body(Houses.flat(), Houses.storey("a", Houses.rectangle(0, 0, 1.9, 1.9), 3, "thick"))))
                .closed());
    }

    @Test
    void nothingMayBeLeftIndoors() {
        // 50 mm up to the top of a ceiling of 100 mm.
        ImmutableList<String> faults =
                faults(Houses.body(Houses.flat(), Houses.storey("a", Houses.rectangle(0, 0, 5, 5), 0.05, "wall")));
        assertEquals(5, faults.size(), faults.toString());
        assertTrue(faults.get(0).contains("Surface \"a wall 0\": nothing is left of it"), faults.get(0));
        assertTrue(faults.get(0).contains("inside. Make it larger"), faults.get(0));
        assertTrue(faults.getLast().contains("nothing is left indoors"), faults.getLast());
        // Up to the ceiling's inner face there is exactly nothing of each wall.
        assertEquals(
                4 + 1,
                faults(Houses.body(Houses.flat(), Houses.storey("a", Houses.rectangle(0, 0, 5, 5), 0.1, "wall")))
                        .size());
    }
}
