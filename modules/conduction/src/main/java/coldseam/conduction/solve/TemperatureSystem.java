package coldseam.conduction.solve;

import coldseam.conduction.elements.Elements;
import coldseam.conduction.mesh.Mesh;

/** The system for the temperature: minimise ∫ k|∇u|² + ∫ (u − T)²/R. */
final class TemperatureSystem implements ElementSystem {

    private final Mesh mesh;
    private final Elements elements;
    private final Unknowns unknowns;
    private final double[] matrix = new double[36];
    private final double[] load = new double[6];

    TemperatureSystem(Mesh mesh, Elements elements, Unknowns unknowns) {
        this.mesh = mesh;
        this.elements = elements;
        this.unknowns = unknowns;
    }

    @Override
    public int unknownsOf(int t, int[] out) {
        boolean plain = true;
        for (int i = 0; i < 6; i++) {
            int v = mesh.node[6 * t + i];
            boolean held = unknowns.prescribed(v);
            plain &= !held;
            out[i] = held ? -1 : v;
        }
        return plain ? -1 : 6;
    }

    @Override
    public void matrix(int t, double[] out) {
        elements.temperatureMatrix(t, out);
    }

    /** (Output) the right-hand side where one environment is at 1 and the others at 0; b must be zero before. */
    void load(int environment, double[] ambient, double[] b) {
        for (int t = 0; t < mesh.triangles; t++) {
            boolean outline = false;
            boolean held = false;
            for (int i = 0; i < 6; i++) {
                outline |= i < 3 && mesh.boundary(t, i) >= 0;
                held |= unknowns.prescribed(mesh.node[6 * t + i]);
            }
            if (outline) {
                elements.temperatureLoad(t, environment, load);
                for (int i = 0; i < 6; i++) {
                    b[mesh.node[6 * t + i]] += load[i];
                }
            }
            if (held) {
                elements.temperatureMatrix(t, matrix);
                for (int j = 0; j < 6; j++) {
                    int v = mesh.node[6 * t + j];
                    double value = unknowns.prescribed(v) ? unknowns.prescribed(v, ambient) : 0;
                    for (int i = 0; i < 6 && value != 0; i++) {
                        b[mesh.node[6 * t + i]] -= matrix[6 * i + j] * value;
                    }
                }
            }
        }
    }

    /** Puts the prescribed temperatures into a solution. */
    void prescribe(double[] ambient, double[] u) {
        for (int v = 0; v < mesh.nodes; v++) {
            if (unknowns.prescribed(v)) {
                u[v] = unknowns.prescribed(v, ambient);
            }
        }
    }
}
