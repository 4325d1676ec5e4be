package coldseam.conduction.mesh;

import coldseam.conduction.solve.Dissection;
import java.util.Arrays;

/**
 * A conforming triangle mesh with the nodes of quadratic elements, refined by longest-edge bisection.
 *
 * <p>Triangle t has six nodes {@code node[6t..6t+5]}: its corners anticlockwise, then the middles of the sides opposite
 * them. A side's middle node becomes a corner when the side is cut, so nodes never change their number or place.
 * Coordinates are lattice steps and stay multiples of {@link #FINEST} of one, so that halving is exact in floating point
 * (28 bits of lattice and 24 halvings); a triangle whose halves would not be is stuck and stays as it is.
 * {@code neighbour[3t+i]} is the triangle across the side opposite corner i, or -1 on the outline, where
 * {@code tag[3t+i]} tells what the side faces: a boundary's index, or {@code ~arc} for an adiabatic arc.
 *
 * <p>Bisection always cuts a longest side, following the longest-edge propagation path to keep the mesh conforming (M.
 * C. Rivara, New longest-edge algorithms for the refinement and/or improvement of unstructured triangulations,
 * International Journal for Numerical Methods in Engineering 40, 1997, pp. 3313–3324). Unlike newest-vertex bisection,
 * which keeps the shape of every first triangle for ever, it turns the slivers that thin layers begin with into well
 * shaped triangles where the solution asks for it. The path ends because sides get longer along it; sides of equal
 * length are ordered by the number of their middle node.
 */
public final class Mesh {

    /** The tag of a side on the axis of an axisymmetric section. */
    public static final int AXIS = Integer.MIN_VALUE;

    /** One lattice step over this is the finest that coordinates are told apart. */
    private static final double FINEST = 0x1p24;

    public int triangles;
    public int nodes;
    public int[] node;
    public int[] neighbour;
    public int[] tag;
    public int[] region;
    /** The leaf of the last {@link Dissection} a triangle, or the one it was cut from, was in. */
    public int[] leaf;
    /** The error a triangle is expected to carry, set by the marker and shared out to its halves. */
    public double[] error;
    /** Triangles that are too small to be halved exactly. */
    public boolean[] stuck;
    /** Nodes below this number are corners of the drawing, where the solution may be singular. */
    public int drawn;
    /** 1 where the stream function on this triangle's side of a cut jumps at the corner. */
    public int[] side;

    public double[] x;
    public double[] y;
    /** The adiabatic arc a node lies on, or -1. */
    public int[] arc;

    Mesh(int triangles, int nodes) {
        this.node = new int[6 * triangles];
        this.neighbour = new int[3 * triangles];
        this.tag = new int[3 * triangles];
        this.region = new int[triangles];
        this.leaf = new int[triangles];
        this.error = new double[triangles];
        this.stuck = new boolean[triangles];
        this.side = new int[3 * triangles];
        this.x = new double[nodes];
        this.y = new double[nodes];
        this.arc = new int[nodes];
    }

    private Mesh(int[] node, double[] x, double[] y, int[] region) {
        this.triangles = region.length;
        this.nodes = x.length;
        this.node = node;
        this.x = x;
        this.y = y;
        this.region = region;
    }

    /** A mesh of given arrays, which are not copied; it can be looked at, not refined. */
    public static Mesh frozen(int[] node, double[] x, double[] y, int[] region) {
        return new Mesh(node, x, y, region);
    }

    /** Nodes, places and regions as they are now; it can be looked at, not refined. */
    public Mesh frozen() {
        return new Mesh(
                Arrays.copyOf(node, 6 * triangles),
                Arrays.copyOf(x, nodes),
                Arrays.copyOf(y, nodes),
                Arrays.copyOf(region, triangles));
    }

    int addTriangle() {
        if (triangles == region.length) {
            int room = 2 * triangles;
            node = Arrays.copyOf(node, 6 * room);
            neighbour = Arrays.copyOf(neighbour, 3 * room);
            tag = Arrays.copyOf(tag, 3 * room);
            region = Arrays.copyOf(region, room);
            leaf = Arrays.copyOf(leaf, room);
            error = Arrays.copyOf(error, room);
            stuck = Arrays.copyOf(stuck, room);
            side = Arrays.copyOf(side, 3 * room);
        }
        return triangles++;
    }

