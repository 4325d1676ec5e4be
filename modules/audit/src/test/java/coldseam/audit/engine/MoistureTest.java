package coldseam.audit.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.assemblies.moisture.Condensation;
import coldseam.audit.AssemblyRow;
import coldseam.audit.Audit;
import coldseam.audit.Finding;
import coldseam.audit.MoistureCheck;
import coldseam.audit.Subject;
import coldseam.audit.engine.Sample.Made;
import coldseam.audit.rules.CondensationInsideRule;
import coldseam.audit.rules.MouldByMonthRule;
import coldseam.envelope.JunctionKind;
import java.time.Month;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.junit.jupiter.api.Test;

/**
 * The climate and what follows from it are those of fixtures/published/moisture.csv: worked out apart, with the formulas of
 * ISO 13788:2012 (from memory).
 */
class MoistureTest {

    private static final String DIMENSIONS = "  dimensions: external\n";

    private static final String CLIMATE = """
              climate:
                source: made up
                months: [[-1 °C, 85 %], [0 °C, 84 %], [4 °C, 78 %], [9 °C, 72 %], [14 °C, 69 %], [18 °C, 73 %],
                  [19 °C, 73 %], [18.5 °C, 74 %], [14.3 °C, 75 %], [9.1 °C, 82 %], [4.7 °C, 88 %], [1.3 °C, 88 %]]
            """;

    private static final Made CORNER = Made.good("corner-good", JunctionKind.OUTSIDE_CORNER);

    private static String withClimate(String yaml) {
        return yaml.replace(DIMENSIONS, DIMENSIONS + CLIMATE.indent(0));
    }

    private static Audit audit(String yaml, double factor) {
        return Sample.audit(yaml, Sample.goodBut(CORNER.fRsi(factor)));
    }

    private static ImmutableList<Finding> byMonth(Audit audit) {
        return audit.findings().select(finding -> finding.rule().equals("mould-by-month"));
    }

    /** February needs 0.7265 in humidity class 3; the house's own 50 % would need less. */
    @Test
    void theMonthThatAsksForMostDecides() {
        String yaml = withClimate(Sample.yaml());
        Finding cold = byMonth(audit(yaml, 0.726)).getFirst();
        assertEquals(Finding.Severity.WEAK, cold.severity());
        MouldByMonthRule.Found found =
                (MouldByMonthRule.Found) cold.breaches().getFirst().evidence();
        assertEquals(Month.FEBRUARY, found.need().month());
        assertEquals(0.57, found.need().indoorHumidity(), 0.005);
        assertEquals(4, ((Subject.Bridges) cold.subject()).rows().size());
        assertEquals(Lists.immutable.empty(), byMonth(audit(yaml, 0.727)));
        assertEquals(Lists.immutable.empty(), byMonth(audit(Sample.yaml(), 0.726)), "without a climate");
    }

    /** 62 % at 20 °C: 80 % is reached at 15.946 °C, so January needs (15.946 + 1)/21 = 0.8070 (formulas apart). */
    @Test
    void theHousesOwnHumidityIsNotForgottenByMonths() {
        String yaml = withClimate(Sample.yaml()).replace("indoor-humidity: 50 %", "indoor-humidity: 62 %");
        Audit audit = audit(yaml, 0.8);
        assertEquals(1, byMonth(audit).size());
        var need = audit.mould().monthly().orElseThrow().critical();
        assertEquals(Month.JANUARY, need.month());
        assertEquals(0.8070, need.temperatureFactor(), 5e-5);
    }

    /** 20 °C and 50 % need 12.625 °C on the surface, at −10 °C outdoors (12.625 + 10)/30 = 0.754. */
    @Test
    void whatOnlyTheDesignTemperatureAsksForIsPointedOutAndNoFinding() {
        Audit audit = audit(Sample.yaml(), 0.75);
        assertEquals(0.75417, audit.mould().designNeed(), 5e-5);
        assertEquals(1, audit.mould().wetAtDesign().size());
        assertEquals(
                audit.mould().surfaces().getFirst(), audit.mould().wetAtDesign().getFirst());
        assertEquals(Lists.immutable.empty(), audit.findings());
        assertEquals(0, audit(Sample.yaml(), 0.755).mould().wetAtDesign().size());
        assertTrue(audit.mould().monthly().isEmpty());
    }

