package coldseam.envelope.shell.storeys;

import coldseam.envelope.Body;
import coldseam.envelope.House;
import coldseam.envelope.Point2;
import coldseam.envelope.shell.fault.ShellFault;
import coldseam.envelope.shell.fault.ShellFaults;
import coldseam.envelope.shell.lattice.Vertex;
import coldseam.envelope.shell.plan.Footprint;
import coldseam.envelope.shell.plan.Plan;
import coldseam.envelope.shell.plan.PlanRegions;
import coldseam.envelope.shell.plan.PlanRings;
import coldseam.envelope.shell.plan.StepZones;
import coldseam.envelope.shell.roof.RoofForm;
import coldseam.files.quantity.Format;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * The plan of a body by storeys: each footprint moved to the outside of its finished walls, and all laid over one another.
 *
 * <p>Refused are footprints that leave no room, storeys that stand on nothing, and what lies open or hangs over without a
 * build-up.
 */
final class StoreyPlan implements PlanRegions.Areas {

    /** m, by which floors of two stacks may differ that are one storey's: a step. */
    private static final double STEP = 0.2;

    /** m, from floor to floor; what lies higher is the floor of another room, over the one below (judgement). */
    private static final double HEADROOM = 2;

    /** m, of the side that two stacks share, at the least. */
    private static final double SHORTEST = 0.1;

    /** m, as closely as the sides of two stacks meet that are one. */
    private static final double MEETING = 1e-3;

    private final House house;
    private final Body.FootprintLine line;
    private final Stacks stacks;
    private final int count;
    private final ShellFaults faults;
    private final GivenSides given;
    private final MutableList<Footprint> outers = Lists.mutable.empty();
    private final MutableList<Optional<RoofForm>> forms = Lists.mutable.empty();
    private final MutableList<Optional<ImmutableList<Point2>>> roofAreas = Lists.mutable.empty();
    private final MutableList<ImmutableList<ImmutableList<Point2>>> baseAreas = Lists.mutable.empty();
    private double floorArea;
    private PlanRegions regions;
    private Plan plan;

    private StoreyPlan(House house, Body.FootprintLine line, Stacks stacks, ShellFaults faults) {
        this.house = house;
        this.line = line;
        this.stacks = stacks;
        this.count = stacks.count();
        this.faults = faults;
        this.given = new GivenSides(house, line, stacks);
    }

    /** The plan, or none where faults were added. */
    public static Optional<StoreyPlan> of(House house, Body.FootprintLine line, Stacks stacks, ShellFaults faults) {
        StoreyPlan plan = new StoreyPlan(house, line, stacks, faults);
        plan.footprints();
        if (faults.isEmpty()) {
            plan.roofs();
        }
        if (faults.isEmpty()) {
            plan.lay();
        }
        return faults.isEmpty() ? Optional.of(plan) : Optional.empty();
    }

    /** Outer footprints, moved. */
    public ImmutableList<Footprint> moved() {
        return outers.toImmutable();
    }

    GivenSides given() {
        return given;
    }

    /** m², of all storeys between inner faces. */
    public double floorArea() {
        return floorArea;
    }

    public PlanRegions regions() {
        return regions;
    }

    /** What slopes over each storey where no other storey does. */
    public ImmutableList<Optional<RoofForm>> forms() {
        return forms.toImmutable();
    }

    private void roofs() {
        for (int k = 0; k < count; k++) {
            int storey = k;
            Body.Stack stack = stacks.stack(k);
            if (stacks.top(k)) {
                forms.add(RoofForm.of(house, stack, outers.get(k), StoreyLevels.top(stack), faults));
                continue;
            }
            Optional<Body.LowerRoof> lower = stacks.storey(k).lowerRoof().filter(roof -> roof.pitch() > 0);
            forms.add(lower.flatMap(roof ->
                    RoofForm.of(house, roof, stacks.storey(storey), outers.get(storey), stacks.floor(storey), faults)));
        }
    }

    /** The area of a storey's lower roof, drawn out to the walls' outer faces; empty where it has none of its own. */
    Optional<ImmutableList<Point2>> roofArea(int storey) {
        return roofAreas.get(storey);
    }

    /** Those of the other bases of a storey's stack, drawn out likewise. */
    ImmutableList<ImmutableList<Point2>> baseAreas(int storey) {
        return baseAreas.get(storey);
    }

    /** Takes the areas of lower roofs and bases out to the outer faces of the walls along which they were drawn. */
    private void drawAreas() {
        for (int k = 0; k < count; k++) {
            int storey = k;
            roofAreas.add(
                    stacks.storey(k).lowerRoof().flatMap(Body.LowerRoof::area).map(area -> drawn(area, storey)));
            baseAreas.add(stacks.stack(k).otherBases().collect(base -> drawn(base.area(), storey)));
        }
    }

