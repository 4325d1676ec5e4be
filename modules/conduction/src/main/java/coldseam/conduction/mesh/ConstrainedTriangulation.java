package coldseam.conduction.mesh;

import coldseam.conduction.arrange.LineArrangement;
import java.util.ArrayDeque;
import java.util.Arrays;

/**
 * Constrained Delaunay triangulation of lattice points and edges inside a surrounding box.
 *
 * <p>Incremental insertion with edge flips (C. L. Lawson, Software for C1 surface interpolation, in Mathematical
 * Software III, 1977, pp. 161–194), then each edge is forced by flipping the edges it crosses (S. W. Sloan, A fast
 * algorithm for generating constrained Delaunay triangulations, Computers and Structures 47, 1993, pp. 441–450).
 * Orientations are exact; the circle test is in floating point with a margin, so that co-circular points cannot flip
 * for ever. The triangulation is exact as a partition whatever the circle test says.
 *
 * <p>Triangle t has the corners {@code corner[3t..3t+2]} anticlockwise; {@code neighbour[3t+i]} lies across the side
 * opposite corner i, or is -1; {@code constraint[3t+i]} is the index of the edge on that side, or -1. The last four
 * vertices are the box's.
 */
final class ConstrainedTriangulation {

    private long[] x;
    private long[] y;
    private final int points;
    private int free;
    private int[] at;

    int triangles;
    int[] corner;
    int[] neighbour;
    int[] constraint;

    private int last;
    private int[] stack = new int[64];
    private int depth;

    /**
     * @param count how many points; their coordinates stay below 2^30 - 2^28 in size
     * @param x lattice coordinates
     * @param y lattice coordinates
     * @param edges how many edges; no two cross and none passes through a point
     * @param from first point of each edge
     * @param to second point of each edge
     */
    ConstrainedTriangulation(int count, long[] x, long[] y, int edges, int[] from, int[] to) {
        points = count;
        this.x = Arrays.copyOf(x, count + 4);
        this.y = Arrays.copyOf(y, count + 4);
        int most = 2 * (count + 4);
        corner = new int[3 * most];
        neighbour = new int[3 * most];
        constraint = new int[3 * most];
        Arrays.fill(constraint, -1);
        at = new int[count + 4];
        box();
        for (int p = 0; p < count; p++) {
            insert(p);
        }
        Arrays.fill(at, -1);
        for (int t = 0; t < triangles; t++) {
            for (int i = 0; i < 3; i++) {
                at[corner[3 * t + i]] = t;
            }
        }
        for (int e = 0; e < edges; e++) {
            force(from[e], to[e], e);
        }
        restore();
    }

    private void box() {
        long left = Long.MAX_VALUE;
        long right = Long.MIN_VALUE;
        long low = Long.MAX_VALUE;
        long high = Long.MIN_VALUE;
        for (int p = 0; p < points; p++) {
            left = Math.min(left, x[p]);
            right = Math.max(right, x[p]);
            low = Math.min(low, y[p]);
            high = Math.max(high, y[p]);
        }
        long margin = Math.max(right - left, high - low) / 8 + 10;
        int p = points;
        x[p] = left - margin;
        y[p] = low - margin;
        x[p + 1] = right + margin;
        y[p + 1] = low - margin;
        x[p + 2] = right + margin;
        y[p + 2] = high + margin;
        x[p + 3] = left - margin;
        y[p + 3] = high + margin;
        set(0, p, p + 1, p + 2, -1, 1, -1);
        set(1, p, p + 2, p + 3, -1, -1, 0);
        triangles = 2;
    }

    private void set(int t, int a, int b, int c, int na, int nb, int nc) {
        int o = 3 * t;
        corner[o] = a;
        corner[o + 1] = b;
        corner[o + 2] = c;
        neighbour[o] = na;
        neighbour[o + 1] = nb;
        neighbour[o + 2] = nc;
    }

    private void replaceNeighbour(int t, int old, int now) {
        if (t >= 0) {
            int o = 3 * t;
            if (neighbour[o] == old) {
                neighbour[o] = now;
            } else if (neighbour[o + 1] == old) {
                neighbour[o + 1] = now;
            } else {
                neighbour[o + 2] = now;
            }
        }
    }

    private long orient(int a, int b, int c) {
        return LineArrangement.orientation(x[a], y[a], x[b], y[b], x[c], y[c]);
    }

    private void insert(int p) {
        int t = locate(p);
        split(t, p);
        last = t;
    }

