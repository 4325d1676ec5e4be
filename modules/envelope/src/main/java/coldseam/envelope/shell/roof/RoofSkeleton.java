package coldseam.envelope.shell.roof;

import static coldseam.envelope.shell.roof.PlanVectors.cross;
import static coldseam.envelope.shell.roof.PlanVectors.distance;
import static coldseam.envelope.shell.roof.PlanVectors.dot;
import static coldseam.envelope.shell.roof.PlanVectors.minus;
import static coldseam.envelope.shell.roof.PlanVectors.unit;

import coldseam.envelope.Point2;
import coldseam.envelope.shell.lattice.Vertex;
import coldseam.envelope.shell.plan.Footprint;
import coldseam.envelope.shell.plan.Plan;
import coldseam.files.quantity.Format;
import java.util.Optional;
import java.util.TreeSet;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/**
 * The planes that rise from the sides of an outline, each with its own pitch, and the lines in which they meet: a straight
 * skeleton with weights.
 *
 * <p>A level section through the roof is the outline with each side moved inwards by its run at that height. It shrinks from
 * height to height; between two events each side keeps its neighbours, and each corner runs straight in plan, along a hip, a
 * valley or a ridge. At an event a side ends, a corner meets another side, an upright side begins to slope, or the roof ends in a
 * level top. All events of one height are settled at once: corners that coincide are made one, corners that lie on a side part
 * it, and the outline is taken apart wherever it comes twice to one point; parts without area are ridges.
 *
 * <p>A side without run stands upright: a gable. Reference: O. Aichholzer, F. Aurenhammer, D. Alberts, B. Gärtner, A novel type
 * of skeleton for polygons, Journal of Universal Computer Science 1 (1995), 752–761 (from memory); differs in settling events by
 * place instead of by kind, and in runs that differ from side to side and from height to height.
 */
public final class RoofSkeleton {

    /** m, within which corners of a level section are one: the reach of the plan. */
    static final double ONE = Vertex.ONE / Vertex.PER_METRE;

    /** m of height, by which two events differ. */
    private static final double LATER = 1e-9;

    /** Sine of the angle below which two neighbouring sides run alike: a hundredth of a millimetre in 10 m. */
    private static final double ALIKE = 1e-6;

    /** An outline of 100 corners has at most some hundreds of events. */
    private static final int EVENTS = 5_000;

    /**
     * How a side rises.
     *
     * @param from m over the eaves, up to which it stands upright; infinite for a gable
     * @param run m in plan for each metre of height from there on
     */
    public record Rise(double from, double run) {}

    /**
     * A line in which two planes meet, or one with a level top.
     *
     * @param from in plan
     * @param to in plan
     * @param fromHeight m over the eaves
     * @param toHeight m over the eaves
     * @param upright the upright side that stands over this line; −1 where none does
     */
    public record Line(Point2 from, Point2 to, double fromHeight, double toHeight, int upright) {}

    /**
     * What a side sweeps between two events.
     *
     * @param side index
     * @param corners in plan, counterclockwise
     */
    record Sweep(int side, ImmutableList<Point2> corners) {}

    /**
     * A level section.
     *
     * @param height m over the eaves
     * @param area m²
     */
    public record Section(double height, double area) {}

    /** A corner of the section: where the side before it and the side after it meet. */
    private static final class Corner {
        final int before;
        final int after;
        final Point2 born;
        final double bornAt;
        final int upright;
        Point2 at;

        Corner(int before, int after, Point2 at, double height, int upright) {
            this.before = before;
            this.after = after;
            this.born = at;
            this.bornAt = height;
            this.upright = upright;
            this.at = at;
        }
    }

    private final Footprint outline;
    private final ImmutableList<Rise> rises;
    private final double limit;
    private final ImmutableList<Double> levels;
    private final MutableList<MutableList<Corner>> rings = Lists.mutable.empty();
    private final MutableList<Line> lines = Lists.mutable.empty();
    private final MutableList<Sweep> sweeps = Lists.mutable.empty();
    private final MutableList<Section> sections = Lists.mutable.empty();
    private final MutableList<Polygon> tops = Lists.mutable.empty();
    private final boolean courts;
    private double height;
    private Optional<String> failure = Optional.empty();

