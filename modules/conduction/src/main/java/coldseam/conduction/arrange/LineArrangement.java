package coldseam.conduction.arrange;

import java.util.Arrays;
import org.eclipse.collections.api.factory.primitive.DoubleLists;
import org.eclipse.collections.api.factory.primitive.IntLists;
import org.eclipse.collections.api.factory.primitive.LongIntMaps;
import org.eclipse.collections.api.factory.primitive.LongSets;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.list.primitive.MutableDoubleList;
import org.eclipse.collections.api.list.primitive.MutableIntList;
import org.eclipse.collections.api.map.primitive.MutableLongIntMap;
import org.eclipse.collections.api.set.primitive.MutableLongSet;
import org.eclipse.collections.impl.factory.Lists;

/**
 * Line segments snapped onto an integer lattice and cut at each other, so that any two edges meet in a common vertex or
 * not at all.
 *
 * <p>Every point is rounded to the lattice. A vertex {@link Lattice#close} to another is the same vertex; one as close to
 * an edge becomes part of the edge, which bends through it. Crossing edges get a vertex at their rounded crossing. This
 * is repeated until nothing changes, so a hair crack between two outlines that should be one cannot remain.
 *
 * <p>Each edge knows the set of rings (region outlines) that run along it an odd number of times and the path (boundary)
 * that claims it. Coordinates stay below 2^30 in size, so that orientation tests are exact in 64-bit integers.
 */
public final class LineArrangement {

    private static final int MOST_PASSES = 40;

    private final Lattice lattice;
    /** Points and lines no farther apart are one: lattice steps, and its square. */
    private final double close;

    private final double close2;
    private final long reach;
    private final int words;

    public int vertices;
    public long[] x = new long[64];
    public long[] y = new long[64];

    public int edges;
    public int[] from = new int[64];
    public int[] to = new int[64];
    public long[] rings;
    public int[] path = new int[64];
    public boolean[] twice = new boolean[64];

    /** The points that were moved onto another point or line rather than only rounded. */
    public final MutableList<Move> moves = Lists.mutable.empty();

    /** A place on the lattice and how far what was there was moved, lattice steps. */
    public record Move(double x, double y, double distance) {}

    private final MutableLongIntMap edgeOf = LongIntMaps.mutable.empty();

    /** Edges that cross another at a vertex, each with that vertex, found in this pass. */
    private final MutableLongSet bends = LongSets.mutable.empty();

    /** @param ringCount how many rings will be added at most */
    public LineArrangement(Lattice lattice, int ringCount) {
        this.lattice = lattice;
        this.close = lattice.close();
        this.close2 = close * close;
        this.reach = (long) Math.ceil(close) + 1;
        this.words = Math.max(1, (ringCount + 63) >>> 6);
        this.rings = new long[64 * words];
    }

    /** How many 64-bit words hold an edge's set of rings. */
    public int ringWords() {
        return words;
    }

    /** Whether anything is left of a ring. */
    public boolean has(int ring) {
        for (int e = 0; e < edges; e++) {
            if ((rings[e * words + (ring >>> 6)] >>> ring & 1) != 0) {
                return true;
            }
        }
        return false;
    }

    /** The vertex at a point: an old one if close, else a new one. */
    public int vertex(double metresX, double metresY) {
        return vertex(lattice.x(metresX), lattice.y(metresY));
    }

    private int vertex(long px, long py) {
        int best = -1;
        double bestDistance = close2;
        for (int v = 0; v < vertices; v++) {
            long dx = x[v] - px;
            if (dx > reach || dx < -reach) {
                continue;
            }
            long dy = y[v] - py;
            double d = (double) (dx * dx) + (double) dy * dy;
            if (d <= bestDistance && (best < 0 || d < bestDistance)) {
                best = v;
                bestDistance = d;
            }
        }
        if (best >= 0) {
            if (bestDistance > 0) {
                moves.add(new Move(x[best], y[best], Math.sqrt(bestDistance)));
            }
            return best;
        }
        if (vertices == x.length) {
            x = Arrays.copyOf(x, 2 * vertices);
            y = Arrays.copyOf(y, 2 * vertices);
        }
        x[vertices] = px;
        y[vertices] = py;
        return vertices++;
    }

    public void addRingSide(int a, int b, int ring) {
        if (a != b) {
            int e = edge(a, b);
            rings[e * words + (ring >>> 6)] ^= 1L << ring;
        }
    }

    public void addPathSide(int a, int b, int pathIndex) {
        if (a != b) {
            claim(edge(a, b), pathIndex, false);
        }
    }

    private void claim(int e, int pathIndex, boolean alreadyTwice) {
        if (pathIndex >= 0) {
            twice[e] |= alreadyTwice || path[e] >= 0;
            path[e] = pathIndex;
        }
    }

    private int edge(int a, int b) {
        int lo = Math.min(a, b);
        int hi = Math.max(a, b);
        int known = edgeOf.getIfAbsentPut(pair(lo, hi), edges);
        if (known < edges) {
            return known;
        }
        if (edges == from.length) {
            from = Arrays.copyOf(from, 2 * edges);
            to = Arrays.copyOf(to, 2 * edges);
            path = Arrays.copyOf(path, 2 * edges);
            twice = Arrays.copyOf(twice, 2 * edges);
            rings = Arrays.copyOf(rings, 2 * edges * words);
        }
        from[edges] = lo;
        to[edges] = hi;
        path[edges] = -1;
        twice[edges] = false;
        Arrays.fill(rings, edges * words, (edges + 1) * words, 0);
        return edges++;
    }