    /** Joins a point to the corners of the triangle that holds it, and flips free sides until they are Delaunay. */
    private void split(int t, int p) {
        int o = 3 * t;
        for (int i = 0; i < 3; i++) {
            if (orient(corner[o + (i + 1) % 3], corner[o + (i + 2) % 3], p) == 0) {
                splitSide(t, i, p);
                legalise();
                return;
            }
        }
        int a = corner[o];
        int b = corner[o + 1];
        int c = corner[o + 2];
        int na = neighbour[o];
        int nb = neighbour[o + 1];
        int nc = neighbour[o + 2];
        int ka = constraint[o];
        int kb = constraint[o + 1];
        int kc = constraint[o + 2];
        int t1 = triangles++;
        int t2 = triangles++;
        set(t, p, b, c, na, t1, t2);
        set(t1, p, c, a, nb, t2, t);
        set(t2, p, a, b, nc, t, t1);
        constrain(t, ka);
        constrain(t1, kb);
        constrain(t2, kc);
        replaceNeighbour(nb, t, t1);
        replaceNeighbour(nc, t, t2);
        at[p] = t;
        at[a] = t1;
        push(t);
        push(t1);
        push(t2);
        legalise();
    }

    /** The edge across corner 0; the sides at corner 0 are free. */
    private void constrain(int t, int edge) {
        constraint[3 * t] = edge;
        constraint[3 * t + 1] = -1;
        constraint[3 * t + 2] = -1;
    }

    /** The number of the first free point; lower numbers are the given points and the four of the box. */
    int firstFree() {
        return points + 4;
    }

    /** How many free points there are. */
    int free() {
        return free;
    }

    long x(int corner) {
        return x[corner];
    }

    long y(int corner) {
        return y[corner];
    }

    /** A triangle with a corner at a free point. */
    int triangleAt(int corner) {
        return at[corner];
    }

    /** The triangle that holds a point, walked to from another without crossing an edge; -1 if an edge is in the way. */
    int walk(int start, long px, long py) {
        int t = start;
        int turn = 0;
        for (int steps = 0; steps < 4 * triangles + 16; steps++) {
            int across = -1;
            for (int k = 0; k < 3 && across < 0; k++) {
                int i = 3 * t + (k + turn) % 3;
                int a = corner[3 * t + (k + turn + 1) % 3];
                int b = corner[3 * t + (k + turn + 2) % 3];
                if (LineArrangement.orientation(x[a], y[a], x[b], y[b], px, py) < 0) {
                    across = i;
                }
            }
            if (across < 0) {
                return t;
            }
            if (constraint[across] >= 0 || neighbour[across] < 0) {
                return -1;
            }
            t = neighbour[across];
            turn++;
        }
        return -1;
    }

    /**
     * Puts a free point into a triangle that holds it, not on an edge and not at a corner, and flips free sides around it
     * until the circle test is content. New triangles are numbered from the present count on and lie in the same face.
     *
     * @return the point's number
     */
    int insertFree(int t, long px, long py) {
        int p = points + 4 + free++;
        if (p >= x.length) {
            x = Arrays.copyOf(x, 2 * p);
            y = Arrays.copyOf(y, 2 * p);
            at = Arrays.copyOf(at, 2 * p);
        }
        if (3 * (triangles + 2) > corner.length) {
            corner = Arrays.copyOf(corner, 2 * corner.length);
            neighbour = Arrays.copyOf(neighbour, 2 * neighbour.length);
            constraint = Arrays.copyOf(constraint, 2 * constraint.length);
        }
        x[p] = px;
        y[p] = py;
        split(t, p);
        return p;
    }

    private void splitSide(int t, int i, int p) {
        int a = corner[3 * t + i];
        int b = corner[3 * t + (i + 1) % 3];
        int c = corner[3 * t + (i + 2) % 3];
        int nb = neighbour[3 * t + (i + 1) % 3];
        int nc = neighbour[3 * t + (i + 2) % 3];
        int kb = constraint[3 * t + (i + 1) % 3];
        int kc = constraint[3 * t + (i + 2) % 3];
        int u = neighbour[3 * t + i];
        int j = cornerAcross(u, t);
        int d = corner[3 * u + j];
        // u = (d, c, b)
        int uc = neighbour[3 * u + (j + 1) % 3];
        int ub = neighbour[3 * u + (j + 2) % 3];
        int kuc = constraint[3 * u + (j + 1) % 3];
        int kub = constraint[3 * u + (j + 2) % 3];
        int t1 = triangles++;
        int u1 = triangles++;
        set(t, p, a, b, nc, u1, t1);
        set(t1, p, c, a, nb, t, u);
        set(u, p, d, c, ub, t1, u1);
        set(u1, p, b, d, uc, u, t);
        constrain(t, kc);
        constrain(t1, kb);
        constrain(u, kub);
        constrain(u1, kuc);
        replaceNeighbour(nb, t, t1);
        replaceNeighbour(uc, u, u1);
        at[p] = t;
        at[a] = t;
        at[b] = t;
        at[c] = u;
        at[d] = u;
        push(t);
        push(t1);
        push(u);
        push(u1);
    }