    private static MoistureCheck check(Audit audit, String assembly) {
        return audit.assemblies()
                .detect(row -> row.assembly().name().equals(assembly))
                .moisture();
    }

    @Test
    void whatIsNotCheckedSaysWhy() {
        Audit audit = audit(Sample.yaml(), 0.9);
        assertEquals(
                "the house file gives no monthly climate", check(audit, "wall").unchecked());
        Audit with = audit(withClimate(Sample.yaml()), 0.9);
        assertTrue(check(with, "slab").unchecked().contains("meets the ground"));
        assertTrue(check(with, "wall").year().isPresent());
        assertEquals("", check(with, "wall").unchecked());
    }

    private static final String WALL = """
              wall:
                layers:
                - {material: test plasterboard, thickness: 12.5 mm, role: finish, controls: [air, vapour]}
                - {material: test wool, thickness: 160 mm, role: insulation, controls: [heat]}
                - {material: test board, thickness: 15 mm, role: cladding, controls: [water]}
            """;

    private static final String MATERIALS = """
            materials:
              test plasterboard: {conductivity: 0.25 W/(m·K), vapour-resistance-factor: 8, source: test, controls: {air: test, vapour: test}}
              test wool: {conductivity: 0.04 W/(m·K), vapour-resistance-factor: 1, source: test}
              test board: {conductivity: 0.13 W/(m·K), vapour-resistance-factor: 50, source: test, controls: {water: test}}
            """;

    private static String lightWall(String yaml) {
        int from = yaml.indexOf("  wall:\n");
        int to = yaml.indexOf("  bare wall:\n");
        return yaml.substring(0, from).replace("assemblies:\n", MATERIALS + "assemblies:\n")
                + WALL.indent(0)
                + yaml.substring(to);
    }

    /** 5.62517 kg/m² by the end of March between wool and board, dry again in September. */
    @Test
    void aWallThatHoldsMuchWaterIsFound() {
        Audit audit = audit(withClimate(lightWall(Sample.yaml())), 0.9);
        Condensation year = check(audit, "wall").year().orElseThrow();
        assertEquals(5.62517, year.most(), 5e-5);
        assertEquals(Month.MARCH, year.wettest().month());
        assertEquals("test wool | test board", year.wettestPlane());
        assertEquals(Condensation.Verdict.DRIES_OUT, year.verdict());
        Finding finding = audit.findings().detect(each -> each.rule().equals("condensation-inside"));
        CondensationInsideRule.Found found =
                (CondensationInsideRule.Found) finding.breaches().getFirst().evidence();
        assertEquals("wall", found.assembly());
        assertFalse(found.accumulates());
        Audit without = audit(lightWall(Sample.yaml()), 0.9);
        assertFalse(without.findings().anySatisfy(each -> each.rule().equals("condensation-inside")));
    }

    @Test
    void waterThatDoesNotDryIsFound() {
        // A board so tight that the summer does not get the winter's water out.
        String yaml = withClimate(lightWall(Sample.yaml()))
                .replace("vapour-resistance-factor: 50, source: test", "vapour-resistance-factor: 5000, source: test");
        Audit audit = audit(yaml, 0.9);
        Condensation year = check(audit, "wall").year().orElseThrow();
        assertEquals(Condensation.Verdict.ACCUMULATES, year.verdict());
        Finding finding = audit.findings().detect(each -> each.rule().equals("condensation-inside"));
        assertTrue(((CondensationInsideRule.Found) finding.breaches().getFirst().evidence()).accumulates());
    }

    @Test
    void everyAssemblyHasARow() {
        Audit audit = audit(withClimate(Sample.yaml()), 0.9);
        assertEquals(
                Lists.mutable.of("roof", "slab", "wall"),
                audit.assemblies()
                        .collect(AssemblyRow::assembly)
                        .collect(each -> each.name())
                        .toSortedList());
    }
}
