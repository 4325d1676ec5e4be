package coldseam.conduction.field;

import coldseam.conduction.Point;
import coldseam.conduction.ProbeTemperature;
import coldseam.conduction.Section;
import coldseam.conduction.SurfaceTemperature;
import coldseam.conduction.TemperatureField;
import coldseam.conduction.arrange.Lattice;
import coldseam.conduction.mesh.Mesh;
import coldseam.conduction.mesh.MeshedSection;
import coldseam.conduction.mesh.TriangleIndex;
import java.util.Arrays;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

/** The temperature on the last mesh: a quadratic in every triangle, continuous across their sides. */
public final class MeshField implements TemperatureField {

    private final Section section;
    private final MeshedSection drawing;
    private final Mesh mesh;
    private final double[] ambient;
    private final Lattice lattice;
    private double[] temperature = new double[0];
    private double[] gap = new double[0];
    private TriangleIndex index;

    public MeshField(Section section, MeshedSection drawing, double[] ambient) {
        this.section = section;
        this.drawing = drawing;
        this.mesh = drawing.mesh;
        this.ambient = ambient;
        this.lattice = drawing.lattice;
    }

    /**
     * Takes the temperatures of the present solution.
     *
     * @param units at each node, for each environment but the last: the field that is 1 there and 0 in the others
     */
    public void set(double[][] units) {
        if (temperature.length < mesh.nodes) {
            temperature = new double[mesh.nodes + mesh.nodes / 2];
        }
        int last = ambient.length - 1;
        Arrays.fill(temperature, 0, mesh.nodes, ambient[last]);
        for (int e = 0; e < last; e++) {
            double difference = ambient[e] - ambient[last];
            double[] unit = units[e];
            for (int v = 0; v < mesh.nodes; v++) {
                temperature[v] += difference * unit[v];
            }
        }
        index = null;
    }

    public void finish(double[] gaps) {
        gap = Arrays.copyOf(gaps, mesh.triangles);
    }

    /** The lowest temperature of each environment's surfaces, with the change since an earlier answer. */
    public ImmutableList<SurfaceTemperature<Point>> surfaces(ImmutableList<SurfaceTemperature<Point>> earlier) {
        int n = ambient.length;
        double[] lowest = new double[n];
        double[] x = new double[n];
        double[] y = new double[n];
        Arrays.fill(lowest, Double.POSITIVE_INFINITY);
        for (int t = 0; t < mesh.triangles; t++) {
            for (int i = 0; i < 3; i++) {
                int tag = mesh.neighbour[3 * t + i] < 0 ? mesh.tag[3 * t + i] : -1;
                if (tag < 0) {
                    continue;
                }
                int e = drawing.environment[tag];
                // A prescribed side has its environment's temperature, also where another one meets it.
                boolean held = drawing.resistance[tag] == 0;
                int a = mesh.node[6 * t + (i + 1) % 3];
                int b = mesh.node[6 * t + (i + 2) % 3];
                double ta = held ? ambient[e] : temperature[a];
                double tm = held ? ambient[e] : temperature[mesh.node[6 * t + 3 + i]];
                double tb = held ? ambient[e] : temperature[b];
                double at = ta <= tb ? 0 : 1;
                double value = Math.min(ta, tb);
                // T(ξ) = ta + slope ξ + curve ξ², ξ from 0 to 1
                double curve = 2 * (ta + tb - 2 * tm);
                double slope = 4 * tm - 3 * ta - tb;
                double dip = -slope / (2 * curve);
                if (curve > 0 && dip > 0 && dip < 1) {
                    double inside = ta + dip * (slope + curve * dip);
                    if (inside < value) {
                        value = inside;
                        at = dip;
                    }
                }
                if (value < lowest[e]) {
                    lowest[e] = value;
                    x[e] = lattice.metresX(mesh.x[a] + at * (mesh.x[b] - mesh.x[a]));
                    y[e] = lattice.metresY(mesh.y[a] + at * (mesh.y[b] - mesh.y[a]));
                }
            }
        }
        MutableList<SurfaceTemperature<Point>> all = Lists.mutable.empty();
        for (int e = 0; e < n; e++) {
            if (lowest[e] < Double.POSITIVE_INFINITY) {
                String name = section.environments().get(e).name();
                SurfaceTemperature<Point> before =
                        earlier.detect(s -> s.environment().equals(name));
                double change = before == null ? 0 : Math.abs(lowest[e] - before.lowest());
                all.add(new SurfaceTemperature<>(name, lowest[e], new Point(x[e], y[e]), change));
            }
        }
        return all.toImmutable();
    }

    /** The temperatures at the probes, with the change since an earlier answer. */
    public ImmutableList<ProbeTemperature> probes(ImmutableList<ProbeTemperature> earlier) {
        return section.probes().collectWithIndex((probe, i) -> {
            double value = temperatureAt(probe.at().x(), probe.at().y());
            double change =
                    earlier.isEmpty() ? 0 : Math.abs(value - earlier.get(i).temperature());
            return new ProbeTemperature(probe.name(), value, change);
        });
    }

    private TriangleIndex index() {
        if (index == null) {
            index = new TriangleIndex(mesh, lattice.close());
        }
        return index;
    }

    @Override
    public double temperatureAt(double x, double y) {
        double[] l = new double[3];
        int t = index().find(lattice.stepsX(x), lattice.stepsY(y), l);
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

    @Override
    public double[] fluxAt(double x, double y) {
        double[] l = new double[3];
        int t = index().find(lattice.stepsX(x), lattice.stepsY(y), l);
        if (t < 0) {
            return new double[] {Double.NaN, Double.NaN};
        }
        int o = 6 * t;
        double gx = 0;
        double gy = 0;
        double area2 = 0;
        for (int i = 0; i < 3; i++) {
            int j = (i + 1) % 3;
            int k = (i + 2) % 3;
            int a = mesh.node[o + j];
            int b = mesh.node[o + k];
            double c = (4 * l[i] - 1) * temperature[mesh.node[o + i]]
                    + 4 * l[k] * temperature[mesh.node[o + 3 + j]]
                    + 4 * l[j] * temperature[mesh.node[o + 3 + k]];
            gx += c * (mesh.y[a] - mesh.y[b]);
            gy += c * (mesh.x[b] - mesh.x[a]);
            area2 += mesh.x[a] * mesh.y[b] - mesh.x[b] * mesh.y[a];
        }
        double f = -drawing.conductivity[mesh.region[t]] / (area2 * lattice.step());
        return new double[] {f * gx, f * gy};
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
