package coldseam.assemblies;

import static coldseam.assemblies.Build.air;
import static coldseam.assemblies.Build.assembly;
import static coldseam.assemblies.Build.controlling;
import static coldseam.assemblies.Build.framed;
import static coldseam.assemblies.Build.layer;
import static coldseam.assemblies.Build.material;
import static coldseam.assemblies.Build.tapered;
import static coldseam.assemblies.Build.with;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.envelope.Assembly;
import coldseam.envelope.Control;
import coldseam.envelope.Layer;
import coldseam.envelope.Role;
import org.junit.jupiter.api.Test;

class CorrectionsTest {

    private static final double EXACT = 1e-12;

    private static Transmittance roof(Assembly assembly) {
        return Transmittance.of(assembly, HeatFlow.UPWARDS, OuterSurface.OUTDOORS);
    }

    private static Assembly.Fasteners screws(double conductivity, double recess) {
        return new Assembly.Fasteners(material("screw", conductivity), 0.006, 4, recess);
    }

    @Test
    void gapsCountTheContinuousInsulationAgainstTheUnbridgedTotal() {
        Assembly wall = assembly(
                framed(layer(Role.STRUCTURE, "wool", 100, 0.04), 0.13, 0.2), layer(Role.INSULATION, "board", 80, 0.04));
        double unbridged = 0.10 + 2.5 + 2.0 + 0.04;
        assertEquals(0, roof(wall).corrections().gaps(), EXACT);
        assertEquals(
                0.01 * Math.pow(2.0 / unbridged, 2),
                roof(with(wall, Assembly.AirGaps.BRIDGING)).corrections().gaps(),
                EXACT);
        assertEquals(
                0.04 * Math.pow(2.0 / unbridged, 2),
                roof(with(wall, Assembly.AirGaps.CIRCULATING)).corrections().gaps(),
                EXACT);
    }

    @Test
    void whereNoLayerIsInsulationByRoleWhateverInsulatesCounts() {
        Assembly wall = assembly(
                layer(Role.STRUCTURE, "straw", 100, 0.055),
                layer(Role.CLADDING, "render board", 60, 0.065),
                layer(Role.MEMBRANE, "fleece", 5, 0.05),
                layer(Role.CLADDING, "plaster", 20, 0.5));
        double r1 = 0.1 / 0.055 + 0.06 / 0.065;
        double total = 0.14 + r1 + 0.04;
        assertEquals(
                0.01 * Math.pow(r1 / total, 2),
                roof(with(wall, Assembly.AirGaps.BRIDGING)).corrections().gaps(),
                EXACT);
    }

    @Test
    void sunkFastenersPierceOnlyTheInnerPart() {
        // Two boards, 50 mm of 0.025 inside and 100 mm of 0.04; heads sunk 40 mm from outside.
        Assembly roof = with(
                assembly(layer(Role.INSULATION, "inner", 50, 0.025), layer(Role.INSULATION, "outer", 100, 0.04)),
                screws(50, 0.04));
        double area = Math.PI * 0.006 * 0.006 / 4;
        double d0 = 0.15;
        double d1 = 0.11;
        double r1 = 0.05 / 0.025 + 0.06 / 0.04;
        double total = 0.14 + 2 + 2.5;
        double expected = 0.8 * d1 / d0 * 50 * area * 4 / d1 * Math.pow(r1 / total, 2);
        assertEquals(expected, roof(roof).corrections().fasteners(), EXACT);
    }

    @Test
    void fastenersThatHardlyConductAreLeftOut() {
        Assembly roof = assembly(layer(Role.INSULATION, "board", 100, 0.04));
        assertEquals(0, roof(with(roof, screws(0.3, 0))).corrections().fasteners(), EXACT);
        assertTrue(roof(with(roof, screws(1, 0))).corrections().fasteners() > 0);
        assertEquals(0, roof(with(roof, screws(50, 0.1))).corrections().fasteners(), EXACT);
    }

