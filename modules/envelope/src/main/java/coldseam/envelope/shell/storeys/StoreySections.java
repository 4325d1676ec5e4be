package coldseam.envelope.shell.storeys;

import coldseam.envelope.Body;
import coldseam.envelope.Point2;
import coldseam.envelope.shell.lattice.Vertex;
import coldseam.envelope.shell.mesh.Facet;
import coldseam.envelope.shell.plan.Footprint;
import coldseam.envelope.shell.plan.Plan;
import coldseam.envelope.shell.plan.PlanRegions;
import coldseam.envelope.shell.roof.RoofForm;
import coldseam.envelope.shell.roof.RoofSkeleton;
import coldseam.files.quantity.Format;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.function.Supplier;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.tuple.Pair;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.UnaryUnionNG;

/**
 * The house a second way: level sections through its facets against the footprints they were built from.
 *
 * <p>Between every two levels a section is laid. What the facets enclose there must be what the footprints say is heated, and
 * within a storey each wall must be as long as its footprint's side; so no volume and no wall can be lost or doubled. The
 * terraces' and overhangs' areas must be what the footprints leave of one another. A difference is a fault of our own.
 */
final class StoreySections {

    /** A line in which a section cuts a facet, the house on its left. */
    record Cut(Facet facet, double fromX, double fromY, double toX, double toY) {

        double length() {
            return Math.hypot(toX - fromX, toY - fromY);
        }
    }

    private final Stacks stacks;
    private final int first;
    private final int last;
    private final ImmutableList<Footprint> footprints;
    private final PlanRegions regions;
    private final StoreyLevels levels;
    private final ImmutableList<Facet> facets;
    private final ImmutableList<Polygon> polygons;
    private final Map<Integer, ImmutableList<StoreyEnd>> open = new TreeMap<>();
    private final Map<Integer, ImmutableList<StoreyEnd>> under = new TreeMap<>();

    /**
     * What lies under a storey where none is below it.
     *
     * @param own z of its own base or overhang
     * @param others areas in plan, m, with the z of what lies there instead; the first that holds a place counts
     */
    record Under(long own, ImmutableList<Pair<ImmutableList<Point2>, Long>> others) {}

    /**
     * What lies open above a storey.
     *
     * @param terrace z of what is not under the lower roof
     * @param flat z of the lower roof where it has no slope
     * @param roofed whether there is a lower roof
     * @param area of the lower roof in plan, m; empty for all
     * @param slope of the lower roof; empty where flat
     */
    record Lower(
            long terrace, long flat, boolean roofed, Optional<ImmutableList<Point2>> area, Optional<RoofForm> slope) {}

    /**
     * One stack of storeys.
     *
     * @param top its top storey
     */
    StoreySections(
            Stacks stacks,
            int top,
            ImmutableList<Footprint> footprints,
            PlanRegions regions,
            StoreyLevels levels,
            ImmutableList<Facet> facets,
            ImmutableList<Lower> lower,
            ImmutableList<Under> unders) {
        this.stacks = stacks;
        this.first = stacks.first(top);
        this.last = top;
        this.footprints = footprints;
        this.regions = regions;
        this.levels = levels;
        this.facets = facets;
        this.polygons = footprints.collect(Footprint::polygon);
        for (int k = first; k < last; k++) {
            open.put(k, tops(k, lower.get(k)));
            under.put(k + 1, bottoms(k + 1, left(k, false), unders.get(k + 1)));
        }
        under.put(first, bottoms(first, polygons.get(first), unders.get(first)));
    }

    /**
     * Compares both.
     *
     * @param form of the roof: over the eaves its level sections are compared
     * @throws IllegalStateException where they differ
     */
    public void check(Optional<RoofForm> form) {
        for (int k = first; k < last; k++) {
            double around = Math.max(around(k), around(k + 1));
            require(
                    open.get(k).sumOfDouble(StoreyEnd::area),
                    inPlan(tops(k)),
                    around,
                    "what lies open over storey " + k);
            require(
                    under.get(k + 1).sumOfDouble(StoreyEnd::area),
                    inPlan(undersides(k + 1)),
                    around,
                    "what hangs over storey " + k);
        }
        require(
                under.get(first).sumOfDouble(StoreyEnd::area),
                inPlan(undersides(first)),
                around(first),
                "lowest floor");
        TreeSet<Long> heights = new TreeSet<>();
        facets.forEach(facet -> facet.outline().forEach(corner -> heights.add(corner.z())));
        long roof =
                tops(last).flatCollect(Facet::outline).collectLong(Vertex::z).minIfEmpty(Long.MIN_VALUE);
        form.ifPresent(this::roof);
        for (long low : heights) {
            Long high = heights.higher(low);
            if (high != null && high <= roof) {
                section((low + high) / 2.0);
            }
        }
    }

