package coldseam.assemblies.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import coldseam.assemblies.window.WindowTransmittance.Frame;
import coldseam.assemblies.window.WindowTransmittance.Pane;
import coldseam.envelope.Opening;
import java.util.Optional;
import java.util.OptionalDouble;
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

    /** Two lights of 0.50 by 1.00 m with 0.1 m of frame around and between: worked out apart. */
    @Test
    void lightsStandSideBySide() {
        Opening.Glazed glazed = new Opening.Glazed(0.6, 1.2, 0.1, 0.05, Optional.empty(), 2);
        Opening window = new Opening(
                "w",
                Opening.Kind.WINDOW,
                "s",
                1.3,
                1.2,
                OptionalDouble.empty(),
                0,
                glazed,
                0.09,
                OptionalDouble.empty());
        WindowTransmittance parts = WindowTransmittance.of(window).orElseThrow();
        assertEquals(1.0, parts.panes().getOnly().area(), 1e-12);
        assertEquals(6.0, parts.panes().getOnly().perimeter(), 1e-12);
        assertEquals(0.56, parts.frames().getOnly().area(), 1e-12);
        assertEquals((0.6 + 0.56 * 1.2 + 6 * 0.05) / 1.56, WindowTransmittance.transmittance(window), 1e-12);
    }

    @Test
    void framesThatMeetAcrossALowWindowAreRefused() {
        Opening.Glazed glazed = new Opening.Glazed(1, 1, 0.1, 0.05, Optional.empty(), 1);
        assertEquals(
                "the visible width of a frame is 0.1 m; allowed is more than 0.0 and less than 0.1 m. Correct the input.",
                assertThrows(IllegalArgumentException.class, () -> WindowTransmittance.rectangular(2, 0.2, glazed))
                        .getMessage());
    }

    @Test
    void framesWiderThanTheWindowAreRefused() {
        assertEquals(
                "the visible width of a frame is 0.5 m; allowed is more than 0.0 and less than 0.5 m. Correct the input.",
                assertThrows(
                                IllegalArgumentException.class,
                                () -> WindowTransmittance.rectangular(
                                        1, 1.2, new Opening.Glazed(1, 1, 0.5, 0.05, Optional.empty(), 1)))
                        .getMessage());
        assertThrows(
                IllegalArgumentException.class,
                () -> new WindowTransmittance(Lists.immutable.empty(), Lists.immutable.empty()));
    }
}