    /** The local index of u's corner that is not shared with its neighbour t. */
    private int cornerAcross(int u, int t) {
        int o = 3 * u;
        return neighbour[o] == t ? 0 : neighbour[o + 1] == t ? 1 : 2;
    }

    private int locate(int p) {
        int t = last;
        int turn = 0;
        for (int steps = 0; steps < 4 * triangles + 16; steps++) {
            boolean inside = true;
            for (int k = 0; k < 3; k++) {
                int i = (k + turn) % 3;
                if (orient(corner[3 * t + (i + 1) % 3], corner[3 * t + (i + 2) % 3], p) < 0) {
                    t = neighbour[3 * t + i];
                    inside = false;
                    turn++;
                    break;
                }
            }
            if (inside) {
                return t;
            }
        }
        for (t = 0; t < triangles; t++) {
            int o = 3 * t;
            if (orient(corner[o], corner[o + 1], p) >= 0
                    && orient(corner[o + 1], corner[o + 2], p) >= 0
                    && orient(corner[o + 2], corner[o], p) >= 0) {
                return t;
            }
        }
        throw new IllegalStateException("internal error, please report: no triangle holds point " + x[p] + ", " + y[p]);
    }

    private void push(int t) {
        if (depth == stack.length) {
            stack = Arrays.copyOf(stack, 2 * depth);
        }
        stack[depth++] = t;
    }

    /** Flips the sides opposite the newest point, which is corner 0 of every triangle on the stack. */
    private void legalise() {
        while (depth > 0) {
            int t = stack[--depth];
            int u = neighbour[3 * t];
            if (u < 0 || constraint[3 * t] >= 0) {
                continue;
            }
            int q = corner[3 * u + cornerAcross(u, t)];
            if (inCircle(corner[3 * t], corner[3 * t + 1], corner[3 * t + 2], q)) {
                flip(t, 0);
                push(t);
                push(u);
            }
        }
    }

    /** Flips the side of t opposite its corner i; t and its neighbour get that corner as corner 0. */
    private void flip(int t, int i) {
        int u = neighbour[3 * t + i];
        int j = cornerAcross(u, t);
        int p = corner[3 * t + i];
        int b = corner[3 * t + (i + 1) % 3];
        int c = corner[3 * t + (i + 2) % 3];
        int q = corner[3 * u + j];
        int tb = neighbour[3 * t + (i + 1) % 3];
        int tc = neighbour[3 * t + (i + 2) % 3];
        int uc = neighbour[3 * u + (j + 1) % 3];
        int ub = neighbour[3 * u + (j + 2) % 3];
        int ktb = constraint[3 * t + (i + 1) % 3];
        int ktc = constraint[3 * t + (i + 2) % 3];
        int kuc = constraint[3 * u + (j + 1) % 3];
        int kub = constraint[3 * u + (j + 2) % 3];
        // t = (p, b, c), u = (q, c, b); uc lies across b-q, ub across q-c
        set(t, p, b, q, uc, u, tc);
        set(u, p, q, c, ub, tb, t);
        constraint[3 * t] = kuc;
        constraint[3 * t + 1] = -1;
        constraint[3 * t + 2] = ktc;
        constraint[3 * u] = kub;
        constraint[3 * u + 1] = ktb;
        constraint[3 * u + 2] = -1;
        replaceNeighbour(uc, u, t);
        replaceNeighbour(tb, t, u);
        at[p] = t;
        at[b] = t;
        at[q] = u;
        at[c] = u;
    }

    private boolean inCircle(int a, int b, int c, int d) {
        double ax = x[a] - x[d];
        double ay = y[a] - y[d];
        double bx = x[b] - x[d];
        double by = y[b] - y[d];
        double cx = x[c] - x[d];
        double cy = y[c] - y[d];
        double aa = ax * ax + ay * ay;
        double bb = bx * bx + by * by;
        double cc = cx * cx + cy * cy;
        double bc = bx * cy - by * cx;
        double ca = cx * ay - cy * ax;
        double ab = ax * by - ay * bx;
        double size = aa * (Math.abs(bx * cy) + Math.abs(by * cx))
                + bb * (Math.abs(cx * ay) + Math.abs(cy * ax))
                + cc * (Math.abs(ax * by) + Math.abs(ay * bx));
        return aa * bc + bb * ca + cc * ab > 1e-12 * size;
    }

