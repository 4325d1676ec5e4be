package coldseam.junctions.path;

import coldseam.conduction.Point;
import coldseam.junctions.section.Shapes;
import java.util.Arrays;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.distance.DistanceOp;

/** A taut line through an area: the shortest way, by the corners that see one another. */
final class ClearWay {

    /** m, by which the area is widened so that a line along its edge is in it. */
    private static final double ALLOWANCE = 1e-6;

    private ClearWay() {}

    /** What is left of an area at a distance from its edges, with coarse round corners: enough for drawing. */
    static Geometry inset(Geometry area, double distance) {
        return new BufferOp(area, new BufferParameters(2, BufferParameters.CAP_ROUND, BufferParameters.JOIN_ROUND, 10))
                .getResultGeometry(-distance);
    }

    /** The shortest way through a room from one end to the other; only its beginning where none leads there. */
    static ImmutableList<Point> through(Geometry room, Geometry from, Geometry to) {
        MutableList<Coordinate> stops = Lists.mutable.of(nearest(room, from), nearest(room, to));
        stops.withAll(Lists.mutable.with(room.getCoordinates()).distinct());
        PreparedGeometry in = PreparedGeometryFactory.prepare(room.buffer(ALLOWANCE));
        int count = stops.size();
        double[] length = new double[count];
        int[] before = new int[count];
        boolean[] done = new boolean[count];
        Arrays.fill(length, Double.POSITIVE_INFINITY);
        Arrays.fill(before, -1);
        length[0] = 0;
        for (int here = 0; here >= 0 && here != 1; here = shortest(length, done)) {
            done[here] = true;
            for (int next = 1; next < count; next++) {
                double total = length[here] + stops.get(here).distance(stops.get(next));
                if (!done[next] && total < length[next] && sees(in, stops.get(here), stops.get(next))) {
                    length[next] = total;
                    before[next] = here;
                }
            }
        }
        MutableList<Point> way = Lists.mutable.empty();
        for (int at = before[1] < 0 ? 0 : 1; at >= 0; at = before[at]) {
            way.add(Shapes.point(stops.get(at)));
        }
        return way.reverseThis().toImmutable();
    }

    private static int shortest(double[] length, boolean[] done) {
        int best = -1;
        for (int i = 0; i < length.length; i++) {
            if (!done[i] && length[i] < Double.POSITIVE_INFINITY && (best < 0 || length[i] < length[best])) {
                best = i;
            }
        }
        return best;
    }

    private static boolean sees(PreparedGeometry in, Coordinate a, Coordinate b) {
        return in.covers(Shapes.FACTORY.createLineString(new Coordinate[] {a, b}));
    }

    private static Coordinate nearest(Geometry room, Geometry end) {
        Geometry touch = room.intersection(end);
        if (touch.isEmpty()) {
            return DistanceOp.nearestPoints(room, end)[0];
        }
        return Shapes.parts(touch).maxBy(Geometry::getLength).getCentroid().getCoordinate();
    }
}
