package coldseam.junctions.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.noding.NodedSegmentString;
import org.locationtech.jts.noding.Noder;
import org.locationtech.jts.noding.SegmentString;
import org.locationtech.jts.noding.snap.SnappingNoder;

class SnapNoderTest {

    /** m. */
    private static final double REACH = 3e-7;

    /** m; less than half the reach. */
    private static final double HAIR = 1e-7;

    /** Rings with corners on a lattice of centimetres, or off it by as much; of every three, one is aslant where that is asked. */
    private static List<SegmentString> rings(Random random, boolean aslant, double off) {
        List<SegmentString> rings = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            int x = random.nextInt(8);
            int y = random.nextInt(8);
            int east = x + 1 + random.nextInt(5);
            int north = y + 1 + random.nextInt(5);
            int[][] corners = aslant && i % 3 == 2
                    ? new int[][] {{x, y}, {east, y + 1}, {x + 1, north + 1}}
                    : new int[][] {{x, y}, {east, y}, {east, north}, {x, north}};
            Coordinate[] ring = new Coordinate[corners.length + 1];
            for (int k = 0; k < corners.length; k++) {
                ring[k] = new Coordinate(
                        0.01 * corners[k][0] + off * random.nextInt(2), 0.01 * corners[k][1] + off * random.nextInt(2));
            }
            ring[corners.length] = ring[0];
            rings.add(new NodedSegmentString(ring, i));
        }
        return rings;
    }

    private static String pieces(Noder noder, List<SegmentString> rings, String number) {
        noder.computeNodes(rings);
        Set<String> pieces = new LinkedHashSet<>();
        for (Object each : noder.getNodedSubstrings()) {
            SegmentString piece = (SegmentString) each;
            StringBuilder line = new StringBuilder(piece.getData() + ":");
            for (Coordinate at : piece.getCoordinates()) {
                line.append(String.format(Locale.ROOT, " (" + number + ", " + number + ")", at.x, at.y));
            }
            pieces.add(line.toString());
        }
        return String.join("\n", pieces);
    }

    /** The same pieces in the same order as the library's noder, which looks for them in trees. */
    @Test
    void cutsAsTheLibraryDoes() {
        Random random = new Random(11);
        for (int trial = 0; trial < 50; trial++) {
            List<SegmentString> rings = rings(random, true, 0);
            assertEquals(
                    pieces(new SnappingNoder(REACH), rings, "%.12f"), pieces(new SnapNoder(REACH), rings, "%.12f"));
        }
    }

    /** Which of several places within the reach is taken follows the order of asking; the pieces are the same but for that. */
    @Test
    void whatIsOffByAHairIsCutAlike() {
        Random random = new Random(12);
        for (int trial = 0; trial < 50; trial++) {
            List<SegmentString> rings = rings(random, false, HAIR);
            assertEquals(pieces(new SnappingNoder(REACH), rings, "%.5f"), pieces(new SnapNoder(REACH), rings, "%.5f"));
        }
    }
}
