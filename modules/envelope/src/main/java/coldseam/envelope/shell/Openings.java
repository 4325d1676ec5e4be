package coldseam.envelope.shell;

import coldseam.envelope.Body;
import coldseam.envelope.Exposure;
import coldseam.envelope.House;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Opening;
import coldseam.envelope.Point3;
import coldseam.envelope.Vectors;
import coldseam.envelope.shell.fault.ShellFault;
import coldseam.envelope.shell.fault.ShellFaults;
import coldseam.envelope.shell.lattice.SurfaceAxes;
import coldseam.envelope.shell.lattice.Vertex;
import coldseam.envelope.shell.mesh.BodyFacets;
import coldseam.envelope.shell.mesh.Facet;
import coldseam.envelope.shell.mesh.FacetMesh;
import coldseam.envelope.shell.mesh.Joint;
import coldseam.envelope.shell.plan.StepZones;
import coldseam.files.quantity.Format;
import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.factory.Maps;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.map.ImmutableMap;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/**
 * Windows and doors in their surfaces: checked, placed, and their four sides made junctions.
 *
 * <p>A door whose sill is within {@link #STEP_OVER} of its storey's floor, or a window that reaches down to it, stands on a
 * threshold where its wall meets a floor on the ground, over a cold space, open air or a neighbour's rooms, between two storeys,
 * or a terrace there; the threshold takes its width out of that junction's length. An opening in a roof or terrace has four sides
 * of one kind (rooflight); so has one in a ceiling under a cold loft (a hatch where it is a door, else a skylight over a shaft).
 * An opening in a surface that is left out is left out with it.
 */
final class Openings {

    /** m, how high a door's sill may stand over the floor or deck at a threshold; our own rule. */
    static final double STEP_OVER = 0.30;

    /** m, the same for a window that reaches to the floor. */
    private static final double TO_THE_FLOOR = 0.02;

    /** m, by which an opening may overlap an edge without a fault: the lattice's rounding. */
    private static final double ROUNDING = 2e-4;

    /** Rise of a surface along its steepest way, up to which it is level. */
    private static final double FLAT = 0.01;

    /** m, how far a door's sill may lie from where the walls of two storeys meet: a floor's thickness (judgement). */
    private static final double A_FLOOR = 0.5;

    /** m, of an opening's foot that tells where one too high might begin. */
    private static final double A_SILL = 0.01;

    /** m, by which a light well is usually wider than its window (judgement). */
    private static final double WELL_BESIDE = 0.3;

    /** m across a façade; walls of two storeys that stand farther apart are two (judgement). */
    private static final double ONE_FACADE = 1;

    private static final JunctionKind COLD_THRESHOLD = JunctionKind.of("door threshold over a cold space");

    private static final JunctionKind OVERHANG_THRESHOLD = JunctionKind.of("door threshold over open air");

    private static final JunctionKind CELLAR_THRESHOLD = JunctionKind.of("cellar door threshold");

    private static final JunctionKind GARAGE_SLAB = JunctionKind.of("garage slab at the door");

    private static final JunctionKind HATCH = JunctionKind.of("attic hatch");

    private static final JunctionKind SHAFT = JunctionKind.of("skylight shaft");

    private static final JunctionKind OUTSIDE_STAIR = JunctionKind.of("outside stair against the wall");

    private static final JunctionKind SHUTTER_BOX = JunctionKind.of("shutter box");

