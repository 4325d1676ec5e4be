package coldseam.conduction.solve;

import coldseam.conduction.elements.Elements;
import coldseam.conduction.mesh.Mesh;
import coldseam.conduction.mesh.MeshedSection;

/** The system for the stream function: maximise −∫ |curl s|²/k − ∫ R (∂s/∂t)² − 2 Σ T ∫ ∂s/∂t. */
final class StreamSystem implements ElementSystem {

    private final Mesh mesh;
    private final MeshedSection drawing;
    private final Elements elements;
    private final Unknowns unknowns;
    private final int cuts;
    private final double[] plain = new double[36];

    StreamSystem(Mesh mesh, MeshedSection drawing, Elements elements, Unknowns unknowns, int cuts) {
        this.mesh = mesh;
        this.drawing = drawing;
        this.elements = elements;
        this.unknowns = unknowns;
        this.cuts = cuts;
    }

    // Of the triangle last looked at: the local node that carries each node's value, and the factor.
    private final int[] carrier = new int[6];
    private final double[] factor = new double[6];

    /** Finds carriers; returns whether every node carries its own value. */
    private boolean carry(int t) {
        boolean own = true;
        for (int i = 0; i < 6; i++) {
            int v = mesh.node[6 * t + i];
            int by = unknowns.quarter(v);
            carrier[i] = i;
            factor[i] = by == v ? 1 : by < 0 ? 0 : 0.25;
            own &= by == v;
            for (int j = 0; j < 3 && by >= 0 && by != v; j++) {
                carrier[i] = mesh.node[6 * t + j] == by ? j : carrier[i];
            }
        }
        return own;
    }

    @Override
    public int unknownsOf(int t, int[] out) {
        if (unknowns.plainStream(t)) {
            return -1;
        }
        carry(t);
        for (int i = 0; i < 6; i++) {
            out[i] = factor[i] == 0 ? -1 : unknowns.stream(mesh.node[6 * t + carrier[i]]);
        }
        int n = 6;
        for (int rest = unknowns.cuts(t); rest != 0; rest &= rest - 1) {
            out[n++] = unknowns.cut(Integer.numberOfTrailingZeros(rest));
        }
        return n;
    }

    @Override
    public void matrix(int t, double[] out) {
        int all = unknowns.cuts(t);
        boolean own = carry(t);
        if (all == 0 && own) {
            elements.streamMatrix(t, out);
            return;
        }
        elements.streamMatrix(t, plain);
        int n = 6 + Integer.bitCount(all);
        for (int i = 0; i < 6; i++) {
            for (int j = 0; j < 6; j++) {
                out[n * i + j] = factor[i] * factor[j] * plain[6 * i + j];
            }
        }
        // A jump J adds J to every value seen from the left: its row is the sum of these nodes' rows.
        int c = 6;
        for (int rest = all; rest != 0; rest &= rest - 1, c++) {
            int bit = Integer.lowestOneBit(rest);
            for (int j = 0; j < c; j++) {
                double sum = 0;
                for (int i = 0; i < 6; i++) {
                    sum += (unknowns.cuts(t, carrier[i]) & bit) == 0 ? 0 : out[n * i + j];
                }
                out[n * c + j] = sum;
                out[n * j + c] = sum;
            }
            double itself = 0;
            for (int i = 0; i < 6; i++) {
                itself += (unknowns.cuts(t, carrier[i]) & bit) == 0 ? 0 : out[n * c + i];
            }
            out[n * c + c] = itself;
        }
    }

    /** (Output) the right-hand side where one environment is at 1 and the others at 0; b must be zero before. */
    void load(int environment, double[] b) {
        for (int t = 0; t < mesh.triangles; t++) {
            for (int i = 0; i < 3; i++) {
                int tag = mesh.boundary(t, i);
                if (tag >= 0 && drawing.environment[tag] == environment) {
                    add(t, (i + 1) % 3, 1, b);
                    add(t, (i + 2) % 3, -1, b);
                }
            }
        }
    }

    private void add(int t, int i, double value, double[] b) {
        int v = mesh.node[6 * t + i];
        if (unknowns.quarter(v) < 0) {
            return;
        }
        int d = unknowns.stream(v);
        if (d >= 0) {
            b[d] += value;
        }
        for (int rest = mesh.side[3 * t + i]; rest != 0; rest &= rest - 1) {
            b[unknowns.cut(Integer.numberOfTrailingZeros(rest))] += value;
        }
    }

    /** (Output) the six values of a solution on one triangle. */
    void values(int t, double[] x, double[] out) {
        carry(t);
        for (int i = 0; i < 6; i++) {
            int d = factor[i] == 0 ? -1 : unknowns.stream(mesh.node[6 * t + carrier[i]]);
            double value = d >= 0 ? x[d] : 0;
            int bits = cuts == 0 || factor[i] == 0 ? 0 : unknowns.cuts(t, carrier[i]);
            for (int rest = bits; rest != 0; rest &= rest - 1) {
                value += x[unknowns.cut(Integer.numberOfTrailingZeros(rest))];
            }
            out[i] = factor[i] * value;
        }
    }
}