    @Test
    void correctionsApplyFromThreePercentOfTheTransmittance() {
        // ΔUg = 0.01·(R1/RT)² is 3 % of 1/RT where R1² = 3·(R1 + 0.14): R1 = 3.1340, 125.36 mm of 0.04 W/(m·K).
        Transmittance thin =
                roof(with(assembly(layer(Role.INSULATION, "board", 125.3, 0.04)), Assembly.AirGaps.BRIDGING));
        assertTrue(thin.corrections().sum() > 0.0299 * thin.uncorrected());
        assertFalse(thin.corrections().applied());
        assertEquals(thin.uncorrected(), thin.corrected(), EXACT);
        Transmittance thick =
                roof(with(assembly(layer(Role.INSULATION, "board", 125.4, 0.04)), Assembly.AirGaps.BRIDGING));
        assertTrue(thick.corrections().applied());
        assertEquals(thick.uncorrected() + thick.corrections().gaps(), thick.corrected(), EXACT);
    }

    @Test
    void rainCoolsOnlyTheInsulationOverTheMembrane() {
        Assembly roof = with(
                assembly(
                        layer(Role.INSULATION, "under", 60, 0.03),
                        controlling(layer(Role.MEMBRANE, "felt", 5, 0.2), Control.WATER),
                        layer(Role.INSULATION, "over", 100, 0.04)),
                new Assembly.Rain(2, 0.04));
        double total = 0.14 + 2 + 2.5;
        assertEquals(0.08 * Math.pow(2.5 / total, 2), roof(roof).corrections().rain(), EXACT);
    }

    @Test
    void nothingBeyondAVentilatedCavityIsPierced() {
        Assembly wall = with(
                assembly(
                        layer(Role.STRUCTURE, "block", 200, 0.5),
                        air(40, Layer.Ventilation.WELL_VENTILATED, 0),
                        layer(Role.INSULATION, "lost board", 40, 0.04)),
                Assembly.AirGaps.CIRCULATING);
        Transmittance u = roof(wall);
        assertEquals(0, u.corrections().gaps(), EXACT);
        assertEquals(
                "[NOTHING_INSULATES]",
                u.warnings().collect(Transmittance.Warning::kind).toString());
    }

    @Test
    void aTaperAddsItsFieldToTheThinnestLayer() {
        Layer board = layer(Role.INSULATION, "board", 40, 0.04);
        Transmittance u = roof(assembly(tapered(board, Layer.Taper.Shape.RECTANGLE, 200)));
        double r0 = 0.14 + 1;
        double r2 = 4;
        assertEquals(Math.log(1 + r2 / r0) / r2, u.uncorrected(), EXACT);
        assertEquals(r0, u.taper().orElseThrow().rest(), EXACT);
        assertEquals(r2, u.taper().orElseThrow().greatest(), EXACT);
        // Gaps take the mean thickness, 120 mm.
        Transmittance gaps =
                roof(with(assembly(tapered(board, Layer.Taper.Shape.RECTANGLE, 200)), Assembly.AirGaps.BRIDGING));
        assertEquals(0.01 * Math.pow(3 / (0.14 + 3), 2), gaps.corrections().gaps(), EXACT);
        // A section draws the thinnest.
        EquivalentLayers stack = EquivalentLayers.of(
                assembly(tapered(board, Layer.Taper.Shape.RECTANGLE, 200)), HeatFlow.UPWARDS, OuterSurface.OUTDOORS);
        assertEquals(1 / r0, stack.transmittance(), EXACT);
    }

    @Test
    void aTaperNeedNotBeTheInnermostLayer() {
        Transmittance u = roof(assembly(
                layer(Role.STRUCTURE, "deck", 20, 0.1),
                tapered(layer(Role.INSULATION, "board", 40, 0.04), Layer.Taper.Shape.TRIANGLE_THINNEST_AT_APEX, 200)));
        double r0 = 0.14 + 0.2 + 1;
        double x = 4 / r0;
        assertEquals(2.0 / 4 * (1 - Math.log(1 + x) / x), u.uncorrected(), EXACT);
    }