    private RoofSkeleton(Footprint outline, ImmutableList<Rise> rises, double limit, ImmutableList<Double> levels) {
        this.outline = outline;
        this.courts = outline.rings().size() > 1;
        this.rises = rises;
        this.limit = limit;
        this.levels = levels;
    }

    /**
     * @param outline with its courts, no side of it a jog
     * @param rises of each side
     * @param limit m over the eaves, where a level top ends the roof; infinite for none
     * @param levels m over the eaves, where its section is wanted as well
     */
    public static RoofSkeleton of(
            Footprint outline, ImmutableList<Rise> rises, double limit, ImmutableList<Double> levels) {
        RoofSkeleton skeleton = new RoofSkeleton(outline, rises, limit, levels);
        skeleton.grow();
        return skeleton;
    }

    /** Why the planes do not close; empty where they do. */
    Optional<String> failure() {
        return failure;
    }

    public ImmutableList<Line> lines() {
        return lines.toImmutable();
    }

    ImmutableList<Sweep> sweeps() {
        return sweeps.toImmutable();
    }

    /** One between every two events, and those that were asked for. */
    public ImmutableList<Section> sections() {
        return sections.toImmutable();
    }

    /** What is left at the limit. */
    public ImmutableList<Polygon> tops() {
        return tops.toImmutable();
    }

    /** m over the eaves, of the highest ridge or the level top. */
    public double top() {
        return height;
    }

    private void grow() {
        for (int i = 0; i < outline.corners().size(); i++) {
            if (i == 0 || outline.next().get(i - 1) != i) {
                rings.add(Lists.mutable.empty());
            }
            int before = outline.next().indexOf(i);
            rings.getLast().add(corner(before, i, outline.corners().get(i)));
        }
        settle();
        for (int event = 0; event < EVENTS && rings.notEmpty() && failure.isEmpty(); event++) {
            double next = next();
            if (Double.isInfinite(next)) {
                failure = Optional.of("part of it is enclosed by gables alone and has no eaves");
                return;
            }
            advance(next);
            if (height >= limit) {
                end();
                return;
            }
            settle();
        }
        if (rings.notEmpty() && failure.isEmpty()) {
            failure = Optional.of("its planes do not close");
        }
    }

    /** The outline of a level top is a line of the roof. */
    private void end() {
        for (MutableList<Corner> ring : rings) {
            for (int i = 0; i < ring.size(); i++) {
                Corner a = ring.get(i);
                Corner b = ring.get((i + 1) % ring.size());
                trace(a);
                lines.add(new Line(a.at, b.at, height, height, -1));
            }
        }
        MutableList<ImmutableList<Point2>> outlines =
                rings.collect(ring -> ring.collect(corner -> corner.at).toImmutable());
        for (ImmutableList<Point2> outer : outlines.select(ring -> area(ring) > 0)) {
            Geometry top = Plan.outline(outer);
            for (ImmutableList<Point2> court : outlines.select(ring -> area(ring) < 0)) {
                top = top.difference(Plan.outline(court));
            }
            tops.add((Polygon) top);
        }
        rings.clear();
    }

    private Corner corner(int before, int after, Point2 at) {
        int upright = run(before) == 0 ? before : run(after) == 0 ? after : -1;
        return new Corner(before, after, at, height, upright);
    }

    private double run(int side) {
        Rise rise = rises.get(side);
        return rise.from() <= height + LATER ? rise.run() : 0;
    }

    /** m, how far a side has moved inwards at a height. */
    private double moved(int side, double at) {
        return Math.max(0, at - rises.get(side).from()) * rises.get(side).run();
    }

    private Point2 along(int side) {
        return unit(outline.corners().get(side), outline.end(side));
    }

    /** m, inwards from a side's own line. */
    double inwards(int side, Point2 point) {
        return cross(along(side), minus(point, outline.corners().get(side)));
    }

