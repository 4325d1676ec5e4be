package coldseam.assemblies;

import static coldseam.assemblies.Build.air;
import static coldseam.assemblies.Build.assembly;
import static coldseam.assemblies.Build.framed;
import static coldseam.assemblies.Build.layer;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.envelope.Assembly;
import coldseam.envelope.Layer;
import coldseam.envelope.Role;
import org.junit.jupiter.api.Test;

class TransmittanceTest {

    private static final double EXACT = 1e-12;

    private static Transmittance wall(Layer... layers) {
        return Transmittance.of(assembly(layers), HeatFlow.HORIZONTAL, OuterSurface.OUTDOORS);
    }

    @Test
    void plainLayersAddUp() {
        Transmittance u = wall(layer(Role.FINISH, "plaster", 10, 0.5), layer(Role.INSULATION, "board", 100, 0.04));
        assertEquals(0.13 + 0.02 + 2.5 + 0.04, u.total(), EXACT);
        assertEquals(2.52, u.surfaceToSurface(), EXACT);
        assertEquals(0, u.relativeError(), EXACT);
    }

    @Test
    void twoBridgedLayersMultiplyTheirShares() {
        // Four paths by hand: 0.13 + (1 or 0.2) + (2 or 0.5) + 0.04 with shares 0.9/0.1 and 0.8/0.2.
        Transmittance u = wall(
                framed(layer(Role.STRUCTURE, "wool", 40, 0.04), 0.2, 0.1),
                framed(layer(Role.STRUCTURE, "wool", 80, 0.04), 0.16, 0.2));
        double paths = 0.72 / 3.17 + 0.18 / 1.67 + 0.08 / 2.37 + 0.02 / 0.87;
        assertEquals(1 / paths, u.upperLimit(), EXACT);
        double levelled = 0.17 + 1 / (0.9 / 1 + 0.1 / 0.2) + 1 / (0.8 / 2 + 0.2 / 0.5);
        assertEquals(levelled, u.lowerLimit(), EXACT);
        assertEquals((1 / paths + levelled) / 2, u.total(), EXACT);
        assertEquals(0.2, u.layers().get(0).framing().orElseThrow(), EXACT);
        assertEquals(0.5, u.layers().get(1).framing().orElseThrow(), EXACT);
    }

    @Test
    void nothingOutsideAWellVentilatedCavityCounts() {
        Transmittance u = wall(
                layer(Role.INSULATION, "board", 100, 0.04),
                air(40, Layer.Ventilation.WELL_VENTILATED, 0),
                layer(Role.CLADDING, "brick", 100, 0.8));
        assertEquals(0.13 + 2.5 + 0.13, u.total(), EXACT);
        assertEquals(0.13, u.exteriorSurfaceResistance(), EXACT);
        assertEquals(0, u.layers().get(2).counted(), EXACT);
    }

    @Test
    void slightVentilationWeighsByItsOpenings() {
        Layer board = layer(Role.INSULATION, "board", 100, 0.04);
        Layer brick = layer(Role.CLADDING, "brick", 100, 0.8);
        double still =
                wall(board, air(40, Layer.Ventilation.UNVENTILATED, 0), brick).total();
        double vented = wall(board, air(40, Layer.Ventilation.WELL_VENTILATED, 0), brick)
                .total();
        Transmittance u = wall(board, air(40, Layer.Ventilation.SLIGHTLY_VENTILATED, 750), brick);
        assertEquals(0.75 * still + 0.25 * vented, u.total(), EXACT);
        assertEquals(
                still,
                wall(board, air(40, Layer.Ventilation.SLIGHTLY_VENTILATED, 500), brick)
                        .total(),
                EXACT);
        assertEquals(
                vented,
                wall(board, air(40, Layer.Ventilation.SLIGHTLY_VENTILATED, 1500), brick)
                        .total(),
                EXACT);
    }

    @Test
    void membranesAreNeglected() {
        assertEquals(
                0.17 + 2.5,
                wall(layer(Role.INSULATION, "board", 100, 0.04), layer(Role.MEMBRANE, "felt", 2, 0.2))
                        .total(),
                EXACT);
    }

