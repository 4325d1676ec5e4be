package coldseam.envelope.shell;

import coldseam.envelope.Body;
import coldseam.envelope.Exposure;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Opening;
import coldseam.envelope.Point3;
import coldseam.envelope.Vectors;
import coldseam.envelope.shell.lattice.Vertex;
import coldseam.envelope.shell.mesh.BodyFacets;
import coldseam.envelope.shell.mesh.Facet;
import coldseam.envelope.shell.mesh.FacetMesh;
import coldseam.envelope.shell.mesh.Joint;
import coldseam.envelope.shell.plan.StepZones;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.factory.Maps;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.map.ImmutableMap;

/**
 * The four sides of placed openings as junctions.
 *
 * <p>A door whose sill is within {@link #STEP_OVER} of its storey's floor, or a window that reaches down to it, stands on a
 * threshold where its wall meets a floor on the ground, over a cold space, open air or a neighbour's rooms, between two storeys,
 * or a terrace there; the threshold takes its width out of that junction's length. An opening in a roof or terrace has four sides
 * of one kind (rooflight); so has one in a ceiling under a cold loft (a hatch where it is a door, else a skylight over a shaft).
 *
 * @param pierced each facet's surface, with its openings; empty where it is left out
 * @param joints between facets; thresholds shorten them
 */
record OpeningEdges(
        FacetMesh mesh,
        LightWells wells,
        ImmutableList<Optional<Surface>> pierced,
        MutableList<Joint> joints,
        ImmutableList<BodyFacets.Above> storeys) {

    /** m, how high a door's sill may stand over the floor or deck at a threshold; our own rule. */
    static final double STEP_OVER = 0.30;

    /** m, the same for a window that reaches to the floor. */
    private static final double TO_THE_FLOOR = 0.02;

    /** m, how far a door's sill may lie from where the walls of two storeys meet: a floor's thickness (judgement). */
    private static final double A_FLOOR = 0.5;

    private static final JunctionKind COLD_THRESHOLD = JunctionKind.of("door threshold over a cold space");

    private static final JunctionKind OVERHANG_THRESHOLD = JunctionKind.of("door threshold over open air");

    private static final JunctionKind CELLAR_THRESHOLD = JunctionKind.of("cellar door threshold");

    private static final JunctionKind GARAGE_SLAB = JunctionKind.of("garage slab at the door");

    private static final JunctionKind HATCH = JunctionKind.of("attic hatch");

    private static final JunctionKind SHAFT = JunctionKind.of("skylight shaft");

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

    /** Its junctions, clockwise from its head, then its foot. */
    ImmutableList<Edge> around(PlacedOpening p) {
        Point3 bottomLeft = p.axes().space(p.a(), p.b());
        Point3 bottomRight = p.axes().space(p.c(), p.b());
        Point3 topRight = p.axes().space(p.c(), p.d());
        Point3 topLeft = p.axes().space(p.a(), p.d());
        boolean roof = mesh.facets().get(p.facet()).use() != Body.Use.WALL;
        JunctionKind overhead = overhead(p);
        JunctionKind head = roof ? overhead : p.opening().shutterBox() ? JunctionKind.SHUTTER_BOX : JunctionKind.HEAD;
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
    private ImmutableList<Edge> foot(PlacedOpening p, ImmutableList<Joint> under) {
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

    private JunctionKind overhead(PlacedOpening p) {
        if (mesh.facets().get(p.facet()).use() != Body.Use.CEILING) {
            return JunctionKind.ROOFLIGHT;
        }
        return p.opening().kind() == Opening.Kind.DOOR ? HATCH : SHAFT;
    }

    /** Where a light well meets the wall; of what is outside it nothing but open air is known on both its sides. */
    private Edge beside(PlacedOpening p, String part, Vertex from, Vertex to) {
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

    private Edge side(PlacedOpening p, JunctionKind kind, String part, Point3 from, Point3 to) {
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
    private ImmutableList<Joint> thresholds(PlacedOpening p, Point3 from) {
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
    private boolean overANeighbour(PlacedOpening p, Joint joint) {
        return joint.kind() == JunctionKind.FLOOR_OVER_NEIGHBOUR && joint.first() == p.facet();
    }

    private static Range range(PlacedOpening p, Joint joint) {
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

    private Edge onThreshold(PlacedOpening p, Joint joint, Range part, int before) {
        double width = part.to() - part.from();
        int index = joints.detectIndex(j -> j.kind() == joint.kind()
                && j.first() == joint.first()
                && j.second() == joint.second()
                && j.from().equals(joint.from()));
        joints.set(index, joints.get(index).shortened(width));
        Surface below = pierced.get(joint.first()).orElseThrow();
        Surface wall = pierced.get(p.facet()).orElseThrow();
        boolean neighbour = overANeighbour(p, joint);
        boolean garage = joint.kind() == JunctionKind.SLAB_EDGE && wall.faces(Exposure.Kind.UNHEATED);
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