    /** Where a corner lies at a height, no event between. */
    private Point2 at(Corner corner, double then) {
        Point2 move = move(
                corner,
                moved(corner.before, then) - inwards(corner.before, corner.at),
                moved(corner.after, then) - inwards(corner.after, corner.at));
        return new Point2(corner.at.x() + move.x(), corner.at.y() + move.y());
    }

    /** The move that takes a corner inwards of its two sides by these lengths. */
    private Point2 move(Corner corner, double byBefore, double byAfter) {
        Point2 one = along(corner.before);
        Point2 other = along(corner.after);
        double sine = cross(one, other);
        if (Math.abs(sine) < ALIKE) {
            return new Point2(-byAfter * other.y(), byAfter * other.x());
        }
        // The move m has cross(one, m) = byBefore and cross(other, m) = byAfter.
        double alongOne = (byBefore * dot(one, other) - byAfter) / sine;
        return new Point2(alongOne * one.x() - byBefore * one.y(), alongOne * one.y() + byBefore * one.x());
    }

    /** The height of the next event. */
    private double next() {
        double next = limit;
        for (Rise rise : rises) {
            next = rise.from() > height + LATER ? Math.min(next, rise.from()) : next;
        }
        MutableList<ImmutableList<Point2>> speeds =
                rings.collect(ring -> ring.collect(corner -> move(corner, run(corner.before), run(corner.after)))
                        .toImmutable());
        for (int r = 0; r < rings.size(); r++) {
            MutableList<Corner> ring = rings.get(r);
            for (int i = 0; i < ring.size(); i++) {
                next = Math.min(next, ends(ring, speeds.get(r), i));
                for (int s = 0; s < rings.size(); s++) {
                    // Rings of an outline without courts have parted and do not come together again.
                    if (s == r || courts) {
                        next = Math.min(next, meets(ring.get(i), speeds.get(r).get(i), rings.get(s), speeds.get(s)));
                    }
                }
            }
        }
        return next;
    }

    /** When a side has shrunk to nothing. */
    private double ends(MutableList<Corner> ring, ImmutableList<Point2> speed, int i) {
        int j = (i + 1) % ring.size();
        Corner a = ring.get(i);
        Corner b = ring.get(j);
        Point2 along = along(a.after);
        double length = dot(along, minus(b.at, a.at));
        double growth = dot(along, minus(speed.get(j), speed.get(i)));
        return growth < 0 ? height + Math.max(LATER, length / -growth) : Double.POSITIVE_INFINITY;
    }

    /** When a corner comes to lie on a side that is not its own. */
    private double meets(Corner corner, Point2 corners, MutableList<Corner> ring, ImmutableList<Point2> speed) {
        double first = Double.POSITIVE_INFINITY;
        for (int e = 0; e < ring.size(); e++) {
            Corner a = ring.get(e);
            int f = (e + 1) % ring.size();
            if (a == corner || ring.get(f) == corner || a.after == corner.before || a.after == corner.after) {
                continue;
            }
            Point2 along = along(a.after);
            double off = cross(along, minus(corner.at, a.at));
            double away = cross(along, corners) - run(a.after);
            if (!(away < 0) || off < 0) {
                continue;
            }
            double wait = off / -away;
            double from = along(along, a.at, speed.get(e), wait);
            double to = along(along, ring.get(f).at, speed.get(f), wait);
            double here = along(along, corner.at, corners, wait);
            if (here >= from - ONE && here <= to + ONE) {
                first = Math.min(first, height + Math.max(LATER, wait));
            }
        }
        return first;
    }

    private static double along(Point2 along, Point2 at, Point2 speed, double wait) {
        return dot(along, at) + wait * dot(along, speed);
    }