    int addNode(double atX, double atY) {
        if (nodes == x.length) {
            int room = 2 * nodes;
            x = Arrays.copyOf(x, room);
            y = Arrays.copyOf(y, room);
            arc = Arrays.copyOf(arc, room);
        }
        x[nodes] = atX;
        y[nodes] = atY;
        arc[nodes] = -1;
        return nodes++;
    }

    private int addMiddle(int a, int b) {
        return addNode(0.5 * (x[a] + x[b]), 0.5 * (y[a] + y[b]));
    }

    /** The area of a triangle, in squared lattice steps. */
    public double area(int t) {
        int a = node[6 * t];
        int b = node[6 * t + 1];
        int c = node[6 * t + 2];
        return 0.5 * ((x[b] - x[a]) * (y[c] - y[a]) - (y[b] - y[a]) * (x[c] - x[a]));
    }

    /** The local index of the corner opposite t's longest side. */
    private int longest(int t) {
        int o = 6 * t;
        double d0 = length2(node[o + 1], node[o + 2]);
        double d1 = length2(node[o + 2], node[o]);
        double d2 = length2(node[o], node[o + 1]);
        int best = 0;
        double most = d0;
        if (d1 > most || d1 == most && node[o + 4] < node[o + 3]) {
            best = 1;
            most = d1;
        }
        if (d2 > most || d2 == most && node[o + 5] < node[o + 3 + best]) {
            best = 2;
        }
        return best;
    }

    private double length2(int a, int b) {
        double dx = x[a] - x[b];
        double dy = y[a] - y[b];
        return dx * dx + dy * dy;
    }

    /** Bisects until no triangle is expected to carry more than a given error, or there are too many nodes. */
    public void refine(double most, int mostNodes) {
        for (int t = 0; t < triangles; t++) {
            while (error[t] > most && nodes < mostNodes && !stuck[t]) {
                stuck[t] = !bisect(t);
            }
        }
    }

    /** Bisects every triangle twice. */
    void refineAll() {
        for (int round = 0; round < 2; round++) {
            Arrays.fill(error, 0, triangles, 1);
            // No half keeps more than KEEPS of it, so each is cut once.
            refine(0.5 * (1 + KEEPS), Integer.MAX_VALUE);
        }
    }

    /**
     * Cuts t's longest side, after as many cuts elsewhere as conformity needs.
     *
     * @return false where a triangle on the way is too small to be halved exactly
     */
    private boolean bisect(int t) {
        int before = node[6 * t + 3 + longest(t)];
        int current = t;
        while (true) {
            int i = longest(current);
            int u = neighbour[3 * current + i];
            int middle = node[6 * current + 3 + i];
            if (!halves(current, i)) {
                return false;
            }
            if (u < 0) {
                cut(current, i, -1, 0);
            } else {
                int j = longest(u);
                if (node[6 * u + 3 + j] != middle) {
                    current = u;
                    continue;
                }
                if (!halves(u, j)) {
                    return false;
                }
                cut(current, i, u, j);
            }
            if (middle == before) {
                return true;
            }
            current = t;
        }
    }

    /** Whether the nodes that cutting a triangle's side opposite corner i makes lie where they should, exactly. */
    private boolean halves(int t, int i) {
        int m = node[6 * t + 3 + i];
        return exact(node[6 * t + i], m) && exact(node[6 * t + (i + 1) % 3], m) && exact(node[6 * t + (i + 2) % 3], m);
    }

    private boolean exact(int a, int b) {
        double mx = FINEST * 0.5 * (x[a] + x[b]);
        double my = FINEST * 0.5 * (y[a] + y[b]);
        return mx == Math.rint(mx) && my == Math.rint(my);
    }

    /** Cuts the side that t (opposite corner i) shares with u (opposite corner j), or has alone if u is -1. */
    private void cut(int t, int i, int u, int j) {
        int i1 = (i + 1) % 3;
        int i2 = (i + 2) % 3;
        int a = node[6 * t + i];
        int b = node[6 * t + i1];
        int c = node[6 * t + i2];
        int m = node[6 * t + 3 + i];
        int bm = addMiddle(b, m);
        int mc = addMiddle(m, c);
        if (u < 0 && tag[3 * t + i] < 0 && tag[3 * t + i] != AXIS) {
            arc[bm] = ~tag[3 * t + i];
            arc[mc] = ~tag[3 * t + i];
        }
        int t2 = addTriangle();
        int u2 = u < 0 ? -1 : addTriangle();
        halve(t, i, t2, a, b, c, m, bm, mc, u2, u);
        if (u >= 0) {
            halve(u, j, u2, node[6 * u + j], c, b, m, mc, bm, t2, t);
        }
    }

