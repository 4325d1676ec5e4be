package coldseam.conduction.field;

import coldseam.conduction.Point;
import coldseam.conduction.arrange.Lattice;
import coldseam.conduction.mesh.Mesh;
import java.util.Arrays;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.map.primitive.MutableLongIntMap;
import org.eclipse.collections.impl.factory.Lists;
import org.eclipse.collections.impl.factory.primitive.LongIntMaps;

/**
 * Lines of one temperature: each triangle is divided into {@code PARTS}² small ones, in which the temperature is taken as
 * linear; the pieces are chained into polylines. Points on a side are computed in one direction only, so that both
 * triangles at it find the same crossings.
 */
final class Isotherm {

    private static final int PARTS = 4;

    private final Mesh mesh;
    private final double[] temperature;
    private final Lattice lattice;

    // Crossings, found by the pair of small-grid points they lie between; each has at most two pieces.
    private final MutableLongIntMap crossings = LongIntMaps.mutable.empty();
    private int count;
    private double[] x = new double[256];
    private double[] y = new double[256];
    private int[] link = new int[512];

    Isotherm(Mesh mesh, double[] temperature, Lattice lattice) {
        this.mesh = mesh;
        this.temperature = temperature;
        this.lattice = lattice;
    }

    ImmutableList<ImmutableList<Point>> lines(double value) {
        int points = (PARTS + 1) * (PARTS + 2) / 2;
        double[] v = new double[points];
        for (int t = 0; t < mesh.triangles; t++) {
            double least = Double.POSITIVE_INFINITY;
            double most = Double.NEGATIVE_INFINITY;
            for (int r = 0; r <= PARTS; r++) {
                for (int c = 0; c <= PARTS - r; c++) {
                    double at = at(t, r, c) - value;
                    v[index(r, c)] = at;
                    least = Math.min(least, at);
                    most = Math.max(most, at);
                }
            }
            if (least >= 0 || most < 0) {
                continue;
            }
            for (int r = 0; r < PARTS; r++) {
                for (int c = 0; c < PARTS - r; c++) {
                    small(t, v, r, c, r, c + 1, r + 1, c);
                    if (c < PARTS - r - 1) {
                        small(t, v, r + 1, c + 1, r + 1, c, r, c + 1);
                    }
                }
            }
        }
        return chain();
    }

    /** Small-grid point (r, c): barycentric coordinates (PARTS − r − c, c, r)/PARTS. */
    private static int index(int r, int c) {
        return r * (PARTS + 1) - r * (r - 1) / 2 + c;
    }

    private double at(int t, int r, int c) {
        int o = 6 * t;
        int a = PARTS - r - c;
        if (r == 0) {
            return along(o, 0, 1, 5, c);
        }
        if (a == 0) {
            return along(o, 1, 2, 3, r);
        }
        if (c == 0) {
            return along(o, 2, 0, 4, a);
        }
        double l0 = (double) a / PARTS;
        double l1 = (double) c / PARTS;
        double l2 = (double) r / PARTS;
        return l0 * (2 * l0 - 1) * temperature[mesh.node[o]]
                + l1 * (2 * l1 - 1) * temperature[mesh.node[o + 1]]
                + l2 * (2 * l2 - 1) * temperature[mesh.node[o + 2]]
                + 4 * l1 * l2 * temperature[mesh.node[o + 3]]
                + 4 * l2 * l0 * temperature[mesh.node[o + 4]]
                + 4 * l0 * l1 * temperature[mesh.node[o + 5]];
    }

    private double along(int o, int i, int j, int m, int parts) {
        int a = mesh.node[o + i];
        int b = mesh.node[o + j];
        int k = parts;
        if (a > b) {
            int swap = a;
            a = b;
            b = swap;
            k = PARTS - parts;
        }
        double s = (double) k / PARTS;
        return (1 - s) * (1 - 2 * s) * temperature[a]
                + s * (2 * s - 1) * temperature[b]
                + 4 * s * (1 - s) * temperature[mesh.node[o + m]];
    }

