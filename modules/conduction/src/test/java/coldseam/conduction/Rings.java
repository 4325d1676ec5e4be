package coldseam.conduction;

import java.util.Arrays;

/** Circles drawn as polygons, and sections between two rings; coordinates in the sketch's unit, x and y in turn. */
public final class Rings {

    private Rings() {}

    /** The inscribed polygon of n corners, half a step off the axes, so that no corner lies on a line of symmetry. */
    public static double[] circle(double cx, double cy, double radius, int n) {
        double[] c = new double[2 * n];
        for (int i = 0; i < n; i++) {
            double angle = 2 * Math.PI * (i + 0.5) / n;
            c[2 * i] = cx + radius * Math.cos(angle);
            c[2 * i + 1] = cy + radius * Math.sin(angle);
        }
        return c;
    }

    /** Half a circle around (0, cy) from below to above, of n sides, its ends on the axis x = 0. */
    static double[] halfCircle(double cy, double radius, int n) {
        double[] c = new double[2 * (n + 1)];
        for (int i = 0; i <= n; i++) {
            double angle = Math.PI * (i - 0.5 * n) / n;
            c[2 * i] = i == 0 || i == n ? 0 : radius * Math.cos(angle);
            c[2 * i + 1] = cy + radius * Math.sin(angle);
        }
        return c;
    }

    /** A path that ends where it began. */
    public static double[] closed(double[] ring) {
        double[] c = Arrays.copyOf(ring, ring.length + 2);
        c[ring.length] = ring[0];
        c[ring.length + 1] = ring[1];
        return c;
    }

    /** One outline for a ring and its hole: out and back along a bridge. */
    public static double[] around(double[] ring, double[] hole) {
        int n = ring.length / 2;
        int m = hole.length / 2;
        int nearest = 0;
        for (int i = 1; i < m; i++) {
            double before = Math.hypot(hole[2 * nearest] - ring[0], hole[2 * nearest + 1] - ring[1]);
            nearest = Math.hypot(hole[2 * i] - ring[0], hole[2 * i + 1] - ring[1]) < before ? i : nearest;
        }
        double[] c = new double[2 * (n + m + 2)];
        int k = 0;
        for (int i = 0; i <= n; i++) {
            c[k++] = ring[2 * (i % n)];
            c[k++] = ring[2 * (i % n) + 1];
        }
        for (int i = 0; i <= m; i++) {
            int j = (nearest + m - i) % m;
            c[k++] = hole[2 * j];
            c[k++] = hole[2 * j + 1];
        }
        return c;
    }

    /** The coupling from a hole at 1 to the ring around it at 0, conductivity 1. */
    static Interval between(double[] ring, double[] hole, double width) {
        return Sketch.of("ring")
                .polygon(1, around(ring, hole))
                .environment("inside", 1, 0)
                .environment("outside", 0, 0)
                .boundary("outside", closed(ring))
                .boundary("inside", closed(hole))
                .solve(width)
                .coupling("inside", "outside");
    }
}
