package coldseam.conduction;

import coldseam.conduction.solve.Conduction;
import java.util.OptionalDouble;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

/** Builds sections in few words; lengths in millimetres unless told otherwise. */
public final class Sketch {

    private final String name;
    private double unit = 1e-3;
    private Symmetry symmetry = Symmetry.PLANAR;
    private final MutableList<Region> regions = Lists.mutable.empty();
    private final MutableList<Environment> environments = Lists.mutable.empty();
    private final MutableList<Boundary> boundaries = Lists.mutable.empty();
    private final MutableList<Probe> probes = Lists.mutable.empty();

    private Sketch(String name) {
        this.name = name;
    }

    public static Sketch of(String name) {
        return new Sketch(name);
    }

    Sketch metres() {
        unit = 1;
        return this;
    }

    public Sketch axisymmetric() {
        symmetry = Symmetry.AXISYMMETRIC;
        return this;
    }

    public Sketch rectangle(double conductivity, double x0, double y0, double x1, double y1) {
        return polygon(conductivity, x0, y0, x1, y0, x1, y1, x0, y1);
    }

    public Sketch polygon(double conductivity, double... coordinates) {
        regions.add(new Region(
                "material " + (regions.size() + 1),
                conductivity,
                new Polygon(points(coordinates).toImmutable())));
        return this;
    }

    /** Two layers, 1 m long and 100 mm thick each, upwards from 20 °C with 0.13 to 0 °C with 0.04 m²·K/W. */
    Sketch layers(double lower, double upper) {
        return rectangle(lower, 0, 0, 1000, 100)
                .rectangle(upper, 0, 100, 1000, 200)
                .environment("indoor", 20, 0.13)
                .environment("outdoor", 0, 0.04)
                .boundary("indoor", 0, 0, 1000, 0)
                .boundary("outdoor", 0, 200, 1000, 200);
    }

    public Sketch environment(String called, double temperature, double resistance) {
        environments.add(new Environment(called, temperature, resistance));
        return this;
    }

    public Sketch boundary(String environment, double... coordinates) {
        boundaries.add(new Boundary(environment, points(coordinates).toImmutable(), OptionalDouble.empty()));
        return this;
    }

    Sketch probe(String called, double x, double y) {
        probes.add(new Probe(called, new Point(x * unit, y * unit)));
        return this;
    }

    private MutableList<Point> points(double... coordinates) {
        MutableList<Point> points = Lists.mutable.empty();
        for (int i = 0; i < coordinates.length; i += 2) {
            points.add(new Point(coordinates[i] * unit, coordinates[i + 1] * unit));
        }
        return points;
    }

    public Section section() {
        return new Section(
                name,
                symmetry,
                regions.toImmutable(),
                environments.toImmutable(),
                boundaries.toImmutable(),
                probes.toImmutable());
    }

    Sketch film(String environment, double resistance, double... coordinates) {
        boundaries.add(new Boundary(environment, points(coordinates).toImmutable(), OptionalDouble.of(resistance)));
        return this;
    }

    public Solution solve(double relativeWidth) {
        return Conduction.solve(section(), new Accuracy(relativeWidth, 400_000));
    }
}
