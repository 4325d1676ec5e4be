package coldseam.junctions;

import coldseam.junctions.detail.Detail;

/** Measures details for setups; equal questions are answered once. */
@FunctionalInterface
public interface Measuring {

    /**
     * Measures a junction's detail.
     *
     * @throws DetailDoesNotFit where the setup lies outside the detail's valid range
     */
    JunctionMeasures measure(Detail detail, JunctionSetup setup);
}