    @Test
    void whatLiesBehindStillAirIsPierced() {
        Transmittance u = roof(with(
                assembly(air(20, Layer.Ventilation.UNVENTILATED, 0), layer(Role.INSULATION, "board", 100, 0.04)),
                Assembly.AirGaps.CIRCULATING));
        double air = AirLayers.resistance(0.02, HeatFlow.UPWARDS, 0.9);
        assertEquals(
                0.04 * Math.pow(2.5 / (0.14 + air + 2.5), 2), u.corrections().gaps(), EXACT);
    }

    @Test
    void rainCoolsAnInnermostLayerThatIsTheMembraneNot() {
        Transmittance u = roof(with(
                assembly(
                        controlling(layer(Role.INSULATION, "foam", 60, 0.03), Control.WATER),
                        layer(Role.INSULATION, "over", 100, 0.04)),
                new Assembly.Rain(2, 0.04)));
        assertEquals(0.08 * Math.pow(2.5 / (0.14 + 2 + 2.5), 2), u.corrections().rain(), EXACT);
    }

    @Test
    void faultsOfTapersFastenersAndAirAreNamed() {
        Layer board = layer(Role.INSULATION, "board", 40, 0.04);
        Assembly bad = with(
                with(
                        assembly(
                                tapered(board, Layer.Taper.Shape.RECTANGLE, 30),
                                tapered(board, Layer.Taper.Shape.TRIANGLE_THICKEST_AT_APEX, 80),
                                air(20, Layer.Ventilation.SLIGHTLY_VENTILATED, -1, 0)),
                        screws(50, 0.2)),
                new Assembly.Rain(-1, 0.04));
        assertEquals("""
                layer 1 from inside (board): greatest thickness is 0.03 m; allowed is more than its least thickness, 0.04 m
                layer 3 from inside (air): emissivity is 0.0; allowed is more than 0, up to 1
                layer 3 from inside (air): openings is -1.0 mm²; allowed is 0 or more
                its tapered layers differ in shape (RECTANGLE, TRIANGLE_THICKEST_AT_APEX); one shape is allowed. Split the field into assemblies of one shape each
                fasteners: recess is 0.2 m; allowed is up to the insulation's thickness, 0.08 m
                rain cooling: precipitation is -1.0 mm/day; allowed is 0 or more""", AssemblyFaults.of(bad).makeString("\n"));
    }

    @Test
    void screwsThroughNothingThatInsulatesCountForNothing() {
        Transmittance u = roof(with(assembly(layer(Role.STRUCTURE, "block", 200, 0.5)), screws(50, 0)));
        assertEquals(0, u.corrections().fasteners(), 0);
        assertEquals(1 / (0.14 + 0.4), u.corrected(), EXACT);
    }

    /** The mean of 1/(R0 + R) over the field by Simpson's rule, which is exact here: x⁴ is below 1e-20. */
    @Test
    void aTaperOfNextToNothingIsTheMeanOverItsField() {
        double rest = 0.7;
        for (double x : new double[] {9.9e-6, 1e-7, 0}) {
            double end = 1 / (rest * (1 + x));
            double middle = 1 / (rest * (1 + x / 2));
            double start = 1 / rest;
            assertEquals(
                    (start + 4 * middle + end) / 6,
                    TaperedLayers.transmittance(Layer.Taper.Shape.RECTANGLE, rest, x * rest),
                    1e-14);
            // The share of the field at a height falls or grows in a straight line.
            assertEquals(
                    (2 * start + 4 * middle) / 6,
                    TaperedLayers.transmittance(Layer.Taper.Shape.TRIANGLE_THICKEST_AT_APEX, rest, x * rest),
                    1e-14);
            assertEquals(
                    (4 * middle + 2 * end) / 6,
                    TaperedLayers.transmittance(Layer.Taper.Shape.TRIANGLE_THINNEST_AT_APEX, rest, x * rest),
                    1e-14);
        }
    }
}
