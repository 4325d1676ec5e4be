package coldseam.conduction.solve;

import coldseam.conduction.mesh.Mesh;
import coldseam.conduction.mesh.MeshedSection;
import coldseam.conduction.mesh.Topology;
import java.util.Arrays;

/**
 * Which node of a mesh is which unknown of the two systems. Both are numbered alike: nodes, then arcs, then cuts; the
 * temperature has no use for the last two, the stream function none for nodes on arcs.
 */
public final class Unknowns {

    private final MeshedSection drawing;
    private final Topology topology;
    private final Mesh mesh;

    /** The environments that prescribe a node's temperature: two different ones where it jumps, else the same twice. */
    private int[] prescribedBy = new int[0];

    private int[] alsoPrescribedBy = new int[0];
    /** The stream unknown of each arc, -1 where it is the zero. */
    private final int[] arcUnknown;

    private boolean[] zeroNode = new boolean[0];
    private final boolean anyPrescribed;
    private final boolean axisymmetric;
    private int[] quarter = new int[0];
    /** How many unknowns the two systems have together. */
    int total;
    /** How many nodes have two prescribed temperatures. */
    int jumps;

    Unknowns(MeshedSection drawing, Topology topology, boolean axisymmetric) {
        this.drawing = drawing;
        this.topology = topology;
        this.mesh = drawing.mesh;
        this.arcUnknown = new int[topology.arcs];
        boolean any = false;
        for (double r : drawing.resistance) {
            any |= r == 0;
        }
        anyPrescribed = any;
        this.axisymmetric = axisymmetric;
    }

    void number() {
        int free = 0;
        for (int a = 0; a < topology.arcs; a++) {
            arcUnknown[a] = mesh.nodes + a;
        }
        if (zeroNode.length < mesh.nodes) {
            zeroNode = new boolean[mesh.nodes + mesh.nodes / 2];
        }
        for (int a = 0; a < topology.arcs; a++) {
            if (topology.zeroArc[a]) {
                arcUnknown[a] = -1;
                free--;
            }
        }
        for (int i = 0; i < topology.zeroNodes.size(); i++) {
            zeroNode[topology.zeroNodes.get(i)] = true;
            free--;
        }
        free += topology.arcs + topology.cuts;
        for (int v = 0; v < mesh.nodes; v++) {
            free += mesh.arc[v] < 0 ? 2 : 1;
        }
        if (axisymmetric) {
            findQuarters();
        }
        jumps = 0;
        if (anyPrescribed) {
            free -= findPrescribed();
        }
        total = free;
    }

    /** Finds the side middles that carry a quarter of a corner's stream value, so that s grows as r² from the axis. */
    private void findQuarters() {
        if (quarter.length < mesh.nodes) {
            quarter = new int[mesh.nodes + mesh.nodes / 2];
        }
        Arrays.fill(quarter, 0, mesh.nodes, -1);
        for (int t = 0; t < mesh.triangles; t++) {
            for (int i = 0; i < 3; i++) {
                if (mesh.neighbour[3 * t + i] >= 0) {
                    continue;
                }
                int o = 6 * t;
                int i1 = (i + 1) % 3;
                int i2 = (i + 2) % 3;
                if (mesh.tag[3 * t + i] == Mesh.AXIS) {
                    quarter[mesh.node[o + 3 + i1]] = mesh.node[o + i];
                    quarter[mesh.node[o + 3 + i2]] = mesh.node[o + i];
                } else if (mesh.tag[3 * t + i] >= 0 && mesh.x[mesh.node[o + i1]] == 0) {
                    quarter[mesh.node[o + 3 + i]] = mesh.node[o + i2];
                } else if (mesh.tag[3 * t + i] >= 0 && mesh.x[mesh.node[o + i2]] == 0) {
                    quarter[mesh.node[o + 3 + i]] = mesh.node[o + i1];
                }
            }
        }
    }

    /**
     * The corner whose stream value a node carries: v itself with factor 1, with factor ¼ the corner across from the axis,
     * or -1 on the axis, where it is zero.
     */
    int quarter(int v) {
        return !axisymmetric ? v : mesh.x[v] == 0 ? -1 : quarter[v] >= 0 ? quarter[v] : v;
    }

