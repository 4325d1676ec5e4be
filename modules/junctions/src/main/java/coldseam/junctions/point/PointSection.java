package coldseam.junctions.point;

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
 * out of a face has that side's surface resistance all round.
 *
 * @param sheets of the build-up, inside → outside, at least one
 * @param bodies in painting order
 * @param interiorResistance Rsi, m²·K/W, zero or more
 * @param exteriorResistance Rse, m²·K/W, zero or more
 * @param radius m, of the disc; its rim is adiabatic
 * @param indoorTemperature °C
 * @param outdoorTemperature °C
 */
public record PointSection(
        String name,
        ImmutableList<Sheet> sheets,
        ImmutableList<Body> bodies,
        double interiorResistance,
        double exteriorResistance,
        double radius,
        double indoorTemperature,
        double outdoorTemperature) {

    static final String INDOOR = "indoor";
    static final String OUTDOOR = "outdoor";

    /** m, how exactly faces must meet. */
    private static final double SAME = 1e-9;

    /**
     * A sheet of the build-up.
     *
     * @param conductivity W/(m·K)
     * @param thickness m
     */
    public record Sheet(String material, double conductivity, double thickness) {}

    /**
     * A round body about the axis.
     *
     * @param conductivity W/(m·K)
     * @param inner radius, m; zero for a solid one
     * @param outer radius, m
     * @param from height of its inner end, m; below the inner face it stands in the room
     * @param to height of its outer end, m; above the build-up it stands out
     */
    public record Body(String material, double conductivity, double inner, double outer, double from, double to) {}

    /** @throws IllegalArgumentException where a measure is out of its range, with its value */
    public PointSection {
        refuse(radius > 0, name + ": radius must be more than 0 m; got " + radius);
        refuse(interiorResistance >= 0 && exteriorResistance >= 0, name + ": a surface resistance is negative");
        refuse(sheets.notEmpty(), name + ": a build-up needs a sheet");
        refuse(
                indoorTemperature > outdoorTemperature,
                name + ": it must be warmer indoors; got " + indoorTemperature + " °C and " + outdoorTemperature
                        + " °C");
        sheets.forEach(sheet -> refuse(
                sheet.thickness() > 0 && sheet.conductivity() > 0, name + ": thickness and conductivity of " + sheet));
        bodies.forEach(body -> refuse(
                body.inner() >= 0
                        && body.outer() > body.inner()
                        && body.outer() < radius
                        && body.to() > body.from()
                        && body.conductivity() > 0,
                name + ": " + body + " must lie within the disc of " + radius + " m"));
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
        return new PointSection(
                name, sheets, bodies, resistance, exteriorResistance, radius, indoorTemperature, outdoorTemperature);
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
                regions.toImmutable(),
                Lists.immutable.of(
                        new Environment(INDOOR, indoorTemperature, interiorResistance),
                        new Environment(OUTDOOR, outdoorTemperature, exteriorResistance)),
                Lists.immutable.of(
                        new Boundary(INDOOR, face(false), OptionalDouble.empty()),
                        new Boundary(OUTDOOR, face(true), OptionalDouble.empty())),
                Lists.immutable.empty());
    }

    /** From the axis to the rim, up and down the steps of what stands out of one face. */
    private ImmutableList<Point> face(boolean outer) {
        double plane = outer ? thickness() : 0;
        ImmutableList<Body> out = bodies.select(body -> outer ? body.to() > plane + SAME : body.from() < plane - SAME);
        MutableList<Double> steps = out.flatCollect(body -> Lists.immutable.of(body.inner(), body.outer()))
                .newWith(0.0)
                .newWith(radius)
                .toSortedSet()
                .toList();
        MutableList<Point> path = Lists.mutable.empty();
        for (int i = 0; i + 1 < steps.size(); i++) {
            double middle = (steps.get(i) + steps.get(i + 1)) / 2;
            ImmutableList<Body> here = out.select(body -> body.inner() < middle && middle < body.outer());
            double height = outer
                    ? here.collectDouble(Body::to).maxIfEmpty(plane)
                    : here.collectDouble(Body::from).minIfEmpty(plane);
            Point from = new Point(steps.get(i), height);
            if (path.isEmpty() || !path.getLast().equals(from)) {
                path.add(from);
            }
            path.add(new Point(steps.get(i + 1), height));
        }
        return path.toImmutable();
    }

    /** What stands free of the build-up, in the room or outdoors, without anything that joins it. */
    ImmutableList<Body> floating() {
        return bodies.select(body -> floats(body, true) || floats(body, false));
    }

    /** The same without some of its bodies. */
    PointSection without(ImmutableList<Body> some) {
        return new PointSection(
                name,
                sheets,
                bodies.reject(some::contains),
                interiorResistance,
                exteriorResistance,
                radius,
                indoorTemperature,
                outdoorTemperature);
    }

    private boolean floats(Body body, boolean outer) {
        double plane = outer ? thickness() : 0;
        double foot = outer ? body.from() - plane : plane - body.to();
        if (foot <= SAME) {
            return false;
        }
        // Every ring of it must stand on others that reach down to the face without a slit.
        ImmutableList<Double> steps = bodies.flatCollect(each -> Lists.immutable.of(each.inner(), each.outer()))
                .select(each -> each >= body.inner() - SAME && each <= body.outer() + SAME)
                .toSortedSet()
                .toImmutableList();
        for (int i = 0; i + 1 < steps.size(); i++) {
            double middle = (steps.get(i) + steps.get(i + 1)) / 2;
            double reached = 0;
            boolean grew = true;
            while (grew) {
                grew = false;
                for (Body other : bodies) {
                    double from = outer ? other.from() - plane : plane - other.to();
                    double to = outer ? other.to() - plane : plane - other.from();
                    if (other.inner() < middle
                            && middle < other.outer()
                            && from <= reached + SAME
                            && to > reached + SAME) {
                        reached = to;
                        grew = true;
                    }
                }
            }
            if (reached < foot - SAME) {
                return true;
            }
        }
        return false;
    }
}
