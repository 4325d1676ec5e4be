package coldseam.conduction.mesh;

import coldseam.conduction.DrawingFault;
import coldseam.conduction.arrange.Lattice;
import java.util.Arrays;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.list.primitive.MutableIntList;
import org.eclipse.collections.impl.factory.primitive.IntLists;

/**
 * How the outline of a mesh hangs together: adiabatic arcs, connected parts, and cuts between rims that carry flow.
 *
 * <p>The stream function is constant along an adiabatic arc and single-valued in a part whose rims (outer outline and
 * holes) carry no net flow. Where m rims of a part face environments, m - 1 cuts through the inside join them in a tree,
 * and the stream function jumps across each by an unknown constant, the net flow it carries. The jump belongs to the
 * triangles left of the cut: bit c of {@code mesh.side[3t+i]} says that triangle t sees its corner i from the left of cut
 * c.
 */
public final class Topology {

    private final Mesh mesh;
    private static final int AT_AXIS = -2;
    /** A triangle's are the bits of an int. */
    private static final int MOST_CUTS = 32;

    private final MutableList<DrawingFault> faults;
    private final boolean axisymmetric;

    public int arcs;
    public int cuts;
    /** The arcs whose value is taken as zero: one in each part, and all that touch the axis. */
    public boolean[] zeroArc;
    /** A node of each part that has neither arc nor axis: its value is taken as zero. */
    public final MutableIntList zeroNodes = IntLists.mutable.empty();

    Topology(Mesh mesh, boolean axisymmetric, MutableList<DrawingFault> faults) {
        this.axisymmetric = axisymmetric;
        this.mesh = mesh;
        this.faults = faults;
    }

    private int tail(int t, int i) {
        return mesh.node[6 * t + (i + 1) % 3];
    }

    private int head(int t, int i) {
        return mesh.node[6 * t + (i + 2) % 3];
    }

    private boolean outline(int t, int i) {
        return mesh.neighbour[3 * t + i] < 0;
    }

    private boolean adiabatic(int t, int i) {
        return outline(t, i) && mesh.tag[3 * t + i] < 0 && mesh.tag[3 * t + i] != Mesh.AXIS;
    }

    private boolean axis(int t, int i) {
        return outline(t, i) && mesh.tag[3 * t + i] == Mesh.AXIS;
    }

    /** Joins adiabatic sides that share a node into arcs, numbers them and tags sides and nodes with them. */
    void findArcs() {
        Sets sets = new Sets(mesh.nodes);
        for (int t = 0; t < mesh.triangles; t++) {
            for (int i = 0; i < 3; i++) {
                if (adiabatic(t, i)) {
                    sets.join(tail(t, i), head(t, i));
                }
            }
        }
        int[] number = new int[mesh.nodes];
        Arrays.fill(number, -1);
        for (int t = 0; t < mesh.triangles; t++) {
            for (int i = 0; i < 3; i++) {
                if (adiabatic(t, i)) {
                    int r = sets.root(tail(t, i));
                    if (number[r] < 0) {
                        number[r] = arcs++;
                    }
                    mesh.tag[3 * t + i] = ~number[r];
                    mesh.arc[tail(t, i)] = number[r];
                    mesh.arc[head(t, i)] = number[r];
                    mesh.arc[mesh.node[6 * t + 3 + i]] = number[r];
                }
            }
        }
        zeroArc = new boolean[arcs];
    }