    @Test
    void metalFramingAndFarLimitsWarn() {
        Transmittance u = wall(framed(layer(Role.STRUCTURE, "wool", 150, 0.035), 50, 0.002));
        assertTrue(u.upperLimit() / u.lowerLimit() > Transmittance.MOST_RATIO);
        assertEquals(
                "[LIMITS_FAR_APART, METAL_BRIDGE]",
                u.warnings().collect(Transmittance.Warning::kind).toString());
        assertEquals(
                "layer 1 from inside: framing bridges wool; the combined method does not hold for metal. Compute the layer"
                        + " as a section instead",
                u.warnings().getLast().text());
    }

    @Test
    void everyFaultIsNamedAtOnce() {
        Assembly bad = assembly(
                layer(Role.FINISH, "plaster", 0, 0.5), framed(layer(Role.STRUCTURE, "wool", 100, 0.04), 0.13, 1.2));
        AssemblyException refused = assertThrows(
                AssemblyException.class, () -> Transmittance.of(bad, HeatFlow.HORIZONTAL, OuterSurface.OUTDOORS));
        assertEquals(
                "[layer 1 from inside (plaster): thickness is 0.0 m; allowed is more than 0,"
                        + " layer 2 from inside (wool): framing share is 1.2; allowed is more than 0 and less than 1]",
                refused.faults().toString());
    }

    @Test
    void theEquivalentStackHasTheCombinedTransmittance() {
        Assembly wall = assembly(
                framed(layer(Role.STRUCTURE, "wool", 140, 0.038), 0.13, 0.15),
                framed(layer(Role.STRUCTURE, "wool", 45, 0.038), 0.13, 0.1),
                layer(Role.MEMBRANE, "felt", 1, 0.2),
                air(40, Layer.Ventilation.SLIGHTLY_VENTILATED, 900),
                layer(Role.CLADDING, "brick", 100, 0.8));
        EquivalentLayers stack = EquivalentLayers.of(wall, HeatFlow.HORIZONTAL, OuterSurface.OUTDOORS);
        double sum = stack.carrying().sumOfDouble(EquivalentLayer::resistance)
                + stack.interiorSurfaceResistance()
                + stack.exteriorSurfaceResistance();
        double expected = Transmittance.of(wall, HeatFlow.HORIZONTAL, OuterSurface.OUTDOORS)
                .uncorrected();
        assertEquals(expected, 1 / sum, EXACT);
        assertEquals(expected, stack.transmittance(), EXACT);
        assertEquals(4, stack.carrying().size());
    }

    @Test
    void oneBridgedLayerTakesWhatIsLeftOfTheTotal() {
        Assembly wall = assembly(
                layer(Role.FINISH, "board", 12.5, 0.25), framed(layer(Role.STRUCTURE, "wool", 140, 0.038), 0.13, 0.15));
        EquivalentLayers stack = EquivalentLayers.of(wall, HeatFlow.HORIZONTAL, OuterSurface.OUTDOORS);
        double total = Transmittance.of(wall, HeatFlow.HORIZONTAL, OuterSurface.OUTDOORS)
                .total();
        assertEquals(0.14 / (total - 0.05 - 0.17), stack.layers().get(1).conductivity(), EXACT);
    }

    @Test
    void framingCountsAsMetalFromTenWattsPerMetreAndKelvin() {
        Layer wool = layer(Role.STRUCTURE, "wool", 150, 0.035);
        assertEquals(
                "[METAL_BRIDGE]",
                wall(framed(wool, 10, 1e-6))
                        .warnings()
                        .collect(Transmittance.Warning::kind)
                        .toString());
        assertEquals("[]", wall(framed(wool, 9.99, 1e-6)).warnings().toString());
    }

    @Test
    void aStackOfWhatVentsAloneReachesNowhere() {
        EquivalentLayers none = EquivalentLayers.of(
                assembly(air(40, Layer.Ventilation.WELL_VENTILATED, 0), layer(Role.CLADDING, "brick", 100, 0.8)),
                HeatFlow.HORIZONTAL,
                OuterSurface.OUTDOORS);
        assertEquals(
                "[VENTILATED, VENTILATED]",
                none.layers().collect(EquivalentLayer::part).toString());
        assertEquals(0, DecayLength.of(none), 0);
    }
}
