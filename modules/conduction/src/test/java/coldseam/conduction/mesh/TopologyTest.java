package coldseam.conduction.mesh;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.conduction.Sketch;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Arcs, parts and cuts of sections whose number is known beforehand. */
class TopologyTest {

    /** The point at a share of the way around a block of 1 m, from its lower left corner. */
    private static double[] around(double share) {
        double way = 4 * share;
        int side = (int) way;
        double at = 1000 * (way - side);
        return switch (side % 4) {
            case 0 -> new double[] {at, 0};
            case 1 -> new double[] {1000, at};
            case 2 -> new double[] {1000 - at, 1000};
            default -> new double[] {0, 1000 - at};
        };
    }

    /** Blocks side by side, 2 m apart, each with boundaries around it and gaps between them. */
    private static Sketch blocks(int count, int boundaries, int gap) {
        Sketch sketch = Sketch.of("blocks").environment("a", 1, 0.1).environment("b", 0, 0.1);
        for (int p = 0; p < count; p++) {
            double x = 2000 * p;
            sketch.rectangle(1, x, 0, x + 1000, 1000);
            for (int b = 0; b < boundaries; b++) {
                List<Double> path = new ArrayList<>();
                double start = (double) b / boundaries;
                double end = (b + 1 - 0.01 * gap) / boundaries;
                add(path, x, around(start));
                for (int corner = 1; corner < 4; corner++) {
                    if (0.25 * corner > start && 0.25 * corner < end) {
                        add(path, x, around(0.25 * corner));
                    }
                }
                add(path, x, around(end));
                sketch.boundary(
                        b % 2 == 0 ? "a" : "b",
                        path.stream().mapToDouble(d -> d).toArray());
            }
        }
        return sketch;
    }

    private static void add(List<Double> path, double x, double[] point) {
        path.add(x + point[0]);
        path.add(point[1]);
    }

    @Property(tries = 60, seed = "2026")
    void everyGapBetweenBoundariesIsAnArc(
            @ForAll @IntRange(min = 1, max = 4) int count,
            @ForAll @IntRange(min = 1, max = 7) int boundaries,
            @ForAll @IntRange(min = 3, max = 60) int gap) {
        MeshedSection drawing = new MeshedSection(blocks(count, boundaries, gap).section());
        Topology topology = drawing.topology();
        assertEquals(count * boundaries, topology.arcs);
        assertEquals(0, topology.cuts);
        int zeros = 0;
        for (boolean zero : topology.zeroArc) {
            zeros += zero ? 1 : 0;
        }
        assertEquals(count, zeros, "one arc of each part is zero");
        assertTrue(topology.zeroNodes.isEmpty());
        // Each arc's number is that of its sides and nodes, and of nothing else.
        double[] length = new double[topology.arcs];
        Mesh mesh = drawing.mesh;
        for (int t = 0; t < mesh.triangles; t++) {
            for (int i = 0; i < 3; i++) {
                int tag = mesh.neighbour[3 * t + i] < 0 ? mesh.tag[3 * t + i] : 0;
                if (tag < 0) {
                    int a = mesh.node[6 * t + (i + 1) % 3];
                    int b = mesh.node[6 * t + (i + 2) % 3];
                    length[~tag] += Math.hypot(mesh.x[a] - mesh.x[b], mesh.y[a] - mesh.y[b]);
                    assertEquals(~tag, mesh.arc[a]);
                    assertEquals(~tag, mesh.arc[b]);
                }
            }
        }
        for (double l : length) {
            // Both ends of a gap are rounded to the lattice.
            double step = drawing.lattice.step();
            assertEquals(4 * 0.01 * gap / boundaries, step * l, 3 * step);
        }
    }

    /** A part that faces an environment all around has no arc: one of its nodes is zero. */
    @Test
    void aPartWithoutArcHasAZeroNode() {
        Topology topology = new MeshedSection(Sketch.of("block")
                        .rectangle(1, 0, 0, 1000, 1000)
                        .environment("a", 1, 0.1)
                        .environment("b", 0, 0.1)
                        .boundary("a", 0, 0, 1000, 0, 1000, 1000)
                        .boundary("b", 1000, 1000, 0, 1000, 0, 0)
                        .section())
                .topology();
        assertEquals(0, topology.arcs);
        assertEquals(1, topology.zeroNodes.size());
    }

