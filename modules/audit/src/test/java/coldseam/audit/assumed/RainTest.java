package coldseam.audit.assumed;

import static org.junit.jupiter.api.Assertions.assertEquals;

import coldseam.audit.Audit;
import coldseam.audit.assumed.Rain.LowSill;
import coldseam.audit.engine.Sample;
import coldseam.envelope.shell.Surface;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What is left open of rain on the box's roof, and on a deck of 230 mm over a floor of 300 mm; worked out apart. */
@Tag("slow")
class RainTest {

    private static final String BOARD =
            "    - {material: polyisocyanurate board, thickness: %s, role: insulation, controls: [heat]%s}\n";

    private static final String DECK = "    - {material: lime plaster, thickness: 20 mm, role: finish}\n"
            + "    - {material: reinforced concrete, thickness: 160 mm, role: structure, controls: [air, vapour]}\n";

    private static Audit audit(String yaml) {
        return Sample.audit(yaml, Sample.good());
    }

    private static ImmutableList<String> level(String yaml) {
        return Rain.NO_FALLS.in(audit(yaml)).collect(Surface::name);
    }

    private static ImmutableList<String> enclosed(String yaml) {
        return Rain.ENCLOSED.in(audit(yaml)).collect(Surface::name);
    }

    private static LowSill sill(String board, String taper, String sill) {
        return sills(board, taper, sill).getOnly();
    }

    private static ImmutableList<LowSill> sills(String board, String taper, String sill) {
        return sills("door", board, taper, sill);
    }

    private static ImmutableList<LowSill> sills(String kind, String board, String taper, String sill) {
        return Rain.LOW_SILL.in(audit(Sample.terrace(DECK + BOARD.formatted(board, taper))
                .replace(
                        "junctions:\n",
                        "openings:\n  door: {kind: " + kind
                                + ", surface: upper floor south wall, width: 1 m, height: 2 m," + " sill: " + sill
                                + ", transmittance: 1 W/(m²·K)}\njunctions:\n")));
    }

    @Test
    void aRoofThatNothingDrainsIsABasinWithinItsParapet() {
        assertEquals(Lists.immutable.of("roof"), level(Sample.yaml()));
        assertEquals(Lists.immutable.empty(), enclosed(Sample.yaml()));
        String parapet = Sample.yaml().replace("assembly: roof}", "assembly: roof, parapet-height: 300 mm}");
        assertEquals(Lists.immutable.of("roof"), enclosed(parapet));
        String points = parapet + "points:\n  water: {surface: roof, kind: %s, number: 1}\n";
        assertEquals(Lists.immutable.empty(), enclosed(points.replace("%s", "scupper")));
        assertEquals(Lists.immutable.empty(), enclosed(points.replace("%s", "roof drain")));
        assertEquals(Lists.immutable.of("roof"), enclosed(points.replace("%s", "pipe")));
    }

    /** The box and another half beside it, each under a slope; the valley between them is 6 m long and level, or there is none. */
    private static ImmutableList<Double> gutters(String low, String otherLow, String points) {
        String roof = "  roof: {form: mono pitch, assembly: roof, pitch: 10 °, low-side: %s}\n";
        String box = Sample.yaml();
        int at = box.indexOf("  roof: {");
        int end = box.indexOf('\n', at) + 1;
        return Rain.LEVEL_GUTTER
                .in(audit(box.substring(0, at)
                        + roof.formatted(low)
                        + "  wings:\n    half:\n      storeys:\n      - {name: half, footprint: {rectangle: [5 m, 6 m], at: [8 m, 0 m]},"
                        + " height: 3 m, walls: wall}\n      base: {kind: slab on ground, assembly: slab}\n    "
                        + roof.formatted(otherLow)
                        + points
                        + box.substring(end)))
                .collect(row -> row.edge().externalLength());
    }

    @Test
    void whatRunsDownToALevelValleyMustLeaveIt() {
        assertEquals(Lists.immutable.of(6.0), gutters("east", "west", ""));
        assertEquals(Lists.immutable.empty(), gutters("west", "east", ""));
        assertEquals(
                Lists.immutable.empty(),
                gutters("east", "west", "points:\n  water: {surface: roof, kind: roof drain, number: 1}\n"));
        // Both fall to the west: the other half's foot lies before the wall under the box's high eaves.
        assertEquals(Lists.immutable.of(6.0), gutters("west", "west", ""));
    }

    @Test
    void whatIsCutToFallsIsNotLevel() {
        String board = "polyisocyanurate board, thickness: 160 mm, role: insulation, controls: [heat]";
        assertEquals(
                Lists.immutable.empty(),
                level(Sample.yaml().replace(board, board + ", taper: {shape: rectangle, thickest: 200 mm}")));
    }

    /** The deck's top is 300 − 20 − 160 − 100 − 8 = 12 mm under the floor. */
    @Test
    void aSillIsMeasuredOverAllLayersOfTheDeck() {
        LowSill low = sill("100 mm", "", "100 mm");
        assertEquals("door", low.opening().name());
        assertEquals(0.112, low.height(), 1e-9);
        assertEquals(0.112, low.least(), 1e-9);
        LowSill drowned = sill("60 mm", ", taper: {shape: rectangle, thickest: 260 mm}", "100 mm");
        assertEquals(0.152, drowned.height(), 1e-9);
        assertEquals(-0.048, drowned.least(), 1e-9);
    }

    /** One that reaches no threshold has a sill of its own, 12 mm and 60 mm over the deck's top. */
    @Test
    void aWindowsSillKeepsWaterOutAsADoorsDoes() {
        LowSill low = sills("window", "100 mm", "", "60 mm").getOnly();
        assertEquals("terrace over ground floor", low.before().name());
        assertEquals(0.072, low.height(), 1e-9);
        assertEquals(Lists.immutable.empty(), sills("window", "100 mm", "", "140 mm"));
    }

    /** A sill that is printed as high as is usual is: its height is a difference of heights, and a hair less. */
    @Test
    void aSillOnTheUsualHeightIsNotLow() {
        assertEquals(Lists.immutable.empty(), sills("100 mm", "", "137.6 mm"));
        assertEquals(0.1494, sill("100 mm", "", "137.4 mm").height(), 1e-9);
    }
}
