package coldseam.conduction.solid;

import java.util.Arrays;

/**
 * A body's painted grid with its slabs cut: the solid cells, numbered, and what lies beyond their sides.
 *
 * <p>Cells are numbered with x fastest, then y, then z, solids only. Of a cell's side: the neighbouring cell's number,
 * {@link PaintedGrid#ADIABATIC}, or {@code PaintedGrid.FIRST_SURFACE − s} for surface s; six sides in the order of
 * {@link BoxSide}.
 */
final class Grid {

    final PaintedGrid painted;
    /** m, ascending, of each direction. */
    final double[][] plane;
    /** The slab of the painted grid that each slab is a piece of. */
    final int[][] parent;
    /** How many slabs there are in each direction. */
    final int[] n = new int[3];
    /** How many cells are solid. */
    final int cells;
    /** The slab of each cell in each direction. */
    final int[][] slab;
    /** W/(m·K). */
    final double[] k;

    final int[] side;

    private final int[] numbers;

    Grid(PaintedGrid painted) {
        this(painted, painted.plane, new int[][] {counting(painted.n[0]), counting(painted.n[1]), counting(painted.n[2])
        });
    }

    /** The painted grid cut at planes, which its own are among. */
    Grid(PaintedGrid painted, double[][] plane) {
        this(painted, plane, new int[][] {
            parents(painted, plane, 0), parents(painted, plane, 1), parents(painted, plane, 2)
        });
    }

    Grid(PaintedGrid painted, double[][] plane, int[][] parent) {
        this.painted = painted;
        this.plane = plane;
        this.parent = parent;
        for (int d = 0; d < 3; d++) {
            n[d] = parent[d].length;
        }
        numbers = new int[n[0] * n[1] * n[2]];
        int count = 0;
        for (int z = 0, at = 0; z < n[2]; z++) {
            for (int y = 0; y < n[1]; y++) {
                for (int x = 0; x < n[0]; x++, at++) {
                    numbers[at] =
                            painted.piece[painted.cell(parent[0][x], parent[1][y], parent[2][z])] < 0 ? -1 : count++;
                }
            }
        }
        cells = count;
        slab = new int[3][cells];
        k = new double[cells];
        side = new int[6 * cells];
        fill();
    }

    private void fill() {
        int[] stride = {1, n[0], n[0] * n[1]};
        for (int z = 0, at = 0; z < n[2]; z++) {
            for (int y = 0; y < n[1]; y++) {
                for (int x = 0; x < n[0]; x++, at++) {
                    int cell = numbers[at];
                    if (cell < 0) {
                        continue;
                    }
                    slab[0][cell] = x;
                    slab[1][cell] = y;
                    slab[2][cell] = z;
                    int above = painted.cell(parent[0][x], parent[1][y], parent[2][z]);
                    k[cell] = painted.conductivity(above);
                    for (int s = 0; s < 6; s++) {
                        int d = s / 2;
                        int here = slab[d][cell];
                        int next = here + (s % 2 == 0 ? -1 : 1);
                        boolean within = next >= 0 && next < n[d] && parent[d][next] == parent[d][here];
                        int beyond = painted.side[6 * above + s];
                        side[6 * cell + s] =
                                within || beyond >= 0 ? numbers[at + (s % 2 == 0 ? -stride[d] : stride[d])] : beyond;
                    }
                }
            }
        }
    }

    private static int[] parents(PaintedGrid painted, double[][] plane, int d) {
        int[] parents = new int[plane[d].length - 1];
        int parent = 0;
        for (int i = 0; i < parents.length; i++) {
            while (plane[d][i] >= painted.plane[d][parent + 1]) {
                parent++;
            }
            parents[i] = parent;
        }
        return parents;
    }

    private static int[] counting(int n) {
        int[] all = new int[n];
        Arrays.setAll(all, i -> i);
        return all;
    }

    /** The number of a cell, -1 where it is not solid. */
    int number(int x, int y, int z) {
        return numbers[(z * n[1] + y) * n[0] + x];
    }

    /** m, of a cell in a direction. */
    double size(int cell, int d) {
        int i = slab[d][cell];
        return plane[d][i + 1] - plane[d][i];
    }

    /** The surface a side is, -1 where it is none. */
    int surface(int cell, int s) {
        return Math.max(-1, PaintedGrid.FIRST_SURFACE - side[6 * cell + s]);
    }

    /** How many solid cells there were with other slabs. */
    int cellsWith(int[][] parents) {
        long[][] pieces = new long[3][];
        for (int d = 0; d < 3; d++) {
            pieces[d] = new long[painted.n[d]];
            for (int each : parents[d]) {
                pieces[d][each]++;
            }
        }
        long sum = 0;
        for (int z = 0; z < painted.n[2]; z++) {
            for (int y = 0; y < painted.n[1]; y++) {
                for (int x = 0; x < painted.n[0]; x++) {
                    sum += painted.piece[painted.cell(x, y, z)] < 0 ? 0 : pieces[0][x] * pieces[1][y] * pieces[2][z];
                }
            }
        }
        return (int) Math.min(Integer.MAX_VALUE, sum);
    }
}
