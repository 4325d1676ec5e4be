package coldseam.conduction.field;

import coldseam.conduction.Point;
import coldseam.conduction.Section;
import coldseam.conduction.Symmetry;
import coldseam.conduction.TemperatureField;
import coldseam.conduction.arrange.Lattice;
import coldseam.conduction.mesh.Mesh;
import coldseam.conduction.mesh.TriangleIndex;
import java.io.DataInput;
import java.io.DataOutput;
import java.io.IOException;
import java.util.Arrays;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

/**
 * A solution's temperatures: a quadratic in every triangle of the last mesh, continuous across their sides. It is what is
 * kept, drawn and probed; nothing in it changes.
 *
 * <p>Triangle t has six nodes, its corners anticlockwise and the middles of the sides opposite them, of which each has a
 * place on the lattice and a temperature in °C. A point's triangle is found through boxes, made when first asked for.
 */
public final class TriangleField implements TemperatureField {

    private final Lattice lattice;
    private final Mesh mesh;
    private final double[] temperature;
    private final double[] gap;
    private final Section section;
    private volatile TriangleIndex index;

    private TriangleField(Section section, Lattice lattice, Mesh mesh, double[] temperature, double[] gap) {
        this.section = section;
        this.lattice = lattice;
        this.mesh = mesh;
        this.temperature = temperature;
        this.gap = gap;
    }

    /**
     * The field on a mesh as it is now.
     *
     * @param temperature of each node, °C
     * @param gap of each triangle, W/(m·K), or W/K if axisymmetric; an estimate where a surface temperature was aimed at
     */
    static TriangleField of(Section section, Lattice lattice, Mesh mesh, double[] temperature, double[] gap) {
        return new TriangleField(
                section,
                lattice,
                mesh.frozen(),
                Arrays.copyOf(temperature, mesh.nodes),
                Arrays.copyOf(gap, mesh.triangles));
    }

    @Override
    public void write(DataOutput out) throws IOException {
        out.writeDouble(lattice.size());
        out.writeDouble(lattice.step());
        out.writeLong(lattice.originX());
        out.writeLong(lattice.originY());
        out.writeDouble(lattice.close());
        out.writeInt(mesh.nodes);
        for (int v = 0; v < mesh.nodes; v++) {
            out.writeDouble(mesh.x[v]);
            out.writeDouble(mesh.y[v]);
            out.writeDouble(temperature[v]);
        }
        out.writeInt(mesh.triangles);
        for (int t = 0; t < mesh.triangles; t++) {
            for (int i = 6 * t; i < 6 * t + 6; i++) {
                out.writeInt(mesh.node[i]);
            }
            out.writeInt(mesh.region[t]);
            out.writeDouble(gap[t]);
        }
    }

    /**
     * Reads what {@link #write} wrote.
     *
     * @param section the one that was solved
     */
    public static TriangleField read(DataInput in, Section section) throws IOException {
        Lattice lattice = new Lattice(in.readDouble(), in.readDouble(), in.readLong(), in.readLong(), in.readDouble());
        int nodes = in.readInt();
        double[] x = new double[nodes];
        double[] y = new double[nodes];
        double[] temperature = new double[nodes];
        for (int v = 0; v < nodes; v++) {
            x[v] = in.readDouble();
            y[v] = in.readDouble();
            temperature[v] = in.readDouble();
        }
        int triangles = in.readInt();
        int[] node = new int[6 * triangles];
        int[] region = new int[triangles];
        double[] gap = new double[triangles];
        for (int t = 0; t < triangles; t++) {
            for (int i = 6 * t; i < 6 * t + 6; i++) {
                node[i] = in.readInt();
            }
            region[t] = in.readInt();
            gap[t] = in.readDouble();
        }
        return new TriangleField(section, lattice, Mesh.frozen(node, x, y, region), temperature, gap);
    }

    private int find(double x, double y, double[] l) {
        TriangleIndex made = index;
        if (made == null) {
            made = new TriangleIndex(mesh, lattice.close());
            index = made;
        }
        return made.find(lattice.stepsX(x), lattice.stepsY(y), l);
    }

    @Override
    public double temperatureAt(double x, double y) {
        double[] l = new double[3];
        int t = find(x, y, l);
        if (t < 0) {
            return Double.NaN;
        }
        int o = 6 * t;
        double sum = 0;
        for (int i = 0; i < 3; i++) {
            sum += l[i] * (2 * l[i] - 1) * temperature[mesh.node[o + i]];
            sum += 4 * l[(i + 1) % 3] * l[(i + 2) % 3] * temperature[mesh.node[o + 3 + i]];
        }
        return sum;
    }

    /**
     * ∫ k ∇u · ∇T over each of the section's regions, W/m where u has no unit; of a section that is turned about an axis, W of the
     * whole body.
     *
     * @param unit u at each node
     */
    public double[] with(double[] unit) {
        double[] sums = new double[section.regions().size()];
        for (int t = 0; t < mesh.triangles; t++) {
            int region = mesh.region[t];
            sums[region] += section.regions().get(region).conductivity()
                    * (section.symmetry() == Symmetry.PLANAR ? planar(t, unit) : turned(t, unit));
        }
        return sums;
    }

