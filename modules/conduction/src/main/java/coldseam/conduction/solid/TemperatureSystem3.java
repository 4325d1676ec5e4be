package coldseam.conduction.solid;

import java.util.Arrays;

/**
 * The system for the temperature: minimise ∫ k|∇u|² + Σ ∫ (u − T)²/R over the functions of degree 2 in each direction.
 *
 * <p>Unknowns are the nodes of the solid cells, x fastest, then y, then z; a node on a surface without resistance is held
 * at its environment's temperature. Of a cell's 27 nodes node (a, b, c) is {@code row[9 cell + b + 3 c] + a}. The matrix
 * is applied cell by cell, as sums of products of the tables
 *
 * <pre>
 *   K = ⅓ [7 −8 1; −8 16 −8; 1 −8 7]     M = 1/30 [4 2 −1; 2 16 2; −1 2 4]
 *   A = k (h_y h_z/h_x K⊗M⊗M + h_x h_z/h_y M⊗K⊗M + h_x h_y/h_z M⊗M⊗K) + area/R M⊗M on the surfaces.
 * </pre>
 */
final class TemperatureSystem3 implements FlexibleCg.Operator {

    private static final int FREE = -1;
    /** Of node f of a side s, at 9 s + f: the row it lies in, and its place there. */
    private static final int[] FACE_ROW = new int[54];

    private static final int[] FACE_PLACE = new int[54];
    /** Of the i-th of the 18 halves of edges in a direction d, at 18 d + i: the row and place of its low end. */
    private static final int[] HALF_ROW = new int[54];

    private static final int[] HALF_PLACE = new int[54];
    /** Of the i-th of those halves the lumped weights in the two directions across. */
    private static final double[] HALF_ALONG = new double[18];

    private static final double[] HALF_ACROSS = new double[18];

    static {
        int[] at = new int[3];
        for (int s = 0; s < 6; s++) {
            for (int f = 0; f < 9; f++) {
                at[s / 2] = 2 * (s % 2);
                at[(s / 2 + 1) % 3] = f % 3;
                at[(s / 2 + 2) % 3] = f / 3;
                FACE_ROW[9 * s + f] = at[1] + 3 * at[2];
                FACE_PLACE[9 * s + f] = at[0];
            }
        }
        for (int i = 0; i < 18; i++) {
            HALF_ALONG[i] = Basis.LUMPED[i % 3];
            HALF_ACROSS[i] = Basis.LUMPED[i % 9 / 3];
        }
        for (int i = 0; i < 54; i++) {
            at[i / 18] = i % 18 / 9;
            at[(i / 18 + 1) % 3] = i % 3;
            at[(i / 18 + 2) % 3] = i % 9 / 3;
            HALF_ROW[i] = at[1] + 3 * at[2];
            HALF_PLACE[i] = at[0];
        }
    }

    private final Grid grid;
    /** How many nodes there are. */
    final int n;
    /** The node at the start of each of a cell's nine rows. */
    final int[] row;
    /** The node at a place of the sub-grid, -1 where none is. */
    private final int[] node;

    private final int[] held;
    private final int[] surfaces;
    /** The nine nodes of each of those, and its area over 900 times its resistance. */
    private final int[] onSurfaces;

    private final double[] throughSurfaces;
    /** Of each cell in each direction, at 3 cell + d: what its tables are multiplied by. */
    private final double[] scale;

    private final double[] local = new double[27];
    private final double[] m = new double[27];
    private final double[] s = new double[27];

