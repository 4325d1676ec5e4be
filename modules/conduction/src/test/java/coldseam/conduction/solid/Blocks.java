package coldseam.conduction.solid;

import coldseam.conduction.Accuracy;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.set.MutableSet;
import org.eclipse.collections.impl.factory.Lists;
import org.eclipse.collections.impl.factory.Sets;

/** A body written down box by box; lengths in millimetres. */
final class Blocks {

    private final String name;
    private Cuboid extent;
    private double multiplicity = 1;
    private final MutableSet<BoxSide> cutPlanes = Sets.mutable.empty();
    private final MutableList<PaintedBox> painted = Lists.mutable.empty();
    private final MutableList<BodyEnvironment> environments = Lists.mutable.empty();
    private final MutableList<Patch> patches = Lists.mutable.empty();
    private final MutableList<BodyProbe> probes = Lists.mutable.empty();

    private Blocks(String name) {
        this.name = name;
    }

    static Blocks of(String name, double... extent) {
        Blocks blocks = new Blocks(name);
        blocks.extent = box(extent);
        return blocks;
    }

    private static Cuboid box(double[] mm) {
        return Cuboid.of(1e-3 * mm[0], 1e-3 * mm[1], 1e-3 * mm[2], 1e-3 * mm[3], 1e-3 * mm[4], 1e-3 * mm[5]);
    }

    Blocks times(double multiplicity) {
        this.multiplicity = multiplicity;
        return this;
    }

    Blocks cut(BoxSide... sides) {
        cutPlanes.addAll(Lists.mutable.of(sides));
        return this;
    }

    Blocks solid(double conductivity, double... mm) {
        painted.add(new PaintedBox.Solid("material " + conductivity, conductivity, box(mm)));
        return this;
    }

    Blocks air(String environment, double... mm) {
        painted.add(new PaintedBox.Air(environment, box(mm)));
        return this;
    }

    Blocks adiabatic(double... mm) {
        painted.add(new PaintedBox.Adiabatic(box(mm)));
        return this;
    }

    Blocks environment(String name, double temperature, double resistance) {
        environments.add(BodyEnvironment.of(name, temperature, resistance));
        return this;
    }

    Blocks environment(BodyEnvironment environment) {
        environments.add(environment);
        return this;
    }

    Blocks patch(String name, String environment, double... mm) {
        patches.add(new Patch(name, environment, box(mm)));
        return this;
    }

    Blocks probe(String name, double x, double y, double z) {
        probes.add(new BodyProbe(name, new Place(1e-3 * x, 1e-3 * y, 1e-3 * z)));
        return this;
    }

    SolidBody body() {
        return new SolidBody(
                name,
                extent,
                multiplicity,
                cutPlanes.toImmutable(),
                painted.toImmutable(),
                environments.toImmutable(),
                patches.toImmutable(),
                probes.toImmutable());
    }

    BodySolution solve(double width) {
        return BodySolver.solve(body(), new Accuracy(width, 1_600_000));
    }
}
