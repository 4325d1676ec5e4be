package coldseam.conduction.solid;

import java.util.Arrays;

/**
 * Makes fluxes free of sources: a tree over the sub-cells that grows from the surfaces along the best-conducting sub-faces
 * (R. C. Prim, 1957), through which each sub-cell's surplus is pushed out, leaves first. What it changes is of second
 * order in the energy, and it spares the iterations that would remove the last of the divergence.
 *
 * <p>Best-conducting to an eighth of an octave: sub-faces wait in buckets by the first bits of their conductance.
 */
final class ConservationTree {

    /** The sign, exponent and three more bits of a double. */
    private static final int SHIFT = 49;

    private final FluxSystem system;
    /** The sub-cells from the roots to the leaves, and the side each was reached from. */
    private final int[] order;

    private final byte[] side;

    /** Sub-faces that the tree may grow through. Entry 6 v + s is sub-cell v reached through its side s. */
    private static final class Waiting {

        private final FluxSystem system;
        private final int[] bucketFirst = new int[1 << Long.SIZE - SHIFT];
        private final int[] next;
        private int entries;
        private int best;

        Waiting(FluxSystem system, Room room) {
            this.system = system;
            // The cycle that its rows are for is made when the tree has grown.
            room.finest.reserve(6 * system.n);
            next = room.finest.column;
            Arrays.fill(bucketFirst, -1);
        }

        void add(int v, int s) {
            int bucket = (int) (Double.doubleToRawLongBits(system.conductance(v, s)) >>> SHIFT);
            int entry = 6 * v + s;
            next[entry] = bucketFirst[bucket];
            bucketFirst[bucket] = entry;
            entries++;
            best = Math.max(best, bucket);
        }

        /** The one that conducts best, which waits no more. */
        int take() {
            while (bucketFirst[best] < 0) {
                best--;
            }
            int entry = bucketFirst[best];
            bucketFirst[best] = next[entry];
            entries--;
            return entry;
        }
    }

    /** @param room whose finest rows it grows in */
    ConservationTree(FluxSystem system, Room room) {
        this.system = system;
        order = new int[system.n];
        side = new byte[system.n];
        Arrays.fill(side, (byte) -1);
        grow(new Waiting(system, room));
    }

    private void grow(Waiting waiting) {
        for (int v = 0; v < system.n; v++) {
            for (int s = 0; s < 6; s++) {
                if (system.beyond(v, s) <= PaintedGrid.FIRST_SURFACE) {
                    waiting.add(v, s);
                }
            }
        }
        int count = 0;
        while (waiting.entries > 0) {
            int entry = waiting.take();
            int v = entry / 6;
            if (side[v] >= 0) {
                continue;
            }
            side[v] = (byte) (entry % 6);
            order[count++] = v;
            for (int s = 0; s < 6; s++) {
                int beyond = system.beyond(v, s);
                if (beyond >= 0 && side[beyond] < 0) {
                    waiting.add(beyond, s ^ 1);
                }
            }
        }
    }

    /** (Input, Output) takes each sub-cell's surplus out; used up is the residual −E q. */
    void push(double[][] q, double[] residual) {
        for (int i = order.length - 1; i >= 0; i--) {
            int v = order[i];
            int s = side[v];
            double surplus = residual[v];
            // More must flow out by the surplus; out is along the axis on a high side.
            q[s / 2][system.fluxThrough(v, s)] += s % 2 == 1 ? surplus : -surplus;
            int parent = system.beyond(v, s);
            if (parent >= 0) {
                residual[parent] += surplus;
            }
            residual[v] = 0;
        }
    }

    /** ∫ |div q| at most: what is left after rounding, and what rounding may hide. */
    static double divergence(FluxSystem system, double[][] q) {
        double sum = 0;
        for (int v = 0; v < system.n; v++) {
            double out = 0;
            double size = 0;
            for (int s = 0; s < 6; s++) {
                double through = q[s / 2][system.fluxThrough(v, s)];
                out += s % 2 == 1 ? through : -through;
                size += Math.abs(through);
            }
            sum += Math.abs(out) + 6 * 0x1p-53 * size;
        }
        double edge = Basis.MOST_OF_EDGE;
        return edge * edge * edge * sum * (1 + 8 * system.n * 0x1p-53);
    }
}
