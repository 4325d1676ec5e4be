package coldseam.junctions;

import coldseam.conduction.Point;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * The line inside the insulation from one surface to the other.
 *
 * @param unbroken whether it reaches the other end without leaving the insulation
 * @param path the line, from the first surface's cut to the second's; as far as it comes where broken
 * @param neck m: the largest w such that the insulation eroded by w/2 still joins the ends; zero where broken
 * @param neckAt the two points between which the neck is measured; empty where broken
 * @param share neck over the thinner of the two surfaces' insulation thicknesses; zero where broken
 */
public record PenLine(
        boolean unbroken, ImmutableList<Point> path, double neck, ImmutableList<Point> neckAt, double share) {

    /** m, the neck rounded down to a whole millimetre: what is left at least. */
    public double leastNeck() {
        // The allowance keeps 160 mm, computed as 159.9999 mm, at 160 mm.
        return Math.floor(neck * 1000 + 1e-3) / 1000;
    }
}