    private void small(int t, double[] v, int r0, int c0, int r1, int c1, int r2, int c2) {
        double a = v[index(r0, c0)];
        double b = v[index(r1, c1)];
        double c = v[index(r2, c2)];
        int one = -1;
        int two = -1;
        if (a < 0 != b < 0) {
            one = crossing(t, r0, c0, a, r1, c1, b);
        }
        if (b < 0 != c < 0) {
            int k = crossing(t, r1, c1, b, r2, c2, c);
            two = one < 0 ? two : k;
            one = one < 0 ? k : one;
        }
        if (c < 0 != a < 0) {
            two = crossing(t, r2, c2, c, r0, c0, a);
        }
        if (one >= 0 && two >= 0) {
            join(one, two);
            join(two, one);
        }
    }

    private void join(int from, int to) {
        link[link[2 * from] < 0 ? 2 * from : 2 * from + 1] = to;
    }

    private int crossing(int t, int r0, int c0, double a, int r1, int c1, double b) {
        long k0 = key(t, r0, c0);
        long k1 = key(t, r1, c1);
        boolean swap = k0 > k1;
        long low = swap ? k1 : k0;
        long high = swap ? k0 : k1;
        // Points are fewer than 2^31, so the mixed key is unique enough to be exact: low · 2^31 + high.
        long key = low << 31 | high;
        int old = crossings.getIfAbsent(key, -1);
        if (old >= 0) {
            return old;
        }
        if (count == x.length) {
            x = Arrays.copyOf(x, 2 * count);
            y = Arrays.copyOf(y, 2 * count);
            link = Arrays.copyOf(link, 4 * count);
        }
        double s = a / (a - b);
        double l1 = (c0 + s * (c1 - c0)) / PARTS;
        double l2 = (r0 + s * (r1 - r0)) / PARTS;
        int o = 6 * t;
        double x0 = mesh.x[mesh.node[o]];
        double y0 = mesh.y[mesh.node[o]];
        x[count] = lattice.metresX(x0 + l1 * (mesh.x[mesh.node[o + 1]] - x0) + l2 * (mesh.x[mesh.node[o + 2]] - x0));
        y[count] = lattice.metresY(y0 + l1 * (mesh.y[mesh.node[o + 1]] - y0) + l2 * (mesh.y[mesh.node[o + 2]] - y0));
        link[2 * count] = -1;
        link[2 * count + 1] = -1;
        crossings.put(key, count);
        return count++;
    }

    /** A number for each small-grid point, the same from both triangles at a side: corners, sides, inside. */
    private long key(int t, int r, int c) {
        int a = PARTS - r - c;
        int o = 6 * t;
        if (a == PARTS || c == PARTS || r == PARTS) {
            return (long) mesh.node[o + (a == PARTS ? 0 : c == PARTS ? 1 : 2)] * (PARTS + 1);
        }
        if (r == 0) {
            return side(o, 0, 1, 5, c);
        }
        if (a == 0) {
            return side(o, 1, 2, 3, r);
        }
        if (c == 0) {
            return side(o, 2, 0, 4, a);
        }
        return (long) mesh.nodes * (PARTS + 1) + (long) t * (PARTS + 1) * (PARTS + 1) + (long) r * (PARTS + 1) + c;
    }

    private long side(int o, int i, int j, int m, int parts) {
        int k = mesh.node[o + i] < mesh.node[o + j] ? parts : PARTS - parts;
        return (long) mesh.node[o + m] * (PARTS + 1) + k;
    }

    private ImmutableList<ImmutableList<Point>> chain() {
        MutableList<ImmutableList<Point>> lines = Lists.mutable.empty();
        boolean[] used = new boolean[count];
        for (int pass = 0; pass < 2; pass++) {
            for (int i = 0; i < count; i++) {
                // Open lines from their ends first, then closed ones from anywhere.
                if (used[i] || pass == 0 && link[2 * i + 1] >= 0) {
                    continue;
                }
                MutableList<Point> line = Lists.mutable.empty();
                int at = i;
                while (at >= 0 && !used[at]) {
                    used[at] = true;
                    line.add(new Point(x[at], y[at]));
                    int next = link[2 * at];
                    at = next >= 0 && !used[next] ? next : link[2 * at + 1];
                }
                if (pass == 1) {
                    line.add(line.getFirst());
                }
                if (line.size() > 1) {
                    lines.add(line.toImmutable());
                }
            }
        }
        return lines.toImmutable();
    }
}