    /** The threshold of a door by the junction that it takes its width out of. */
    private static final ImmutableMap<JunctionKind, JunctionKind> FLOORS = Maps.immutable
            .of(
                    JunctionKind.SLAB_EDGE,
                    JunctionKind.SLAB_THRESHOLD,
                    JunctionKind.UNHEATED_BELOW_EDGE,
                    COLD_THRESHOLD,
                    JunctionKind.CRAWL_SPACE_EDGE,
                    COLD_THRESHOLD,
                    JunctionKind.CELLAR_SLAB_EDGE,
                    CELLAR_THRESHOLD)
            .newWithKeyValue(JunctionKind.OVERHANG_EDGE, OVERHANG_THRESHOLD)
            .newWithKeyValue(JunctionKind.INTERMEDIATE_FLOOR, JunctionKind.HEATED_THRESHOLD)
            .newWithKeyValue(JunctionKind.FOUNDATION_WALL_TOP, JunctionKind.HEATED_THRESHOLD)
            .newWithKeyValue(JunctionKind.WALL_CHANGE_AT_FLOOR, JunctionKind.HEATED_THRESHOLD);

    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    /** An opening at its place: left, bottom, right and top along its surface's axes. */
    private record Placed(Opening opening, int facet, SurfaceAxes axes, double a, double b, double c, double d) {

        /** Whether both overlap by more than the rounding, along the axes they share. */
        boolean overlaps(Placed other, double rounding) {
            return a + rounding <= other.c
                    && other.a + rounding <= c
                    && b + rounding <= other.d
                    && other.b + rounding <= d;
        }

        Placed raisedTo(double bottom) {
            return new Placed(opening, facet, axes, a, bottom, c, bottom + d - b);
        }

        /** Its foot alone. */
        Placed aSill() {
            return new Placed(opening, facet, axes, a, b, c, Math.min(d, b + A_SILL));
        }

        /** The strip of an outline that is as wide as it. */
        Polygon over(Polygon outline) {
            Envelope all = outline.getEnvelopeInternal();
            return new Placed(opening, facet, axes, a, all.getMinY(), c, all.getMaxY()).rectangle(ROUNDING);
        }

        boolean within(Polygon outside, Polygon inside) {
            Polygon rectangle = rectangle(ROUNDING);
            return outside.covers(rectangle) && (!inside.isValid() || inside.covers(rectangle));
        }

        Polygon rectangle(double shrink) {
            return GEOMETRY.createPolygon(new Coordinate[] {
                new Coordinate(a + shrink, b + shrink),
                new Coordinate(c - shrink, b + shrink),
                new Coordinate(c - shrink, d - shrink),
                new Coordinate(a + shrink, d - shrink),
                new Coordinate(a + shrink, b + shrink)
            });
        }
    }

    private final House house;
    private final FacetMesh mesh;
    private final LightWells wells;
    private final ImmutableList<Optional<Surface>> bare;
    private final ImmutableList<ImmutableList<Point3>> inner;
    private final MutableList<Joint> joints;
    private final ImmutableList<BodyFacets.Above> storeys;
    private final ShellFaults faults;
    private final MutableList<Placed> placed = Lists.mutable.empty();
    private ImmutableList<Optional<Surface>> pierced = Lists.immutable.empty();

    Openings(
            House house,
            FacetMesh mesh,
            LightWells wells,
            ImmutableList<Optional<Surface>> bare,
            ImmutableList<ImmutableList<Point3>> inner,
            ImmutableList<Joint> joints,
            ImmutableList<BodyFacets.Above> storeys,
            ShellFaults faults) {
        this.house = house;
        this.mesh = mesh;
        this.wells = wells;
        this.bare = bare;
        this.inner = inner;
        this.joints = joints.toList();
        this.storeys = storeys;
        this.faults = faults;
    }

    /** Places every opening; those that do not fit become faults. */
    public void place() {
        for (Opening opening : house.openings()) {
            place(opening);
        }
        for (int i = 0; i < placed.size(); i++) {
            for (int j = i + 1; j < placed.size(); j++) {
                Placed one = placed.get(i);
                Placed other = placed.get(j);
                if (one.facet() == other.facet() && one.overlaps(other, ROUNDING)) {
                    faults.add(
                            ShellFault.Part.OPENING,
                            other.opening().name(),
                            "Openings \"%s\" and \"%s\" overlap in \"%s\". Give their places from the left end of the surface,"
                                    + " seen from outdoors.",
                            one.opening().name(),
                            other.opening().name(),
                            mesh.facets().get(one.facet()).name());
                }
            }
        }
        pierced = bare.collectWithIndex((surface, f) -> surface.map(s -> pierced(s, f)));
    }

