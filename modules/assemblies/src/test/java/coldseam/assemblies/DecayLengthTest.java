package coldseam.assemblies;

import static org.junit.jupiter.api.Assertions.assertEquals;

import coldseam.envelope.Exposure;
import coldseam.envelope.Layer;
import coldseam.envelope.Role;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How far a disturbance reaches along a wall. */
class DecayLengthTest {

    private static double of(Layer... layers) {
        return DecayLength.of(
                EquivalentLayers.of(Build.assembly(layers), HeatFlow.HORIZONTAL, OuterSurface.of(Exposure.outdoors())));
    }

    /** So thick that its surfaces count for nothing: exp(−π d / t), the first term of the Fourier series (worked out apart). */
    @Test
    void ofOneThickLayerItIsItsThicknessOverPi() {
        double thick = 2.0;
        // The surfaces' 0.17 m²·K/W of 0.01 W/(m·K) is 1.7 mm more of thickness.
        assertEquals((thick + 0.0017) / Math.PI, of(Build.layer(Role.INSULATION, "wool", 1000 * thick, 0.01)), 1e-5);
    }

    /** Linear finite elements of half a millimetre and a general eigenvalue solver (worked out apart). */
    @ParameterizedTest
    @CsvSource({"0.8, 60, 0.20730597", "0.8, 200, 0.22188075", "2.3, 60, 0.30845640", "2.3, 200, 0.32183623"})
    void ofMasonryInsulatedOutsideItIsThatOfAFin(double conductivity, double board, double byElements) {
        double decay = of(
                Build.layer(Role.FINISH, "plaster", 15, 0.57),
                Build.layer(Role.STRUCTURE, "masonry", 240, conductivity),
                Build.layer(Role.INSULATION, "board", board, 0.035),
                Build.layer(Role.CLADDING, "render", 10, 1.0));
        // Elements of h are off by (μ h)²/24 of a smooth mode; half a millimetre against the least layer's 60 mm: under
        // 1e-5.
        assertEquals(byElements, decay, 1e-5 * byElements);
    }
}
