package coldseam.junctions.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import org.locationtech.jts.algorithm.Distance;
import org.locationtech.jts.algorithm.LineIntersector;
import org.locationtech.jts.algorithm.RobustLineIntersector;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateList;
import org.locationtech.jts.noding.NodedSegmentString;
import org.locationtech.jts.noding.Noder;
import org.locationtech.jts.noding.SegmentString;

/**
 * Cuts lines at one another, so that two pieces are the same piece or share no more than an end: places nearer to one another than
 * the reach are one, that of the line that is given first, and a line runs through each corner of another that is as near to it.
 *
 * <p>Finds the nodes that JTS's {@code SnappingNoder} finds, a section's few hundred sides without its trees: sides are
 * compared by their boxes alone, and distances are computed where boxes meet.
 *
 * <p>Cost: n² comparisons of boxes for n sides, few of them of sides whose line lies elsewhere.
 */
public final class SnapNoder implements Noder {

    private final double reach;
    private final LineIntersector crossing = new RobustLineIntersector();
    private final Places places = new Places();
    private List<NodedSegmentString> lines = List.of();

    /** @param reach m, above 0; places nearer than this are one */
    public SnapNoder(double reach) {
        this.reach = reach;
    }

    @Override
    @SuppressWarnings("rawtypes")
    public void computeNodes(Collection strings) {
        lines = new ArrayList<>();
        for (Object each : strings) {
            SegmentString string = (SegmentString) each;
            CoordinateList way = new CoordinateList();
            for (Coordinate at : string.getCoordinates()) {
                way.add(places.taken(at), false);
            }
            lines.add(new NodedSegmentString(way.toCoordinateArray(), string.getData()));
        }
        List<Boxes> boxes = new ArrayList<>();
        lines.forEach(line -> boxes.add(new Boxes(line.getCoordinates(), 2 * reach)));
        for (int a = 0; a < lines.size(); a++) {
            for (int i = 0; i < boxes.get(a).sides; i++) {
                for (int b = a; b < lines.size(); b++) {
                    if (boxes.get(a).meets(i, boxes.get(b), boxes.get(b).sides)) {
                        for (int j = a == b ? i + 1 : 0; j < boxes.get(b).sides; j++) {
                            if (boxes.get(a).meets(i, boxes.get(b), j)) {
                                nodes(lines.get(a), i, lines.get(b), j);
                            }
                        }
                    }
                }
            }
        }
    }

    @Override
    @SuppressWarnings("rawtypes")
    public Collection getNodedSubstrings() {
        return NodedSegmentString.getNodedSubstrings(lines);
    }

    private void nodes(NodedSegmentString one, int i, NodedSegmentString other, int j) {
        Coordinate a = one.getCoordinate(i);
        Coordinate b = one.getCoordinate(i + 1);
        Coordinate c = other.getCoordinate(j);
        Coordinate d = other.getCoordinate(j + 1);
        boolean follows = one == other && (j == i + 1 || one.isClosed() && i == 0 && j == one.size() - 2);
        if (!follows) {
            crossing.computeIntersection(a, b, c, d);
            if (crossing.getIntersectionNum() == 1) {
                Coordinate at = crossing.getIntersection(0);
                // Mostly two sides meet in an end of one, which is a place already.
                Coordinate node =
                        at.equals2D(a) || at.equals2D(b) || at.equals2D(c) || at.equals2D(d) ? at : places.taken(at);
                one.addIntersection(node, i);
                other.addIntersection(node, j);
            }
        }
        near(one, i, a, other, j, c, d);
        near(one, i, b, other, j, c, d);
        near(other, j, c, one, i, a, b);
        near(other, j, d, one, i, a, b);
    }