    /** Finds the connected parts, a zero for each, and faults where one faces nothing. */
    void findParts(Lattice lattice) {
        boolean[] seen = new boolean[mesh.triangles];
        int[] queue = new int[mesh.triangles];
        for (int seed = 0; seed < mesh.triangles; seed++) {
            if (seen[seed]) {
                continue;
            }
            int size = 0;
            queue[size++] = seed;
            seen[seed] = true;
            boolean faces = false;
            int base = -1;
            boolean touchesAxis = false;
            for (int h = 0; h < size; h++) {
                int t = queue[h];
                for (int i = 0; i < 3; i++) {
                    int u = mesh.neighbour[3 * t + i];
                    if (u < 0) {
                        int tag = mesh.tag[3 * t + i];
                        faces |= tag >= 0;
                        touchesAxis |= axis(t, i);
                        base = adiabatic(t, i) && (base < 0 || ~tag < base) ? ~tag : base;
                    } else if (!seen[u]) {
                        seen[u] = true;
                        queue[size++] = u;
                    }
                }
            }
            if (touchesAxis) {
                zeroAtAxis(queue, size);
            } else if (base >= 0) {
                zeroArc[base] = true;
            } else {
                zeroNodes.add(mesh.node[6 * seed]);
            }
            if (!faces) {
                int o = 6 * seed;
                double cx = (mesh.x[mesh.node[o]] + mesh.x[mesh.node[o + 1]] + mesh.x[mesh.node[o + 2]]) / 3;
                double cy = (mesh.y[mesh.node[o]] + mesh.y[mesh.node[o + 1]] + mesh.y[mesh.node[o + 2]]) / 3;
                faults.add(new DrawingFault(
                        DrawingFault.About.PAINTED,
                        mesh.region[seed],
                        "the part of the section around " + lattice.place(cx, cy)
                                + " touches no environment, so its temperature is unknown; join it to the rest, give it a"
                                + " boundary, or take it away"));
            }
        }
    }

    /** The axis is a streamline of value zero, and so is every arc that meets it. */
    private void zeroAtAxis(int[] triangles, int count) {
        for (int h = 0; h < count; h++) {
            int t = triangles[h];
            for (int i = 0; i < 3; i++) {
                if (axis(t, i)) {
                    int a = mesh.arc[tail(t, i)];
                    int b = mesh.arc[head(t, i)];
                    if (a >= 0) {
                        zeroArc[a] = true;
                    }
                    if (b >= 0) {
                        zeroArc[b] = true;
                    }
                }
            }
        }
    }

    /**
     * Cuts the parts between rims that face environments.
     *
     * @return false where the mesh is too coarse for a cut: refine all of it and come again
     */
    boolean findCuts() {
        Sets chains = new Sets(mesh.nodes);
        Sets connected = new Sets(mesh.nodes);
        for (int t = 0; t < mesh.triangles; t++) {
            for (int i = 0; i < 3; i++) {
                connected.join(tail(t, i), head(t, i));
                if (outline(t, i) && !axis(t, i)) {
                    chains.join(tail(t, i), head(t, i));
                }
            }
        }
        // A node's rim is the root of its chain; -1 inside. A node is open if both its outline sides face environments.
        int[] rim = new int[mesh.nodes];
        boolean[] open = new boolean[mesh.nodes];
        boolean[] faces = new boolean[mesh.nodes];
        Arrays.fill(rim, -1);
        for (int t = 0; t < mesh.triangles; t++) {
            for (int i = 0; i < 3; i++) {
                if (axis(t, i)) {
                    // Not inside either: no cut passes through the axis.
                    rim[tail(t, i)] = rim[tail(t, i)] == -1 ? AT_AXIS : rim[tail(t, i)];
                    rim[head(t, i)] = rim[head(t, i)] == -1 ? AT_AXIS : rim[head(t, i)];
                } else if (outline(t, i)) {
                    int r = chains.root(tail(t, i));
                    rim[tail(t, i)] = r;
                    rim[head(t, i)] = r;
                    faces[r] |= mesh.tag[3 * t + i] >= 0;
                    open[tail(t, i)] = mesh.arc[tail(t, i)] < 0 && !(axisymmetric && mesh.x[tail(t, i)] == 0);
                }
            }
        }
        Arrays.fill(mesh.side, 0, 3 * mesh.triangles, 0);
        cuts = 0;
        int[] firstRim = new int[mesh.nodes];
        Arrays.fill(firstRim, -1);
        boolean[] joined = new boolean[mesh.nodes];
        for (int v = 0; v < mesh.nodes; v++) {
            int r = rim[v];
            if (r < 0 || !faces[r] || joined[r]) {
                continue;
            }
            int part = connected.root(v);
            if (firstRim[part] >= 0) {
                int[] way = way(rim, open, joined, r);
                if (way == null) {
                    return false;
                }
                if (cuts == MOST_CUTS) {
                    faults.add(new DrawingFault(
                            DrawingFault.About.WHOLE,
                            0,
                            "more than " + MOST_CUTS + " holes face environments; split the section, or close"
                                    + " holes that matter little"));
                    return true;
                }
                markLeft(way, 1 << cuts++);
            } else {
                firstRim[part] = r;
            }
            joined[r] = true;
        }
        return true;
    }