    /** A board of 1 m height with a row of square holes; each an environment, or adiabatic. */
    private static Sketch holes(int count, int open) {
        Sketch sketch = Sketch.of("holes")
                .environment("outside", 1, 0.1)
                .environment("holes", 0, 0.1)
                .rectangle(1, 0, 0, 1000 * count, 300)
                .rectangle(1, 0, 700, 1000 * count, 1000);
        double left = 0;
        for (int h = 0; h < count; h++) {
            double x0 = 1000 * h + 300 + 7 * h;
            double x1 = x0 + 400;
            sketch.rectangle(1, left, 300, x0, 700);
            left = x1;
            if (h < open) {
                sketch.boundary("holes", x0, 300, x1, 300, x1, 700, x0, 700, x0, 300);
            }
        }
        return sketch.rectangle(1, left, 300, 1000 * count, 700).boundary("outside", 0, 0, 0, 1000);
    }

    /** The outline is one arc, an adiabatic hole one more; an open hole is joined by one cut. */
    @Property(tries = 20, seed = "2026")
    void everyOpenHoleIsJoinedByOneCut(
            @ForAll @IntRange(min = 1, max = 5) int count, @ForAll @IntRange(min = 0, max = 5) int wanted) {
        int open = Math.min(count, wanted);
        MeshedSection drawing = new MeshedSection(holes(count, open).section());
        Topology topology = drawing.topology();
        assertEquals(1 + count - open, topology.arcs);
        assertEquals(open, topology.cuts);
        cutsAreWays(drawing.mesh, open);
        // Bisection hands the jumps on: the same ways, in more sides.
        drawing.mesh.refineAll();
        cutsAreWays(drawing.mesh, open);
    }

    /** The sides across which the jump of a cut differs form one way without branches, from the outline to the outline. */
    private static void cutsAreWays(Mesh mesh, int cuts) {
        boolean[] outline = new boolean[mesh.nodes];
        for (int t = 0; t < mesh.triangles; t++) {
            for (int i = 0; i < 3; i++) {
                if (mesh.neighbour[3 * t + i] < 0) {
                    outline[mesh.node[6 * t + (i + 1) % 3]] = true;
                    outline[mesh.node[6 * t + (i + 2) % 3]] = true;
                }
            }
        }
        for (int cut = 0; cut < cuts; cut++) {
            Map<Integer, Integer> degree = new HashMap<>();
            for (int t = 0; t < mesh.triangles; t++) {
                for (int i = 0; i < 3; i++) {
                    int u = mesh.neighbour[3 * t + i];
                    if (u < t) {
                        continue;
                    }
                    int a = mesh.node[6 * t + (i + 1) % 3];
                    int b = mesh.node[6 * t + (i + 2) % 3];
                    boolean atA = side(mesh, t, a, cut) != side(mesh, u, a, cut);
                    boolean atB = side(mesh, t, b, cut) != side(mesh, u, b, cut);
                    assertEquals(atA, atB, "a side lies on a cut with both ends or with none");
                    if (atA) {
                        degree.merge(a, 1, Integer::sum);
                        degree.merge(b, 1, Integer::sum);
                    }
                }
            }
            int ends = 0;
            assertTrue(degree.size() >= 2, "a cut joins two rims");
            for (Map.Entry<Integer, Integer> at : degree.entrySet()) {
                boolean end = outline[at.getKey()];
                ends += end ? 1 : 0;
                assertEquals(end ? 1 : 2, at.getValue(), "a cut ends on the outline and does not branch");
            }
            assertEquals(2, ends);
        }
        for (int t = 0; t < 3 * mesh.triangles; t++) {
            assertEquals(0, mesh.side[t] >>> cuts, "no other cut is marked");
        }
    }

    private static int side(Mesh mesh, int t, int node, int cut) {
        int i = mesh.node[6 * t] == node ? 0 : mesh.node[6 * t + 1] == node ? 1 : 2;
        return mesh.side[3 * t + i] >>> cut & 1;
    }

    /** On the axis the stream function is zero, and so on the arcs that meet it; an arc away from it is free. */
    @Test
    void arcsAtTheAxisAreZero() {
        Topology topology = new MeshedSection(Sketch.of("ring")
                        .axisymmetric()
                        .rectangle(1, 0, 0, 500, 200)
                        .environment("a", 20, 0.1)
                        .environment("b", 0, 0.1)
                        .boundary("a", 100, 0, 150, 0)
                        .boundary("b", 300, 0, 400, 0)
                        .boundary("b", 50, 200, 300, 200)
                        .section())
                .topology();
        // From the axis to a, between a and b, around the rim, and from b to the axis.
        assertEquals(4, topology.arcs);
        int zeros = 0;
        for (boolean zero : topology.zeroArc) {
            zeros += zero ? 1 : 0;
        }
        assertEquals(2, zeros);
    }
}