    /** What the facets enclose over the eaves against the outline that its sides have shrunk to. */
    private void roof(RoofForm form) {
        // A lower roof that rises away from the house may reach over these eaves.
        ImmutableList<Facet> own = facets.select(f -> f.traits().level() == stacks.level(last));
        for (RoofSkeleton.Section section : form.sections()) {
            double height = form.eaves() + section.height() * Vertex.PER_METRE;
            MutableList<Cut> cuts = cutsAt(own, height);
            double found = area(cuts);
            require(0, gap(cuts), around(last), say("the roof's gap at %.4f m", height));
            // A slope moves a line by more than the reach; none of the roof's lines is longer than twice around.
            require(section.area(), found, 8 * around(last), say("roof at %.4f m", height));
        }
        require(polygons.get(last).getArea(), inPlan(tops(last)), around(last), "roof in plan");
    }

    static MutableList<Cut> cutsAt(ImmutableList<Facet> facets, double height) {
        MutableList<Cut> cuts = Lists.mutable.empty();
        facets.forEach(facet -> cuts.addAllIterable(cuts(facet, height)));
        return cuts;
    }

    static double area(MutableList<Cut> cuts) {
        return cuts.sumOfDouble(c -> c.fromX() * c.toY() - c.fromY() * c.toX()) / 2;
    }

    /** m, from the end of all cuts laid end to end to their beginning: none where they close. */
    static double gap(MutableList<Cut> cuts) {
        return Math.hypot(cuts.sumOfDouble(c -> c.toX() - c.fromX()), cuts.sumOfDouble(c -> c.toY() - c.fromY()));
    }

    static Supplier<String> say(String format, double height) {
        return () -> Format.of(format, height * Vertex.metres(1));
    }

    /** What ends a storey above: its roof, or what lies open of it. */
    private ImmutableList<Facet> tops(int k) {
        return facets.select(f -> f.traits().level() == stacks.level(k))
                .select(f -> f.use() == Body.Use.TERRACE || f.use() == Body.Use.ROOF || f.use() == Body.Use.CEILING);
    }

    /** What ends it below. */
    private ImmutableList<Facet> undersides(int k) {
        return facets.select(f -> f.traits().level() == stacks.level(k))
                .select(f -> f.use() == Body.Use.FLOOR || f.use() == Body.Use.OVERHANG);
    }

    /** m², whichever way they face. */
    private static double inPlan(ImmutableList<Facet> facets) {
        return facets.sumOfDouble(f -> Math.abs(square(f.doubleArea().z() / 2.0)));
    }

    private ImmutableList<StoreyEnd> tops(int k, Lower lower) {
        Geometry left = left(k, true);
        Geometry roofed = lower.area()
                .map(area -> StoreyEnd.overlay(left, Plan.outline(area), OverlayNG.INTERSECTION))
                .orElse(left);
        Coordinate level = new Coordinate();
        if (!lower.roofed()) {
            return Lists.immutable.of(new StoreyEnd(left, steps(k, true, step -> true), level, lower.terrace(), level));
        }
        Geometry rest = StoreyEnd.overlay(left, roofed, OverlayNG.DIFFERENCE);
        Predicate<Integer> under = cell -> roofed.covers(StoreyEnd.GEOMETRY.createPoint(middle(cell)));
        StoreyEnd roof = lower.slope()
                .map(form -> new StoreyEnd(roofed, steps(k, true, under), form.foot(), form.eaves(), form.rise()))
                .orElseGet(() -> new StoreyEnd(roofed, steps(k, true, under), level, lower.flat(), level));
        return Lists.immutable.of(
                roof, new StoreyEnd(rest, steps(k, true, under.negate()), level, lower.terrace(), level));
    }

    private ImmutableList<StoreyEnd> bottoms(int k, Geometry all, Under under) {
        MutableList<StoreyEnd> bottoms = Lists.mutable.empty();
        Coordinate level = new Coordinate();
        Geometry rest = all;
        for (Pair<ImmutableList<Point2>, Long> other : under.others()) {
            Geometry area = Plan.outline(other.getOne());
            Geometry part = StoreyEnd.overlay(rest, area, OverlayNG.INTERSECTION);
            rest = StoreyEnd.overlay(rest, area, OverlayNG.DIFFERENCE);
            bottoms.add(bottom(k, part, level, other.getTwo()));
        }
        return bottoms.with(bottom(k, rest, level, under.own())).toImmutable();
    }

    private StoreyEnd bottom(int k, Geometry part, Coordinate level, long z) {
        Geometry steps = k == first
                ? StoreyEnd.GEOMETRY.createPolygon()
                : steps(k - 1, false, cell -> part.covers(StoreyEnd.GEOMETRY.createPoint(middle(cell))));
        return new StoreyEnd(part, steps, level, z, level);
    }