    /** The shortest way in sides from a rim through the inside to a joined rim, between open nodes; null if none. */
    private int[] way(int[] rim, boolean[] open, boolean[] joined, int start) {
        int[] before = new int[mesh.nodes];
        Arrays.fill(before, -2);
        int[] queue = new int[mesh.nodes];
        int size = 0;
        for (int v = 0; v < mesh.nodes; v++) {
            if (rim[v] == start && open[v]) {
                before[v] = -1;
                queue[size++] = v;
            }
        }
        int[][] around = nodesAround();
        for (int h = 0; h < size; h++) {
            int v = queue[h];
            for (int w : around[v]) {
                if (before[w] != -2) {
                    continue;
                }
                if (rim[w] == -1) {
                    before[w] = v;
                    queue[size++] = w;
                } else if (rim[w] >= 0 && open[w] && joined[rim[w]]) {
                    int length = 2;
                    for (int b = v; before[b] >= 0; b = before[b]) {
                        length++;
                    }
                    int[] way = new int[length];
                    way[length - 1] = w;
                    for (int i = length - 2, b = v; i >= 0; i--, b = before[b]) {
                        way[i] = b;
                    }
                    return way;
                }
            }
        }
        return null;
    }

    /** The corners joined to each corner by a side. */
    private int[][] nodesAround() {
        int[] count = new int[mesh.nodes];
        int[][] around = new int[mesh.nodes][];
        for (int pass = 0; pass < 2; pass++) {
            for (int t = 0; t < mesh.triangles; t++) {
                for (int i = 0; i < 3; i++) {
                    int u = mesh.neighbour[3 * t + i];
                    if (u > t) {
                        continue;
                    }
                    int a = tail(t, i);
                    int b = head(t, i);
                    if (pass == 1) {
                        around[a][count[a]] = b;
                        around[b][count[b]] = a;
                    }
                    count[a]++;
                    count[b]++;
                }
            }
            for (int v = 0; v < mesh.nodes && pass == 0; v++) {
                around[v] = new int[count[v]];
                count[v] = 0;
            }
        }
        return around;
    }

    /** Marks the corners on a way in all triangles left of it. */
    private void markLeft(int[] way, int bit) {
        for (int k = 0; k < way.length; k++) {
            int v = way[k];
            int ahead = k + 1 < way.length ? way[k + 1] : -1;
            int behind = k > 0 ? way[k - 1] : -1;
            if (ahead >= 0) {
                // Turn anticlockwise from the side that leads ahead to the one that leads back, or to the outline.
                int t = leftOf(v, ahead);
                while (t >= 0) {
                    int i = local(t, v);
                    mesh.side[3 * t + i] |= bit;
                    if (mesh.node[6 * t + (i + 2) % 3] == behind) {
                        break;
                    }
                    t = mesh.neighbour[3 * t + (i + 1) % 3];
                }
            } else {
                int t = leftOf(behind, v);
                while (t >= 0) {
                    int i = local(t, v);
                    mesh.side[3 * t + i] |= bit;
                    t = mesh.neighbour[3 * t + (i + 2) % 3];
                }
            }
        }
    }

    private int leftOf(int a, int b) {
        for (int t = 0; t < mesh.triangles; t++) {
            for (int i = 0; i < 3; i++) {
                if (tail(t, i) == a && head(t, i) == b) {
                    return t;
                }
            }
        }
        throw new IllegalStateException("internal error, please report: a cut leaves the mesh");
    }

    private int local(int t, int v) {
        return mesh.node[6 * t] == v ? 0 : mesh.node[6 * t + 1] == v ? 1 : 2;
    }
}
