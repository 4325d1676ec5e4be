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

    /** °C at each node, as it is now: the array itself, of which no more is used than there are nodes. */
    public double[] temperature() {
        return temperature;
    }

    /** The field as it is now, to be kept. */
    public TriangleField kept(double[] gap) {
        return TriangleField.of(section, lattice, mesh, temperature, gap);
    }

    /** A side of the mesh on a boundary: of a triangle, opposite corner i, facing e; how low it is, and how far along. */
    private record Side(int t, int i, int e, double lowest, double along) {}

    /** Those of the last answer of {@link #surfaces}. */
    private final MutableList<Side> sides = Lists.mutable.empty();

    /** The lowest temperature of each environment's surfaces, with the change since an earlier answer. */
    public ImmutableList<SurfaceTemperature<Point>> surfaces(ImmutableList<SurfaceTemperature<Point>> earlier) {
        Side[] coldest = new Side[ambient.length];
        sides.clear();
        for (int t = 0; t < mesh.triangles; t++) {
            for (int i = 0; i < 3; i++) {
                int tag = mesh.boundary(t, i);
                if (tag >= 0) {
                    Side side = side(t, i, tag);
                    sides.add(side);
                    coldest[side.e] =
                            coldest[side.e] == null || side.lowest < coldest[side.e].lowest ? side : coldest[side.e];
                }
            }
        }
        MutableList<SurfaceTemperature<Point>> all = Lists.mutable.empty();
        for (Side side : coldest) {
            if (side != null) {
                String name = section.environments().get(side.e).name();
                SurfaceTemperature<Point> before =
                        earlier.detect(s -> s.environment().equals(name));
                double change = before == null ? 0 : Math.abs(side.lowest - before.lowest());
                int a = end(side, 0);
                int b = end(side, 1);
                double x = lattice.metresX(mesh.x[a] + side.along * (mesh.x[b] - mesh.x[a]));
                double y = lattice.metresY(mesh.y[a] + side.along * (mesh.y[b] - mesh.y[a]));
                all.add(new SurfaceTemperature<>(name, side.lowest, new Point(x, y), change));
            }
        }
        return all.toImmutable();
    }

    private Side side(int t, int i, int tag) {
        int e = drawing.environment[tag];
        // A prescribed side has its environment's temperature, also where another one meets it.
        boolean held = drawing.resistance[tag] == 0;
        double ta = held ? ambient[e] : temperature[mesh.node[6 * t + (i + 1) % 3]];
        double tm = held ? ambient[e] : temperature[mesh.node[6 * t + 3 + i]];
        double tb = held ? ambient[e] : temperature[mesh.node[6 * t + (i + 2) % 3]];
        // T(ξ) = ta + slope ξ + curve ξ², ξ from 0 to 1
        double curve = 2 * (ta + tb - 2 * tm);
        double slope = 4 * tm - 3 * ta - tb;
        double dip = -slope / (2 * curve);
        if (curve > 0 && dip > 0 && dip < 1) {
            double inside = ta + dip * (slope + curve * dip);
            if (inside < Math.min(ta, tb)) {
                return new Side(t, i, e, inside, dip);
            }
        }
        return new Side(t, i, e, Math.min(ta, tb), ta <= tb ? 0 : 1);
    }

    /** The node at the first or the second end of a side. */
    private int end(Side side, int which) {
        return mesh.node[6 * side.t + (side.i + 1 + which) % 3];
    }

    /**
     * A place on the mesh where a surface may be coldest.
     *
     * @param triangle on the surface
     * @param side of it, opposite that corner
     * @param along the side, from 0 at its first end to 1
     * @param above the lowest temperature of the surfaces by how much, K
     */
    public record Low(int triangle, int side, double along, double above) {}

    /**
     * The places that may be coldest of an environment's surfaces, of the last answer of {@link #surfaces}: where they are lower
     * than on either side, and the drawing's corners, beside which a coarse mesh may hide a dip. Empty where none faces it.
     */
    public ImmutableList<Low> lows(int environment) {
        MutableList<Side> facing = sides.select(side -> side.e == environment);
        double lowest = facing.collectDouble(Side::lowest).minIfEmpty(0);
        boolean[] passed = new boolean[mesh.nodes];
        facing.forEach(side -> {
            for (int which = 0; which < 2; which++) {
                int v = end(side, which);
                passed[v] |= v >= mesh.drawn && side.along != which;
            }
        });
        MutableList<Low> all = Lists.mutable.empty();
        facing.forEach(side -> {
            if (side.along > 0 && side.along < 1) {
                all.add(new Low(side.t, side.i, side.along, side.lowest - lowest));
            }
            for (int which = 0; which < 2; which++) {
                int v = end(side, which);
                if (!passed[v]) {
                    passed[v] = true;
                    all.add(new Low(side.t, side.i, which, Math.max(0, temperature[v] - lowest)));
                }
            }
        });
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