    TemperatureSystem3(Grid grid) {
        this.grid = grid;
        int nx = 2 * grid.n[0] + 1;
        int ny = 2 * grid.n[1] + 1;
        node = new int[nx * ny * (2 * grid.n[2] + 1)];
        for (int cell = 0; cell < grid.cells; cell++) {
            for (int r = 0; r < 9; r++) {
                Arrays.fill(node, corner(cell, r), corner(cell, r) + 3, 1);
            }
        }
        int count = 0;
        for (int i = 0; i < node.length; i++) {
            node[i] = node[i] == 1 ? count++ : -1;
        }
        n = count;
        row = new int[9 * grid.cells];
        for (int i = 0; i < row.length; i++) {
            row[i] = node[corner(i / 9, i % 9)];
        }
        held = new int[n];
        Arrays.fill(held, FREE);
        surfaces = surfaces();
        onSurfaces = new int[9 * surfaces.length];
        throughSurfaces = new double[surfaces.length];
        for (int i = 0; i < surfaces.length; i++) {
            int face = surfaces[i];
            throughSurfaces[i] = area(face) / grid.painted.resistance(grid.surface(face / 6, face % 6)) / 900;
            for (int f = 0; f < 9; f++) {
                onSurfaces[9 * i + f] = onFace(face, f);
            }
        }
        scale = new double[3 * grid.cells];
        for (int cell = 0; cell < grid.cells; cell++) {
            double hx = grid.size(cell, 0);
            double hy = grid.size(cell, 1);
            double hz = grid.size(cell, 2);
            double k = grid.k[cell] / 2700;
            scale[3 * cell] = k * hy * hz / hx;
            scale[3 * cell + 1] = k * hx * hz / hy;
            scale[3 * cell + 2] = k * hx * hy / hz;
        }
    }

    private int corner(int cell, int r) {
        int x = 2 * grid.slab[0][cell];
        int y = 2 * grid.slab[1][cell] + r % 3;
        int z = 2 * grid.slab[2][cell] + r / 3;
        return (z * (2 * grid.n[1] + 1) + y) * (2 * grid.n[0] + 1) + x;
    }

    /** The node at a place of the sub-grid, two places a slab; -1 where none is. */
    int nodeAt(int x, int y, int z) {
        return node[(z * (2 * grid.n[1] + 1) + y) * (2 * grid.n[0] + 1) + x];
    }

    /** Sides that are surfaces with a resistance, as 6 cell + side; holds the nodes of those without. */
    private int[] surfaces() {
        int[] found = new int[6 * grid.cells];
        int count = 0;
        for (int i = 0; i < found.length; i++) {
            int surface = grid.surface(i / 6, i % 6);
            if (surface >= 0 && grid.painted.resistance(surface) > 0) {
                found[count++] = i;
            } else if (surface >= 0) {
                for (int f = 0; f < 9; f++) {
                    held[onFace(i, f)] = grid.painted.partOfSurface(surface);
                }
            }
        }
        return Arrays.copyOf(found, count);
    }

    /** The node (b, c) of a face, b + 3 c, b along the direction after the face's own. */
    int onFace(int face, int f) {
        int at = 9 * (face % 6) + f;
        return row[9 * (face / 6) + FACE_ROW[at]] + FACE_PLACE[at];
    }

    /** m² of a face. */
    double area(int face) {
        int d = face % 6 / 2;
        return grid.size(face / 6, (d + 1) % 3) * grid.size(face / 6, (d + 2) % 3);
    }

    /** Puts the held temperatures into a solution where one part is at 1 and the others at 0. */
    void hold(int part, double[] u) {
        for (int i = 0; i < n; i++) {
            if (held[i] >= 0) {
                u[i] = held[i] == part ? 1 : 0;
            }
        }
    }

    /** (Output) the residual b − A u where one part is at 1 and the others at 0; returns the energy of u. */
    double residual(int part, double[] u, double[] r) {
        multiply(u, r);
        double energy = 0;
        for (int i = 0; i < n; i++) {
            energy += u[i] * r[i];
            r[i] = -r[i];
        }
        for (int face : surfaces) {
            int surface = grid.surface(face / 6, face % 6);
            if (grid.painted.partOfSurface(surface) != part) {
                continue;
            }
            double whole = area(face) / grid.painted.resistance(surface);
            energy += whole;
            for (int f = 0; f < 9; f++) {
                int i = onFace(face, f);
                // ∫ ℓ_a is the Gauss–Lobatto weight.
                double load = whole * Basis.LUMPED[f % 3] * Basis.LUMPED[f / 3];
                r[i] += load;
                energy -= 2 * load * u[i];
            }
        }
        for (int i = 0; i < n; i++) {
            r[i] = held[i] >= 0 ? 0 : r[i];
        }
        return energy;
    }

    @Override
    public void apply(double[] x, double[] y) {
        multiply(x, y);
        for (int i = 0; i < n; i++) {
            y[i] = held[i] >= 0 ? 0 : y[i];
        }
    }