    private Coordinate middle(int cell) {
        Coordinate inside =
                regions.plan().cells().get(cell).polygon().getInteriorPoint().getCoordinate();
        return new Coordinate(inside.x * Vertex.metres(1), inside.y * Vertex.metres(1));
    }

    /** What one storey leaves of the other. */
    private Geometry left(int k, boolean open) {
        return StoreyEnd.overlay(polygons.get(open ? k : k + 1), polygons.get(open ? k + 1 : k), OverlayNG.DIFFERENCE);
    }

    private Geometry steps(int k, boolean open, Predicate<Integer> which) {
        AffineTransformation metres = AffineTransformation.scaleInstance(Vertex.metres(1), Vertex.metres(1));
        ImmutableList<Geometry> steps = regions.beside(k, open, true)
                .collect(step -> step.cells().getFirst())
                .select(which::test)
                .collect(cell -> metres.transform(StoreyEnd.GEOMETRY.createGeometry(
                        regions.plan().cells().get(cell).polygon())));
        return steps.isEmpty()
                ? StoreyEnd.GEOMETRY.createPolygon()
                : UnaryUnionNG.union(steps.castToList(), StoreyEnd.COARSE);
    }

    /**
     * What is heated at a height, in plan.
     *
     * @param roof over the stack
     */
    Geometry at(double height, RoofForm roof) {
        Geometry all = StoreyEnd.GEOMETRY.createPolygon();
        for (int k = first; k <= last; k++) {
            Geometry here = StoreyEnd.GEOMETRY.createPolygon();
            if (k > first && height < levels.takeOver().get(k - 1)) {
                for (StoreyEnd each : under.get(k)) {
                    here = StoreyEnd.overlay(
                            here,
                            each.z() >= height ? StoreyEnd.GEOMETRY.createPolygon() : each.surface(),
                            OverlayNG.UNION);
                }
            } else if (k < last && height > levels.takeOver().get(k)) {
                for (StoreyEnd each : open.get(k)) {
                    here = StoreyEnd.overlay(here, each.partOver(height), OverlayNG.UNION);
                }
            } else {
                here = k == last ? over(roof, height) : polygons.get(k);
                for (StoreyEnd each : k == last ? Lists.immutable.<StoreyEnd>empty() : open.get(k)) {
                    Geometry ended = StoreyEnd.overlay(each.surface(), each.partOver(height), OverlayNG.DIFFERENCE);
                    here = StoreyEnd.overlay(here, ended, OverlayNG.DIFFERENCE);
                }
                if (k == first) {
                    // Of what it stands on the parts that reach so low: without the others hairs would be left along
                    // its sides.
                    here = StoreyEnd.overlay(here, reaching(under.get(k), height), OverlayNG.INTERSECTION);
                } else {
                    for (StoreyEnd each : under.get(k)) {
                        here = StoreyEnd.overlay(here, each.partOver(height), OverlayNG.DIFFERENCE);
                    }
                }
            }
            all = StoreyEnd.overlay(all, here, OverlayNG.UNION);
        }
        return all;
    }

    private static Geometry reaching(ImmutableList<StoreyEnd> bottoms, double height) {
        Geometry all = StoreyEnd.GEOMETRY.createPolygon();
        for (StoreyEnd each : bottoms.select(bottom -> bottom.z() < height)) {
            all = StoreyEnd.overlay(all, each.part(), OverlayNG.UNION);
        }
        return all;
    }

    /** What of the top storey's outline the roof lies over a height. */
    private Geometry over(RoofForm roof, double height) {
        if (height <= roof.eaves()) {
            return polygons.get(last);
        }
        Geometry all = StoreyEnd.GEOMETRY.createPolygon();
        for (RoofForm.Sheet sheet : roof.sheets()) {
            Coordinate at = sheet.part().getCoordinate();
            double z = z(roof, sheet, at.x, at.y);
            Coordinate rise = new Coordinate(z(roof, sheet, at.x + 1, at.y) - z, z(roof, sheet, at.x, at.y + 1) - z);
            rise.x *= Vertex.metres(1);
            rise.y *= Vertex.metres(1);
            StoreyEnd top = new StoreyEnd(sheet.part(), StoreyEnd.GEOMETRY.createPolygon(), at, z, rise);
            all = StoreyEnd.overlay(all, top.partOver(height), OverlayNG.UNION);
        }
        return all;
    }

    private static double z(RoofForm roof, RoofForm.Sheet sheet, double x, double y) {
        return roof.height(sheet.plane(), Vertex.inPlan(new Point2(x, y)));
    }

    /** m, of all its outlines. */
    double around() {
        return under.keySet().stream().mapToDouble(this::around).sum();
    }

