package coldseam.conduction.mesh;

import java.util.Arrays;

/** Builds the first mesh from the painted triangles of a constrained triangulation. */
final class CoarseMesh {

    private final ConstrainedTriangulation from;
    private final int[] edgeFrom;
    private final int[] edgeLeft;
    private final int[] edgeRight;
    private final int[] edgePath;

    private final boolean axisymmetric;

    CoarseMesh(
            boolean axisymmetric,
            ConstrainedTriangulation from,
            int[] edgeFrom,
            int[] edgeLeft,
            int[] edgeRight,
            int[] edgePath) {
        this.axisymmetric = axisymmetric;
        this.from = from;
        this.edgeFrom = edgeFrom;
        this.edgeLeft = edgeLeft;
        this.edgeRight = edgeRight;
        this.edgePath = edgePath;
    }

    Mesh mesh() {
        int[] region = new Grading(from, regions()).run();
        int[] number = new int[from.triangles];
        int painted = 0;
        for (int t = 0; t < from.triangles; t++) {
            number[t] = region[t] < 0 ? -1 : painted++;
        }
        Mesh mesh = new Mesh(Math.max(64, 4 * painted), Math.max(128, 10 * painted));
        int[] corner = new int[3 * from.triangles];
        Arrays.fill(corner, -1);
        corners(mesh, number, corner, 0, from.firstFree());
        mesh.drawn = mesh.nodes;
        corners(mesh, number, corner, from.firstFree(), Integer.MAX_VALUE);
        int[] middle = new int[3 * from.triangles];
        Arrays.fill(middle, -1);
        for (int t = 0; t < from.triangles; t++) {
            if (number[t] < 0) {
                continue;
            }
            int[] n = new int[3];
            int[] g = new int[3];
            for (int i = 0; i < 3; i++) {
                int u = from.neighbour[3 * t + i];
                n[i] = u < 0 ? -1 : number[u];
                int a = corner[3 * t + (i + 1) % 3];
                int b = corner[3 * t + (i + 2) % 3];
                if (middle[3 * t + i] < 0) {
                    int m = mesh.addNode(0.5 * (mesh.x[a] + mesh.x[b]), 0.5 * (mesh.y[a] + mesh.y[b]));
                    middle[3 * t + i] = m;
                    if (n[i] >= 0) {
                        middle[3 * u + across(u, t)] = m;
                    }
                }
                // An adiabatic side is tagged -1 until the arcs are counted.
                g[i] = n[i] >= 0 ? 0 : edgePath[from.constraint[3 * t + i]];
                if (axisymmetric && n[i] < 0 && mesh.x[a] == 0 && mesh.x[b] == 0) {
                    g[i] = Mesh.AXIS;
                }
            }
            int made = mesh.addTriangle();
            int o = 3 * t;
            mesh.set(
                    made,
                    corner[o],
                    corner[o + 1],
                    corner[o + 2],
                    middle[o],
                    middle[o + 1],
                    middle[o + 2],
                    n[0],
                    n[1],
                    n[2],
                    g[0],
                    g[1],
                    g[2]);
            mesh.region[made] = region[t];
        }
        return mesh;
    }

    private int across(int u, int t) {
        int o = 3 * u;
        return from.neighbour[o] == t ? 0 : from.neighbour[o + 1] == t ? 1 : 2;
    }

    /** The region of every triangle: known beside an edge, the same across a side that is none. */
    private int[] regions() {
        int[] region = new int[from.triangles];
        Arrays.fill(region, -2);
        int[] queue = new int[from.triangles];
        int size = 0;
        for (int t = 0; t < from.triangles; t++) {
            for (int i = 0; i < 3 && region[t] == -2; i++) {
                int e = from.constraint[3 * t + i];
                if (e >= 0) {
                    region[t] = from.corner[3 * t + (i + 1) % 3] == edgeFrom[e] ? edgeLeft[e] : edgeRight[e];
                    queue[size++] = t;
                }
            }
        }
        for (int head = 0; head < size; head++) {
            int t = queue[head];
            for (int i = 0; i < 3; i++) {
                int u = from.neighbour[3 * t + i];
                if (u >= 0 && region[u] == -2 && from.constraint[3 * t + i] < 0) {
                    region[u] = region[t];
                    queue[size++] = u;
                }
            }
        }
        for (int t = 0; t < from.triangles; t++) {
            if (region[t] == -2) {
                region[t] = -1;
            }
        }
        return region;
    }

    /**
     * One node for each fan of painted triangles around a point of a range: where two parts of the section touch in one
     * point only, they do not share the node, so that no heat and no constraint passes through a point.
     */
    private void corners(Mesh mesh, int[] number, int[] corner, int first, int end) {
        for (int t = 0; t < from.triangles; t++) {
            for (int i = 0; i < 3; i++) {
                int p = from.corner[3 * t + i];
                if (number[t] < 0 || corner[3 * t + i] >= 0 || p < first || p >= end) {
                    continue;
                }
                int node = mesh.addNode(from.x(p), from.y(p));
                fan(corner, number, t, i, node, 1);
                fan(corner, number, t, i, node, 2);
            }
        }
    }

    /** Gives a node to the triangles around a corner, turning one way (across the side i + turn) until it stops. */
    private void fan(int[] corner, int[] number, int t, int i, int node, int turn) {
        int u = t;
        int j = i;
        while (true) {
            corner[3 * u + j] = node;
            int p = from.corner[3 * u + j];
            int v = from.neighbour[3 * u + (j + turn) % 3];
            if (v < 0 || v == t || number[v] < 0) {
                return;
            }
            int o = 3 * v;
            u = v;
            j = from.corner[o] == p ? 0 : from.corner[o + 1] == p ? 1 : 2;
            if (corner[o + j] == node && turn == 2) {
                return;
            }
        }
    }
}