    private void multiply(double[] x, double[] y) {
        int[] from = row;
        Arrays.fill(y, 0, n, 0);
        for (int first = 0; first < from.length; first += 9) {
            multiply(x, y, first);
        }
        double[] values = local;
        for (int i = 0; i < throughSurfaces.length; i++) {
            double through = throughSurfaces[i];
            int first = 9 * i;
            for (int f = 0; f < 9; f++) {
                values[f] = x[onSurfaces[first + f]];
            }
            massAcross(values, 1, 3);
            massAcross(values, 3, 1);
            for (int f = 0; f < 9; f++) {
                y[onSurfaces[first + f]] += through * values[f];
            }
        }
    }

    /**
     * ∫ k ∇u · ∇v over a cell, a Gauss rule's exact value but for rounding.
     *
     * @param scratch as long as u and v; overwritten
     */
    double product(int cell, double[] u, double[] v, double[] scratch) {
        int first = 9 * cell;
        for (int r = first; r < first + 9; r++) {
            Arrays.fill(scratch, row[r], row[r] + 3, 0);
        }
        multiply(v, scratch, first);
        double sum = 0;
        for (int r = first; r < first + 9; r++) {
            for (int i = row[r]; i < row[r] + 3; i++) {
                sum += u[i] * scratch[i];
            }
        }
        return sum;
    }

    /** 30 M along one direction of the nine values of a face. */
    private static void massAcross(double[] values, int step, int other) {
        for (int j = 0; j < 3; j++) {
            int at = j * other;
            double a = values[at];
            double b = values[at + step];
            double c = values[at + 2 * step];
            values[at] = 4 * a + 2 * b - c;
            values[at + step] = 2 * a + 16 * b + 2 * c;
            values[at + 2 * step] = 4 * c + 2 * b - a;
        }
    }

    /** Adds a cell's matrix times x: seven products with 30 M or 3 K. */
    private void multiply(double[] x, double[] y, int first) {
        int[] from = row;
        double[] mass = m;
        double[] stiff = s;
        // along z: m = M u, s = K u
        for (int r = 0; r < 3; r++) {
            int low = from[first + r];
            int middle = from[first + r + 3];
            int high = from[first + r + 6];
            for (int i = 3 * r; i < 3 * r + 3; i++) {
                double a = x[low++];
                double b = x[middle++];
                double c = x[high++];
                mass[i] = 4 * a + 2 * b - c;
                mass[i + 9] = 2 * a + 16 * b + 2 * c;
                mass[i + 18] = 4 * c + 2 * b - a;
                stiff[i] = 7 * a - 8 * b + c;
                stiff[i + 9] = 16 * b - 8 * a - 8 * c;
                stiff[i + 18] = 7 * c - 8 * b + a;
            }
        }
        // along y: m = kx M m, s = ky K m + kz M s
        double kx = scale[first / 3];
        double ky = scale[first / 3 + 1];
        double kz = scale[first / 3 + 2];
        for (int z = 0; z < 27; z += 9) {
            for (int i = z; i < z + 3; i++) {
                double a = mass[i];
                double b = mass[i + 3];
                double c = mass[i + 6];
                double d = stiff[i];
                double e = stiff[i + 3];
                double f = stiff[i + 6];
                mass[i] = kx * (4 * a + 2 * b - c);
                mass[i + 3] = kx * (2 * a + 16 * b + 2 * c);
                mass[i + 6] = kx * (4 * c + 2 * b - a);
                stiff[i] = ky * (7 * a - 8 * b + c) + kz * (4 * d + 2 * e - f);
                stiff[i + 3] = ky * (16 * b - 8 * a - 8 * c) + kz * (2 * d + 16 * e + 2 * f);
                stiff[i + 6] = ky * (7 * c - 8 * b + a) + kz * (4 * f + 2 * e - d);
            }
        }
        // along x: K m + M s
        for (int r = 0; r < 9; r++) {
            int i = 3 * r;
            int to = from[first + r];
            double a = mass[i];
            double b = mass[i + 1];
            double c = mass[i + 2];
            double d = stiff[i];
            double e = stiff[i + 1];
            double f = stiff[i + 2];
            y[to] += 7 * a - 8 * b + c + 4 * d + 2 * e - f;
            y[to + 1] += 16 * b - 8 * a - 8 * c + 2 * d + 16 * e + 2 * f;
            y[to + 2] += 7 * c - 8 * b + a + 4 * f + 2 * e - d;
        }
    }

