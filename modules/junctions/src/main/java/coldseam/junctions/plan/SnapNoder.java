package coldseam.junctions.plan;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateList;
import org.locationtech.jts.noding.NodedSegmentString;
import org.locationtech.jts.noding.Noder;
import org.locationtech.jts.noding.SegmentString;
import org.locationtech.jts.noding.snap.SnappingIntersectionAdder;
import org.locationtech.jts.noding.snap.SnappingPointIndex;

/**
 * Cuts lines at one another, so that two pieces are the same piece or share no more than an end: places nearer to one another than
 * the reach are one, that of the line that is given first, and a line runs through each corner of another that is as near to it.
 *
 * <p>Finds the nodes that JTS's {@code SnappingNoder} finds, a section's few hundred sides without its trees: sides are
 * compared by their boxes alone, and the library's own adder of nodes is asked where boxes meet.
 *
 * <p>Cost: n² comparisons of boxes for n sides, few of them of sides whose line lies elsewhere.
 */
public final class SnapNoder implements Noder {

    private final double reach;
    private final Places places;
    private final SnappingIntersectionAdder nodes;
    private List<NodedSegmentString> lines = List.of();

    /** @param reach m, above 0; places nearer than this are one */
    public SnapNoder(double reach) {
        this.reach = reach;
        this.places = new Places(reach);
        this.nodes = new SnappingIntersectionAdder(reach, places);
    }

    @Override
    @SuppressWarnings("rawtypes")
    public void computeNodes(Collection strings) {
        lines = new ArrayList<>();
        for (Object each : strings) {
            SegmentString string = (SegmentString) each;
            CoordinateList way = new CoordinateList();
            for (Coordinate at : string.getCoordinates()) {
                way.add(places.snap(at), false);
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
                                nodes.processIntersections(lines.get(a), i, lines.get(b), j);
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
    private static final class Places extends SnappingPointIndex {
        private final NavigableMap<Double, List<Coordinate>> all = new TreeMap<>();

        Places(double reach) {
            super(reach);
        }

        /** The place within the reach of another that is nearest to it; it itself where there is none. */
        @Override
        public Coordinate snap(Coordinate at) {
            Coordinate best = null;
            double least = getTolerance();
            for (List<Coordinate> of :
                    all.subMap(at.x - least, true, at.x + least, true).values()) {
                for (Coordinate place : of) {
                    double distance = Math.abs(place.y - at.y) > least ? Double.MAX_VALUE : place.distance(at);
                    if (distance < least || distance == least && (best == null || place.compareTo(best) < 0)) {
                        best = place;
                        least = distance;
                    }
                }
            }
            if (best == null) {
                best = at.copy();
                all.computeIfAbsent(at.x, none -> new ArrayList<>()).add(best);
            }
            return best;
        }
    }
}