    /** All surfaces, with their openings' area. */
    public ImmutableList<Surface> surfaces() {
        return pierced.select(Optional::isPresent).collect(Optional::get);
    }

    /** The edges between surfaces, then those around the openings. */
    public ImmutableList<Edge> edges() {
        MutableList<Edge> around = Lists.mutable.empty();
        placed.forEach(p -> around.addAllIterable(around(p)));
        ImmutableList<Edge> porches = new Porches(house.seams(), pierced, joints, faults).edges();
        MutableList<Edge> edges = Lists.mutable.empty();
        joints.select(joint -> joint.externalLength() > ROUNDING)
                .forEach(joint -> edges.add(ShellAssembler.edge(joint, pierced, mesh, storeys)));
        edges.addAllIterable(around);
        edges.addAllIterable(porches);
        return edges.toImmutable();
    }

    private Surface pierced(Surface s, int facet) {
        ImmutableList<Opening> own =
                placed.select(p -> p.facet() == facet).collect(Placed::opening).toImmutable();
        return new Surface(
                s.name(),
                s.partOf(),
                s.side(),
                s.use(),
                s.assembly(),
                s.exposure(),
                s.outline(),
                s.innerOutline(),
                s.normal(),
                s.externalArea(),
                s.internalArea(),
                own.sumOfDouble(opening -> opening.width() * opening.height()),
                own.collect(Opening::name),
                s.storey());
    }

    private void place(Opening opening) {
        Optional<LightWells.Placed> well = wells.of(opening);
        ImmutableList<Integer> named = facets(
                facet -> well.map(it -> facet.name().equals(it.facet())).orElse(LightWells.names(opening, facet)));
        // A gable that is one with the wall under it bears that one's name.
        ImmutableList<Integer> candidates = named.isEmpty()
                ? facets(facet -> facet.traits().mark() == Facet.Mark.UNDER_GABLE
                        && Body.Wall.gableOver(facet.whole()).equals(opening.surface()))
                : named;
        if (candidates.isEmpty()) {
            faults.opening(
                    opening.name(),
                    ": the surface \"%s\" is not part of the shell. Name one of: \"%s\".",
                    opening.surface(),
                    mesh.facets().reject(Facet::step).collect(Facet::name).makeString("\", \""));
            return;
        }
        if (!(opening.width() > 0 && opening.height() > 0)) {
            faults.opening(
                    opening.name(),
                    ": it is %.3f m wide and %.3f m high; both must be more than 0 m.",
                    opening.width(),
                    opening.height());
            return;
        }
        if (opening.lightWell().isPresent() && well.isEmpty()) {
            return;
        }
        MutableList<String> misfits = Lists.mutable.empty();
        for (int f : candidates) {
            if (bare.get(f).isEmpty()) {
                return;
            }
            Placed there = placed(opening, f);
            Optional<String> inGround = inGround(there);
            Optional<String> misfit = inGround.or(() -> misfit(there));
            if (misfit.isEmpty()) {
                placed.add(there);
                return;
            }
            misfits.add(misfit.get());
            // That the ground stands before it is told rather than what the wall's other part leaves room for.
            if (inGround.isPresent()) {
                break;
            }
        }
        faults.add(ShellFault.Part.OPENING, opening.name(), "%s", misfits.getLast());
    }

    private ImmutableList<Integer> facets(Predicate<Facet> which) {
        return Lists.immutable.fromStream(IntStream.range(0, mesh.facets().size())
                .boxed()
                .filter(f -> which.test(mesh.facets().get(f))));
    }

