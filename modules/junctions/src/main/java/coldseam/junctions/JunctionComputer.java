package coldseam.junctions;

import coldseam.junctions.detail.Detail;

/** Computes details for setups; equal questions are answered once. */
public interface JunctionComputer {

    /**
     * Computes one detail.
     *
     * @throws DetailDoesNotFit where the setup lies outside the detail's valid range
     */
    JunctionResult compute(Detail detail, JunctionSetup setup);
}
