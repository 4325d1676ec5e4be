package coldseam.assemblies;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.envelope.BridgeKind;
import coldseam.envelope.Exposure;
import coldseam.envelope.Layer;
import coldseam.envelope.Point3;
import coldseam.envelope.Role;
import org.junit.jupiter.api.Test;

class SurfacesTest {

    private static HeatFlow pitched(double degrees) {
        double pitch = Math.toRadians(degrees);
        return HeatFlow.through(new Point3(3 * Math.sin(pitch), 0, 3 * Math.cos(pitch)));
    }

    @Test
    void slopesOverSixtyDegreesCountAsWalls() {
        assertEquals(HeatFlow.UPWARDS, pitched(0));
        assertEquals(HeatFlow.UPWARDS, pitched(59));
        assertEquals(HeatFlow.HORIZONTAL, pitched(60));
        assertEquals(HeatFlow.HORIZONTAL, pitched(90));
        assertEquals(HeatFlow.HORIZONTAL, pitched(120));
        assertEquals(HeatFlow.DOWNWARDS, pitched(121));
        assertEquals(HeatFlow.DOWNWARDS, pitched(180));
        assertThrows(IllegalArgumentException.class, () -> HeatFlow.through(new Point3(0, 0, 0)));
    }

    @Test
    void theDirectionIsTheSameWhicheverWayASlopeFaces() {
        // 2² + 3² + 6² = 7².
        assertEquals(HeatFlow.UPWARDS, HeatFlow.through(new Point3(2, 3, 6)));
        assertEquals(HeatFlow.UPWARDS, HeatFlow.through(new Point3(0, -3, 4)));
        assertEquals(HeatFlow.HORIZONTAL, HeatFlow.through(new Point3(2, -6, 3)));
        assertEquals(HeatFlow.HORIZONTAL, HeatFlow.through(new Point3(0, 4, 0)));
        assertEquals(HeatFlow.DOWNWARDS, HeatFlow.through(new Point3(3, 2, -6)));
    }

    @Test
    void surfaceResistancesAreThoseOfTheStandard() {
        // ISO 6946:2017 table 7, from memory.
        assertEquals(0.10, HeatFlow.UPWARDS.interiorSurfaceResistance());
        assertEquals(0.13, HeatFlow.HORIZONTAL.interiorSurfaceResistance());
        assertEquals(0.17, HeatFlow.DOWNWARDS.interiorSurfaceResistance());
        assertEquals(0.04, OuterSurface.OUTDOORS.resistance(HeatFlow.DOWNWARDS));
        assertEquals(0.04, OuterSurface.GROUND.resistance(HeatFlow.DOWNWARDS));
        assertEquals(0.17, OuterSurface.INDOORS.resistance(HeatFlow.DOWNWARDS));
    }

    @Test
    void exposureTellsTheOuterSurface() {
        assertEquals(OuterSurface.OUTDOORS, OuterSurface.of(Exposure.outdoors()));
        assertEquals(OuterSurface.GROUND, OuterSurface.of(Exposure.ground()));
        assertEquals(OuterSurface.INDOORS, OuterSurface.of(new Exposure(Exposure.Kind.UNHEATED, "garage", 0.8)));
    }

    @Test
    void framedAirLayersBridge() {
        Layer battens = Build.framed(Build.air(25, Layer.Ventilation.UNVENTILATED, 0), 0.13, 0.1);
        Transmittance u = Transmittance.of(Build.assembly(battens), HeatFlow.HORIZONTAL, OuterSurface.OUTDOORS);
        double air = AirLayers.resistance(0.025, HeatFlow.HORIZONTAL, 0.9);
        double wood = 0.025 / 0.13;
        assertEquals(0.17 + 1 / (0.9 / air + 0.1 / wood), u.lowerLimit(), 1e-12);
    }

    @Test
    void airSpacesThickerThanTheMethodAllowsWarn() {
        Transmittance u = Transmittance.of(
                Build.assembly(Build.air(450, Layer.Ventilation.UNVENTILATED, 0)),
                HeatFlow.DOWNWARDS,
                OuterSurface.OUTDOORS);
        assertEquals(AirLayers.resistance(0.3, HeatFlow.DOWNWARDS, 0.9) + 0.21, u.total(), 1e-12);
        assertEquals(
                Transmittance.Warning.Kind.THICK_AIR_LAYER,
                u.warnings().getOnly().kind());
        assertEquals(
                "layer 1 from inside is an air layer 450 mm thick and is counted as 300 mm; treat it as an unheated space"
                        + " instead",
                u.warnings().getOnly().text());
    }