    private Placed placed(Opening opening, int f) {
        Facet facet = mesh.facets().get(f);
        SurfaceAxes axes = SurfaceAxes.of(facet.normal(), facet.outline().get(0).point());
        ImmutableList<Coordinate> outline =
                LightWells.measuredFrom(opening, facet, mesh.facets()).collect(v -> axes.flat(v.point()));
        double least = outline.collectDouble(c -> c.x).min();
        double most = outline.collectDouble(c -> c.x).max();
        double a = opening.left().isPresent()
                ? least + opening.left().getAsDouble()
                : (least + most - opening.width()) / 2;
        double lowest = outline.collectDouble(c -> c.y).min();
        double highest = outline.collectDouble(c -> c.y).max();
        boolean flat = axes.v().z() <= FLAT;
        // No opening ends with its ceiling: nobody who leaves the sill out there means that.
        double from = opening.sill() > 0 ? lowest + opening.sill() : (lowest + highest - opening.height()) / 2;
        double b = flat
                ? from
                : (floor(f) + opening.sill() - axes.origin().z()) / axes.v().z();
        return new Placed(opening, f, axes, a, b, a + opening.width(), b + opening.height());
    }

    private double floor(int f) {
        double floor = mesh.facets().get(f).traits().floor();
        return Double.isNaN(floor) ? inner.get(f).collectDouble(Point3::z).min() : floor;
    }

    /** Nothing opens into the ground: a window does into its light well, a door to the foot of its stair. */
    private Optional<String> inGround(Placed p) {
        Opening opening = p.opening();
        Facet facet = mesh.facets().get(p.facet());
        Polygon outside = p.axes().polygon(facet.outline().collect(Vertex::point));
        if (facet.exposure().kind() != Exposure.Kind.GROUND
                || facet.use() != Body.Use.WALL
                || !outside.intersects(p.rectangle(ROUNDING))) {
            return Optional.empty();
        }
        boolean door = opening.kind() == Opening.Kind.DOOR;
        if (door
                && house.seams()
                        .anySatisfy(seam -> seam.kind() == OUTSIDE_STAIR
                                && (seam.surface().equals(facet.name())
                                        || seam.surface().equals(facet.whole())))) {
            return Optional.empty();
        }
        return Optional.of(Format.of(
                "Opening \"%s\": it begins %.3f m over the floor, and the ground before \"%s\" there stands up to %.3f m over it."
                        + " %s",
                opening.name(),
                shown(opening.sill()),
                facet.name(),
                shown(outside.intersection(p.over(outside))
                                .getEnvelopeInternal()
                                .getMaxY()
                        - floor(p.facet())
                        + p.axes().origin().z()),
                door
                        ? "List the stair that leads down to it under seams, of the kind \"outside stair against the wall\" and on"
                                + " that surface, or raise the door."
                        : Format.of(
                                "Give it a light well, light-well: {width: %.1f m, below-sill: 150 mm, projection: 600 mm, drain:"
                                        + " footing drain}, or raise its sill to that; where it stands in another window's light"
                                        + " well, move it there.",
                                opening.width() + WELL_BESIDE)));
    }

    private Optional<String> misfit(Placed p) {
        Facet facet = mesh.facets().get(p.facet());
        Polygon outside = p.axes().polygon(facet.outline().collect(Vertex::point));
        Polygon inside = p.axes().polygon(inner.get(p.facet()));
        if (p.within(outside, inside)) {
            return Optional.empty();
        }
        var out = outside.getEnvelopeInternal();
        var in = inside.getEnvelopeInternal();
        boolean upright = p.axes().v().z() > 0.99;
        double zero = upright ? floor(p.facet()) - p.axes().origin().z() : out.getMinY();
        double foot = foot(p, outside, inside);
        return Optional.of(Format.of(
                "Opening \"%s\" does not fit in \"%s\": it would reach from %.3f m to %.3f m from the left end and from"
                        + " %.3f m to %.3f m over %s; the surface leaves room from %.3f m to %.3f m and from %.3f m to %.3f m"
                        + " at most.%s%s Make it smaller, or move it.",
                p.opening().name(),
                facet.name(),
                shown(p.a() - out.getMinX()),
                shown(p.c() - out.getMinX()),
                shown(p.b() - zero),
                shown(p.d() - zero),
                upright ? "the floor" : "the surface's lower end",
                shown(Math.max(out.getMinX(), in.getMinX()) - out.getMinX()),
                shown(Math.min(out.getMaxX(), in.getMaxX()) - out.getMinX()),
                shown(Math.max(out.getMinY(), in.getMinY()) - zero),
                shown(Math.min(out.getMaxY(), in.getMaxY()) - zero),
                upright ? lifted(p.b(), foot, zero) : sloping(p, Math.max(out.getMinY(), in.getMinY()), in, out),
                upright && p.d() > Math.min(out.getMaxY(), in.getMaxY()) + ROUNDING ? above(p.facet()) : ""));
    }

