package coldseam.conduction;

import java.util.Arrays;

/** Which node of a mesh is which unknown of the two systems. */
final class Unknowns {

    private final Drawing drawing;
    private final Topology topology;
    private final Mesh mesh;

    /** The temperature unknown of each node, -1 where it is prescribed. */
    int[] temperature = new int[0];
    /** The stream function unknown of each node, -1 where it is the zero. Cuts follow after the arcs. */
    int[] stream = new int[0];
    /** The environments that prescribe a node's temperature: two different ones where it jumps, else the same twice. */
    int[] prescribedBy = new int[0];

    int[] alsoPrescribedBy = new int[0];
    int temperatures;
    int streams;
    int firstCut;
    /** How many nodes have two prescribed temperatures. */
    int jumps;

    Unknowns(Drawing drawing, Topology topology) {
        this.drawing = drawing;
        this.topology = topology;
        this.mesh = drawing.mesh;
    }

    void number() {
        if (temperature.length < mesh.nodes) {
            int room = mesh.nodes + mesh.nodes / 2;
            temperature = new int[room];
            stream = new int[room];
            prescribedBy = new int[room];
            alsoPrescribedBy = new int[room];
        }
        Arrays.fill(prescribedBy, 0, mesh.nodes, -1);
        Arrays.fill(alsoPrescribedBy, 0, mesh.nodes, -1);
        for (int t = 0; t < mesh.triangles; t++) {
            for (int i = 0; i < 3; i++) {
                int b = mesh.neighbour[3 * t + i] < 0 ? mesh.tag[3 * t + i] : -1;
                if (b >= 0 && drawing.resistance[b] == 0) {
                    prescribe(mesh.node[6 * t + (i + 1) % 3], drawing.environment[b]);
                    prescribe(mesh.node[6 * t + (i + 2) % 3], drawing.environment[b]);
                    prescribe(mesh.node[6 * t + 3 + i], drawing.environment[b]);
                }
            }
        }
        int[] arcUnknown = new int[topology.arcs];
        streams = 0;
        for (int p = 0; p < topology.parts; p++) {
            if (topology.zero[p] >= 0) {
                arcUnknown[topology.zero[p]] = -1;
            }
        }
        for (int a = 0; a < topology.arcs; a++) {
            if (arcUnknown[a] == 0) {
                arcUnknown[a] = streams++;
            }
        }
        firstCut = streams;
        streams += topology.cuts;
        temperatures = 0;
        jumps = 0;
        Arrays.fill(stream, 0, mesh.nodes, 0);
        for (int p = 0; p < topology.parts; p++) {
            if (topology.zero[p] < 0) {
                stream[~topology.zero[p]] = -1;
            }
        }
        for (int v = 0; v < mesh.nodes; v++) {
            temperature[v] = prescribedBy[v] >= 0 ? -1 : temperatures++;
            jumps += prescribedBy[v] != alsoPrescribedBy[v] ? 1 : 0;
            if (mesh.arc[v] >= 0) {
                stream[v] = arcUnknown[mesh.arc[v]];
            } else {
                stream[v] = stream[v] < 0 ? -1 : streams++;
            }
        }
    }

    private void prescribe(int v, int environment) {
        if (prescribedBy[v] < 0) {
            prescribedBy[v] = environment;
            alsoPrescribedBy[v] = environment;
        } else if (prescribedBy[v] != environment) {
            alsoPrescribedBy[v] = environment;
        }
    }

    /** The prescribed temperature of a node, the mean of both where it jumps. */
    double prescribed(int v, double[] ambient) {
        return 0.5 * (ambient[prescribedBy[v]] + ambient[alsoPrescribedBy[v]]);
    }
}
