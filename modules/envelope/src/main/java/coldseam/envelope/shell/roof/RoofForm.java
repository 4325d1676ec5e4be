package coldseam.envelope.shell.roof;

import coldseam.envelope.Assembly;
import coldseam.envelope.Body;
import coldseam.envelope.House;
import coldseam.envelope.Point2;
import coldseam.envelope.shell.fault.ShellFault;
import coldseam.envelope.shell.fault.ShellFaults;
import coldseam.envelope.shell.lattice.Vertex;
import coldseam.envelope.shell.plan.Footprint;
import coldseam.envelope.shell.plan.Plan;
import coldseam.files.Words;
import coldseam.files.quantity.Format;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.factory.Maps;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.UnaryUnionNG;

/**
 * The planes that cover a storey from above.
 *
 * <p>A pitched roof's structure has its top at the storey's height over the inner face of the eaves' wall. Its outer plane
 * lies higher by the layers outside the structure, measured plumb, and falls with the pitch to the outer plane of that
 * wall: where the two meet is the eaves. All eaves of a roof run level; where walls, pitches or both differ, the lowest of
 * the heights so found is that of all. A cold loft has its insulation on the top ceiling, which is flat whatever roof stands
 * over it.
 */
public final class RoofForm {

    /** Cosine to the low side below which a gable roof's side carries a gable. */
    private static final double ALONG = Math.cos(Math.toRadians(45));

    /**
     * A plane.
     *
     * @param side of the storey that it rises from; of a level roof zero, of a collar {@link #COLLAR}, of dormers {@link #DORMER}
     * @param part which of a dormer's planes; zero elsewhere
     */
    public record Plane(int side, int part) {}

    /** In the place of a side: the level ceiling that ends the slopes. */
    public static final int COLLAR = -1;

    /** In the place of a side: the first dormer's planes; those of the next ones count down from it. */
    public static final int DORMER = -2;

    /** One of a dormer's lines. */
    private record DormerEdge(DormerForm dormer, DormerForm.Edge edge) {}

    /** A dormer that does not stand on its slope. */
    private record Misfit(Body.Dormer dormer, String why) {}

    private final Body.Roof roof;
    private final Footprint outer;
    private final ImmutableList<Vertex> corners;
    private final ImmutableList<Body.RoofSide> rises;
    private final Optional<RoofSkeleton> skeleton;
    private final long eaves;
    private final ImmutableList<DormerForm> dormers;
    private final ImmutableList<DormerEdge> dormerEdges;

    private RoofForm(
            Body.Roof roof,
            Footprint outer,
            ImmutableList<Body.RoofSide> rises,
            Optional<RoofSkeleton> skeleton,
            long eaves,
            ImmutableList<DormerForm> dormers) {
        this.roof = roof;
        this.outer = outer;
        this.corners = outer.corners().collect(Vertex::inPlan);
        this.rises = rises;
        this.skeleton = skeleton;
        this.eaves = eaves;
        this.dormers = dormers;
        this.dormerEdges = dormers.flatCollect(dormer -> dormer.edges()
                .newWithAll(dormer.cuts(slope(dormer.dormer().side())))
                .collect(edge -> new DormerEdge(dormer, edge)));
    }

    /**
     * The planes over a stack's top storey, or none where a fault was added.
     *
     * @param outer the storey's outer faces
     * @param top z to which the storey's height runs
     */
    public static Optional<RoofForm> of(House house, Body.Stack stack, Footprint outer, long top, ShellFaults faults) {
        Body.Roof roof = stack.roof();
        Body.Storey storey = stack.storeys().getLast();
        Optional<RoofForm> form = of(
                house,
                roof,
                storey,
                outer,
                top,
                why -> faults.add(
                        ShellFault.Part.ROOF,
                        stack.name(),
                        "Roof: a %s roof cannot be built over \"%s\": %s.",
                        Words.word(roof.form()),
                        storey.name(),
                        why));
        form.ifPresent(built -> built.misfits(storey)
                .forEach(misfit -> faults.add(
                        ShellFault.Part.DORMER,
                        misfit.dormer().name(),
                        "Dormer \"%s\": it cannot stand on the roof over \"%s\": %s.",
                        misfit.dormer().name(),
                        storey.name(),
                        misfit.why())));
        return form;
    }

