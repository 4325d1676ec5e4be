package coldseam.junctions.section;

import coldseam.conduction.Boundary;
import coldseam.conduction.Point;
import java.util.OptionalDouble;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/**
 * The faces towards rooms as the lowest surface temperature asks for them.
 *
 * <p>Walls, reveals and floors are behind furniture and curtains and get 0.25 m²·K/W; a frame or door stays free, keeps 0.13, and
 * faces an environment of its own, so that the coldest place is sought on the wall and at its joint with the frame: the frame's
 * own temperature is its U and says nothing of the junction.
 *
 * @param opening what is seen of the frame or door; empty without
 */
public record WarmFaces(Geometry opening) {

    /** m²·K/W, on opaque surfaces (ISO 13788:2012 clause 4.4.1, from memory). */
    public static final double WALL_RSI = 0.25;

    /** m²·K/W, on frames and glass (the same clause, from memory). */
    static final double OPENING_RSI = 0.13;

    /** m; nearer than this, a face lies on the opening. */
    private static final double ON = 1e-6;

    /** The boundaries of the heat flow, those indoors with these resistances. */
    ImmutableList<Boundary> of(ImmutableList<Boundary> heatFlow) {
        return heatFlow.flatCollect(
                each -> each.environment().equals(Surroundings.INDOOR) ? parts(each.path()) : Lists.immutable.of(each));
    }

    /** A path in pieces, each wholly on the opening or wholly beside it. */
    private ImmutableList<Boundary> parts(ImmutableList<Point> path) {
        ImmutableList<Point> corners = divided(path);
        MutableList<Boundary> parts = Lists.mutable.empty();
        int from = 0;
        while (from < corners.size() - 1) {
            boolean on = onOpening(corners.get(from), corners.get(from + 1));
            int to = from + 1;
            while (to < corners.size() - 1 && onOpening(corners.get(to), corners.get(to + 1)) == on) {
                to++;
            }
            ImmutableList<Point> part =
                    Lists.immutable.withAll(corners.castToList().subList(from, to + 1));
            parts.add(
                    on
                            ? new Boundary(Surroundings.INDOOR_AT_OPENING, part, OptionalDouble.of(OPENING_RSI))
                            : new Boundary(Surroundings.INDOOR, part, OptionalDouble.of(WALL_RSI)));
            from = to;
        }
        return parts.toImmutable();
    }

    /** The path with the opening's corners among its own where it passes them. */
    private ImmutableList<Point> divided(ImmutableList<Point> path) {
        MutableList<Point> all = Lists.mutable.of(path.getFirst());
        for (int i = 0; i + 1 < path.size(); i++) {
            Point from = path.get(i);
            Point to = path.get(i + 1);
            double length = from.distance(to);
            Lists.immutable
                    .with(opening.getCoordinates())
                    .collect(Shapes::point)
                    .select(each -> from.distance(each) > ON
                            && each.distance(to) > ON
                            && from.distance(each) + each.distance(to) - length < ON * ON / length)
                    .distinct()
                    .toSortedListBy(each -> from.distance(each))
                    .forEach(all::add);
            all.add(to);
        }
        return all.toImmutable();
    }

    private boolean onOpening(Point from, Point to) {
        if (opening.isEmpty()) {
            return false;
        }
        Coordinate middle = new Coordinate((from.x() + to.x()) / 2, (from.y() + to.y()) / 2);
        return opening.distance(Shapes.FACTORY.createPoint(middle)) < ON;
    }
}
