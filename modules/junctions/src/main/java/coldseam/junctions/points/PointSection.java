package coldseam.junctions.points;

import coldseam.conduction.Boundary;
import coldseam.conduction.Environment;
import coldseam.conduction.Point;
import coldseam.conduction.Polygon;
import coldseam.conduction.Region;
import coldseam.conduction.Section;
import coldseam.conduction.Symmetry;
import java.util.OptionalDouble;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

/**
 * A round disc of a plane build-up with something round through its middle.
 *
 * <p>Heights are measured from the inner face outwards. Bodies cover sheets, and a later body an earlier one; what stands
 * out of the outer face has the outdoor surface resistance all round.
 *
 * @param name what it shows
 * @param sheets of the build-up, inside → outside, at least one
 * @param bodies in painting order
 * @param interiorResistance Rsi, m²·K/W, zero or more
 * @param exteriorResistance Rse, m²·K/W, zero or more
 * @param radius m, of the disc; its rim is adiabatic
 */
public record PointSection(
        String name,
        ImmutableList<Sheet> sheets,
        ImmutableList<Body> bodies,
        double interiorResistance,
        double exteriorResistance,
        double radius) {

    static final String INDOOR = "indoor";
    static final String OUTDOOR = "outdoor";
    static final double INDOOR_TEMPERATURE = 20;
    static final double OUTDOOR_TEMPERATURE = 0;

    /** m: a hundredth of the thinnest plate drawn. */
    private static final double SNAP = 1e-5;

    /** m, how exactly faces must meet. */
    private static final double SAME = 1e-9;

    /**
     * A sheet of the build-up.
     *
     * @param material its name
     * @param conductivity W/(m·K)
     * @param thickness m
     */
    public record Sheet(String material, double conductivity, double thickness) {}

    /**
     * A round body about the axis.
     *
     * @param material its name
     * @param conductivity W/(m·K)
     * @param inner radius, m; zero for a solid one
     * @param outer radius, m
     * @param from height of its inner end, m, zero or more
     * @param to height of its outer end, m; above the build-up it stands out
     */
    public record Body(String material, double conductivity, double inner, double outer, double from, double to) {}

    /** @throws IllegalArgumentException where a measure is out of its range, with its value */
    public PointSection {
        refuse(radius > 0, name + ": radius must be more than 0 m; got " + radius);
        refuse(interiorResistance >= 0 && exteriorResistance >= 0, name + ": a surface resistance is negative");
        refuse(sheets.notEmpty(), name + ": a build-up needs a sheet");
        sheets.forEach(sheet -> refuse(
                sheet.thickness() > 0 && sheet.conductivity() > 0, name + ": thickness and conductivity of " + sheet));
        bodies.forEach(body -> refuse(
                body.inner() >= 0
                        && body.outer() > body.inner()
                        && body.outer() < radius
                        && body.from() >= 0
                        && body.to() > body.from()
                        && body.conductivity() > 0,
                name + ": " + body + " must lie within the disc of " + radius + " m and not below its inner face"));
    }

    private static void refuse(boolean good, String message) {
        if (!good) {
            throw new IllegalArgumentException(message);
        }
    }

    /** m, of the build-up. */
    public double thickness() {
        return sheets.sumOfDouble(Sheet::thickness);
    }

    /** W/(m²·K), of the build-up without what goes through it. */
    public double transmittance() {
        return 1
                / (interiorResistance
                        + exteriorResistance
                        + sheets.sumOfDouble(sheet -> sheet.thickness() / sheet.conductivity()));
    }

    /** m², of the disc. */
    public double area() {
        return Math.PI * radius * radius;
    }

    /** The same with another Rsi. */
    PointSection withInterior(double resistance) {
        return new PointSection(name, sheets, bodies, resistance, exteriorResistance, radius);
    }

    /** The section that is solved: x is the radius, y the height. */
    public Section section() {
        MutableList<Region> regions = Lists.mutable.empty();
        double height = 0;
        for (Sheet sheet : sheets) {
            regions.add(new Region(
                    sheet.material(),
                    sheet.conductivity(),
                    Polygon.rectangle(0, height, radius, height + sheet.thickness())));
            height += sheet.thickness();
        }
        bodies.forEach(body -> regions.add(new Region(
                body.material(),
                body.conductivity(),
                Polygon.rectangle(body.inner(), body.from(), body.outer(), body.to()))));
        return new Section(
                name,
                Symmetry.AXISYMMETRIC,
                SNAP,
                regions.toImmutable(),
                Lists.immutable.of(
                        new Environment(INDOOR, INDOOR_TEMPERATURE, interiorResistance),
                        new Environment(OUTDOOR, OUTDOOR_TEMPERATURE, exteriorResistance)),
                Lists.immutable.of(
                        new Boundary(
                                INDOOR,
                                Lists.immutable.of(new Point(0, 0), new Point(radius, 0)),
                                OptionalDouble.empty()),
                        new Boundary(OUTDOOR, outerFace(), OptionalDouble.empty())),
                Lists.immutable.empty());
    }

    /** From the axis to the rim, up and down the steps of what stands out. */
    private ImmutableList<Point> outerFace() {
        double face = thickness();
        ImmutableList<Body> out = bodies.select(body -> body.to() > face + SAME);
        MutableList<Double> steps = out.flatCollect(body -> Lists.immutable.of(body.inner(), body.outer()))
                .newWith(0.0)
                .newWith(radius)
                .toSortedSet()
                .toList();
        MutableList<Point> path = Lists.mutable.empty();
        for (int i = 0; i + 1 < steps.size(); i++) {
            double middle = (steps.get(i) + steps.get(i + 1)) / 2;
            double height = out.select(body -> body.inner() < middle && middle < body.outer())
                    .collectDouble(Body::to)
                    .maxIfEmpty(face);
            Point from = new Point(steps.get(i), height);
            if (path.isEmpty() || !path.getLast().equals(from)) {
                path.add(from);
            }
            path.add(new Point(steps.get(i + 1), height));
        }
        return path.toImmutable();
    }
}