    private static Optional<RoofForm> of(
            House house, Body.Roof roof, Body.Storey storey, Footprint outer, long top, Consumer<String> refused) {
        ImmutableList<Body.RoofSide> rises = rises(roof, Footprint.of(storey.outlines()));
        Optional<Assembly> assembly = house.assembly(roof.assembly());
        double beyond = Footprint.beyondStructure(assembly);
        if (roof.flatTop()) {
            return Optional.of(new RoofForm(
                    roof, outer, rises, Optional.empty(), top + Vertex.height(beyond), Lists.immutable.empty()));
        }
        boolean mono = roof.form() == Body.Roof.Form.MONO_PITCH;
        Optional<String> fault = mono ? Optional.empty() : jogs(outer);
        long eaves = top + Vertex.height(eaves(house, storey, rises, beyond));
        Optional<RoofSkeleton> skeleton = Optional.empty();
        ImmutableList<DormerForm> dormers = dormers(roof, outer, rises);
        if (mono) {
            fault = notLowest(new RoofForm(roof, outer, rises, skeleton, eaves, Lists.immutable.empty()));
        } else if (fault.isEmpty()) {
            double limit = collar(house, roof, storey, top)
                    .map(z -> Vertex.metres(z - eaves))
                    .orElse(Double.POSITIVE_INFINITY);
            skeleton = limit > 0
                    ? Optional.of(RoofSkeleton.of(
                            outer,
                            rises.collect(rise -> new RoofSkeleton.Rise(rise.gable(), run(rise))),
                            limit,
                            dormers.flatCollect(DormerForm::levels)))
                    : Optional.empty();
            fault = skeleton.map(shape -> why(shape, roof).or(() -> noHip(shape, rises, outer, storey)))
                    .orElse(Optional.of("its collar would lie under its eaves. Raise the collar, or lower the storey"));
        }
        fault.ifPresent(refused);
        return fault.isEmpty()
                ? Optional.of(new RoofForm(roof, outer, rises, skeleton, eaves, dormers))
                : Optional.empty();
    }

    /** Those on slopes that begin at the eaves. */
    private static ImmutableList<DormerForm> dormers(
            Body.Roof roof, Footprint outer, ImmutableList<Body.RoofSide> rises) {
        return roof.dormers()
                .select(dormer -> rises.get(dormer.side()).gable() == 0 && outer.start(dormer.side()) >= 0)
                .collect(dormer -> {
                    int start = outer.start(dormer.side());
                    return new DormerForm(
                            dormer, outer.corners().get(start), outer.end(start), 1 / run(rises.get(dormer.side())));
                });
    }

    private ImmutableList<Misfit> misfits(Body.Storey storey) {
        MutableList<Misfit> misfits = Lists.mutable.empty();
        roof.dormers()
                .select(dormer -> rises.get(dormer.side()).gable() > 0)
                .forEach(
                        dormer -> misfits.add(
                                new Misfit(
                                        dormer,
                                        "\"" + storey.walls().get(dormer.side()).name()
                                                + "\" stands up to a gable there; a dormer stands on a slope that begins at the eaves. Name another side")));
        dormers.forEachWithIndex((form, i) -> {
            Optional<String> other = dormers.take(i)
                    .select(each -> misfits.noneSatisfy(misfit -> misfit.dormer() == each.dormer()))
                    .detectOptional(form::meets)
                    .map(each -> "it meets dormer \"" + each.dormer().name() + "\". Move them apart");
            form.misfit(slope(form.dormer().side()))
                    .or(() -> other)
                    .ifPresent(why -> misfits.add(new Misfit(form.dormer(), why)));
        });
        return misfits.toImmutable();
    }

