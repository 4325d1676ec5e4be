package coldseam.audit.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.audit.Audit;
import coldseam.audit.BridgeSheet;
import coldseam.audit.HoldPoint;
import coldseam.envelope.Stop;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.detail.Photograph;
import java.util.Optional;
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
                        "Under the slab",
                        "Foot of the walls and thresholds",
                        "Airtight and watertight layer of the walls",
                        "Roof insulation, eaves and verges",
                        "Wall insulation",
                        "Pipes, cables and vents",
                        "Caps and flashings",
                        "The finished envelope"),
                BOX.collect(HoldPoint::name),
                "nothing old, no terrace, no crawl space, no window, no floor between storeys");
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
        ImmutableList<HoldPoint> none = HoldPoints.of(Lists.immutable.empty(), Lists.immutable.empty(), true);
        assertEquals(5, none.size());
        assertTrue(none.allSatisfy(each -> each.sheets().isEmpty()));
        ImmutableList<String> ofNew = HoldPoints.of(Lists.immutable.empty(), Lists.immutable.empty(), false)
                .collect(HoldPoint::name);
        assertEquals(
                none.collect(HoldPoint::name).reject("The old house, opened"::equals), ofNew, "nothing old is opened");
        assertEquals(4, ofNew.size());
    }

    /** A photograph that names its stop is asked for there, whatever its kind's stops are, and nowhere else. */
    @Test
    void aPhotographIsAskedForAtTheStopItNames() {
        Stop trench = Stop.all().detect(each -> each.label().equals("Foundation insulation"));
        Audit audit = Sample.audit(Sample.yaml(), Sample.good());
        BridgeSheet<JunctionResult> sheet =
                audit.sheets().detect(each -> each.result().detail().id().equals("slab-good"));
        ImmutableList<HoldPoint> points = HoldPoints.of(
                Lists.immutable.of(with(sheet, Lists.immutable.of(new Photograph("the trench", Optional.of(trench))))),
                Lists.immutable.empty(),
                false);
        assertTrue(points.detect(each -> each.name().equals(trench.label()))
                .lookAt()
                .contains("The trench"));
        assertEquals(1, points.count(each -> each.lookAt().contains("The trench")));
        assertTrue(points.anySatisfy(each -> each.name().equals("Under the slab")), "its kind's stops stay");
    }

    private static BridgeSheet<JunctionResult> with(
            BridgeSheet<JunctionResult> sheet, ImmutableList<Photograph> photographs) {
        JunctionResult old = sheet.result();
        Detail plain = old.detail();
        Detail detail = new Detail(
                plain.id(),
                plain.kind(),
                plain.also(),
                plain.name(),
                plain.rank(),
                plain.suits(),
                plain.looksLike(),
                plain.order(),
                plain.connections(),
                plain.failures(),
                photographs,
                plain.cautions(),
                plain.cost(),
                plain.drawing(),
                plain.own());
        JunctionResult result = new Altered(old).ofDetail(detail);
        return new BridgeSheet<>(
                sheet.id(),
                result,
                sheet.best(),
                sheet.options(),
                sheet.withheld(),
                sheet.places(),
                sheet.size(),
                sheet.chosen(),
                sheet.humidity(),
                sheet.framesElsewhere());
    }

    /** One layer of board has no second one whose joints could lie elsewhere, and a wall's two say nothing of the slab's. */
    @Test
    void twoLayersAreLookedForOnlyWhereThereAreTwo() {
        assertEquals(Lists.immutable.empty(), looksForTwo(Sample.yaml()));
        assertEquals(
                Lists.immutable.of("Wall insulation"),
                looksForTwo(Sample.yaml().replace(WALL_BOARD, halves(WALL_BOARD, "200 mm", "100 mm"))));
        String slab =
                "- {material: extruded polystyrene board, thickness: 160 mm, role: insulation, controls: [heat, water]}";
        assertTrue(Sample.yaml().contains(slab));
        assertEquals(
                Lists.immutable.of("Under the slab"),
                looksForTwo(Sample.yaml().replace(slab, halves(slab, "160 mm", "80 mm"))));
    }

    /** Boards on both sides of what carries them are no second layer of one another. */
    @Test
    void boardsOnBothSidesOfAWallAreNoTwoLayers() {
        String brick = "- {material: old solid brick, thickness: 240 mm, role: structure}";
        assertTrue(Sample.yaml().contains(brick));
        assertEquals(Lists.immutable.empty(), looksForTwo(Sample.yaml().replace(brick, WALL_BOARD + "\n    " + brick)));
    }

    private static final String WALL_BOARD =
            "- {material: mineral wool board, thickness: 200 mm, role: insulation, controls: [heat]}";

    private static String halves(String layer, String whole, String half) {
        return layer.replace(whole, half) + "\n    " + layer.replace(whole, half);
    }

    private static ImmutableList<String> looksForTwo(String yaml) {
        return Sample.audit(yaml, Sample.good())
                .holdPoints()
                .select(each -> each.lookAt()
                        .anySatisfy(item -> item.contains("joints do not coincide")
                                || item.contains("joints away from the first's")))
                .collect(HoldPoint::name);
    }

    /** Whoever goes out to photograph must know where; what every house is looked at for has no sheet. */
    @Test
    void anItemNamesTheSheetsWhoseDetailsAskForIt() {
        HoldPoint slab = point("Under the slab");
        assertEquals(
                slab.sheets(),
                slab.items()
                        .detect(each -> each.lookAt().equals("The slab-good"))
                        .sheets());
        assertEquals(Lists.immutable.empty(), slab.items().getFirst().sheets());
        BOX.forEach(each -> each.items()
                .forEach(item ->
                        assertTrue(each.sheets().containsAll(item.sheets().castToList()), each.name())));
    }
}
