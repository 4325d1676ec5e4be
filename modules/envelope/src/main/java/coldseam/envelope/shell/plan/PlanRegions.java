package coldseam.envelope.shell.plan;

import coldseam.envelope.shell.lattice.Ring;
import coldseam.envelope.shell.lattice.Together;
import coldseam.envelope.shell.lattice.Vertex;
import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.tuple.Pair;
import org.eclipse.collections.impl.tuple.Tuples;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

/**
 * What lies open above each storey but the top one, and what hangs over the air below it: surfaces, and steps of the walls
 * that have no build-up of their own ({@link StepZones}), as has nothing that lies in the rooms of another stack.
 *
 * <p>Surfaces with a hole are cut through it along the hole's longest side, so that a turned house is cut as it was.
 */
public final class PlanRegions {

    /** m, sides of a hole that differ by less are equally long. */
    private static final double AS_LONG = 0.001;

    /**
     * A part of the plan between a storey and the next, under the lowest, or over the top one.
     *
     * @param lower index of the storey below; one less than its own under the lowest of a stack
     * @param open true where it lies open above that storey, false where the next hangs over
     * @param step whether it is a step of the walls
     * @param part which of the parts that areas make of what lies open, or of what hangs over
     * @param cells of the plan
     */
    public record Region(int lower, boolean open, boolean step, int part, ImmutableList<Integer> cells) {

        /** Whether it lies under the lower storey's lower roof. */
        public boolean lowerRoof() {
            return open && part > 0;
        }
    }

    /** Parts that areas make of the plan. */
    public interface Areas {

        /** 1 where a storey's lower roof lies if it lies open there, else 0. */
        int over(int storey, Vertex point);

        /** 0 for a storey's own base or overhang if nothing is below it, else one more than the number of another base. */
        int under(int storey, Vertex point);

        /** Whether the next storey stands on this one; false before the first and after the last of a stack. */
        boolean carries(int storey);

        /** Whether rooms of another stack go past the level at which a storey stands on the one below. */
        boolean indoors(int storey, Vertex point);
    }

    private final int storeys;
    private final ImmutableList<Optional<Pair<StepZones, StepZones>>> zones;
    private final MutableList<Plan.Line> lines;
    private final Areas areas;
    private Plan plan;
    private ImmutableList<Region> regions = Lists.immutable.empty();

    private PlanRegions(ImmutableList<ImmutableList<StepZones.Side>> sides, MutableList<Plan.Line> lines, Areas areas) {
        this.storeys = sides.size();
        this.lines = lines;
        this.areas = areas;
        this.zones = sides.collectWithIndex((own, k) -> areas.carries(k)
                ? Optional.of(Tuples.pair(new StepZones(own, sides.get(k + 1)), new StepZones(sides.get(k + 1), own)))
                : Optional.empty());
    }

    /**
     * @param sides of each storey, counterclockwise
     * @param lines the same and the jogs between them, and what else parts the plan
     * @param areas of lower roofs and bases
     */
    public static PlanRegions of(
            ImmutableList<ImmutableList<StepZones.Side>> sides, ImmutableList<Plan.Line> lines, Areas areas) {
        PlanRegions regions = new PlanRegions(sides, lines.toList(), areas);
        for (int k = 0; k < regions.storeys; k++) {
            for (StepZones zone : regions.zones(k)) {
                for (ImmutableList<Vertex> end : zone.ends()) {
                    Plan.Tag tag = new Plan.Tag(Plan.Kind.STEP_END, k, regions.lines.size());
                    regions.lines.add(new Plan.Line(end.getFirst(), end.getLast(), tag));
                }
            }
        }
        regions.settle();
        return regions;
    }

    /** The same parted by further lines. */
    public PlanRegions with(ImmutableList<Plan.Line> further) {
        lines.addAllIterable(further);
        settle();
        return this;
    }

    private ImmutableList<StepZones> zones(int k) {
        return zones.get(k)
                .map(pair -> Lists.immutable.of(pair.getOne(), pair.getTwo()))
                .orElse(Lists.immutable.empty());
    }

    public Plan plan() {
        return plan;
    }

    public ImmutableList<Region> all() {
        return regions;
    }