    /** What a window that is too high for its wall is told: a wall ends with its storey. */
    private String above(int wall) {
        Facet below = mesh.facets().get(wall);
        double plane = Vectors.dot(below.normal(), below.outline().get(0).point());
        return facets(f -> f.use() == Body.Use.WALL
                        && Vectors.dot(f.normal(), below.normal()) > 0.999
                        && Math.abs(Vectors.dot(f.normal(), f.outline().get(0).point()) - plane) < ONE_FACADE)
                .select(f -> floor(f) > floor(wall) + ROUNDING)
                .minByOptional(this::floor)
                .map(f -> Format.of(
                        " The wall ends with its storey; over it stands \"%s\": what reaches on into that is an opening of its own"
                                + " there.",
                        mesh.facets().get(f).name()))
                .orElse("");
    }

    private static String lifted(double at, double foot, double zero) {
        return at < foot - ROUNDING && shown(foot - zero) > 0
                ? Format.of(
                        " Outside, what lies before this wall (the ground, a deck with all its layers, a roof, a base) ends"
                                + " %.3f m above the floor: raise the sill to that, or lower what lies there.",
                        shown(foot - zero))
                : "";
    }

    /** Along a slope a place is not its height: from where to where the sill may lie, as the file gives it. */
    private String sloping(Placed p, double lowest, Envelope in, Envelope out) {
        double rise = p.axes().v().z();
        double highest = Math.min(out.getMaxY(), in.getMaxY()) - (p.d() - p.b());
        double floor = floor(p.facet()) - p.axes().origin().z();
        return rise > FLAT && lowest < highest
                ? Format.of(
                        " Its sill is %.3f m over the storey's floor, measured upright; here it may be %.3f m to %.3f m.",
                        shown(p.opening().sill()), shown(lowest * rise - floor), shown(highest * rise - floor))
                : "";
    }

    /**
     * The least height at which the opening would fit where it stands; where at none, at which its foot would, so that one too high
     * for that is told where to begin as well; and where that fits at none, or where it is, the surface's lower end.
     */
    private static double foot(Placed p, Polygon outside, Polygon inside) {
        if (p.aSill().within(outside, inside)) {
            return outside.getEnvelopeInternal().getMinY();
        }
        return Stream.of(p, p.aSill())
                .map(each -> Arrays.stream(outside.getCoordinates())
                        .mapToDouble(corner -> corner.y)
                        .filter(y -> y > p.b() && each.raisedTo(y).within(outside, inside))
                        .min())
                .filter(OptionalDouble::isPresent)
                .mapToDouble(OptionalDouble::getAsDouble)
                .findFirst()
                .orElse(outside.getEnvelopeInternal().getMinY());
    }

    /** To the millimetre, and never minus nothing. */
    private static double shown(double metres) {
        return Math.rint(metres * 1000) / 1000 + 0.0;
    }