    /** Forces an edge into the triangulation by flipping the sides it crosses, and marks it. */
    private void force(int a, int b, int edge) {
        if (mark(a, b, edge)) {
            return;
        }
        ArrayDeque<int[]> crossed = crossed(a, b);
        for (int tries = 0; !crossed.isEmpty(); tries++) {
            if (tries > 1_000_000) {
                throw new IllegalStateException("internal error, please report: edge does not come in");
            }
            int[] side = crossed.removeFirst();
            int s = triangleWith(side[0], side[1]);
            int k = 3 - indexOf(s, side[0]) - indexOf(s, side[1]);
            int u = neighbour[3 * s + k];
            int m = corner[3 * s + k];
            int n = corner[3 * u + cornerAcross(u, s)];
            boolean convex =
                    orient(m, corner[3 * s + (k + 1) % 3], n) > 0 && orient(n, corner[3 * s + (k + 2) % 3], m) > 0;
            if (convex) {
                flip(s, k);
                boolean crosses =
                        m != a && m != b && n != a && n != b && (orient(a, b, m) > 0) != (orient(a, b, n) > 0);
                if (crosses) {
                    crossed.addLast(new int[] {m, n});
                }
            } else {
                crossed.addLast(side);
            }
        }
        if (!mark(a, b, edge)) {
            throw new IllegalStateException("internal error, please report: edge is missing");
        }
    }

    /** The sides that an edge from a to b crosses, in its order, each by its corners on the edge's right and left. */
    private ArrayDeque<int[]> crossed(int a, int b) {
        ArrayDeque<int[]> crossed = new ArrayDeque<>();
        int previous = leaving(a, b);
        int i = indexOf(previous, a);
        int right = corner[3 * previous + (i + 1) % 3];
        int left = corner[3 * previous + (i + 2) % 3];
        int next = neighbour[3 * previous + i];
        while (true) {
            crossed.addLast(new int[] {right, left});
            int apex = corner[3 * next + cornerAcross(next, previous)];
            if (apex == b) {
                return crossed;
            }
            previous = next;
            if (orient(a, b, apex) > 0) {
                next = neighbour[3 * next + indexOf(next, left)];
                left = apex;
            } else {
                next = neighbour[3 * next + indexOf(next, right)];
                right = apex;
            }
        }
    }

    /** The triangle at a through whose far side the way to b leads. */
    private int leaving(int a, int b) {
        int t = at[a];
        do {
            int i = indexOf(t, a);
            int r = corner[3 * t + (i + 1) % 3];
            int l = corner[3 * t + (i + 2) % 3];
            if (orient(a, b, r) < 0 && orient(a, b, l) > 0 && orient(r, l, b) < 0) {
                return t;
            }
            t = neighbour[3 * t + (i + 1) % 3];
        } while (t != at[a] && t >= 0);
        throw new IllegalStateException(
                "internal error, please report: no way from " + x[a] + ", " + y[a] + " to " + x[b] + ", " + y[b]);
    }

    private int indexOf(int t, int p) {
        return corner[3 * t] == p ? 0 : corner[3 * t + 1] == p ? 1 : 2;
    }

    /** A triangle with the side pq, or -1. Only around a corner of the box can a turn end before it is full. */
    private int triangleWith(int p, int q) {
        for (int turn = 1; turn <= 2; turn++) {
            int t = at[p];
            do {
                int i = indexOf(t, p);
                if (corner[3 * t + (i + 1) % 3] == q || corner[3 * t + (i + 2) % 3] == q) {
                    return t;
                }
                t = neighbour[3 * t + (i + turn) % 3];
            } while (t != at[p] && t >= 0);
            if (t >= 0) {
                return -1;
            }
        }
        return -1;
    }

    private boolean mark(int a, int b, int edge) {
        int t = triangleWith(a, b);
        if (t < 0) {
            return false;
        }
        int k = 3 - indexOf(t, a) - indexOf(t, b);
        int u = neighbour[3 * t + k];
        constraint[3 * t + k] = edge;
        constraint[3 * u + cornerAcross(u, t)] = edge;
        return true;
    }

    /** Flips free sides until the circle test is content. */
    private void restore() {
        boolean changed = true;
        for (int pass = 0; changed && pass < 100; pass++) {
            changed = false;
            for (int t = 0; t < triangles; t++) {
                for (int i = 0; i < 3; i++) {
                    int u = neighbour[3 * t + i];
                    if (u < t || constraint[3 * t + i] >= 0) {
                        continue;
                    }
                    int p = corner[3 * t + i];
                    int b = corner[3 * t + (i + 1) % 3];
                    int c = corner[3 * t + (i + 2) % 3];
                    int q = corner[3 * u + cornerAcross(u, t)];
                    if (orient(p, b, q) > 0 && orient(q, c, p) > 0 && inCircle(p, b, c, q)) {
                        flip(t, i);
                        changed = true;
                    }
                }
            }
        }
    }

    /** A triangle at the surrounding box, outside everything drawn. */
    int triangleAtBox() {
        return at[points];
    }
}