    /** Those above a storey, or those that hang over it. */
    public ImmutableList<Region> beside(int lower, boolean open, boolean step) {
        return regions.select(r -> r.lower() == lower && r.open() == open && r.step() == step);
    }

    /** Which part of what may lie under a storey a cell is. */
    public int under(int storey, int cell) {
        return areas.under(storey, middle(plan, cell));
    }

    /** The parts of a region that lie outdoors. */
    public ImmutableList<Region> shown(Region region, IntPredicate shown) {
        return together(region.cells().select(shown::test), region.lower(), region.open())
                .collect(cells -> new Region(region.lower(), region.open(), region.step(), region.part(), cells));
    }

    /** Cuts through every hole, all at once: one that ends at another hole parts nothing until that one is cut, too. */
    public ImmutableList<Plan.Line> cuts(ImmutableList<Region> found) {
        MutableList<Plan.Line> cuts = Lists.mutable.empty();
        for (Region region : found) {
            PlanRings.of(plan, region.cells())
                    .holes()
                    .forEach(hole -> cuts.addAllIterable(cut(region, Ring.straight(hole))));
        }
        return cuts.toImmutable();
    }

    /** m, of the widest step between any two storeys. */
    public double widestStep() {
        return Math.max(
                StepZones.HAIR,
                Lists.immutable
                        .fromStream(IntStream.range(0, storeys).boxed())
                        .flatCollect(this::zones)
                        .collectDouble(StepZones::widest)
                        .maxIfEmpty(0));
    }

    private void settle() {
        plan = Plan.of(storeys, lines.toImmutable());
        MutableList<Region> found = Lists.mutable.empty();
        for (int k = 0; k < storeys; k++) {
            found.addAllIterable(regions(k, true));
            found.addAllIterable(regions(k - 1, false));
        }
        regions = found.toImmutable();
    }

    /** What lies open above a storey, or what of the next has nothing below it. */
    private ImmutableList<Region> regions(int k, boolean open) {
        boolean pair = areas.carries(k);
        int full = open ? k : k + 1;
        int cover = open ? k + 1 : k;
        MutableList<Region> steps = Lists.mutable.empty();
        MutableList<Integer> waiting = Lists.mutable.empty();
        for (int c : plan.cellsOf(full).castToList()) {
            if (pair && plan.in(c, cover)) {
                continue;
            }
            if (pair
                    && (zones(k).get(open ? 0 : 1).covers(plan.cells().get(c))
                            || areas.indoors(k + 1, middle(plan, c)))) {
                steps.add(new Region(k, open, true, 0, Lists.immutable.of(c)));
            } else {
                waiting.add(c);
            }
        }
        MutableList<Region> found = Lists.mutable.empty();
        for (ImmutableList<Integer> cells : together(waiting.toImmutable(), k, open)) {
            if (pair && hairThin(cells)) {
                cells.forEach(c -> steps.add(new Region(k, open, true, 0, Lists.immutable.of(c))));
            } else {
                found.add(new Region(k, open, false, part(k, open, cells.getFirst()), cells));
            }
        }
        return found.withAll(steps).toImmutable();
    }

    /** Cells that hang together, but for cuts. */
    private ImmutableList<ImmutableList<Integer>> together(ImmutableList<Integer> cells, int k, boolean open) {
        return Together.parts(
                        cells,
                        (cell, other) -> plan.beside(cell)
                                .anySatisfy(bound -> bound.borders(other)
                                        && !bound.cuts(k, open)
                                        && part(k, open, cell) == part(k, open, other)))
                .collect(ImmutableList::toImmutableSortedList);
    }

    private int part(int k, boolean open, int cell) {
        Vertex inside = middle(plan, cell);
        return !open ? areas.under(k + 1, inside) : areas.carries(k) ? areas.over(k, inside) : 0;
    }

    /** A point inside a cell. */
    public static Vertex middle(Plan plan, int cell) {
        return Plan.vertex(plan.cells().get(cell).polygon().getInteriorPoint().getCoordinate());
    }