    private ImmutableList<Edge> around(Placed p) {
        Point3 bottomLeft = p.axes().space(p.a(), p.b());
        Point3 bottomRight = p.axes().space(p.c(), p.b());
        Point3 topRight = p.axes().space(p.c(), p.d());
        Point3 topLeft = p.axes().space(p.a(), p.d());
        boolean roof = mesh.facets().get(p.facet()).use() != Body.Use.WALL;
        JunctionKind overhead = overhead(p);
        JunctionKind head = roof ? overhead : p.opening().shutterBox() ? SHUTTER_BOX : JunctionKind.HEAD;
        JunctionKind jamb = roof ? overhead : JunctionKind.JAMB;
        MutableList<Edge> edges = Lists.mutable.empty();
        edges.add(side(p, head, "head", topRight, topLeft));
        edges.add(side(p, jamb, "left jamb", topLeft, bottomLeft));
        edges.add(side(p, jamb, "right jamb", bottomRight, topRight));
        wells.of(p.opening()).ifPresent(well -> {
            edges.add(beside(p, "left side", well.topA(), well.a()));
            edges.add(beside(p, "floor", well.a(), well.b()));
            edges.add(beside(p, "right side", well.b(), well.topB()));
        });
        edges.addAllIterable(
                roof
                        ? Lists.immutable.of(side(p, overhead, "sill", bottomLeft, bottomRight))
                        : foot(p, thresholds(p, bottomLeft)));
        return edges.toImmutable();
    }

    /** A part of an opening's foot, m along its wall. */
    private record Range(double from, double to) {

        boolean isLong() {
            return to - from > StepZones.HAIR;
        }

        Range within(Range other) {
            return new Range(Math.max(from, other.from), Math.min(to, other.to));
        }

        ImmutableList<Range> without(Range other) {
            return Lists.immutable
                    .of(new Range(from, Math.min(to, other.from)), new Range(Math.max(from, other.to), to))
                    .select(Range::isLong);
        }
    }

    /** What an opening stands on: a threshold over each junction that takes its width out of its foot, else a sill. */
    private ImmutableList<Edge> foot(Placed p, ImmutableList<Joint> under) {
        MutableList<Edge> edges = Lists.mutable.empty();
        MutableList<Range> free = Lists.mutable.of(new Range(p.a(), p.c()));
        for (Joint joint : under) {
            for (Range part : free.collect(each -> each.within(range(p, joint))).select(Range::isLong)) {
                edges.add(onThreshold(p, joint, part, edges.size()));
                free = free.flatCollect(each -> each.without(part));
            }
        }
        free.forEach(part -> edges.add(side(
                p,
                JunctionKind.SILL,
                "sill",
                p.axes().space(part.from(), p.b()),
                p.axes().space(part.to(), p.b()))));
        return edges.toImmutable();
    }

    private JunctionKind overhead(Placed p) {
        if (mesh.facets().get(p.facet()).use() != Body.Use.CEILING) {
            return JunctionKind.ROOFLIGHT;
        }
        return p.opening().kind() == Opening.Kind.DOOR ? HATCH : SHAFT;
    }

    /** Where a light well meets the wall; of what is outside it nothing but open air is known on both its sides. */
    private Edge beside(Placed p, String part, Vertex from, Vertex to) {
        Surface wall = pierced.get(p.facet()).orElseThrow();
        return Edge.on(
                wall,
                part + " of the light well of " + p.opening().name(),
                JunctionKind.LIGHT_WELL,
                Optional.empty(),
                from.point(),
                to.point(),
                Vectors.length(Vectors.minus(to.point(), from.point())),
                Places.of(p.opening(), wall, part + " of the light well"));
    }

    private Edge side(Placed p, JunctionKind kind, String part, Point3 from, Point3 to) {
        Surface wall = pierced.get(p.facet()).orElseThrow();
        return Edge.on(
                wall,
                part + ": " + p.opening().name(),
                kind,
                Optional.of(p.opening()),
                from,
                to,
                Vectors.length(Vectors.minus(to, from)),
                Places.of(p.opening(), wall, part));
    }