    /** The slope over a side, in plan. */
    private Geometry slope(int side) {
        ImmutableList<Geometry> swept = skeleton.orElseThrow()
                .sweeps()
                .select(sweep -> coplanar(outer.side(sweep.side()), side))
                .collect(sweep -> Plan.outline(apart(sweep.corners())));
        return UnaryUnionNG.union(swept.castToList(), DormerForm.COARSE);
    }

    private static Optional<String> why(RoofSkeleton shape, Body.Roof roof) {
        boolean over = roof.collar().isPresent()
                && shape.failure().isEmpty()
                && shape.tops().isEmpty();
        return over
                ? Optional.of(Format.of(
                        "its collar would lie over its ridge, which is %.3f m over the eaves outside. Lower the collar, or leave"
                                + " it out",
                        shape.top()))
                : shape.failure();
    }

    /** A half-hip that would begin over all that rises beside it. */
    private static Optional<String> noHip(
            RoofSkeleton shape, ImmutableList<Body.RoofSide> rises, Footprint outer, Body.Storey storey) {
        for (int i = 0; i < outer.lines().size(); i++) {
            int own = i;
            int side = outer.side(i);
            double from = rises.get(side).gable();
            boolean half = from > 0 && Double.isFinite(from);
            if (half && shape.sweeps().noneSatisfy(sweep -> sweep.side() == own)) {
                return Optional.of(Format.of(
                        "its half hip over \"%s\" would begin %.3f m over the eaves outside, but no slope rises so far beside it;"
                                + " the highest ends at %.3f m. Let it begin lower, or write gable",
                        storey.walls().get(side).name(), from, shape.top()));
            }
        }
        return Optional.empty();
    }

    /** z of the outer face of a roof's collar. */
    private static Optional<Long> collar(House house, Body.Roof roof, Body.Storey storey, long top) {
        return roof.collar()
                .map(collar -> top
                        + Vertex.height(collar.height()
                                - storey.height()
                                + Footprint.thickness(
                                        Optional.of(house.assemblies().get(collar.assembly())))));
    }

    /**
     * The one slope over what lies open above a storey, or none where a fault was added.
     *
     * @param floor m, z of the storey's floor
     */
    public static Optional<RoofForm> of(
            House house, Body.LowerRoof lower, Body.Storey storey, Footprint outer, double floor, ShellFaults faults) {
        Body.Roof roof = new Body.Roof(
                Body.Roof.Form.MONO_PITCH,
                false,
                Optional.of(lower.assembly()),
                lower.wall(),
                lower.pitch(),
                lower.lowSide(),
                0,
                OptionalDouble.empty(),
                Maps.immutable.empty(),
                Optional.empty(),
                Lists.immutable.empty());
        return of(
                house,
                roof,
                storey,
                outer,
                Vertex.height(floor + lower.eaves()),
                why -> faults.storey(storey.name(), ": its lower roof cannot be built: %s.", why));
    }

    private static Optional<String> jogs(Footprint outer) {
        int jog = outer.lines().detectIndex(Footprint.Line::jog);
        return jog < 0
                ? Optional.empty()
                : Optional.of(Format.of(
                        "sides %d and %d lie in one line but are walls of different thickness, which would leave a jog in the eaves."
                                + " Give both one assembly, or use a flat roof",
                        outer.side(outer.next().indexOf(jog)) + 1, outer.side(jog) + 1));
    }

    /** A mono-pitch whose low side is not its lowest. */
    private static Optional<String> notLowest(RoofForm form) {
        return form.corners
                .detectOptional(corner -> form.inwards(form.roof.lowSide(), corner) < -Vertex.ONE)
                .map(corner -> Format.of(
                        "its low side is side %d, but the corner at [%.3f m, %.3f m] of the outer faces lies lower. Name another"
                                + " low side",
                        form.roof.lowSide() + 1,
                        corner.point().x(),
                        corner.point().y()));
    }

