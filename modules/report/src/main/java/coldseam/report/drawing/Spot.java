package coldseam.report.drawing;

import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;

/**
 * A place on a page or picture.
 *
 * @param x points to the right
 * @param y points upwards
 */
public record Spot(double x, double y) {

    /** This moved. */
    public Spot plus(double dx, double dy) {
        return new Spot(x + dx, y + dy);
    }

    /** Some share of the way to another. */
    public Spot towards(Spot other, double share) {
        return plus(share * (other.x - x), share * (other.y - y));
    }

    /** Midway between this and another. */
    public Spot middle(Spot other) {
        return new Spot((x + other.x) / 2, (y + other.y) / 2);
    }

    /** The corners of a square about it that stands on one of them. */
    public ImmutableList<Spot> diamond(double half) {
        return Lists.immutable.of(plus(-half, 0), plus(0, -half), plus(half, 0), plus(0, half));
    }

    /** Points between this and the other. */
    public double distance(Spot other) {
        return Math.hypot(x - other.x, y - other.y);
    }
}
