package coldseam.conduction.field;

import coldseam.conduction.Point;
import coldseam.conduction.ProbeTemperature;
import coldseam.conduction.Section;
import coldseam.conduction.SurfaceTemperature;
import coldseam.conduction.arrange.Lattice;
import coldseam.conduction.mesh.Mesh;
import coldseam.conduction.mesh.MeshedSection;
import java.util.Arrays;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

/** The temperatures while the mesh is being refined, and what is asked of them at each round. */
public final class MeshField {

    private final Section section;
    private final MeshedSection drawing;
    private final Mesh mesh;
    private final double[] ambient;
    private final Lattice lattice;
    private double[] temperature = new double[0];

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
    }

    /** The field as it is now, to be kept. */
    public TriangleField kept(double[] gap) {
        return TriangleField.of(section, lattice, mesh, temperature, gap);
    }

    /** Where on the mesh the lowest temperature that faces an environment is: a triangle, the side of it, how far along. */
    public record Coldest(int triangle, int side, double along) {}

    private Coldest[] coldest = new Coldest[0];

    /** Of the last answer of {@link #surfaces}; null where no boundary faces the environment. */
    public Coldest coldest(int environment) {
        return coldest[environment];
    }

    /** The lowest temperature of each environment's surfaces, with the change since an earlier answer. */
    public ImmutableList<SurfaceTemperature<Point>> surfaces(ImmutableList<SurfaceTemperature<Point>> earlier) {
        int n = ambient.length;
        double[] lowest = new double[n];
        double[] x = new double[n];
        double[] y = new double[n];
        Arrays.fill(lowest, Double.POSITIVE_INFINITY);
        coldest = new Coldest[n];
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
                    coldest[e] = new Coldest(t, i, at);
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
        if (section.probes().isEmpty()) {
            return Lists.immutable.empty();
        }
        TriangleField now = kept(new double[0]);
        return section.probes().collectWithIndex((probe, i) -> {
            double value = now.temperatureAt(probe.at().x(), probe.at().y());
            double change =
                    earlier.isEmpty() ? 0 : Math.abs(value - earlier.get(i).temperature());
            return new ProbeTemperature(probe.name(), value, change);
        });
    }
}