    /** How the roof rises over each side of a footprint. */
    private static ImmutableList<Body.RoofSide> rises(Body.Roof roof, Footprint footprint) {
        MutableList<Body.RoofSide> rises = Lists.mutable.empty();
        for (int side = 0; side < footprint.corners().size(); side++) {
            boolean upright = switch (roof.form()) {
                case FLAT, TERRACE, HIP -> false;
                case MONO_PITCH -> side != roof.lowSide();
                case GABLE -> across(footprint, side, roof.lowSide());
            };
            Body.RoofSide plain = new Body.RoofSide(roof.pitch(), upright ? Double.POSITIVE_INFINITY : 0);
            rises.add(roof.sides().getIfAbsentValue(side, plain));
        }
        return rises.toImmutable();
    }

    private static boolean across(Footprint footprint, int side, int low) {
        Vertex one = along(footprint, side);
        Vertex other = along(footprint, low);
        return Math.abs(one.dot(other)) < ALONG * one.length() * other.length();
    }

    private static Vertex along(Footprint footprint, int corner) {
        return Vertex.inPlan(footprint.end(corner))
                .minus(Vertex.inPlan(footprint.corners().get(corner)));
    }

    private static double run(Body.RoofSide rise) {
        return 1 / Math.tan(Math.toRadians(rise.pitch()));
    }

    /** m over the top of the storey. */
    private static double eaves(House house, Body.Storey storey, ImmutableList<Body.RoofSide> rises, double beyond) {
        double lowest = Double.POSITIVE_INFINITY;
        for (int side = 0; side < rises.size(); side++) {
            Body.RoofSide rise = rises.get(side);
            if (rise.gable() == 0) {
                double wall = Footprint.thickness(
                        house.assembly(storey.walls().get(side).assembly()));
                double pitch = Math.toRadians(rise.pitch());
                lowest = Math.min(lowest, beyond / Math.cos(pitch) - wall * Math.tan(pitch));
            }
        }
        return Double.isInfinite(lowest) ? 0 : lowest;
    }

    /** z of the eaves, or of all where nothing slopes. */
    public long eaves() {
        return eaves;
    }

    /** Whether a side of the storey carries a gable or a verge. */
    public boolean gable(int side) {
        return rises.get(side).gable() > 0;
    }

    /** Whether what of a side's wall stands over the eaves is a gable, a surface of its own. */
    public boolean parted(int side) {
        return skeleton.isPresent()
                && (gable(side)
                        || dormers.anySatisfy(each ->
                                each.dormer().side() == side && each.dormer().setBack() == 0));
    }

    /** The dormer whose front stands over a line, or its cheek. */
    public Optional<DormerForm> dormer(int line) {
        int own = line - meetings();
        return own < 0 ? Optional.empty() : Optional.of(dormerEdges.get(own).dormer());
    }

    /** The dormer that stands with its front in a side's outer face over a point. */
    public Optional<DormerForm> dormer(int side, Vertex point) {
        return dormers.detectOptional(
                each -> each.dormer().side() == side && each.dormer().setBack() == 0 && each.infront(inPlan(point)));
    }

    /** One of the dormers by the plane over it. */
    public Body.Dormer dormer(Plane plane) {
        return dormers.get(DORMER - plane.side()).dormer();
    }

    /** Whether a line does no more than part a slope, so that it has no hole. */
    public boolean merelyParts(int line) {
        int own = line - meetings();
        return own >= 0 && dormerEdges.get(own).edge().kind() == DormerForm.Kind.CUT;
    }

    private int meetings() {
        return skeleton.map(s -> s.lines().size()).orElse(0);
    }

    private static Point2 inPlan(Vertex point) {
        return new Point2(point.point().x(), point.point().y());
    }