    /** An area with each side that runs along one of a storey's moved out as that is; past the outer face nothing lies. */
    private ImmutableList<Point2> drawn(ImmutableList<Point2> area, int storey) {
        Footprint sides = Footprint.of(stacks.storey(storey).outlines());
        Footprint given = Footprint.of(Lists.immutable.of(area));
        return given.moved(given.starts()
                        .collect(side -> sides.starts()
                                .select(each -> sides.runsAlong(each, given, side))
                                .collectDouble(each -> outward(storey, each))
                                .maxIfEmpty(0)))
                .corners();
    }

    /** Outlines of the areas of lower roofs and bases, as lines of the plan. */
    private ImmutableList<Plan.Line> areas() {
        MutableList<Plan.Line> lines = Lists.mutable.empty();
        for (int k = 0; k < count; k++) {
            int storey = k;
            if (stacks.carries(k)) {
                roofAreas.get(k).ifPresent(area -> lines.addAllIterable(around(area, storey)));
            }
            if (stacks.lowest(k)) {
                baseAreas.get(k).forEach(area -> lines.addAllIterable(around(area, storey)));
            }
        }
        return lines.toImmutable();
    }

    private static ImmutableList<Plan.Line> around(ImmutableList<Point2> area, int storey) {
        ImmutableList<Vertex> ring = area.collect(Vertex::inPlan);
        return ring.collectWithIndex((corner, i) ->
                new Plan.Line(corner, ring.get((i + 1) % ring.size()), new Plan.Tag(Plan.Kind.AREA, storey, i)));
    }

    private static boolean covers(ImmutableList<Point2> area, Vertex point) {
        return Plan.polygon(area.collect(Vertex::inPlan)).covers(Plan.point(point));
    }

    @Override
    public int over(int storey, Vertex point) {
        return stacks.storey(storey).lowerRoof().isPresent()
                        && roofAreas
                                .get(storey)
                                .map(area -> covers(area, point))
                                .orElse(true)
                ? 1
                : 0;
    }

    @Override
    public int under(int storey, Vertex point) {
        return 1 + baseAreas.get(storey).detectIndex(area -> covers(area, point));
    }

    @Override
    public boolean carries(int storey) {
        return stacks.carries(storey);
    }

    @Override
    public boolean indoors(int storey, Vertex point) {
        for (int other = 0; other < count; other++) {
            if (stacks.stack(other) != stacks.stack(storey)
                    && begins(other) <= begins(storey)
                    && stacks.floor(storey) <= ends(other)
                    && outers.get(other).onLattice().covers(Plan.point(point))) {
                return true;
            }
        }
        return false;
    }

    /** m, z from which a storey is surely heated. */
    private double begins(int storey) {
        return stacks.floor(storey)
                - (stacks.lowest(storey) ? 0 : stacks.storey(storey).floorThickness());
    }

    /** m, z to which rooms of a storey reach at least. */
    private double ends(int storey) {
        return stacks.top(storey)
                ? Vertex.metres(forms.get(storey).orElseThrow().eaves())
                : stacks.floor(storey + 1);
    }

    private void lay() {
        drawAreas();
        MutableList<Plan.Line> lines = lines().toList();
        forms.forEachWithIndex((form, k) -> form.ifPresent(f -> lines.addAllIterable(f.lines(k))));
        lines.addAllIterable(areas());
        regions = PlanRegions.of(
                Lists.immutable.fromStream(IntStream.range(0, count).mapToObj(this::sides)), lines.toImmutable(), this);
        plan = regions.plan();
        standing();
        buildUps();
        areasOfNothing();
        floorArea += between() - shared();
    }

    /** Parts the plan further, and lays it anew. */
    void part(ImmutableList<Plan.Line> cuts) {
        regions = regions.with(cuts);
        plan = regions.plan();
    }

    /** m², of floors of one room in two stacks that reach into one another, between inner faces. */
    private double shared() {
        double sum = 0;
        for (int k = 0; k < count; k++) {
            for (int l = k + 1; l < count; l++) {
                double low = Math.max(stacks.floor(k), stacks.floor(l));
                double high = Math.min(
                        stacks.floor(k) + stacks.storey(k).height(),
                        stacks.floor(l) + stacks.storey(l).height());
                double less =
                        Math.min(stacks.storey(k).height(), stacks.storey(l).height());
                boolean over = Math.abs(stacks.floor(k) - stacks.floor(l)) > HEADROOM;
                if (stacks.stack(k) != stacks.stack(l) && !over && high - low > less / 2 + MEETING) {
                    Polygon one = footprint(k, false).polygon();
                    Polygon other = footprint(l, false).polygon();
                    sum += OverlayNGRobust.overlay(one, other, OverlayNG.INTERSECTION)
                            .getArea();
                }
            }
        }
        return sum;
    }

