package coldseam.conduction.mesh;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.conduction.Sketch;
import java.util.Arrays;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** What a mesh promises however it is bisected. */
class MeshTest {

    /** A wall with a slab, a thin sheet, a hole that is an environment and three faces. */
    private static Mesh mesh() {
        return new MeshedSection(Sketch.of("wall")
                        .rectangle(0.04, 0, 0, 160, 1000)
                        .rectangle(0.8, 160, 0, 360, 300)
                        .rectangle(0.8, 160, 500, 360, 1000)
                        .rectangle(0.8, 260, 300, 360, 500)
                        .rectangle(160, 0, 700, 160, 700.5)
                        .rectangle(2, 30, 100, 500, 207)
                        .environment("indoor", 1, 0.13)
                        .environment("outdoor", 0, 0.04)
                        .environment("duct", 0, 0.2)
                        .boundary("outdoor", 0, 1000, 0, 0)
                        .boundary("indoor", 360, 300, 360, 1000)
                        .boundary("duct", 160, 300, 260, 300, 260, 500, 160, 500, 160, 300)
                        .section())
                .mesh;
    }

    private static double distance(Mesh mesh, int a, int b) {
        return Math.hypot(mesh.x[a] - mesh.x[b], mesh.y[a] - mesh.y[b]);
    }

    /** Corners anticlockwise, middles in the middle, neighbours that share corners and middle. */
    private static void conforms(Mesh mesh) {
        for (int t = 0; t < mesh.triangles; t++) {
            assertTrue(mesh.area(t) > 0, "corners run anticlockwise");
            for (int i = 0; i < 3; i++) {
                int a = mesh.node[6 * t + (i + 1) % 3];
                int b = mesh.node[6 * t + (i + 2) % 3];
                int m = mesh.node[6 * t + 3 + i];
                assertEquals(0.5 * (mesh.x[a] + mesh.x[b]), mesh.x[m], 0, "a middle is in the middle");
                assertEquals(0.5 * (mesh.y[a] + mesh.y[b]), mesh.y[m], 0, "a middle is in the middle");
                int u = mesh.neighbour[3 * t + i];
                if (u < 0) {
                    continue;
                }
                int j = mesh.neighbour[3 * u] == t ? 0 : mesh.neighbour[3 * u + 1] == t ? 1 : 2;
                assertEquals(t, mesh.neighbour[3 * u + j], "neighbours know each other");
                assertEquals(b, mesh.node[6 * u + (j + 1) % 3], "neighbours share their corners");
                assertEquals(a, mesh.node[6 * u + (j + 2) % 3], "neighbours share their corners");
                assertEquals(m, mesh.node[6 * u + 3 + j], "neighbours share their middle");
            }
        }
    }

    private static double[] areas(Mesh mesh) {
        double[] area = new double[6];
        for (int t = 0; t < mesh.triangles; t++) {
            area[mesh.region[t]] += mesh.area(t);
        }
        return area;
    }

    /** Length of the outline by what it faces: three boundaries, then the arcs. */
    private static double[] lengths(Mesh mesh) {
        double[] length = new double[12];
        for (int t = 0; t < mesh.triangles; t++) {
            for (int i = 0; i < 3; i++) {
                if (mesh.neighbour[3 * t + i] < 0) {
                    int tag = mesh.tag[3 * t + i];
                    length[tag >= 0 ? tag : 3 + ~tag] +=
                            distance(mesh, mesh.node[6 * t + (i + 1) % 3], mesh.node[6 * t + (i + 2) % 3]);
                }
            }
        }
        return length;
    }

    private static double smallestAngle(Mesh mesh) {
        double least = Math.PI;
        for (int t = 0; t < mesh.triangles; t++) {
            for (int i = 0; i < 3; i++) {
                double b = distance(mesh, mesh.node[6 * t + i], mesh.node[6 * t + (i + 1) % 3]);
                double c = distance(mesh, mesh.node[6 * t + i], mesh.node[6 * t + (i + 2) % 3]);
                double sine = Math.min(1, 2 * mesh.area(t) / (b * c));
                least = Math.min(least, Math.asin(sine));
            }
        }
        return least;
    }

    private static void bisectAtRandom(Mesh mesh, Random random, int share) {
        for (int t = 0; t < mesh.triangles; t++) {
            mesh.error[t] = random.nextInt(share) == 0 ? 1 : 0;
        }
        // No half keeps as much as 0.9, so each marked triangle is cut once, and its neighbours as conformity asks.
        mesh.refine(0.9, Integer.MAX_VALUE);
    }