    /**
     * Replaces t = (a, b, c) by t = (a, b, m) and t2 = (a, m, c); across b-m lies overFirst, across m-c overSecond.
     */
    private void halve(
            int t, int i, int t2, int a, int b, int c, int m, int bm, int mc, int overFirst, int overSecond) {
        int i1 = (i + 1) % 3;
        int i2 = (i + 2) % 3;
        int am = addMiddle(a, m);
        int ca = node[6 * t + 3 + i1];
        int ab = node[6 * t + 3 + i2];
        int nca = neighbour[3 * t + i1];
        int nab = neighbour[3 * t + i2];
        int gca = tag[3 * t + i1];
        int gab = tag[3 * t + i2];
        int gbc = tag[3 * t + i];
        int sa = side[3 * t + i];
        int sb = side[3 * t + i1];
        int sc = side[3 * t + i2];
        // A middle jumps where both ends do, seen from this triangle; so both triangles at a free side agree.
        int sm = sb & sc;
        double e = error[t];
        set(t, a, b, m, bm, am, ab, overFirst, t2, nab, gbc, 0, gab);
        set(t2, a, m, c, mc, ca, am, overSecond, nca, t, gbc, gca, 0);
        side[3 * t] = sa;
        side[3 * t + 1] = sb;
        side[3 * t + 2] = sm;
        side[3 * t2] = sa;
        side[3 * t2 + 1] = sm;
        side[3 * t2 + 2] = sc;
        region[t2] = region[t];
        leaf[t2] = leaf[t];
        share(t, t2, e, a, b, c);
        if (nca >= 0) {
            int o = 3 * nca;
            neighbour[neighbour[o] == t ? o : neighbour[o + 1] == t ? o + 1 : o + 2] = t2;
        }
    }

    // Shares of a bisected triangle's error, chosen by counting the nodes of all levels over the eight timed sections:
    // of
    // a half where the solution is smooth, of the half that keeps a drawn corner, of the one that loses it, and of each
    // where both do.
    private static final double SMOOTH = 0.125;
    private static final double KEEPS = 0.57;
    private static final double LOSES = 0.01;
    private static final double BOTH = 0.4;

    /**
     * Shares out the error of (a, b, c) to (a, b, m) and (a, m, c). Where the solution is smooth the squared error goes
     * with the sixth power of the size, an eighth for each half; beside a drawn corner it may be singular.
     */
    private void share(int t, int t2, double e, int a, int b, int c) {
        if (a < drawn) {
            error[t] = BOTH * e;
            error[t2] = BOTH * e;
        } else {
            error[t] = (b < drawn ? KEEPS : c < drawn ? LOSES : SMOOTH) * e;
            error[t2] = (c < drawn ? KEEPS : b < drawn ? LOSES : SMOOTH) * e;
        }
    }

    /** The boundary that a triangle's side lies on; -1 where it lies on none. */
    public int boundary(int t, int i) {
        return neighbour[3 * t + i] < 0 ? Math.max(-1, tag[3 * t + i]) : -1;
    }

    /** The length of a triangle's side, lattice steps. */
    public double length(int t, int i) {
        int a = node[6 * t + (i + 1) % 3];
        int b = node[6 * t + (i + 2) % 3];
        double dx = x[b] - x[a];
        double dy = y[b] - y[a];
        return Math.sqrt(dx * dx + dy * dy);
    }

    void set(int t, int a, int b, int c, int ma, int mb, int mc, int na, int nb, int nc, int ga, int gb, int gc) {
        int o = 6 * t;
        node[o] = a;
        node[o + 1] = b;
        node[o + 2] = c;
        node[o + 3] = ma;
        node[o + 4] = mb;
        node[o + 5] = mc;
        o = 3 * t;
        neighbour[o] = na;
        neighbour[o + 1] = nb;
        neighbour[o + 2] = nc;
        tag[o] = ga;
        tag[o + 1] = gb;
        tag[o + 2] = gc;
    }
}