    /**
     * m², of the strips between the inner faces of two stacks that end at one another: what a wall there would stand on is
     * indoors, as under any inner wall, where their floors go on from one another.
     */
    private double between() {
        double sum = 0;
        for (int k = 0; k < count; k++) {
            for (int l = k + 1; l < count; l++) {
                if (stacks.stack(k) != stacks.stack(l) && Math.abs(stacks.floor(k) - stacks.floor(l)) < STEP) {
                    sum += strip(k, l);
                }
            }
        }
        return sum;
    }

    /** m²; zero where they reach into one another, or meet in a corner alone. */
    private double strip(int k, int l) {
        Polygon one = footprint(k, false).polygon();
        Polygon other = footprint(l, false).polygon();
        double apart = one.distance(other);
        if (apart == 0 || widened(k).intersection(widened(l)).getArea() < SHORTEST * 2 * MEETING) {
            return 0;
        }
        Geometry each = OverlayNGRobust.overlay(one, other, OverlayNG.UNION);
        return closed(each, apart).getArea()
                - closed(one, apart).getArea()
                - closed(other, apart).getArea();
    }

    /** A storey's footprint, a little wider, so that in a house turned by any angle sides that are one meet. */
    private Geometry widened(int k) {
        return Footprint.of(stacks.storey(k).outlines()).polygon().buffer(MEETING);
    }

    /** With all that lies between two parts of it no further apart than that, m. */
    private static Geometry closed(Geometry shape, double apart) {
        double reach = apart / 2 * (1 + 1e-6);
        BufferParameters square = new BufferParameters(
                1, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, BufferParameters.DEFAULT_MITRE_LIMIT);
        return BufferOp.bufferOp(BufferOp.bufferOp(shape, reach, square), -reach, square);
    }

    /** Moves every footprint to the outside and to the inside of its walls. */
    private void footprints() {
        for (int k = 0; k < count; k++) {
            Body.Storey storey = stacks.storey(k);
            Footprint outer = footprint(k, true);
            Footprint inner = footprint(k, false);
            Footprint given = Footprint.of(storey.outlines());
            if (outer.turnsBack(given) || !outer.onLattice().isValid()) {
                faults.storey(
                        storey.name(),
                        ": its footprint crosses itself once its walls are moved to the outside of the finished"
                                + " envelope. Check the corners and the walls' thicknesses.");
            } else if (inner.turnsBack(given) || !inner.onLattice().isValid()) {
                faults.storey(
                        storey.name(),
                        ": its walls leave no room between their inner faces somewhere. Check the footprint's line (%s)"
                                + " and the walls' thicknesses.",
                        line.name().toLowerCase(Locale.ROOT).replace('_', '-'));
            }
            floorArea += inner.area();
            outers.add(outer);
        }
    }

    private static ImmutableList<Vertex> corners(Footprint footprint) {
        return footprint.corners().collect(Vertex::inPlan);
    }

    /** All sides and jogs, for the plan. */
    private ImmutableList<Plan.Line> lines() {
        MutableList<Plan.Line> lines = Lists.mutable.empty();
        for (int k = 0; k < count; k++) {
            ImmutableList<Vertex> corners = corners(outers.get(k));
            for (int i = 0; i < corners.size(); i++) {
                Footprint.Line line = outers.get(k).lines().get(i);
                lines.add(new Plan.Line(
                        corners.get(i),
                        corners.get(outers.get(k).next().get(i)),
                        new Plan.Tag(line.jog() ? Plan.Kind.JOG : Plan.Kind.SIDE, k, line.side())));
            }
        }
        return lines.toImmutable();
    }

    /** A storey's sides without jogs. */
    private ImmutableList<StepZones.Side> sides(int storey) {
        Footprint outer = outers.get(storey);
        ImmutableList<Vertex> corners = corners(outer);
        return outer.starts().collect(i -> {
            Body.Wall wall = stacks.storey(storey).walls().get(outer.side(i));
            int next = outer.next().get(i);
            // In the list sides stand in their own order.
            Footprint.Line follower = outer.lines().get(next);
            return new StepZones.Side(
                    corners.get(i),
                    corners.get(next),
                    house.assembly(wall.assembly()),
                    follower.jog() ? OptionalInt.empty() : OptionalInt.of(follower.side()));
        });
    }