    private static long pair(int one, int other) {
        return (long) one << 32 | other;
    }

    /**
     * Cuts all edges at each other and at all vertices close to them.
     *
     * @return whether it came to rest; false asks for a coarser drawing
     */
    public boolean cut() {
        for (int pass = 0; pass < MOST_PASSES; pass++) {
            addCrossings();
            if (!splitAtVertices()) {
                return true;
            }
        }
        return false;
    }

    /** Notes that an edge must pass through a vertex, unless it ends there. */
    private void bend(int e, int v) {
        if (from[e] != v && to[e] != v) {
            bends.add(pair(e, v));
        }
    }

    /**
     * Puts a vertex at every proper crossing; the edges themselves are cut by {@link #splitAtVertices}. The vertex may be
     * an old one close to the crossing, and then lie farther from one of the edges than is close: so it is noted for both.
     */
    private void addCrossings() {
        bends.clear();
        for (int e = 0; e < edges; e++) {
            long ax = x[from[e]];
            long ay = y[from[e]];
            long bx = x[to[e]];
            long by = y[to[e]];
            long left = Math.min(ax, bx);
            long right = Math.max(ax, bx);
            long low = Math.min(ay, by);
            long high = Math.max(ay, by);
            for (int f = e + 1; f < edges; f++) {
                long cx = x[from[f]];
                long dx = x[to[f]];
                if (Math.max(cx, dx) <= left || Math.min(cx, dx) >= right) {
                    if (left != right && cx != dx) {
                        continue;
                    }
                }
                long cy = y[from[f]];
                long dy = y[to[f]];
                if (Math.max(cy, dy) < low
                        || Math.min(cy, dy) > high
                        || Math.max(cx, dx) < left
                        || Math.min(cx, dx) > right) {
                    continue;
                }
                long c = orientation(ax, ay, bx, by, cx, cy);
                long d = orientation(ax, ay, bx, by, dx, dy);
                if (c == 0 || d == 0 || (c > 0) == (d > 0)) {
                    continue;
                }
                long a = orientation(cx, cy, dx, dy, ax, ay);
                long b = orientation(cx, cy, dx, dy, bx, by);
                if (a == 0 || b == 0 || (a > 0) == (b > 0)) {
                    continue;
                }
                double t = (double) c / ((double) c - (double) d);
                int before = moves.size();
                int v = vertex(Math.round(cx + t * (dx - cx)), Math.round(cy + t * (dy - cy)));
                // A crossing that falls on a corner moves nothing that was drawn.
                while (moves.size() > before) {
                    moves.remove(before);
                }
                bend(e, v);
                bend(f, v);
            }
        }
    }

    /** Cuts every edge at the vertices close to it. */
    private boolean splitAtVertices() {
        boolean changed = false;
        MutableIntList inside = IntLists.mutable.empty();
        MutableDoubleList along = DoubleLists.mutable.empty();
        int count = edges;
        int[] oldFrom = from.clone();
        int[] oldTo = to.clone();
        int[] oldPath = path.clone();
        boolean[] oldTwice = twice.clone();
        long[] oldRings = rings.clone();
        edges = 0;
        edgeOf.clear();
        for (int e = 0; e < count; e++) {
            int a = oldFrom[e];
            int b = oldTo[e];
            long ax = x[a];
            long ay = y[a];
            long ux = x[b] - ax;
            long uy = y[b] - ay;
            double length2 = (double) ux * ux + (double) uy * uy;
            // A crossing's vertex may lie a step farther off.
            long left = Math.min(ax, ax + ux) - reach;
            long right = Math.max(ax, ax + ux) + reach;
            long low = Math.min(ay, ay + uy) - reach;
            long high = Math.max(ay, ay + uy) + reach;
            inside.clear();
            along.clear();
            for (int v = 0; v < vertices; v++) {
                if (x[v] < left || x[v] > right || y[v] < low || y[v] > high || v == a || v == b) {
                    continue;
                }
                double px = (double) (x[v] - ax);
                double py = (double) (y[v] - ay);
                double dot = px * ux + py * uy;
                double cross = px * uy - py * ux;
                boolean crossing = bends.contains(pair(e, v));
                if (crossing || dot > 0 && dot < length2 && cross * cross <= close2 * length2) {
                    // At a crossing one step is rounding, no drawing error that was closed.
                    if (cross * cross > (crossing ? length2 : 0)) {
                        moves.add(new Move(x[v], y[v], Math.abs(cross) / Math.sqrt(length2)));
                    }
                    int i = along.size();
                    while (i > 0 && along.get(i - 1) > dot) {
                        i--;
                    }
                    along.addAtIndex(i, dot);
                    inside.addAtIndex(i, v);
                }
            }
            changed |= inside.notEmpty();
            int previous = a;
            inside.add(b);
            for (int i = 0; i < inside.size(); i++) {
                int next = inside.get(i);
                int piece = edge(previous, next);
                for (int w = 0; w < words; w++) {
                    rings[piece * words + w] ^= oldRings[e * words + w];
                }
                claim(piece, oldPath[e], oldTwice[e]);
                previous = next;
            }
        }
        return changed;
    }

    /** Twice the area of the triangle abc, positive if anticlockwise; exact for |coordinates| below 2^30. */
    public static long orientation(long ax, long ay, long bx, long by, long cx, long cy) {
        return (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);
    }
}