    /** Where the planes meet, for the plan; numbered as {@link #upright} counts them. */
    public ImmutableList<Plan.Line> lines(int storey) {
        MutableList<Plan.Line> lines = Lists.mutable.empty();
        skeleton.ifPresent(s -> s.lines().forEach(line -> lines.add(line(line, storey, lines.size()))));
        int first = lines.size();
        dormerEdges.forEach(own -> {
            // Both halves of a gabled front are one wall.
            int front = dormerEdges.detectIndex(
                    each -> each.dormer() == own.dormer() && each.edge().kind() == DormerForm.Kind.FRONT);
            boolean isFront = own.edge().kind() == DormerForm.Kind.FRONT;
            lines.add(line(own.edge().line(), storey, isFront ? first + front : lines.size()));
        });
        return lines.toImmutable();
    }

    private static Plan.Line line(RoofSkeleton.Line line, int storey, int number) {
        return new Plan.Line(
                Vertex.inPlan(line.from()), Vertex.inPlan(line.to()), new Plan.Tag(Plan.Kind.ROOF, storey, number));
    }

    /** The side whose upright part stands over a line where two planes do not meet. */
    public int upright(int line) {
        return skeleton.orElseThrow().lines().get(line).upright();
    }

    /** Corners of the planes: where in plan, and z. */
    public ImmutableList<Vertex> nodes() {
        MutableList<Vertex> nodes = Lists.mutable.empty();
        skeleton.map(RoofSkeleton::lines)
                .orElse(Lists.immutable.empty())
                .newWithAll(dormerEdges.collect(own -> own.edge().line()))
                .forEach(line -> {
                    nodes.add(Vertex.inPlan(line.from()).at(eaves + Vertex.units(line.fromHeight())));
                    nodes.add(Vertex.inPlan(line.to()).at(eaves + Vertex.units(line.toHeight())));
                });
        dormerEdges.forEach(own -> {
            for (Point2 end :
                    new Point2[] {own.edge().line().from(), own.edge().line().to()}) {
                nodes.add(
                        Vertex.inPlan(end).at(eaves + Vertex.units(own.dormer().under(end))));
            }
        });
        return nodes.toImmutable();
    }

    /** A part of the plan, m, and a plane over it. */
    public record Sheet(Polygon part, Plane plane) {}

    /** All sloping planes, and the collar. */
    public ImmutableList<Sheet> sheets() {
        if (skeleton.isEmpty()) {
            return roof.flatTop()
                    ? Lists.immutable.empty()
                    : Lists.immutable.of(new Sheet(outer.polygon(), new Plane(roof.lowSide(), 0)));
        }
        MutableList<Sheet> sheets = Lists.mutable.empty();
        skeleton.get()
                .sweeps()
                .forEach(sweep -> sheets.add(
                        new Sheet(Plan.outline(apart(sweep.corners())), new Plane(outer.side(sweep.side()), 0))));
        skeleton.get().tops().forEach(top -> sheets.add(new Sheet(top, new Plane(COLLAR, 0))));
        dormers.forEachWithIndex((dormer, i) ->
                dormer.parts().forEachWithIndex((part, p) -> sheets.add(new Sheet(part, new Plane(DORMER - i, p)))));
        return sheets.toImmutable();
    }

    /** Corners without those that round-off alone sets apart: with them an outline may cross itself. */
    private static ImmutableList<Point2> apart(ImmutableList<Point2> corners) {
        MutableList<Point2> apart = Lists.mutable.empty();
        for (Point2 corner : corners) {
            if (apart.noneSatisfy(other -> Vertex.inPlan(other).equals(Vertex.inPlan(corner)))) {
                apart.add(corner);
            }
        }
        return apart.toImmutable();
    }

    /** Level sections, m over the eaves with their areas, m². */
    public ImmutableList<RoofSkeleton.Section> sections() {
        return skeleton.map(RoofSkeleton::sections)
                .orElse(Lists.immutable.empty())
                .collect(section -> new RoofSkeleton.Section(
                        section.height(),
                        section.area() + dormers.sumOfDouble(dormer -> dormer.widens(section.height()))));
    }

