package coldseam.conduction.solid;

import coldseam.conduction.ProbeTemperature;
import coldseam.conduction.SurfaceTemperature;
import java.io.ByteArrayInputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.collector.Collectors2;
import org.eclipse.collections.impl.factory.Lists;

/**
 * A field that was solved, on its grid.
 *
 * @param temperature °C at the system's nodes
 */
record GridField(Grid grid, TemperatureSystem3 system, double[] temperature) implements BodyField {

    GridField {
        for (int i = 0; i < temperature.length; i++) {
            // As it is kept: half the room, and a millionth of a kelvin is nothing to an estimate.
            temperature[i] = (float) temperature[i];
        }
    }

    @Override
    public void write(DataOutputStream to) throws IOException {
        for (double[] planes : grid.plane) {
            to.writeInt(planes.length);
            for (double plane : planes) {
                to.writeDouble(plane);
            }
        }
        for (double each : temperature) {
            to.writeFloat((float) each);
        }
    }

    /**
     * The field of a body that was written.
     *
     * @param swapped whether what was written is its image in the plane x = y
     */
    static GridField unpacked(byte[] packed, SolidBody body, boolean swapped) {
        try (DataInputStream from = new DataInputStream(new ByteArrayInputStream(packed))) {
            return read(from, body, swapped);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    private static GridField read(DataInputStream from, SolidBody body, boolean swapped) throws IOException {
        double[][] plane = new double[3][];
        for (int i = 0; i < 3; i++) {
            int d = swapped && i < 2 ? 1 - i : i;
            plane[d] = new double[from.readInt()];
            for (int j = 0; j < plane[d].length; j++) {
                plane[d][j] = from.readDouble();
            }
        }
        Grid grid = new Grid(new PaintedGrid(body, Lists.mutable.empty()), plane);
        TemperatureSystem3 system = new TemperatureSystem3(grid);
        double[] temperature = new double[system.n];
        int fast = swapped ? 1 : 0;
        int[] at = new int[3];
        for (at[2] = 0; at[2] <= 2 * grid.n[2]; at[2]++) {
            for (at[1 - fast] = 0; at[1 - fast] <= 2 * grid.n[1 - fast]; at[1 - fast]++) {
                for (at[fast] = 0; at[fast] <= 2 * grid.n[fast]; at[fast]++) {
                    int node = system.nodeAt(at[0], at[1], at[2]);
                    if (node >= 0) {
                        temperature[node] = from.readFloat();
                    }
                }
            }
        }
        return new GridField(grid, system, temperature);
    }

    @Override
    public double temperatureAt(Place at) {
        int[][] slabs = new int[3][];
        for (int d = 0; d < 3; d++) {
            slabs[d] = slabs(d, at.along(d));
        }
        for (int z : slabs[2]) {
            for (int y : slabs[1]) {
                for (int x : slabs[0]) {
                    int cell = grid.number(x, y, z);
                    if (cell >= 0) {
                        return within(cell, at);
                    }
                }
            }
        }
        return Double.NaN;
    }

    private double within(int cell, Place at) {
        double[][] w = new double[3][];
        for (int d = 0; d < 3; d++) {
            double low = grid.plane[d][grid.slab[d][cell]];
            w[d] = Basis.nodal(Math.max(0, Math.min(1, (at.along(d) - low) / grid.size(cell, d))));
        }
        double sum = 0;
        for (int r = 0; r < 9; r++) {
            int i = system.row[9 * cell + r];
            sum += w[1][r % 3]
                    * w[2][r / 3]
                    * (w[0][0] * temperature[i] + w[0][1] * temperature[i + 1] + w[0][2] * temperature[i + 2]);
        }
        return sum;
    }

    /** The slabs that hold a coordinate: two where it lies on a plane between them. */
    private int[] slabs(int d, double at) {
        double[] plane = grid.plane[d];
        int[] found = new int[2];
        int count = 0;
        for (int i = 0; i < grid.n[d] && count < 2; i++) {
            if (at >= plane[i] - SolidBody.SNAP && at <= plane[i + 1] + SolidBody.SNAP) {
                found[count++] = i;
            }
        }
        return Arrays.copyOf(found, count);
    }

    /** ∫ k ∇u · ∇T over what is seen of each painted box, of all that the multiplicity counts; W·K where u is in K as well. */
    double[] with(GridField unit) {
        double[] sums = new double[grid.painted.body.painted().size()];
        double[] scratch = new double[temperature.length];
        for (int cell = 0; cell < grid.cells; cell++) {
            sums[piece(cell)] +=
                    grid.painted.body.multiplicity() * system.product(cell, unit.temperature, temperature, scratch);
        }
        return sums;
    }

    @Override
    public ImmutableList<Integer> pieces() {
        return Arrays.stream(grid.painted.piece)
                .filter(each -> each >= 0)
                .boxed()
                .distinct()
                .sorted()
                .collect(Collectors2.toImmutableList());
    }

    @Override
    public double[] drawnPlanes(int direction) {
        return grid.painted.plane[direction].clone();
    }

    @Override
    public BodyCut cut(int direction, double at) {
        int[] slabs = slabs(direction, at);
        int best = slabs[0];
        for (int slab : slabs) {
            best = solids(direction, slab) < solids(direction, best) && solids(direction, slab) > 0 ? slab : best;
        }
        return new BodyCut(grid, system, temperature, direction, best, at);
    }

    private int solids(int d, int slab) {
        int count = 0;
        for (int each : grid.slab[d]) {
            count += each == slab ? 1 : 0;
        }
        return count;
    }

    @Override
    public ImmutableList<Cell> cells() {
        MutableList<Cell> all = Lists.mutable.empty();
        for (int cell = 0; cell < grid.cells; cell++) {
            all.add(new Cell(piece(cell), box(cell)));
        }
        return all.toImmutable();
    }

    private Cuboid box(int cell) {
        double[] low = new double[3];
        double[] high = new double[3];
        for (int d = 0; d < 3; d++) {
            low[d] = grid.plane[d][grid.slab[d][cell]];
            high[d] = grid.plane[d][grid.slab[d][cell] + 1];
        }
        return Cuboid.of(low[0], low[1], low[2], high[0], high[1], high[2]);
    }

    @Override
    public ImmutableList<Face> faces() {
        MutableList<Face> all = Lists.mutable.empty();
        for (int face = 0; face < 6 * grid.cells; face++) {
            if (grid.side[face] < 0) {
                all.add(face(face));
            }
        }
        return all.toImmutable();
    }

    private Face face(int face) {
        int cell = face / 6;
        int surface = grid.surface(cell, face % 6);
        int e = (face % 6 / 2 + 1) % 3;
        int f = (face % 6 / 2 + 2) % 3;
        return new Face(
                BoxSide.values()[face % 6],
                surface < 0 ? Optional.empty() : Optional.of(grid.painted.environmentAt(surface)),
                piece(cell),
                box(cell),
                Lists.immutable.of(
                        temperature[system.onFace(face, 0)],
                        temperature[system.onFace(face, 2)],
                        temperature[system.onFace(face, 6)],
                        temperature[system.onFace(face, 8)]),
                Lists.immutable.of(rim(face, 2 * e), rim(face, 2 * e + 1), rim(face, 2 * f), rim(face, 2 * f + 1)));
    }

    private int piece(int cell) {
        return grid.painted
                .piece[
                grid.painted.cell(
                        grid.parent[0][grid.slab[0][cell]],
                        grid.parent[1][grid.slab[1][cell]],
                        grid.parent[2][grid.slab[2][cell]])];
    }

    private boolean rim(int face, int towards) {
        int next = grid.side[6 * (face / 6) + towards];
        return next < 0 || grid.side[6 * next + face % 6] >= 0 || !grid.painted.alike(piece(next), piece(face / 6));
    }

    /** The lowest temperature of each environment's surfaces, with the change since an earlier answer. */
    ImmutableList<SurfaceTemperature<Place>> lowest(ImmutableList<SurfaceTemperature<Place>> earlier) {
        int environments = grid.painted.body.environments().size();
        double[] lowest = new double[environments];
        Place[] at = new Place[environments];
        Arrays.fill(lowest, Double.POSITIVE_INFINITY);
        for (int face = 0; face < 6 * grid.cells; face++) {
            int surface = grid.surface(face / 6, face % 6);
            if (surface < 0) {
                continue;
            }
            int e = grid.painted.environmentOf(grid.painted.partOfSurface(surface));
            for (int f = 0; f < 9; f++) {
                double value = temperature[system.onFace(face, f)];
                if (value < lowest[e]) {
                    lowest[e] = value;
                    at[e] = onFace(face, f);
                }
            }
        }
        MutableList<SurfaceTemperature<Place>> all = Lists.mutable.empty();
        for (int e = 0; e < environments; e++) {
            double change =
                    earlier.isEmpty() ? 0 : Math.abs(lowest[e] - earlier.get(e).lowest());
            all.add(new SurfaceTemperature<>(
                    grid.painted.body.environments().get(e).name(), lowest[e], at[e], change));
        }
        return all.toImmutable();
    }

    private Place onFace(int face, int f) {
        double[] at = new double[3];
        int[] half = new int[3];
        int d = face % 6 / 2;
        half[d] = 2 * (face % 2);
        half[(d + 1) % 3] = f % 3;
        half[(d + 2) % 3] = f / 3;
        for (int e = 0; e < 3; e++) {
            double low = grid.plane[e][grid.slab[e][face / 6]];
            double high = grid.plane[e][grid.slab[e][face / 6] + 1];
            at[e] = half[e] == 0 ? low : half[e] == 2 ? high : (low + high) / 2;
        }
        return new Place(at[0], at[1], at[2]);
    }

    /** The temperatures at the probes, with the change since an earlier answer. */
    ImmutableList<ProbeTemperature> probes(ImmutableList<ProbeTemperature> earlier) {
        return grid.painted.body.probes().collectWithIndex((probe, i) -> {
            double value = temperatureAt(probe.at());
            double change =
                    earlier.isEmpty() ? 0 : Math.abs(value - earlier.get(i).temperature());
            return new ProbeTemperature(probe.name(), value, change);
        });
    }

    /** What a part has of surface: m², m²·K/W. */
    record Surfaces(double area, double resistance) {}

    /** A part's surfaces; of one resistance, as {@link PaintedFaults} holds patches to. */
    Surfaces surfaces(int part) {
        double area = 0;
        double resistance = 0;
        for (int face = 0; face < 6 * grid.cells; face++) {
            int surface = grid.surface(face / 6, face % 6);
            if (surface >= 0 && grid.painted.partOfSurface(surface) == part) {
                area += system.area(face);
                resistance = grid.painted.resistance(surface);
            }
        }
        return new Surfaces(area, resistance);
    }
}