    /**
     * The junctions at the foot of the wall that thresholds take their width out of, that under its middle first; none where its
     * middle stands on none.
     */
    private ImmutableList<Joint> thresholds(Placed p, Point3 from) {
        double allowed = p.opening().kind() == Opening.Kind.DOOR ? STEP_OVER : TO_THE_FLOOR;
        boolean low = p.opening().sill() <= allowed;
        double middle = (p.a() + p.c()) / 2;
        ImmutableList<Joint> under = joints.select(joint -> {
                    boolean floor = low
                            && FLOORS.containsKey(joint.kind())
                            && (FLOORS.get(joint.kind()) != JunctionKind.HEATED_THRESHOLD
                                    || Math.abs(from.z() - joint.from().point().z()) <= A_FLOOR);
                    boolean deck = joint.kind() == JunctionKind.WALL_TO_TERRACE
                            && (low || from.z() - joint.from().point().z() <= allowed);
                    return joint.second() == p.facet() && (floor || deck) || low && overANeighbour(p, joint);
                })
                .toImmutable();
        return under.detectOptional(joint -> range(p, joint).from() <= middle
                        && middle <= range(p, joint).to())
                .map(first -> Lists.immutable.of(first).newWithAll(under.reject(joint -> joint == first)))
                .orElse(Lists.immutable.empty());
    }

    /** Whether a wall stands there on the floor over a heated neighbour, such as the flat below. */
    private boolean overANeighbour(Placed p, Joint joint) {
        return joint.kind() == JunctionKind.PARTY_WALL
                && joint.first() == p.facet()
                && mesh.facets().get(joint.second()).use() == Body.Use.FLOOR;
    }

    private static Range range(Placed p, Joint joint) {
        double one = p.axes().flat(joint.from().point()).x;
        double other = p.axes().flat(joint.to().point()).x;
        return new Range(Math.min(one, other), Math.max(one, other));
    }

    /** Whether the outer faces of a joint's two surfaces lie in one plane. */
    private boolean flush(Joint joint) {
        Facet one = mesh.facets().get(joint.first());
        Facet other = mesh.facets().get(joint.second());
        Point3 apart = Vectors.minus(
                one.outline().getFirst().point(), other.outline().getFirst().point());
        return Math.abs(Vectors.dot(apart, other.normal())) <= StepZones.HAIR;
    }

    private Edge onThreshold(Placed p, Joint joint, Range part, int before) {
        double width = part.to() - part.from();
        int index = joints.detectIndex(j -> j.kind() == joint.kind()
                && j.first() == joint.first()
                && j.second() == joint.second()
                && j.from().equals(joint.from()));
        joints.set(index, joints.get(index).shortened(width));
        Surface below = pierced.get(joint.first()).orElseThrow();
        Surface wall = pierced.get(p.facet()).orElseThrow();
        boolean neighbour = overANeighbour(p, joint);
        boolean garage =
                joint.kind() == JunctionKind.SLAB_EDGE && wall.exposure().kind() == Exposure.Kind.UNHEATED;
        JunctionKind kind = garage
                ? GARAGE_SLAB
                : neighbour
                        ? JunctionKind.HEATED_THRESHOLD
                        : FLOORS.getIfAbsentValue(joint.kind(), JunctionKind.TERRACE_THRESHOLD);
        boolean overRooms = kind == JunctionKind.HEATED_THRESHOLD;
        BodyFacets.Floor floor = ShellAssembler.floorBehind(joint, mesh, storeys);
        return new Edge(
                "threshold: " + p.opening().name() + (before > 0 ? " (" + (before + 1) + ")" : ""),
                kind,
                // Between storeys the wall goes on below; where the ground covers that, the walls' faces are not in one
                // plane or it is a neighbour's, it is as if the door's own did.
                overRooms && !(below.exposure().kind() == wall.exposure().kind() && flush(joint)) ? wall : below,
                overRooms ? Optional.empty() : Optional.of(wall),
                Optional.of(p.opening()),
                p.axes().space(part.from(), p.b()),
                p.axes().space(part.to(), p.b()),
                width,
                width,
                neighbour ? Vectors.STRAIGHT : joint.angle(),
                overRooms ? 0 : joint.firstSetBack(),
                overRooms ? 0 : joint.secondSetBack(),
                "",
                floor.thickness(),
                floor.rise(),
                Places.of(p.opening(), wall, "threshold"));
    }
}
