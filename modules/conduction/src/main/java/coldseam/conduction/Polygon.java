package coldseam.conduction;

import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;

/**
 * A closed outline without holes.
 *
 * @param corners at least three points in either sense of rotation, the first not repeated at the end
 */
public record Polygon(ImmutableList<Point> corners) {

    /** The axis-parallel rectangle between two opposite corners, in metres. */
    public static Polygon rectangle(double x0, double y0, double x1, double y1) {
        return new Polygon(
                Lists.immutable.of(new Point(x0, y0), new Point(x1, y0), new Point(x1, y1), new Point(x0, y1)));
    }
}