    /** The preconditioner: neighbouring nodes coupled through the lumped cross-section between them. */
    Multigrid preconditioner(Room room) {
        // Read before the cycle is made that those rows are for.
        room.halves.reserve(3 * n);
        double[] ahead = room.halves.weight;
        Arrays.fill(ahead, 0, 3 * n, 0);
        double[] extra = new double[n];
        int[] from = row;
        for (int cell = 0; cell < grid.cells; cell++) {
            for (int d = 0; d < 3; d++) {
                int e = (d + 1) % 3;
                int f = (d + 2) % 3;
                double whole = 2 * grid.k[cell] * grid.size(cell, e) * grid.size(cell, f) / grid.size(cell, d);
                for (int i = 0; i < 18; i++) {
                    ahead[3 * (from[9 * cell + HALF_ROW[18 * d + i]] + HALF_PLACE[18 * d + i]) + d] +=
                            whole * HALF_ALONG[i] * HALF_ACROSS[i];
                }
            }
        }
        for (int face : surfaces) {
            double whole = area(face) / grid.painted.resistance(grid.surface(face / 6, face % 6));
            for (int f = 0; f < 9; f++) {
                extra[onFace(face, f)] += whole * Basis.LUMPED[f % 3] * Basis.LUMPED[f / 3];
            }
        }
        return rows(ahead, extra, room);
    }

    private Multigrid rows(double[] ahead, double[] extra, Room room) {
        int[] step = {1, 2 * grid.n[0] + 1, (2 * grid.n[0] + 1) * (2 * grid.n[1] + 1)};
        int[] start = new int[n + 1];
        room.finest.reserve(6 * n);
        int[] column = room.finest.column;
        double[] weight = room.finest.weight;
        int[] nodes = node;
        int[] fixed = held;
        int at = 0;
        for (int place = 0; place < nodes.length; place++) {
            int i = nodes[place];
            if (i < 0) {
                continue;
            }
            start[i] = at;
            for (int d = 0; d < 6; d++) {
                int other = place + (d < 3 ? -step[2 - d] : step[d - 3]);
                int j = other < 0 || other >= nodes.length ? -1 : nodes[other];
                double w = d < 3 ? (j < 0 ? 0 : ahead[3 * j + 2 - d]) : ahead[3 * i + d - 3];
                if (w > 0 && fixed[i] < 0 && fixed[j] < 0) {
                    column[at] = j;
                    weight[at++] = w;
                } else if (w > 0) {
                    extra[i] += w;
                }
            }
        }
        start[n] = at;
        return new Multigrid(n, start, column, weight, extra, room);
    }

    /** A temperature of the grid that was cut into this one, on this one. */
    double[] from(TemperatureSystem3 coarse, double[] u, Cuts cuts) {
        double[] to = new double[n];
        for (int cell = 0; cell < grid.cells; cell++) {
            int x = grid.slab[0][cell];
            int y = grid.slab[1][cell];
            int z = grid.slab[2][cell];
            int old = coarse.grid.number(cuts.before(0, x), cuts.before(1, y), cuts.before(2, z));
            for (int r = 0; r < 9; r++) {
                System.arraycopy(u, coarse.row[9 * old + r], local, 3 * r, 3);
            }
            interpolate(local, m, cuts.nodes(0, x), 1, 3, 9);
            interpolate(m, s, cuts.nodes(1, y), 3, 1, 9);
            interpolate(s, m, cuts.nodes(2, z), 9, 1, 3);
            for (int r = 0; r < 9; r++) {
                System.arraycopy(m, 3 * r, to, row[9 * cell + r], 3);
            }
        }
        return to;
    }

    private static void interpolate(double[] from, double[] to, double[][] weights, int step, int b, int c) {
        for (int i = 0; i < 9; i++) {
            int at = i % 3 * b + i / 3 * c;
            for (int a = 0; a < 3; a++) {
                double[] w = weights[a];
                to[at + a * step] = w[0] * from[at] + w[1] * from[at + step] + w[2] * from[at + 2 * step];
            }
        }
    }
}