    /** The plane over a point of the plan. */
    public Plane at(Vertex point) {
        if (skeleton.isEmpty()) {
            return new Plane(roof.flatTop() ? 0 : roof.lowSide(), 0);
        }
        Point2 p = inPlan(point);
        int dormer = dormers.detectIndex(each -> each.covers(p));
        if (dormer >= 0) {
            return new Plane(DORMER - dormer, dormers.get(dormer).plane(p));
        }
        if (skeleton.get().tops().anySatisfy(top -> top.covers(Plan.point(p)))) {
            return new Plane(COLLAR, 0);
        }
        RoofSkeleton.Sweep over = skeleton.get().sweeps().maxBy(sweep -> within(sweep.corners(), p));
        int side = outer.side(over.side());
        int same = Lists.immutable
                .fromStream(java.util.stream.IntStream.range(0, side).boxed())
                .detectIfNone(other -> coplanar(other, side), () -> side);
        return new Plane(same, 0);
    }

    private boolean coplanar(int one, int other) {
        return rises.get(one).equals(rises.get(other))
                && along(outer, one).dot(along(outer, other)) > 0
                && Math.abs(inwards(one, corners.get(other))) <= Vertex.ONE
                && Math.abs(inwards(one, corners.get(outer.next().get(other)))) <= Vertex.ONE;
    }

    /** m that a point lies inside of the nearest side of an outline; negative where it lies outside. */
    private static double within(ImmutableList<Point2> outline, Point2 p) {
        double least = Math.min(
                Math.min(
                        p.x() - outline.collectDouble(Point2::x).min(),
                        outline.collectDouble(Point2::x).max() - p.x()),
                Math.min(
                        p.y() - outline.collectDouble(Point2::y).min(),
                        outline.collectDouble(Point2::y).max() - p.y()));
        for (int i = 0; i < outline.size(); i++) {
            Point2 a = outline.get(i);
            Point2 b = outline.get((i + 1) % outline.size());
            double length = Math.hypot(b.x() - a.x(), b.y() - a.y());
            // A side that has shrunk to less than the reach has no direction. What is left of an outline may then be
            // open, as
            // just under a point in which planes all but meet, so that its extent counts as well.
            if (length * Vertex.PER_METRE > Vertex.ONE) {
                double cross = (b.x() - a.x()) * (p.y() - a.y()) - (b.y() - a.y()) * (p.x() - a.x());
                least = Math.min(least, cross / length);
            }
        }
        return least;
    }

    /** z of a plane over a point of the plan. */
    public long height(Plane plane, Vertex point) {
        if (roof.flatTop()) {
            return eaves;
        }
        if (plane.side() == COLLAR) {
            return eaves + Vertex.units(skeleton.orElseThrow().top());
        }
        if (plane.side() <= DORMER) {
            DormerForm dormer = dormers.get(DORMER - plane.side());
            return eaves + Vertex.units(dormer.height(plane.part(), inPlan(point)));
        }
        Body.RoofSide rise = rises.get(plane.side());
        return eaves + Math.round(rise.gable() * Vertex.PER_METRE + inwards(plane.side(), point) / run(rise));
    }

    /** Lattice units inwards of a side's line. */
    private double inwards(int side, Vertex point) {
        int start = outer.start(side);
        Vertex along = along(outer, start);
        return along.cross(point.at(0).minus(corners.get(start))).z() / along.length();
    }

    /** A point of the plan over which a single slope has the eaves' height, m. */
    public Coordinate foot() {
        var foot = corners.get(outer.start(roof.lowSide())).point();
        return new Coordinate(foot.x(), foot.y());
    }

    /** How much a single slope rises for each unit east and north. */
    public Coordinate rise() {
        Vertex along = along(outer, outer.start(roof.lowSide()));
        double steep = Math.tan(Math.toRadians(roof.pitch())) / along.length();
        return new Coordinate(-along.y() * steep, along.x() * steep);
    }
}
