package coldseam.audit.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.audit.Audit;
import coldseam.audit.Breach;
import coldseam.audit.BridgeSheet;
import coldseam.audit.Finding;
import coldseam.audit.Finding.Severity;
import coldseam.audit.HeatLoss.Group;
import coldseam.audit.HeatLoss.Line;
import coldseam.audit.PointRow;
import coldseam.audit.Value;
import coldseam.audit.engine.Sample;
import coldseam.conduction.Interval;
import coldseam.envelope.Control;
import coldseam.files.quantity.Dimension;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.factory.Sets;
import org.eclipse.collections.api.list.ImmutableList;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Points in the box: each rule with a set that keeps it and one that breaks it, and their part of the sum. */
@Tag("slow")
class PointFindingsTest {

    private static Audit audit(String... points) {
        return Sample.audit(
                Sample.yaml() + "points:\n"
                        + Lists.immutable
                                .of(points)
                                .collect(each -> "  " + each + "\n")
                                .makeString(""),
                Sample.good());
    }

    private static Finding only(Audit audit) {
        assertEquals(
                1,
                audit.findings().size(),
                () -> audit.findings().collect(Finding::rule).makeString("; "));
        return audit.findings().getFirst();
    }

    @Test
    void theBestOptionsLeaveTheBoxUnbroken() {
        Audit audit = audit(
                "canopy: {surface: ground floor north wall, detail: bracket-stainless-on-pad, number: 2}",
                "vent: {surface: flat roof, detail: pipe-in-insulated-collar, number: 1}".replace("flat roof", roof()));
        assertEquals(Lists.immutable.empty(), audit.findings().collect(Finding::rule));
        assertTrue(audit.verdict().unbroken());
        assertEquals(Lists.immutable.of("P1", "P2"), audit.pointSheets().collect(each -> each.id()));
    }

    private static String roof() {
        return Sample.audit(Sample.yaml(), Sample.good())
                .shell()
                .surfaces()
                .detect(each -> each.normal().z() > 0.9)
                .name();
    }

    @Test
    void aSteelPostThroughIsOneFindingWithWhatItCosts() {
        Audit audit = audit("rail: {surface: " + roof() + ", detail: steel-post-through, number: 4}");
        Finding finding = only(audit);
        assertEquals("layer-not-shown", finding.rule(), "vapour is not shown, which is graver than its chi");
        assertEquals(Severity.UNKNOWN, finding.severity());
        assertEquals(
                Lists.immutable.of("layer-not-shown", "transmittance-over-limit"),
                finding.breaches().collect(Breach::rule));
        assertTrue(finding.breaches()
                .getLast()
                .evidence()
                .values()
                .contains(Value.of("limit", 0.05, Dimension.POINT_TRANSMITTANCE)));
        assertEquals("P1", finding.sheet().orElseThrow().id());
        var sheet = audit.pointSheets().getOnly();
        Interval more = finding.loss().orElseThrow();
        assertEquals(
                4
                        * (sheet.result().chi().middle()
                                - sheet.best().orElseThrow().chi().middle()),
                more.middle(),
                1e-9);
        // 3000 K·d of 24 h at 0.10 a kWh.
        assertEquals(
                more.middle() * 3000 * 24 / 1000 * 0.10, finding.moneyPerYear().orElseThrow(), 1e-9);
    }

    @Test
    void whatLosesTooMuchIsAWeakSpot() {
        String bracket = "canopy: {surface: ground floor north wall, detail: bracket-stainless, number: 2}";
        Finding finding = only(audit(bracket));
        assertEquals("transmittance-over-limit", finding.rule());
        assertEquals(Severity.WEAK, finding.severity());
        Audit lenient =
                Sample.audit(Sample.yaml() + "points:\n  " + bracket + "\nlimits: {chi: 0.07 W/K}\n", Sample.good());
        assertEquals(Lists.immutable.empty(), lenient.findings().collect(Finding::rule));
    }

    @Test
    void aColdSpotIsFound() {
        String pipe = "conduit: {surface: ground floor north wall, detail: pipe-in-insulated-collar, number: 1}";
        Audit strict = Sample.audit(
                Sample.yaml() + "points:\n  " + pipe + "\nlimits: {temperature-factor: 0.959}\n",
                Sample.good().collect(made -> made.fRsi(0.99)));
        Finding finding = only(strict);
        assertEquals("temperature-factor-under-limit", finding.rule());
        assertEquals(0.955, finding.sheet().orElseThrow().temperatureFactor(), 0.005);
    }

    @Test
    void anOpenGapIsAGap() {
        Finding finding = only(audit("hood: {surface: ground floor north wall, detail: duct-in-open-gap, number: 1}"));
        assertEquals("layer-broken", finding.rule());
        assertEquals(Severity.GAP, finding.severity());
        assertEquals(
                Lists.immutable.of(Control.AIR, Control.VAPOUR),
                ((LayerBrokenRule.Found) finding.breaches().getFirst().evidence()).layers());
    }

    @Test
    void whatNobodyChoseStandsInAndIsUnknown() {
        Audit audit = audit("hood: {surface: ground floor north wall, kind: duct, number: 1}");
        Finding finding = only(audit);
        assertEquals("detail-not-chosen", finding.rule());
        assertFalse(audit.verdict().unbroken());
        BridgeSheet<?> sheet = (BridgeSheet<?>) finding.sheet().orElseThrow();
        assertEquals("Metal duct in an open gap", sheet.result().detail().name());
        assertEquals("duct-insulated", sheet.best().orElseThrow().detail().id());
        assertTrue(!audit.points().getOnly().source().known());
    }

