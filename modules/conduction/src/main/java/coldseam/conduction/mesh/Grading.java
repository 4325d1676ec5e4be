package coldseam.conduction.mesh;

import coldseam.conduction.arrange.LineArrangement;
import java.util.Arrays;
import java.util.PriorityQueue;

/**
 * Free points put into a triangulation where a short side has a far apex, so that triangles grow gradually from small
 * shapes to large ones.
 *
 * <p>Without them a pipe of 48 sides in 20 m of ground begins with 48 slivers from the pipe to the corners of the ground,
 * and bisection needs a hundred thousand triangles to be rid of them. The point stands over the middle of the short side
 * where it sees the side under {@link #APEX}, or at the circumcentre if that is nearer: an off-centre (A. Üngör,
 * Off-centers: a new type of Steiner points for computing size-optimal quality-guaranteed Delaunay triangulations, LATIN
 * 2004, Lecture Notes in Computer Science 2976, pp. 152–161). Shortest sides come first, so the points spread outwards.
 * Differs from the source in: edges are never cut, and a point that would come closer to an edge or a corner than a share
 * of its height is left out. So layers of any thinness keep their few long triangles, which suit them: heat crosses them
 * in straight lines.
 */
final class Grading {

    // The next three were chosen by counting unknowns over the eight timed sections at nine widths from 1e-3 to 5e-5:
    // with
    // them 5 % fewer are needed than without grading. At 5 to 10, 15 to 25 degrees and 0.2 to 0.5 it is 3 to 5 %.

    /** Angle under which a new point sees the short side, radians. */
    private static final double APEX = Math.toRadians(20);

    /** A triangle is left alone if its smallest angle is no smaller than this, radians. */
    private static final double SMALL = Math.toRadians(8);

    /** How near to an edge or a corner a point may come, as a share of its height over its short side. */
    private static final double CLEAR = 0.3;

    /** Sides shorter than this many lattice steps are not worth a point: rounding would spoil its place. */
    private static final double SHORT = 16;

    private final ConstrainedTriangulation in;
    private int[] region;

    private int[] stack = new int[64];
    private int[] seen = new int[0];
    private int round;

    // Triangles to look at, by the length of their shortest side, then by their number.
    private final PriorityQueue<Bad> bad = new PriorityQueue<>((p, q) -> {
        int order = Double.compare(p.shortest, q.shortest);
        return order != 0 ? order : Integer.compare(p.triangle, q.triangle);
    });

    private record Bad(double shortest, int triangle, int a, int b, int c) {}

    /** @param region of each triangle, negative outside everything painted */
    Grading(ConstrainedTriangulation in, int[] region) {
        this.in = in;
        this.region = region;
    }

    /**
     * Puts the points in.
     *
     * @return the region of each triangle there is now
     */
    int[] run() {
        for (int t = 0; t < in.triangles; t++) {
            look(t);
        }
        // Some points a corner are enough; this only guards against drawings nobody thought of.
        int most = 8 * in.firstFree() + 64;
        while (!bad.isEmpty() && in.free() < most) {
            Bad next = bad.poll();
            int o = 3 * next.triangle;
            if (in.corner[o] == next.a && in.corner[o + 1] == next.b && in.corner[o + 2] == next.c) {
                grade(next.triangle);
            }
        }
        return Arrays.copyOf(region, in.triangles);
    }

    private double length(int a, int b) {
        return Math.hypot(in.x(a) - in.x(b), in.y(a) - in.y(b));
    }