    /** Leads a side through a corner that is near to it and to none of its ends. */
    private void near(
            NodedSegmentString of,
            int at,
            Coordinate corner,
            NodedSegmentString line,
            int side,
            Coordinate from,
            Coordinate to) {
        if (corner.equals2D(from)
                || corner.equals2D(to)
                || Math.min(from.x, to.x) - corner.x > reach
                || corner.x - Math.max(from.x, to.x) > reach
                || Math.min(from.y, to.y) - corner.y > reach
                || corner.y - Math.max(from.y, to.y) > reach
                || one(corner, from)
                || one(corner, to)) {
            return;
        }
        if (Distance.pointToSegment(corner, from, to) < reach) {
            line.addIntersection(corner, side);
            of.addIntersection(corner, at);
        }
    }

    private boolean one(Coordinate a, Coordinate b) {
        return Math.abs(a.x - b.x) < reach && Math.abs(a.y - b.y) < reach && a.distance(b) < reach;
    }

    /** The boxes of a line's sides, and after them that of all. */
    private static final class Boxes {

        private final int sides;
        private final double[] west;
        private final double[] south;
        private final double[] east;
        private final double[] north;

        /** @param margin m, by which two boxes that meet may be apart */
        Boxes(Coordinate[] corners, double margin) {
            sides = corners.length - 1;
            west = new double[sides + 1];
            south = new double[sides + 1];
            east = new double[sides + 1];
            north = new double[sides + 1];
            west[sides] = Double.POSITIVE_INFINITY;
            south[sides] = Double.POSITIVE_INFINITY;
            east[sides] = Double.NEGATIVE_INFINITY;
            north[sides] = Double.NEGATIVE_INFINITY;
            for (int i = 0; i < sides; i++) {
                west[i] = Math.min(corners[i].x, corners[i + 1].x) - margin;
                south[i] = Math.min(corners[i].y, corners[i + 1].y) - margin;
                east[i] = Math.max(corners[i].x, corners[i + 1].x);
                north[i] = Math.max(corners[i].y, corners[i + 1].y);
                west[sides] = Math.min(west[sides], west[i]);
                south[sides] = Math.min(south[sides], south[i]);
                east[sides] = Math.max(east[sides], east[i]);
                north[sides] = Math.max(north[sides], north[i]);
            }
        }

        boolean meets(int i, Boxes other, int j) {
            return west[i] <= other.east[j]
                    && other.west[j] <= east[i]
                    && south[i] <= other.north[j]
                    && other.south[j] <= north[i];
        }
    }

    /** Places, no two within the reach of one another, by their x. */
    private final class Places {

        private Coordinate[] all = new Coordinate[64];
        private double[] x = new double[64];
        private int count;

        /** The place within the reach of another that is nearest to it; it itself where there is none. */
        Coordinate taken(Coordinate at) {
            int i = first(at.x - reach);
            Coordinate best = null;
            double least = reach;
            for (; i < count && x[i] <= at.x + reach; i++) {
                if (all[i].equals2D(at)) {
                    return all[i];
                }
                if (Math.abs(all[i].y - at.y) <= reach) {
                    double distance = at.distance(all[i]);
                    if (distance < least || distance == least && (best == null || all[i].compareTo(best) < 0)) {
                        best = all[i];
                        least = distance;
                    }
                }
            }
            return best == null ? added(at) : best;
        }

        private Coordinate added(Coordinate at) {
            if (count == all.length) {
                all = Arrays.copyOf(all, 2 * count);
                x = Arrays.copyOf(x, 2 * count);
            }
            int i = first(at.x);
            System.arraycopy(all, i, all, i + 1, count - i);
            System.arraycopy(x, i, x, i + 1, count - i);
            all[i] = at.copy();
            x[i] = at.x;
            count++;
            return all[i];
        }

        /** Of the places, the first that lies no farther west. */
        private int first(double from) {
            int low = 0;
            int high = count;
            while (low < high) {
                int middle = (low + high) >>> 1;
                if (x[middle] < from) {
                    low = middle + 1;
                } else {
                    high = middle;
                }
            }
            return low;
        }
    }
}
