package coldseam.envelope.shell.plan;

import coldseam.envelope.Assembly;
import coldseam.envelope.shell.lattice.Vertex;
import java.util.Optional;
import java.util.OptionalInt;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.locationtech.jts.algorithm.ConvexHull;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/**
 * Where two storeys' outer faces differ by no more than the thicknesses of their walls explain.
 *
 * <p>Walls that stand in one line inside, or with their structure, have outer faces apart by the difference of their
 * thicknesses, or of what lies outside their structure. So far, and {@link #HAIR} further, what lies between the faces is
 * a step of the wall; anything wider has a room under or over it and is a surface with a build-up of its own.
 */
public final class StepZones {

    /** m, by which walls may be out of line without leaving a surface; our own rule, common practice, no source. */
    public static final double HAIR = 0.01;

    /** Sine of the angle up to which two sides run alike. */
    private static final double ALIKE = 0.01;

    /**
     * A side of a storey's outer footprint.
     *
     * @param from its start, counterclockwise around the storey
     * @param to its end
     * @param wall its build-up
     * @param next its neighbour at its end by its number in the list; empty where a jog lies between
     */
    public record Side(Vertex from, Vertex to, Optional<Assembly> wall, OptionalInt next) {

        public double length() {
            return to.minus(from).length();
        }

        /** How far along this side's line a point lies, lattice units. */
        public double place(Vertex point) {
            return point.minus(from).dot(to.minus(from)) / length();
        }

        /** How far outwards of this side's line a point lies, lattice units. */
        public double outward(Vertex point) {
            return -to.minus(from).cross(point.minus(from)).z() / length();
        }

        public Vertex at(double place) {
            return from.toward(to, place / length());
        }

        /** Where the square to {@code other} at a place along it meets this side's line. */
        public Vertex across(Side other, double place) {
            double start = other.place(from);
            double end = other.place(to);
            return from.toward(to, (place - start) / (end - start));
        }
    }

    /** A step along the inner storey's side: from and to along it, lattice units. */
    private record Strip(int inner, int outer, double from, double to) {}

    private final ImmutableList<Side> outer;
    private final ImmutableList<Side> inner;
    private final MutableList<Strip> strips = Lists.mutable.empty();
    private final MutableList<Geometry> zones = Lists.mutable.empty();
    private final MutableList<ImmutableList<Vertex>> ends = Lists.mutable.empty();
    private double widest;

    /**
     * @param outer sides of the storey that reaches further out
     * @param inner sides of the storey that stands back
     */
    public StepZones(ImmutableList<Side> outer, ImmutableList<Side> inner) {
        this.outer = outer;
        this.inner = inner;
        for (int j = 0; j < inner.size(); j++) {
            for (int i = 0; i < outer.size(); i++) {
                strip(i, j);
            }
        }
        corners();
    }

    /** The widest step that the walls explain, m; {@link #HAIR} where they are all alike. */
    static double explained(Optional<Assembly> outer, Optional<Assembly> inner) {
        double whole = Footprint.thickness(outer) - Footprint.thickness(inner);
        double beyond = Footprint.beyondStructure(outer) - Footprint.beyondStructure(inner);
        return HAIR + Math.max(0, Math.max(whole, beyond));
    }

    private void strip(int i, int j) {
        Side out = outer.get(i);
        Side in = inner.get(j);
        Vertex one = out.to().minus(out.from());
        Vertex two = in.to().minus(in.from());
        boolean alike = one.dot(two) > 0 && Math.abs(one.cross(two).z()) <= ALIKE * one.length() * two.length();
        double from = Math.max(0, in.place(out.from()));
        double to = Math.min(in.length(), in.place(out.to()));
        if (!alike || to - from <= Vertex.ONE) {
            return;
        }
        double atFrom = in.outward(out.across(in, from));
        double atTo = in.outward(out.across(in, to));
        if (Math.max(atFrom, atTo) <= Vertex.ONE) {
            return;
        }
        // Sides that cross leave a step only where the outer one is outside.
        double crossing = from + (to - from) * atFrom / (atFrom - atTo);
        from = atFrom < 0 ? crossing : from;
        to = atTo < 0 ? crossing : to;
        double width = Vertex.metres(1) * Math.max(atFrom, atTo);
        if (width <= explained(out.wall(), in.wall())) {
            widest = Math.max(widest, width);
            strips.add(new Strip(j, i, from, to));
            add(Lists.immutable.of(in.at(from), out.across(in, from), out.across(in, to), in.at(to)));
            ends.add(Lists.immutable.of(in.at(from), out.across(in, from)));
            ends.add(Lists.immutable.of(in.at(to), out.across(in, to)));
        }
    }

    /** Corners of the inner storey with a step on both sides: what lies between the two steps is one, too. */
    private void corners() {
        for (Strip strip : strips.toImmutable()) {
            Side in = inner.get(strip.inner());
            Side out = outer.get(strip.outer());
            for (Strip other : strips.select(s -> in.next().equals(OptionalInt.of(s.inner())))) {
                Side inNext = inner.get(other.inner());
                Side outNext = outer.get(other.outer());
                Vertex corner = crossing(out, outNext);
                if (corner == null) {
                    continue;
                }
                double end = Math.min(in.length(), in.place(corner));
                double start = Math.max(0, inNext.place(corner));
                // A hair: where the outer storey has its corner elsewhere, what lies there is no step.
                double near = HAIR * Vertex.PER_METRE;
                if (Math.abs(strip.to() - end) <= near && Math.abs(other.from() - start) <= near) {
                    add(Lists.immutable.of(
                            in.to(),
                            corner,
                            out.across(in, strip.to()),
                            outNext.across(inNext, other.from()),
                            in.at(strip.to()),
                            inNext.at(other.from())));
                }
            }
        }
    }

    private static Vertex crossing(Side one, Side other) {
        Vertex along = one.to().minus(one.from());
        Vertex across = other.to().minus(other.from());
        double sine = along.cross(across).z();
        if (Math.abs(sine) <= ALIKE * along.length() * across.length()) {
            return null;
        }
        return one.at(
                one.length() * other.from().minus(one.from()).cross(across).z() / sine);
    }

    private void add(ImmutableList<Vertex> corners) {
        Coordinate[] points = corners.collect(v -> new Coordinate(v.x(), v.y())).toArray(new Coordinate[0]);
        zones.add(new ConvexHull(points, Plan.GEOMETRY).getConvexHull());
    }

    /** Where a step ends: lines from the one storey's side to the other's. */
    public ImmutableList<ImmutableList<Vertex>> ends() {
        return ends.toImmutable();
    }

    /** m, of the widest step. */
    public double widest() {
        return widest;
    }

    /** Whether a cell of the plan, as cut by the ends, is part of a step. */
    public boolean covers(Plan.Cell cell) {
        var inside = cell.polygon().getInteriorPoint();
        return zones.anySatisfy(zone -> zone.covers(inside));
    }
}