    @Property(tries = 25, seed = "2026")
    void randomBisectionsKeepTheMesh(
            @ForAll @IntRange(min = 0, max = 1_000_000) int dice,
            @ForAll @IntRange(min = 1, max = 12) int rounds,
            @ForAll @IntRange(min = 2, max = 20) int share) {
        Mesh mesh = mesh();
        conforms(mesh);
        double[] areas = areas(mesh);
        double[] lengths = lengths(mesh);
        double angle = smallestAngle(mesh);
        Random random = new Random(dice);
        for (int round = 0; round < rounds && mesh.triangles < 20_000; round++) {
            int before = mesh.triangles;
            int nodes = mesh.nodes;
            double[] x = Arrays.copyOf(mesh.x, nodes);
            double[] y = Arrays.copyOf(mesh.y, nodes);
            int[] arc = Arrays.copyOf(mesh.arc, nodes);
            int[] corners = corners(mesh);
            bisectAtRandom(mesh, random, share);
            conforms(mesh);
            // Nodes keep number, place and arc; corners remain corners; a new corner was a middle before, or is new.
            assertTrue(mesh.triangles >= before);
            for (int v = 0; v < nodes; v++) {
                assertTrue(mesh.x[v] == x[v] && mesh.y[v] == y[v] && mesh.arc[v] == arc[v], "a node moved");
            }
            int[] now = corners(mesh);
            for (int v = 0; v < nodes; v++) {
                assertTrue(now[v] >= corners[v], "a corner was lost");
            }
        }
        assertTrue(mesh.triangles > 20, "nothing was bisected");
        for (int r = 0; r < 6; r++) {
            assertEquals(areas[r], areas(mesh)[r], 1e-9 * areas[r], "area of region " + r);
        }
        for (int k = 0; k < lengths.length; k++) {
            assertEquals(lengths[k], lengths(mesh)[k], 1e-9 * lengths[0], "length of outline " + k);
        }
        // Bisecting longest sides at most halves the smallest angle: I. G. Rosenberg and F. Stenger, A lower bound on
        // the
        // angles of triangles constructed by bisecting the longest side, Mathematics of Computation 29, 1975, 390-395
        // (from memory).
        double least = smallestAngle(mesh);
        assertTrue(least >= 0.5 * angle * (1 - 1e-9), () -> "angle " + least + " after " + angle);
        arcsAreOnTheOutline(mesh);
    }

    private static int[] corners(Mesh mesh) {
        int[] corner = new int[mesh.nodes];
        for (int t = 0; t < mesh.triangles; t++) {
            for (int i = 0; i < 3; i++) {
                corner[mesh.node[6 * t + i]] = 1;
            }
        }
        return corner;
    }

    /** A node has an arc's number if and only if it lies on one of its sides. */
    private static void arcsAreOnTheOutline(Mesh mesh) {
        int[] arc = new int[mesh.nodes];
        Arrays.fill(arc, -1);
        for (int t = 0; t < mesh.triangles; t++) {
            for (int i = 0; i < 3; i++) {
                int tag = mesh.neighbour[3 * t + i] < 0 ? mesh.tag[3 * t + i] : 0;
                if (tag < 0) {
                    arc[mesh.node[6 * t + (i + 1) % 3]] = ~tag;
                    arc[mesh.node[6 * t + (i + 2) % 3]] = ~tag;
                    arc[mesh.node[6 * t + 3 + i]] = ~tag;
                }
            }
        }
        for (int v = 0; v < mesh.nodes; v++) {
            assertEquals(arc[v], mesh.arc[v], "node " + v);
        }
    }

    /** Every triangle is cut at least twice, and so quartered or finer. */
    @Test
    void refiningAllOfItCutsEveryTriangleTwice() {
        Mesh mesh = mesh();
        double[] area = new double[mesh.triangles];
        for (int t = 0; t < area.length; t++) {
            area[t] = mesh.area(t);
        }
        int before = mesh.triangles;
        mesh.refineAll();
        conforms(mesh);
        assertTrue(mesh.triangles >= 4 * before, () -> before + " then " + mesh.triangles);
        for (int t = 0; t < area.length; t++) {
            assertTrue(mesh.area(t) <= area[t] / 4 * (1 + 1e-12), "triangle " + t);
        }
    }

    /** The limit of nodes is passed by the nodes of one propagation at most. */
    @Test
    void refinementEndsAtTheLimitOfNodes() {
        Mesh mesh = mesh();
        for (int round = 0; round < 8; round++) {
            Arrays.fill(mesh.error, 0, mesh.triangles, 1);
            mesh.refine(1e-9, 5000);
        }
        conforms(mesh);
        assertTrue(mesh.nodes >= 5000 && mesh.nodes < 5200, () -> mesh.nodes + " nodes");
    }
}