    private void standing() {
        for (int k = 0; k < count; k++) {
            ImmutableList<Vertex> walk = plan.walks(k).flatCollect(round -> round);
            if (walk.distinct().size() != walk.size()) {
                faults.storey(
                        stacks.storey(k).name(),
                        ": its walls touch themselves outside, closer than 0.1 mm. Check the corners and the"
                                + " walls' thicknesses.");
            }
        }
    }

    /** What lies open or hangs over has a build-up of its own; none is taken from elsewhere. */
    private void buildUps() {
        for (int k : stacks.pairs().castToList()) {
            Body.Storey below = stacks.storey(k);
            Body.Storey above = stacks.storey(k + 1);
            ImmutableList<PlanRegions.Region> open =
                    regions.beside(k, true, false).reject(PlanRegions.Region::lowerRoof);
            if (open.notEmpty() && below.terrace().isEmpty()) {
                faults.storey(
                        below.name(),
                        ": \"%s\" does not cover %s. Add terrace or lower-roof with the assembly that"
                                + " lies there; only what walls of different thickness explain needs none.",
                        above.name(),
                        place(open));
            }
            Optional<Body.LowerRoof> lower = below.lowerRoof();
            if (lower.isPresent() && regions.beside(k, true, false).noneSatisfy(PlanRegions.Region::lowerRoof)) {
                faults.storey(
                        below.name(),
                        ": its lower roof covers nothing that \"%s\" leaves open. Check the roof's area and both"
                                + " footprints, or remove the lower roof.",
                        above.name());
            }
            ImmutableList<PlanRegions.Region> over =
                    regions.beside(k, false, false).select(region -> region.part() == 0);
            if (over.notEmpty() && above.overhang().isEmpty() && above.base().isEmpty()) {
                faults.storey(
                        above.name(),
                        ": it projects over \"%s\" by %s. Add overhang with the assembly of its floor, or base where"
                                + " it stands on the ground; only what walls of different thickness explain needs none.",
                        below.name(),
                        place(over));
            }
        }
    }

    /** Areas that were meant for something. */
    private void areasOfNothing() {
        for (Body.Stack stack : stacks.all()) {
            for (int i = 0; i < stack.otherBases().size(); i++) {
                int part = i + 1;
                boolean lies = regions.all()
                        .anySatisfy(region ->
                                !region.open() && region.part() == part && stacks.stack(region.lower() + 1) == stack);
                if (!lies) {
                    faults.add(
                            ShellFault.Part.BASE,
                            ShellFault.otherBase(stack.name(), part),
                            "%s: nothing of the house stands on it. Check its area against the lowest footprints and the bases"
                                    + " before it, the first that holds a place counts; or remove it.",
                            ShellFault.otherBase(stack.name(), part));
                }
            }
        }
    }

    private String place(ImmutableList<PlanRegions.Region> parts) {
        ImmutableList<Vertex> outline =
                PlanRings.of(plan, parts.getFirst().cells()).rings().getFirst();
        return Format.of(
                "%.3f m², beginning at [%.3f m, %.3f m] of its outer faces",
                parts.sumOfDouble(part -> PlanRings.of(plan, part.cells()).area()),
                outline.getFirst().point().x(),
                outline.getFirst().point().y());
    }

    /** m, of the widest step or jog; what is shorter belongs to the corner it lies in. */
    public double widestStep() {
        double widest = regions.widestStep();
        for (Footprint outer : outers) {
            for (int i = 0; i < outer.lines().size(); i++) {
                if (outer.lines().get(i).jog()) {
                    Point2 a = outer.corners().get(i);
                    Point2 b = outer.end(i);
                    widest = Math.max(widest, Math.hypot(b.x() - a.x(), b.y() - a.y()));
                }
            }
        }
        return widest;
    }

    private Footprint footprint(int storey, boolean outer) {
        Body.Storey s = stacks.storey(storey);
        return Footprint.of(s.outlines())
                .moved(s.walls()
                        .collectWithIndex((wall, side) -> outer
                                ? outward(storey, side)
                                : given.inward(storey, side)
                                        .orElseGet(() -> Footprint.outward(line, house.assembly(wall.assembly()))
                                                - Footprint.thickness(house.assembly(wall.assembly())))));
    }

    /** m, from a side's line to its outer face. */
    private double outward(int storey, int side) {
        return given.outward(storey, side)
                .orElseGet(() -> Footprint.outward(
                        line,
                        house.assembly(stacks.storey(storey).walls().get(side).assembly())));
    }
}