    /** The local index of the corner opposite t's shortest side. */
    private int shortest(int t) {
        int best = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < 3; i++) {
            double l = length(in.corner[3 * t + (i + 1) % 3], in.corner[3 * t + (i + 2) % 3]);
            if (l < least) {
                least = l;
                best = i;
            }
        }
        return best;
    }

    private void look(int t) {
        if (region[t] < 0) {
            return;
        }
        int i = shortest(t);
        int p = in.corner[3 * t + i];
        int a = in.corner[3 * t + (i + 1) % 3];
        int b = in.corner[3 * t + (i + 2) % 3];
        double side = length(a, b);
        double sine = 2 * area(p, a, b) / (length(p, a) * length(p, b));
        if (side >= SHORT && sine < Math.sin(SMALL)) {
            bad.add(new Bad(side, t, in.corner[3 * t], in.corner[3 * t + 1], in.corner[3 * t + 2]));
        }
    }

    private double area(int a, int b, int c) {
        return 0.5 * LineArrangement.orientation(in.x(a), in.y(a), in.x(b), in.y(b), in.x(c), in.y(c));
    }

    private void grade(int t) {
        int i = shortest(t);
        int p = in.corner[3 * t + i];
        int a = in.corner[3 * t + (i + 1) % 3];
        int b = in.corner[3 * t + (i + 2) % 3];
        double ux = in.x(b) - in.x(a);
        double uy = in.y(b) - in.y(a);
        double side = Math.hypot(ux, uy);
        // Height of the circumcentre over ab: half the side over the tangent of the angle at p.
        double wx = in.x(a) - in.x(p);
        double wy = in.y(a) - in.y(p);
        double vx = in.x(b) - in.x(p);
        double vy = in.y(b) - in.y(p);
        double centre = 0.5 * side * (wx * vx + wy * vy) / (wx * vy - wy * vx);
        double height = Math.min(centre, 0.5 * side / Math.tan(0.5 * APEX));
        long px = Math.round(0.5 * (in.x(a) + in.x(b)) - height * uy / side);
        long py = Math.round(0.5 * (in.y(a) + in.y(b)) + height * ux / side);
        int at = in.walk(t, px, py);
        if (at < 0 || !clear(at, px, py, CLEAR * height)) {
            return;
        }
        int before = in.triangles;
        int point = in.insertFree(at, px, py);
        if (region.length < in.triangles) {
            region = Arrays.copyOf(region, 2 * in.triangles);
        }
        Arrays.fill(region, before, in.triangles, region[at]);
        int first = in.triangleAt(point);
        int turn = first;
        do {
            look(turn);
            int o = 3 * turn;
            int k = in.corner[o] == point ? 0 : in.corner[o + 1] == point ? 1 : 2;
            turn = in.neighbour[o + (k + 1) % 3];
        } while (turn != first);
    }

    /** Whether no edge and no corner around comes nearer than a distance. */
    private boolean clear(int at, long px, long py, double least) {
        if (seen.length < in.triangles) {
            seen = Arrays.copyOf(seen, 2 * in.triangles);
        }
        round++;
        int depth = 0;
        stack[depth++] = at;
        seen[at] = round;
        while (depth > 0) {
            int t = stack[--depth];
            for (int i = 0; i < 3; i++) {
                int a = in.corner[3 * t + (i + 1) % 3];
                int b = in.corner[3 * t + (i + 2) % 3];
                if (distance(px, py, a, b) >= least) {
                    continue;
                }
                int u = in.neighbour[3 * t + i];
                if (u < 0
                        || in.constraint[3 * t + i] >= 0
                        || Math.hypot(in.x(a) - px, in.y(a) - py) < least
                        || Math.hypot(in.x(b) - px, in.y(b) - py) < least) {
                    return false;
                }
                if (seen[u] != round) {
                    seen[u] = round;
                    if (depth == stack.length) {
                        stack = Arrays.copyOf(stack, 2 * depth);
                    }
                    stack[depth++] = u;
                }
            }
        }
        return true;
    }

    /** From a point to the side ab. */
    private double distance(long px, long py, int a, int b) {
        double ux = in.x(b) - in.x(a);
        double uy = in.y(b) - in.y(a);
        double vx = px - in.x(a);
        double vy = py - in.y(a);
        double along = Math.max(0, Math.min(1, (ux * vx + uy * vy) / (ux * ux + uy * uy)));
        return Math.hypot(vx - along * ux, vy - along * uy);
    }
}