    private void section(double height) {
        double expected = 0;
        double around = 0;
        for (int k = first; k <= last; k++) {
            boolean top = k == last;
            boolean above = k > first && height < levels.takeOver().get(k - 1);
            boolean below = !top && height > levels.takeOver().get(k);
            if (!above && !below) {
                expected += polygons.get(k).getArea();
                around += around(k);
                expected -= top ? 0 : open.get(k).sumOfDouble(each -> each.area() - each.over(height));
                expected -= under.get(k).sumOfDouble(each -> each.over(height));
            } else if (below) {
                expected += open.get(k).sumOfDouble(each -> each.over(height));
                around += around(k);
            } else {
                expected += under.get(k).sumOfDouble(each -> each.area() - each.over(height));
                around += around(k);
            }
        }
        MutableList<Cut> cuts = cutsAt(facets, height);
        require(expected, area(cuts), around, say("section at %.4f m", height));
        // A wall through the origin encloses nothing with it; lost or doubled it leaves the rest open.
        require(0, gap(cuts), around, say("the outline's gap at %.4f m", height));
        for (int k = first; k <= last; k++) {
            if (within(k, height)) {
                walls(k, cuts, height);
            }
        }
    }

    /** Whether nothing of the storeys below and above reaches to this height. */
    private boolean within(int k, double height) {
        boolean over = k == first && height > highest(first)
                || k > first
                        && height > levels.takeOver().get(k - 1)
                        && height > ends(k - 1, true)
                        && height > highest(k);
        boolean under =
                k == last || height < levels.takeOver().get(k) && height < ends(k, false) && height < lowest(k + 1);
        return over && under;
    }

    /** z to which what lies open above a storey reaches, or from which it begins. */
    private double ends(int k, boolean highest) {
        var heights = tops(k).flatCollect(Facet::outline).collectLong(Vertex::z);
        long none = levels.takeOver().get(k);
        return highest ? heights.maxIfEmpty(none) : heights.minIfEmpty(none);
    }

    private double highest(int k) {
        return under.get(k).collectDouble(StoreyEnd::z).max();
    }

    private double lowest(int k) {
        return under.get(k)
                .select(each -> each.area() > 0)
                .collectDouble(StoreyEnd::z)
                .minIfEmpty(Double.POSITIVE_INFINITY);
    }

    private void walls(int k, MutableList<Cut> cuts, double height) {
        Footprint footprint = footprints.get(k);
        double expected = 0;
        for (int i : footprint.starts().castToList()) {
            Point2 a = footprint.corners().get(i);
            Point2 b = footprint.end(i);
            expected += Math.hypot(b.x() - a.x(), b.y() - a.y());
        }
        double found = cuts.reject(c -> c.facet().step()).sumOfDouble(Cut::length);
        // Each corner moves by no more than the reach.
        require(expected, found, 2 * footprint.corners().size(), say("walls at %.4f m", height));
    }

    private static ImmutableList<Cut> cuts(Facet facet, double height) {
        ImmutableList<Vertex> outline = facet.outline();
        MutableList<double[]> points = Lists.mutable.empty();
        for (int i = 0; i < outline.size(); i++) {
            Vertex a = outline.get(i);
            Vertex b = outline.get((i + 1) % outline.size());
            if (a.z() < height != b.z() < height) {
                double share = (height - a.z()) / (b.z() - a.z());
                points.add(new double[] {
                    Vertex.metres(1) * (a.x() + share * (b.x() - a.x())),
                    Vertex.metres(1) * (a.y() + share * (b.y() - a.y()))
                });
            }
        }
        // The house lies on the left of a wall that one sees from outdoors and walks along to the right.
        var normal = facet.normal();
        points.sortThisByDouble(p -> -normal.y() * p[0] + normal.x() * p[1]);
        MutableList<Cut> cuts = Lists.mutable.empty();
        for (int i = 0; i + 1 < points.size(); i += 2) {
            double[] a = points.get(i);
            double[] b = points.get(i + 1);
            cuts.add(new Cut(facet, a[0], a[1], b[0], b[1]));
        }
        return cuts.toImmutable();
    }

    private double around(int k) {
        return polygons.get(k).getLength();
    }

    static double square(double units) {
        return units * Vertex.metres(1) * Vertex.metres(1);
    }

    static void require(double expected, double found, double length, String what) {
        require(expected, found, length, () -> what);
    }

    static void require(double expected, double found, double length, Supplier<String> what) {
        // Overlapping snaps of both storeys, and round-off of products of up to 1,000 m.
        if (!(Math.abs(expected - found) <= StoreyEnd.MOVED * (length + 1))) {
            throw new IllegalStateException(Format.of(
                    "the shell does not agree with its footprints: %s: %.6f by facets, %.6f by footprints",
                    what.get(), found, expected));
        }
    }
}
