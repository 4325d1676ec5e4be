package coldseam.junctions.pair;

import coldseam.junctions.JunctionSetup;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.kind.Chart;

/**
 * Two seams that run beside each other on one surface, and all of a house that they depend on; two pairs with equal setups have
 * equal results.
 *
 * @param one a seam
 * @param other beside it
 * @param distance m between their lines, on the surface's outer face
 */
public record PairSetup(End one, End other, double distance) {

    /**
     * One of the two.
     *
     * @param detail that closes it
     * @param setup what the detail is laid on
     * @param cut at which its section ends the surface towards the other
     */
    public record End(Detail detail, JunctionSetup setup, Chart.Cut cut) {}
}
