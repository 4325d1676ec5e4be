package coldseam.assemblies.moisture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class SurfaceHumidityTest {

    @Test
    void theFactorNeededBearsExactlyTheHumidityAskedFor() {
        double mould = SurfaceHumidity.temperatureFactorNeeded(20, -5, 0.5, SurfaceHumidity.MOULD_LIMIT);
        assertEquals(0.5, SurfaceHumidity.of(mould, 20, -5).humidityAtMouldLimit(), 1e-12);
        double dew = SurfaceHumidity.temperatureFactorNeeded(20, -5, 0.5, 1);
        assertEquals(0.5, SurfaceHumidity.of(dew, 20, -5).humidityAtDewPoint(), 1e-12);
    }

    @Test
    void outdoorsWarmerThanIndoorsIsRefused() {
        IllegalArgumentException refused =
                assertThrows(IllegalArgumentException.class, () -> SurfaceHumidity.of(0.7, 20, 20));
        assertEquals(
                "the outdoor temperature is 20.0 °C; allowed is less than the indoor temperature, 20.0 °C. Correct the"
                        + " site's temperatures.",
                refused.getMessage());
    }
}