    /** ∫ ∇u · ∇T over a triangle: gradients are linear, so the middles of the sides integrate their product exactly. */
    private double planar(int t, double[] unit) {
        int o = 6 * t;
        double x1 = mesh.x[mesh.node[o + 1]] - mesh.x[mesh.node[o]];
        double y1 = mesh.y[mesh.node[o + 1]] - mesh.y[mesh.node[o]];
        double x2 = mesh.x[mesh.node[o + 2]] - mesh.x[mesh.node[o]];
        double y2 = mesh.y[mesh.node[o + 2]] - mesh.y[mesh.node[o]];
        double sum = 0;
        for (int side = 0; side < 3; side++) {
            double first = share(o, side, 0, temperature);
            double g1 = share(o, side, 1, temperature) - first;
            double g2 = share(o, side, 2, temperature) - first;
            first = share(o, side, 0, unit);
            double h1 = share(o, side, 1, unit) - first;
            double h2 = share(o, side, 2, unit) - first;
            sum += (y2 * g1 - y1 * g2) * (y2 * h1 - y1 * h2) + (x1 * g2 - x2 * g1) * (x1 * h2 - x2 * h1);
        }
        return sum / (6 * (x1 * y2 - x2 * y1));
    }

    /** What ∇λ of a corner is taken times in the gradient at the middle of a side. */
    private double share(int o, int side, int corner, double[] at) {
        double there = at[mesh.node[o + corner]];
        double middles = corner == side
                ? at[mesh.node[o + 3 + (side + 1) % 3]] + at[mesh.node[o + 3 + (side + 2) % 3]] - there
                : at[mesh.node[o + 3 + side]];
        return there + 2 * middles;
    }

    /** ∫ 2π r ∇u · ∇T over a triangle turned about the axis, K·m; a rule of degree 3: its middle, and three places near its corners. */
    private double turned(int t, double[] unit) {
        double[] third = {1.0 / 3, 1.0 / 3, 1.0 / 3};
        double sum = -27.0 / 48 * radius(t, third) * slopes(t, third, unit);
        for (int corner = 0; corner < 3; corner++) {
            double[] l = {0.2, 0.2, 0.2};
            l[corner] = 0.6;
            sum += 25.0 / 48 * radius(t, l) * slopes(t, l, unit);
        }
        return 2 * Math.PI * sum;
    }

    private double radius(int t, double[] l) {
        double steps = 0;
        for (int i = 0; i < 3; i++) {
            steps += l[i] * mesh.x[mesh.node[6 * t + i]];
        }
        return lattice.metresX(steps);
    }

    /** ∇u · ∇T times the triangle's area, K: at barycentric coordinates. */
    private double slopes(int t, double[] l, double[] unit) {
        double[] g = slope(t, l, temperature);
        double[] h = slope(t, l, unit);
        return (g[0] * h[0] + g[1] * h[1]) / (2 * g[2]);
    }

    /** The gradient of what nodes have times twice the triangle's area, times steps, and that area, steps²: at barycentric coordinates. */
    private double[] slope(int t, double[] l, double[] at) {
        int o = 6 * t;
        double gx = 0;
        double gy = 0;
        for (int i = 0; i < 3; i++) {
            int j = (i + 1) % 3;
            int k = (i + 2) % 3;
            int a = mesh.node[o + j];
            int b = mesh.node[o + k];
            double c = (4 * l[i] - 1) * at[mesh.node[o + i]]
                    + 4 * l[k] * at[mesh.node[o + 3 + j]]
                    + 4 * l[j] * at[mesh.node[o + 3 + k]];
            gx += c * (mesh.y[a] - mesh.y[b]);
            gy += c * (mesh.x[b] - mesh.x[a]);
        }
        return new double[] {gx, gy, twiceArea(o)};
    }

    /** Steps², of the triangle whose nodes begin there: by its sides, since products of coordinates are too large to keep a foil's. */
    private double twiceArea(int o) {
        double x = mesh.x[mesh.node[o]];
        double y = mesh.y[mesh.node[o]];
        double x1 = mesh.x[mesh.node[o + 1]] - x;
        double y1 = mesh.y[mesh.node[o + 1]] - y;
        double x2 = mesh.x[mesh.node[o + 2]] - x;
        double y2 = mesh.y[mesh.node[o + 2]] - y;
        return x1 * y2 - x2 * y1;
    }

    @Override
    public ImmutableList<ImmutableList<Point>> isotherm(double value) {
        return new Isotherm(mesh, temperature, lattice).lines(value);
    }

    @Override
    public ImmutableList<Cell> cells() {
        MutableList<Cell> all = Lists.mutable.withInitialCapacity(mesh.triangles);
        for (int t = 0; t < mesh.triangles; t++) {
            all.add(new Cell(mesh.region[t], corner(t, 0), corner(t, 1), corner(t, 2), gap[t]));
        }
        return all.toImmutable();
    }

    private Point corner(int t, int i) {
        int v = mesh.node[6 * t + i];
        return new Point(lattice.metresX(mesh.x[v]), lattice.metresY(mesh.y[v]));
    }
}
