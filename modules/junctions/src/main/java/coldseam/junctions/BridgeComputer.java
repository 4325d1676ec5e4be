package coldseam.junctions;

import coldseam.junctions.detail.Detail;

/** Computes details for setups; equal questions are answered once. */
public interface BridgeComputer {

    /**
     * Computes a junction's detail.
     *
     * @throws DetailDoesNotFit where the setup lies outside the detail's valid range
     */
    JunctionResult compute(Detail detail, JunctionSetup setup);

    /**
     * Computes a point's detail.
     *
     * @throws DetailDoesNotFit where the setup lies outside the detail's valid range
     */
    PointResult compute(Detail detail, PointSetup setup);

    /**
     * The same for details that another is only compared with: at a wider interval, which is on each result. It never answers
     * from what this one has computed, so that an answer does not depend on what was asked before.
     */
    default BridgeComputer comparing() {
        return this;
    }

    /** Computes a detail of either. */
    default BridgeResult compute(Detail detail, BridgeSetup setup) {
        return setup instanceof PointSetup point ? compute(detail, point) : compute(detail, (JunctionSetup) setup);
    }
}
