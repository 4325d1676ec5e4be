package coldseam.junctions.plan;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateList;
import org.locationtech.jts.geom.Envelope;
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
        List<Envelope[]> boxes = new ArrayList<>();
        lines.forEach(line -> boxes.add(boxes(line)));
        for (int a = 0; a < lines.size(); a++) {
            Envelope[] of = boxes.get(a);
            for (int i = 0; i < of.length - 1; i++) {
                for (int b = a; b < lines.size(); b++) {
                    Envelope[] others = boxes.get(b);
                    if (of[i].intersects(others[others.length - 1])) {
                        for (int j = a == b ? i + 1 : 0; j < others.length - 1; j++) {
                            if (of[i].intersects(others[j])) {
                                nodes.processIntersections(lines.get(a), i, lines.get(b), j);
                            }
                        }
                    }
                }
            }
        }
    }

    /** The boxes of a line's sides, each wider by the reach all round, and after them that of all. */
    private Envelope[] boxes(NodedSegmentString line) {
        Envelope[] boxes = new Envelope[line.size()];
        Envelope all = new Envelope();
        for (int i = 0; i < boxes.length - 1; i++) {
            boxes[i] = new Envelope(line.getCoordinate(i), line.getCoordinate(i + 1));
            boxes[i].expandBy(reach);
            all.expandToInclude(boxes[i]);
        }
        boxes[boxes.length - 1] = all;
        return boxes;
    }

    @Override
    @SuppressWarnings("rawtypes")
    public Collection getNodedSubstrings() {
        return NodedSegmentString.getNodedSubstrings(lines);
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