    @Test
    void airLayersOutsideTheirRangesAreRefused() {
        assertEquals(
                "the emissivity of an air layer's face is 1.2; allowed is 0.0 to 1.0. Correct the input.",
                assertThrows(IllegalArgumentException.class, () -> AirLayers.resistance(0.02, HeatFlow.UPWARDS, 1.2))
                        .getMessage());
        assertThrows(IllegalArgumentException.class, () -> AirLayers.resistance(0.02, HeatFlow.UPWARDS, 0));
        assertThrows(IllegalArgumentException.class, () -> AirLayers.resistance(Double.NaN, HeatFlow.UPWARDS, 0.9));
    }

    @Test
    void temperaturesFallInProportionToTheResistance() {
        InterfaceTemperatures wall = InterfaceTemperatures.of(
                Transmittance.of(
                        Build.assembly(
                                Build.layer(Role.FINISH, "plaster", 10, 0.5),
                                Build.layer(Role.INSULATION, "board", 100, 0.04)),
                        HeatFlow.HORIZONTAL,
                        OuterSurface.OUTDOORS),
                20,
                -6.9);
        // RT = 0.13 + 0.02 + 2.5 + 0.04 = 2.69 and 26.9 K: 10 K for each m²·K/W.
        assertEquals(
                "[18.7, 18.5, -6.5]",
                wall.interfaces()
                        .collect(each -> Math.round(each.temperature() * 1e9) / 1e9)
                        .toString());
        assertEquals("outdoors", wall.interfaces().getLast().outside());
        assertTrue(wall.interfaces().getFirst().inside().equals("room"));
    }

    @Test
    void aLayerThatVentsALittleDropsAsMuchAsItCounts() {
        // 750 mm²/m: three quarters of what lies outside count. Rse is weighed too, Rsi outside a fully vented layer.
        Transmittance u = Transmittance.of(
                Build.assembly(
                        Build.layer(Role.INSULATION, "board", 100, 0.04),
                        Build.air(40, Layer.Ventilation.SLIGHTLY_VENTILATED, 750),
                        Build.layer(Role.CLADDING, "brick", 100, 0.8)),
                HeatFlow.HORIZONTAL,
                OuterSurface.OUTDOORS);
        double air = 0.75 * AirLayers.resistance(0.04, HeatFlow.HORIZONTAL, 0.9);
        double brick = 0.75 * 0.125;
        double exterior = 0.75 * 0.04 + 0.25 * 0.13;
        double total = 0.13 + 2.5 + air + brick + exterior;
        InterfaceTemperatures wall = InterfaceTemperatures.of(u, 20, 0);
        double[] passed = {0.13, 2.63, 2.63 + air, 2.63 + air + brick};
        for (int i = 0; i < passed.length; i++) {
            assertEquals(20 - 20 * passed[i] / total, wall.interfaces().get(i).temperature(), 1e-12);
        }
        assertEquals("outdoors", wall.interfaces().getLast().outside());
    }

    @Test
    void temperaturesEndAtAVentilatedCavity() {
        InterfaceTemperatures wall = InterfaceTemperatures.of(
                Transmittance.of(
                        Build.assembly(
                                Build.layer(Role.INSULATION, "board", 100, 0.04),
                                Build.air(40, Layer.Ventilation.WELL_VENTILATED, 0),
                                Build.layer(Role.CLADDING, "brick", 100, 0.8)),
                        HeatFlow.HORIZONTAL,
                        OuterSurface.OUTDOORS),
                20,
                0);
        assertEquals(
                "[room > board, board > ventilated air layer]",
                wall.interfaces()
                        .collect(each -> each.inside() + " > " + each.outside())
                        .toString());
        assertEquals(20 - 20 * 2.63 / 2.76, wall.interfaces().getLast().temperature(), 1e-12);
    }

    @Test
    void anAirLayerOfThirtyCentimetresIsNoSpace() {
        Transmittance u = Transmittance.of(
                Build.assembly(Build.air(300, Layer.Ventilation.UNVENTILATED, 0)),
                HeatFlow.UPWARDS,
                OuterSurface.OUTDOORS);
        assertEquals("[]", u.warnings().toString());
    }

    @Test
    void aFacingIsADirection() {
        assertEquals(HeatFlow.UPWARDS, HeatFlow.through(BridgeKind.Facing.UP));
        assertEquals(HeatFlow.HORIZONTAL, HeatFlow.through(BridgeKind.Facing.SIDE));
        assertEquals(HeatFlow.DOWNWARDS, HeatFlow.through(BridgeKind.Facing.DOWN));
    }
}