    /** Moves every section to a height, and keeps what its sides sweep on their way. */
    private void advance(double next) {
        section((height + next) / 2);
        levels.select(level -> level > height && level < next).forEach(this::section);
        for (MutableList<Corner> ring : rings) {
            ImmutableList<Point2> then =
                    ring.collect(corner -> at(corner, next)).toImmutable();
            for (int i = 0; i < ring.size(); i++) {
                int j = (i + 1) % ring.size();
                int side = ring.get(i).after;
                if (run(side) > 0) {
                    sweeps.add(new Sweep(
                            side, Lists.immutable.of(ring.get(i).at, ring.get(j).at, then.get(j), then.get(i))));
                }
            }
            ring.forEachWithIndex((corner, i) -> corner.at = then.get(i));
        }
        height = next;
    }

    private void section(double level) {
        sections.add(new Section(
                level,
                rings.sumOfDouble(
                        ring -> area(ring.collect(corner -> at(corner, level)).toImmutable()))));
    }

    private static double area(ImmutableList<Point2> ring) {
        double sum = 0;
        for (int i = 0; i < ring.size(); i++) {
            sum += cross(ring.get(i), ring.get((i + 1) % ring.size()));
        }
        return sum / 2;
    }

    /** Takes the sections apart where they touch themselves, and begins new corners where sides have new neighbours. */
    private void settle() {
        TreeSet<Integer> changed = new TreeSet<>();
        for (int side = 0; side < rises.size(); side++) {
            if (rises.get(side).from() > LATER && Math.abs(rises.get(side).from() - height) <= LATER) {
                changed.add(side);
            }
        }
        MutableList<Corner> old = rings.flatCollect(ring -> ring);
        SectionRings apart = SectionRings.of(
                rings.collect(ring -> ring.collect(corner -> new SectionRings.Start(corner.after, corner.at))),
                side -> run(side) == 0,
                courts);
        apart.ridges().forEach(r -> lines.add(new Line(r.from(), r.to(), height, height, r.upright())));
        rings.clear();
        MutableList<Corner> kept = Lists.mutable.empty();
        for (MutableList<SectionRings.Start> ring : apart.rings()) {
            MutableList<Corner> next = Lists.mutable.empty();
            for (int i = 0; i < ring.size(); i++) {
                SectionRings.Start here = ring.get(i);
                int before = ring.get((i + ring.size() - 1) % ring.size()).side();
                if (before == here.side()) {
                    continue;
                }
                boolean steady = !changed.contains(before) && !changed.contains(here.side());
                Corner same = old.detect(c ->
                        steady && c.before == before && c.after == here.side() && distance(c.at, here.at()) <= ONE);
                if (same != null) {
                    kept.add(same);
                }
                next.add(same != null ? same : straightened(corner(before, here.side(), here.at())));
            }
            double area = area(next.collect(c -> c.at).toImmutable());
            if (next.size() >= 3 && (area > 0 || courts && area < -ONE)) {
                check(next);
                rings.add(next);
            } else if (area < -ONE) {
                failure = Optional.of("its planes do not close");
            }
        }
        old.reject(kept::contains).forEach(this::trace);
    }

    /** Where corners were made one, each goes on from where its own two sides meet. */
    private Corner straightened(Corner corner) {
        Point2 exact = at(corner, height);
        if (distance(exact, corner.at) <= 4 * ONE) {
            corner.at = exact;
        }
        return corner;
    }

    private void check(MutableList<Corner> ring) {
        for (Corner corner : ring) {
            Point2 one = along(corner.before);
            Point2 other = along(corner.after);
            boolean alike = Math.abs(cross(one, other)) < ALIKE && dot(one, other) > 0;
            if (alike && Math.abs(run(corner.before) - run(corner.after)) > 1e-9) {
                failure = Optional.of(Format.of(
                        "two sides in one line need one pitch, but at [%.3f m, %.3f m] of the outer faces two meet that differ",
                        corner.at.x(), corner.at.y()));
            }
        }
    }

    /** What a corner has drawn since it began. */
    private void trace(Corner corner) {
        if (distance(corner.born, corner.at) > 0) {
            lines.add(new Line(corner.born, corner.at, corner.bornAt, height, corner.upright));
        }
    }
}