    private boolean hairThin(ImmutableList<Integer> cells) {
        Geometry part = Plan.GEOMETRY
                .createGeometryCollection(
                        cells.collect(c -> plan.cells().get(c).polygon()).toArray(new Geometry[0]))
                .union();
        BufferParameters square = new BufferParameters(
                1, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, BufferParameters.DEFAULT_MITRE_LIMIT);
        return BufferOp.bufferOp(part, -StepZones.HAIR * Vertex.PER_METRE / 2, square)
                .isEmpty();
    }

    /** Cuts from a hole outwards both ways along its longest side, each to the region's next bound. */
    private ImmutableList<Plan.Line> cut(Region region, ImmutableList<Vertex> hole) {
        int longest = 0;
        for (int i = 1; i < hole.size(); i++) {
            double more = side(hole, i).length() - side(hole, longest).length();
            boolean asLong = Math.abs(more) < AS_LONG * Vertex.PER_METRE;
            if (asLong ? rank(hole, i) < rank(hole, longest) : more > 0) {
                longest = i;
            }
        }
        Vertex along = side(hole, longest);
        ImmutableList<Vertex> ends = Lists.immutable.of(hole.get(longest), hole.get((longest + 1) % hole.size()));
        MutableList<Plan.Line> cuts = Lists.mutable.empty();
        for (int way : new int[] {-1, 1}) {
            Vertex out = new Vertex(way * along.x(), way * along.y(), 0);
            double furthest = hole.collectDouble(out::dot).max();
            double near = AS_LONG * Vertex.PER_METRE * out.length();
            Vertex from =
                    ends.detectOptional(v -> out.dot(v) >= furthest - near).orElseGet(() -> hole.maxBy(out::dot));
            hit(region, from, out)
                    .ifPresent(to -> cuts.add(new Plan.Line(
                            from, to, Plan.Tag.cut(region.lower(), region.open(), lines.size() + cuts.size()))));
        }
        return cuts.toImmutable();
    }

    private static Vertex side(ImmutableList<Vertex> ring, int i) {
        return ring.get((i + 1) % ring.size()).minus(ring.get(i));
    }

    /** Which of the storeys' sides runs along a hole's side, in the order of the house. */
    private int rank(ImmutableList<Vertex> hole, int i) {
        Vertex corner = hole.get(i);
        Vertex along = side(hole, i);
        return plan.bounds()
                .select(bound -> bound.from().equals(corner) || bound.to().equals(corner))
                .select(bound -> {
                    Vertex way = (bound.from().equals(corner) ? bound.to() : bound.from()).minus(corner);
                    return way.dot(along) > 0
                            && Math.abs(way.cross(along).z()) <= Vertex.ONE * Math.max(way.length(), along.length());
                })
                .flatCollect(bound -> bound.runs().collect(Plan.Run::tag))
                .minOptional()
                .map(tag -> tag.storey() * 10_000 + tag.number())
                .orElse(Integer.MAX_VALUE);
    }

    /** Where a ray from a corner of a region's outline first meets the outline again. */
    private Optional<Vertex> hit(Region region, Vertex from, Vertex way) {
        double best = Double.POSITIVE_INFINITY;
        for (Plan.Bound bound : plan.bounds()) {
            if (region.cells().contains(bound.left()) == region.cells().contains(bound.right())) {
                continue;
            }
            Vertex a = bound.from().minus(from);
            Vertex b = bound.to().minus(from);
            double offA = way.cross(a).z() / way.length();
            double offB = way.cross(b).z() / way.length();
            if (Math.max(offA, offB) < -Vertex.ONE || Math.min(offA, offB) > Vertex.ONE) {
                continue;
            }
            double share = offA == offB ? 0 : Math.min(1, Math.max(0, offA / (offA - offB)));
            double nearest = way.dot(a) < way.dot(b) ? 0 : 1;
            boolean along = Math.max(Math.abs(offA), Math.abs(offB)) <= Vertex.ONE;
            share = along ? nearest : share;
            double reach = (way.dot(a) + share * (way.dot(b) - way.dot(a))) / way.length();
            if (reach > 2 * Vertex.ONE && reach < best) {
                best = reach;
            }
        }
        if (Double.isInfinite(best)) {
            return Optional.empty();
        }
        double share = best / way.length();
        return Optional.of(Plan.vertex(new Coordinate(from.x() + share * way.x(), from.y() + share * way.y())));
    }
}