    @Test
    void whatDoesNotFitSaysWhy() {
        Audit audit = thinWall("steel-post-on-block");
        assertEquals(
                Sets.immutable.of("detail-out-of-range", "surface-poorly-insulated"),
                audit.findings().collect(Finding::rule).toImmutableSet());
        String reasons = audit.points().getOnly().misfits().makeString();
        assertTrue(reasons.contains("takes surface insulation of 60 mm to 400 mm; here it is 50 mm"), reasons);
        // The other options bound it: of a post's, only the bare one fits so thin a wall.
        assertEquals(
                thinWall("steel-post-through").heatLoss().points(),
                audit.heatLoss().points());
        assertTrue(audit.heatLoss().points().lower() > 0);
    }

    private static Audit thinWall(String post) {
        return Sample.audit(
                Sample.yaml().replace("mineral wool board, thickness: 200 mm", "mineral wool board, thickness: 50 mm")
                        + "points:\n  post: {surface: ground floor north wall, detail: " + post + ", number: 1}\n",
                Sample.good());
    }

    /** What has no insulation cannot be pierced: the surface itself is the finding. */
    @Test
    void pointsOfAnUninsulatedWallAreNotJudged() {
        String yaml = Sample.yaml().replace("{all: wall}", "{all: bare wall}")
                + "points:\n  conduit: {surface: ground floor north wall, kind: pipe, number: 1}\n";
        ImmutableList<Finding> findings = Sample.audit(yaml, Sample.good()).findings();
        assertEquals(
                Lists.immutable.of("surface-without-heat-layer", "detail-not-chosen"), findings.collect(Finding::rule));
    }

    @Test
    void countsComeFromNumbersAreasAndRows() {
        Audit audit = audit(
                "one: {surface: ground floor north wall, detail: bracket-stainless-on-pad, number: 3}",
                "two: {surface: ground floor south wall, detail: cladding-bracket-plastic, per-area: 2 per m²}",
                "three: {surface: ground floor south wall, detail: anchor-bolt-with-break, spacing: 1.5 m, length: 6 m}",
                "four: {surface: ground floor south wall, detail: anchor-bolt-with-break, spacing: 3 m, along: "
                        + "ground floor east wall}");
        var south = audit.shell().surfaces().detect(each -> each.name().equals("ground floor south wall"));
        double height = south.externalArea() / 8;
        assertEquals(
                Lists.immutable.of(
                        3,
                        (int) Math.ceil(2 * (south.externalArea() - south.openingArea())),
                        // Four bays of 1.5 m have five ends.
                        5,
                        // The corner is as high as the wall, a little more than 3 m: two bays.
                        3),
                audit.points().collect(PointRow::number));
        assertTrue(height > 3 && height < 6, () -> "height " + height);
        assertEquals(3, audit.pointSheets().size(), "equal details on equal layers share a sheet");
    }

    /** A window takes no cladding brackets: 2 for each m² of 20.95 m² of wall, and not of the window's 2.4 m² too. */
    @Test
    void pointsByAreaLeaveOpeningsOut() {
        Audit audit = Sample.audit(
                Sample.yaml()
                        + "points:\n  rail: {surface: ground floor south wall, detail: cladding-bracket-plastic, per-area: 2 per m²}\n"
                        + "openings:\n  window: {kind: window, surface: ground floor south wall, width: 2 m, height: 1.2 m, "
                        + "sill: 0.9 m, transmittance: 1 W/(m²·K)}\n",
                Sample.good());
        var south = audit.shell().surfaces().detect(each -> each.name().equals("ground floor south wall"));
        int expected = (int) Math.ceil(2 * (south.externalArea() - 2.4));
        assertTrue(expected < Math.ceil(2 * south.externalArea()));
        assertEquals(expected, audit.points().getOnly().number());
    }

    @Test
    void theTableHoldsNumberTimesChi() {
        Audit audit = audit(
                "one: {surface: ground floor north wall, detail: bracket-stainless-on-pad, number: 3}",
                "two: {surface: " + roof() + ", detail: steel-post-on-block, number: 7}");
        Audit without = Sample.audit(Sample.yaml(), Sample.good());
        ImmutableList<Line> lines = audit.heatLoss().lines().select(line -> line.group() == Group.POINTS);
        assertEquals(2, lines.size());
        double sum = 0;
        for (PointRow row : audit.points()) {
            sum += row.number() * row.chi().middle();
        }
        // Two lines, each rounded outwards to 0.001 W/K.
        assertEquals(sum, audit.heatLoss().points().middle(), 0.001);
        assertEquals(
                without.heatLoss().total().middle() + audit.heatLoss().points().middle(),
                audit.heatLoss().total().middle(),
                1e-9);
        // A point is the same in both systems of dimensions.
        assertEquals(
                without.heatLoss().vertexRemainder().middle(),
                audit.heatLoss().vertexRemainder().middle(),
                1e-12);
        assertEquals(
                without.heatLoss().otherSystemTotal().middle() + sum,
                audit.heatLoss().otherSystemTotal().middle(),
                1e-9);
    }

    @Test
    @Tag("slow")
    void workStopsBeforePostsAndPipesAreCovered() {
        Audit audit = audit(
                "conduit: {surface: ground floor north wall, detail: pipe-in-insulated-collar, number: 1}",
                "rail: {surface: " + roof() + ", detail: steel-post-on-block, number: 2}");
        var pipes = audit.holdPoints().detect(each -> each.name().equals("Pipes, cables and vents"));
        assertEquals(Lists.immutable.of("P1"), pipes.sheets());
        assertTrue(pipes.lookAt().contains("The gasket taped to the airtight layer, before the lining"));
        var posts = audit.holdPoints().detect(each -> each.name().equals("Posts, columns, brackets and anchors"));
        assertEquals(Lists.immutable.of("P2"), posts.sheets());
    }
}
