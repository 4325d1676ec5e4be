package coldseam.conduction.mesh;

import java.util.Arrays;

/** Finds the triangle at a point through a grid of boxes, each holding the triangles that touch it. */
public final class TriangleIndex {

    private final Mesh mesh;
    private final double close;
    private final double slack;
    private final int across;
    private final int up;
    private final double left;
    private final double low;
    private final double width;
    private final double height;
    private final int[] start;
    private final int[] held;

    /** @param close lattice steps: how far beside the outline a point still finds its triangle */
    public TriangleIndex(Mesh mesh, double close) {
        this.mesh = mesh;
        this.close = close;
        this.slack = close + 1;
        double l = Double.POSITIVE_INFINITY;
        double r = Double.NEGATIVE_INFINITY;
        double b = Double.POSITIVE_INFINITY;
        double h = Double.NEGATIVE_INFINITY;
        for (int v = 0; v < mesh.nodes; v++) {
            l = Math.min(l, mesh.x[v]);
            r = Math.max(r, mesh.x[v]);
            b = Math.min(b, mesh.y[v]);
            h = Math.max(h, mesh.y[v]);
        }
        int boxes = Math.max(1, (int) Math.sqrt(mesh.triangles));
        across = boxes;
        up = boxes;
        left = l;
        low = b;
        width = (r - l) / across;
        height = (h - b) / up;
        start = new int[across * up + 1];
        fill(null);
        for (int i = 0; i < across * up; i++) {
            start[i + 1] += start[i];
        }
        held = new int[start[across * up]];
        int[] next = Arrays.copyOf(start, across * up);
        fill(next);
    }

    private void fill(int[] next) {
        for (int t = 0; t < mesh.triangles; t++) {
            int o = 6 * t;
            double x0 = mesh.x[mesh.node[o]];
            double x1 = mesh.x[mesh.node[o + 1]];
            double x2 = mesh.x[mesh.node[o + 2]];
            double y0 = mesh.y[mesh.node[o]];
            double y1 = mesh.y[mesh.node[o + 1]];
            double y2 = mesh.y[mesh.node[o + 2]];
            int c0 = column(Math.min(x0, Math.min(x1, x2)) - slack);
            int c1 = column(Math.max(x0, Math.max(x1, x2)) + slack);
            int r0 = row(Math.min(y0, Math.min(y1, y2)) - slack);
            int r1 = row(Math.max(y0, Math.max(y1, y2)) + slack);
            for (int r = r0; r <= r1; r++) {
                for (int c = c0; c <= c1; c++) {
                    if (next == null) {
                        start[r * across + c + 1]++;
                    } else {
                        held[next[r * across + c]++] = t;
                    }
                }
            }
        }
    }

    private int column(double x) {
        return Math.max(0, Math.min(across - 1, (int) ((x - left) / width)));
    }

    private int row(double y) {
        return Math.max(0, Math.min(up - 1, (int) ((y - low) / height)));
    }

    /**
     * The triangle at a point, or the nearest of those close to it; -1 if none.
     *
     * @param x lattice steps
     * @param y lattice steps
     * @param l (Output) its three barycentric coordinates, none below zero
     */
    public int find(double x, double y, double[] l) {
        if (!(x >= left - slack
                && x <= left + across * width + slack
                && y >= low - slack
                && y <= low + up * height + slack)) {
            return -1;
        }
        int box = row(y) * across + column(x);
        int best = -1;
        double least = close;
        for (int i = start[box]; i < start[box + 1]; i++) {
            double outside = outside(held[i], x, y, l);
            if (outside <= 0) {
                return held[i];
            }
            if (outside < least) {
                least = outside;
                best = held[i];
            }
        }
        if (best >= 0) {
            outside(best, x, y, l);
            double sum = 0;
            for (int i = 0; i < 3; i++) {
                l[i] = Math.max(0, l[i]);
                sum += l[i];
            }
            for (int i = 0; i < 3; i++) {
                l[i] /= sum;
            }
        }
        return best;
    }

    /** How far a point lies beyond the farthest of t's three sides, lattice steps; not above 0 inside. */
    private double outside(int t, double x, double y, double[] l) {
        int o = 6 * t;
        double most = Double.NEGATIVE_INFINITY;
        double area2 = 0;
        for (int i = 0; i < 3; i++) {
            int a = mesh.node[o + (i + 1) % 3];
            int b = mesh.node[o + (i + 2) % 3];
            double dx = mesh.x[b] - mesh.x[a];
            double dy = mesh.y[b] - mesh.y[a];
            double cross = dx * (y - mesh.y[a]) - dy * (x - mesh.x[a]);
            l[i] = cross;
            area2 += cross;
            most = Math.max(most, -cross / Math.sqrt(dx * dx + dy * dy));
        }
        for (int i = 0; i < 3; i++) {
            l[i] /= area2;
        }
        return most;
    }
}