    private int findPrescribed() {
        if (prescribedBy.length < mesh.nodes) {
            prescribedBy = new int[mesh.nodes + mesh.nodes / 2];
            alsoPrescribedBy = new int[mesh.nodes + mesh.nodes / 2];
        }
        Arrays.fill(prescribedBy, 0, mesh.nodes, -1);
        Arrays.fill(alsoPrescribedBy, 0, mesh.nodes, -1);
        for (int t = 0; t < mesh.triangles; t++) {
            for (int i = 0; i < 3; i++) {
                int b = mesh.boundary(t, i);
                if (b >= 0 && drawing.resistance[b] == 0) {
                    prescribe(mesh.node[6 * t + (i + 1) % 3], drawing.environment[b]);
                    prescribe(mesh.node[6 * t + (i + 2) % 3], drawing.environment[b]);
                    prescribe(mesh.node[6 * t + 3 + i], drawing.environment[b]);
                }
            }
        }
        int count = 0;
        for (int v = 0; v < mesh.nodes; v++) {
            count += prescribedBy[v] >= 0 ? 1 : 0;
            jumps += prescribedBy[v] != alsoPrescribedBy[v] ? 1 : 0;
        }
        return count;
    }

    private void prescribe(int v, int environment) {
        if (prescribedBy[v] < 0) {
            prescribedBy[v] = environment;
            alsoPrescribedBy[v] = environment;
        } else if (prescribedBy[v] != environment) {
            alsoPrescribedBy[v] = environment;
        }
    }

    /** How many numbers are in use. */
    int all() {
        return mesh.nodes + topology.arcs + topology.cuts;
    }

    int cut(int c) {
        return mesh.nodes + topology.arcs + c;
    }

    /** The stream unknown of a node, -1 where it is the zero. */
    int stream(int v) {
        int a = mesh.arc[v];
        return a >= 0 ? arcUnknown[a] : zeroNode[v] ? -1 : v;
    }

    boolean prescribed(int v) {
        return anyPrescribed && prescribedBy[v] >= 0;
    }

    /** Whether two environments prescribe different temperatures here. */
    boolean jumps(int v) {
        return anyPrescribed && prescribedBy[v] != alsoPrescribedBy[v];
    }

    /** Whether a set of environments holds only one of the two that prescribe a node. */
    boolean splits(int v, long set) {
        return (set >>> prescribedBy[v] & 1) != (set >>> alsoPrescribedBy[v] & 1);
    }

    /** The prescribed temperature of a node, the mean of both where it jumps. */
    double prescribed(int v, double[] ambient) {
        return 0.5 * (ambient[prescribedBy[v]] + ambient[alsoPrescribedBy[v]]);
    }

    /** The cuts a local node of a triangle sees from the left, as bits. */
    int cuts(int t, int i) {
        int o = 3 * t;
        return i < 3 ? mesh.side[o + i] : mesh.side[o + (i + 1) % 3] & mesh.side[o + (i + 2) % 3];
    }

    /** The cuts any corner of a triangle sees from the left, as bits. */
    int cuts(int t) {
        int o = 3 * t;
        return topology.cuts == 0 ? 0 : mesh.side[o] | mesh.side[o + 1] | mesh.side[o + 2];
    }

    /** Whether all six nodes of a triangle are stream unknowns of their own and no cut touches it. */
    boolean plainStream(int t) {
        int o = 6 * t;
        if (cuts(t) != 0) {
            return false;
        }
        for (int i = o; i < o + 6; i++) {
            int v = mesh.node[i];
            if (mesh.arc[v] >= 0 || zeroNode[v] || quarter(v) != v) {
                return false;
            }
        }
        return true;
    }

    /** (Output) the arcs' and cuts' unknowns a triangle has besides its nodes; returns how many, repeats included. */
    int extras(int t, int[] out) {
        int n = 0;
        for (int i = 6 * t; i < 6 * t + 6; i++) {
            int a = mesh.arc[mesh.node[i]];
            if (a >= 0 && arcUnknown[a] >= 0) {
                out[n++] = arcUnknown[a];
            }
        }
        for (int rest = cuts(t); rest != 0; rest &= rest - 1) {
            out[n++] = cut(Integer.numberOfTrailingZeros(rest));
        }
        return n;
    }
}
