package coldseam.audit.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.audit.HoldPoint;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.junit.jupiter.api.Test;

class HoldPointsTest {

    private static final ImmutableList<HoldPoint> BOX =
            Sample.audit(Sample.yaml(), Sample.good()).holdPoints();

    private static HoldPoint point(String name) {
        return BOX.detect(each -> each.name().equals(name));
    }

    @Test
    void aHouseHasTheStopsOfItsJunctionsAndThoseEveryHouseHas() {
        assertEquals(
                Lists.immutable.of(
                        "The old house, opened",
                        "Under the slab",
                        "Foot of the walls and thresholds",
                        "Airtight and watertight layer of the walls",
                        "Roof insulation, eaves and verges",
                        "Wall insulation",
                        "Pipes, cables and vents",
                        "Caps and flashings",
                        "The finished envelope"),
                BOX.collect(HoldPoint::name),
                "no terrace, no crawl space, no window, no floor between storeys");
    }

    @Test
    void aStopNamesItsSheetsAndAsksForTheirPhotographs() {
        HoldPoint slab = point("Under the slab");
        assertEquals("concrete is poured", slab.before());
        assertEquals(1, slab.sheets().size());
        assertTrue(slab.lookAt().contains("The slab-good"), slab.lookAt()::toString);
        assertFalse(slab.lookAt().contains("The corner-good"), slab.lookAt()::toString);
        assertTrue(point("Wall insulation").lookAt().contains("The corner-good"));
        assertEquals(Lists.immutable.empty(), point("The finished envelope").sheets());
    }

    @Test
    void everyPointIsWrittenInOneWayAndOnce() {
        for (HoldPoint each : BOX) {
            assertEquals(each.lookAt().distinct(), each.lookAt());
            for (String item : each.lookAt()) {
                assertTrue(Character.isUpperCase(item.charAt(0)), item);
                assertFalse(item.endsWith("."), item);
            }
        }
    }

    @Test
    void aHouseWithoutSheetsKeepsWhatEveryHouseHas() {
        ImmutableList<HoldPoint> none = HoldPoints.of(Lists.immutable.empty());
        assertEquals(5, none.size());
        assertTrue(none.allSatisfy(each -> each.sheets().isEmpty()));
    }
}
