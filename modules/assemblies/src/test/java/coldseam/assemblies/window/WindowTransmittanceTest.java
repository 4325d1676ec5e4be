package coldseam.assemblies.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import coldseam.assemblies.window.WindowTransmittance.Frame;
import coldseam.assemblies.window.WindowTransmittance.Pane;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.Test;

class WindowTransmittanceTest {

    @Test
    void partsWeighByTheirAreas() {
        WindowTransmittance door = new WindowTransmittance(
                Lists.immutable.of(new Pane(1, 1.1, 4, 0.05), new Pane(0.5, 0.7, 3, 0)),
                Lists.immutable.of(new Frame(0.3, 1.4), new Frame(0.2, 2)));
        assertEquals(2, door.area(), 1e-12);
        assertEquals((1.1 + 0.2 + 0.35 + 0.42 + 0.4) / 2, door.transmittance(), 1e-12);
    }

    @Test
    void framesWiderThanTheWindowAreRefused() {
        assertEquals(
                "the visible width of a frame is 0.5 m; allowed is more than 0.0 and less than 0.5 m. Correct the input.",
                assertThrows(
                                IllegalArgumentException.class,
                                () -> WindowTransmittance.rectangular(1, 1.2, 0.5, 1, 1, 0.05))
                        .getMessage());
        assertThrows(
                IllegalArgumentException.class,
                () -> new WindowTransmittance(Lists.immutable.empty(), Lists.immutable.empty()));
    }
}
