package coldseam.envelope.shell;

import coldseam.envelope.Body;
import coldseam.envelope.Exposure;
import coldseam.envelope.House;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Point3;
import coldseam.envelope.Vectors;
import coldseam.envelope.shell.fault.ShellFault;
import coldseam.envelope.shell.fault.ShellFaults;
import coldseam.envelope.shell.lattice.Ring;
import coldseam.envelope.shell.lattice.Vertex;
import coldseam.envelope.shell.mesh.BodyFacets;
import coldseam.envelope.shell.mesh.Facet;
import coldseam.envelope.shell.mesh.FacetMesh;
import coldseam.envelope.shell.mesh.FacetNames;
import coldseam.envelope.shell.mesh.InnerPlanes;
import coldseam.envelope.shell.mesh.Joint;
import coldseam.envelope.shell.mesh.Joints;
import coldseam.files.quantity.Format;
import java.util.Optional;
import java.util.TreeSet;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;

/** From facets to the shell: surfaces, edges, open edges and the take-off. */
final class ShellAssembler {

    /** m, over a floor's upper face, where a section shows the room on it: corners are measured to 0.1 mm. */
    private static final double OVER = 0.001;

    /** z of a unit normal, downwards, of a floor that is walked on: 8° off the level and less; our own rule. */
    private static final double WALKED = 0.99;

    /** m² and m³, up to which there is nothing but round-off: corners lie on a lattice of a micrometre. */
    private static final double NOTHING = 1e-6;

    /** z of a unit normal, from which on a deck or roof lies flat beside a floor. */
    private static final double LYING = 0.999;

    private final House house;
    private final LightWells wells;
    private final BodyFacets body;
    private final ShellFaults faults;
    private final FacetMesh mesh;
    private final InnerPlanes planes;
    private final ImmutableList<ImmutableList<InnerPlanes.Corner>> corners;
    private final ImmutableList<ImmutableList<Point3>> inner;

    ShellAssembler(House house, LightWells wells, ShellFaults faults) {
        this.house = house;
        this.wells = wells;
        this.body = wells.body();
        this.faults = faults;
        ImmutableList<Facet> sorted = body.facets().toImmutableSortedListBy(ShellAssembler::rank);
        this.mesh = FacetMesh.of(sorted, body.reach());
        this.planes = new InnerPlanes(mesh, body.storeys());
        this.corners = sorted.collectWithIndex((facet, f) -> planes.corners(f));
        this.inner = corners.collect(list -> list.flatCollect(
                c -> c.doubled() ? Lists.immutable.of(c.arriving(), c.leaving()) : Lists.immutable.of(c.arriving())));
    }

    /** Below, walls storey by storey, above. */
    private static int rank(Facet facet) {
        return switch (facet.use()) {
            case FLOOR -> 0;
            case OVERHANG -> 1;
            case WALL -> 10 + 2 * Math.max(0, facet.traits().level()) + (facet.step() ? 1 : 0);
            case TERRACE -> 1_000_000;
            case ROOF, CEILING -> 1_000_001;
        };
    }

    Shell assemble() {
        ImmutableList<Joint> joints = new Joints(mesh, planes, corners, body.widestStep()).all();
        ImmutableList<Side> sides =
                mesh.facets().collectWithIndex((facet, f) -> Places.side(facet.use(), planes.normal(f)));
        ImmutableList<OpenEdge> open = OpenEdges.of(mesh, sides);
        TreeSet<Vertex> ends = new TreeSet<>();
        joints.forEach(joint -> {
            ends.add(joint.from());
            ends.add(joint.to());
        });
        MutableList<Optional<Surface>> surfaces = Lists.mutable.empty();
        for (int f = 0; f < mesh.facets().size(); f++) {
            surfaces.add(
                    mesh.facets().get(f).missing() ? Optional.empty() : Optional.of(surface(f, sides.get(f), ends)));
        }
        Openings openings =
                new Openings(house, mesh, wells, surfaces.toImmutable(), inner, joints, body.storeys(), faults);
        openings.place();
        ImmutableList<Surface> placed = openings.surfaces();
        MutableList<Edge> edges = openings.edges().toList();
        edges.addAllIterable(new Seams(house, placed.reject(this::step), faults).edges());
        ImmutableList<String> names =
                FacetNames.numbered(edges.collect(Edge::name).toImmutable());
        ImmutableList<Edge> named =
                edges.collectWithIndex((edge, i) -> edge.named(names.get(i))).toImmutable();
        Shell shell = takeOff(placed, named, open);
        nothing(shell);
        return shell;
    }

    /** Surfaces of which nothing is left between the thicknesses of what they meet. */
    private void nothing(Shell shell) {
        for (Surface surface : shell.surfaces()) {
            if (!(surface.internalArea() > NOTHING || endsInThickness(surface))) {
                faults.surface(
                        surface.name(),
                        ": nothing is left of it between the build-ups of its neighbours: %.3f m² outside,"
                                + " %.3f m² inside. %s",
                        surface.externalArea(),
                        surface.internalArea(),
                        instead(surface, shell));
            }
        }
        if (!(shell.floorArea() > NOTHING && shell.internalVolume() > NOTHING)) {
            faults.add(
                    ShellFault.Part.BODY,
                    "",
                    "Body: nothing is left indoors: %.3f m² of floor and %.3f m³. Make it larger, or its build-ups thinner.",
                    shell.floorArea(),
                    shell.internalVolume());
        }
    }

    /** Whether it is cut off within the thickness of what it meets, and all of it lies there. */
    private boolean endsInThickness(Surface surface) {
        return surface.internalArea() > -NOTHING
                && planes.endsInThickness(
                        mesh.facets().detectIndex(f -> f.name().equals(surface.name())));
    }

    /** What to do about a surface of which nothing is left. */
    private String instead(Surface surface, Shell shell) {
        boolean cutByGround = surface.use() == Body.Use.WALL
                && shell.surfaces()
                        .anySatisfy(other -> other.use() == Body.Use.WALL
                                && other.storey().equals(surface.storey())
                                && other.faces(Exposure.Kind.GROUND));
        if (cutByGround) {
            String where = surface.faces(Exposure.Kind.OUTDOORS)
                    ? Format.of(
                            "more than %.3f m lower, under all of that, or %.3f m higher, at its top",
                            height(surface.innerOutline()), height(surface.outline()))
                    : "lower, under all of that";
            return "Where the ground beside it ends in the thickness of a deck or a floor, let it end " + where
                    + "; else make the surface larger, or the build-ups beside it thinner.";
        }
        if (house.body() instanceof Body.Storeys storeys) {
            boolean upright = surface.use() == Body.Use.WALL;
            if (upright && storeys.wings().notEmpty()) {
                return "Where two roofs beside it are one plane indoors, or step the other way than outdoors, build both equally"
                        + " thick, or set one of them higher or lower; else make it larger, or the build-ups beside it thinner.";
            }
            if (!upright
                    && (storeys.main().otherBases().notEmpty()
                            || storeys.main()
                                    .storeys()
                                    .anySatisfy(storey -> storey.lowerRoof()
                                            .flatMap(Body.LowerRoof::area)
                                            .isPresent()))) {
                return "Where an area of other-bases or of a lower roof ends within a wall, draw it along the footprint's line or out beyond the wall; else make"
                        + " the surface larger, or the build-ups beside it thinner.";
            }
        }
        return "Make it larger, or the build-ups beside it thinner.";
    }

    /** m, from its lowest corner to its highest. */
    private static double height(ImmutableList<Point3> outline) {
        return outline.collectDouble(Point3::z).max()
                - outline.collectDouble(Point3::z).min();
    }

    private Surface surface(int f, Side side, TreeSet<Vertex> ends) {
        Facet facet = mesh.facets().get(f);
        ImmutableList<Vertex> tidy = Ring.straight(facet.outline());
        MutableList<Point3> outline = Lists.mutable.empty();
        MutableList<Point3> inside = Lists.mutable.empty();
        facet.outline().forEachWithIndex((corner, i) -> {
            InnerPlanes.Corner moved = corners.get(f).get(i);
            if (moved.doubled() || ends.contains(corner) || tidy.contains(corner)) {
                outline.add(corner.point());
                inside.add(moved.arriving());
            }
            if (moved.doubled()) {
                outline.add(corner.point());
                inside.add(moved.leaving());
            }
        });
        Vertex area = facet.doubleArea();
        return new Surface(
                facet.name(),
                facet.partOf(),
                side,
                facet.use(),
                facet.assembly(),
                facet.exposure(),
                outline.toImmutable(),
                inside.toImmutable(),
                planes.normal(f),
                area.length() / 2 * Vertex.metres(1) * Vertex.metres(1),
                Vectors.dot(Vectors.areaVector(inside.toImmutable()), planes.normal(f)),
                0,
                Lists.immutable.empty(),
                facet.traits().storey());
    }

    private Shell takeOff(ImmutableList<Surface> surfaces, ImmutableList<Edge> edges, ImmutableList<OpenEdge> open) {
        Vertex sum = new Vertex(0, 0, 0);
        double outer = 0;
        double inside = 0;
        for (int f = 0; f < mesh.facets().size(); f++) {
            Facet facet = mesh.facets().get(f);
            sum = facet.missing() ? sum : sum.plus(facet.doubleArea());
            outer += flux(facet.outline().collect(Vertex::point));
            inside += flux(inner.get(f)) + frame(f);
        }
        double floors = Double.isNaN(body.floorArea()) ? measuredFloors() : body.floorArea();
        double unit = Vertex.metres(1) * Vertex.metres(1) / 2;
        return new Shell(
                surfaces.reject(this::step),
                edges,
                open,
                new Point3(sum.x() * unit, sum.y() * unit, sum.z() * unit),
                outer,
                inside,
                floors,
                surfaces.select(this::step));
    }

    /**
     * m², of what one walks on between inner faces: a section just over each level, and floors that lie higher than the level
     * under them.
     */
    private double measuredFloors() {
        double sum = body.storeys().sumOfDouble(storey -> InnerSection.area(inner, storey.floor() + OVER));
        for (int f = 0; f < mesh.facets().size(); f++) {
            Facet facet = mesh.facets().get(f);
            double face = Vertex.metres(facet.outline().getFirst().z()) + facet.inset();
            boolean walked = planes.normal(f).z() < -WALKED
                    && (facet.use() == Body.Use.FLOOR || facet.use() == Body.Use.OVERHANG);
            if (walked && face > facet.traits().floor() + OVER) {
                sum += Vectors.length(Vectors.areaVector(inner.get(f)));
            }
        }
        return sum;
    }

    private boolean step(Surface surface) {
        return mesh.facets().detect(f -> f.name().equals(surface.name())).step();
    }

    /** m³ that an outline adds to the volume it bounds. */
    private static double flux(ImmutableList<Point3> outline) {
        double sum = 0;
        for (int i = 1; i + 1 < outline.size(); i++) {
            sum += Vectors.dot(outline.getFirst(), Vectors.cross(outline.get(i), outline.get(i + 1)));
        }
        return sum / 6;
    }

    /**
     * m³, likewise of what joins a facet's inner outline to its outer. What two neighbours have of it is nothing together where their
     * inner faces meet; where walls of two thicknesses stand in one plane it closes the step indoors.
     */
    private double frame(int f) {
        ImmutableList<Vertex> outline = mesh.facets().get(f).outline();
        double sum = 0;
        for (int i = 0; i < outline.size(); i++) {
            int next = (i + 1) % outline.size();
            Point3 a = outline.get(i).point();
            Point3 b = outline.get(next).point();
            Point3 p = corners.get(f).get(i).leaving();
            InnerPlanes.Corner end = corners.get(f).get(next);
            Point3 q = end.arriving();
            // Its corners need not lie in one plane: both ways to halve it count alike.
            sum += (flux(Lists.immutable.of(p, a, b, q)) + flux(Lists.immutable.of(a, b, q, p))) / 2;
            sum += flux(Lists.immutable.of(end.leaving(), q, b));
        }
        return sum;
    }

    public static Edge edge(
            Joint joint,
            ImmutableList<Optional<Surface>> surfaces,
            FacetMesh mesh,
            ImmutableList<BodyFacets.Above> storeys) {
        Surface first = surfaces.get(joint.first()).orElseThrow();
        Optional<Surface> second = surfaces.get(joint.second())
                .filter(surface -> !mesh.facets().get(joint.second()).step());
        Facet a = mesh.facets().get(joint.first());
        Facet b = mesh.facets().get(joint.second());
        boolean stacked = a.stacked(b)
                && joint.kind() != JunctionKind.OUTSIDE_CORNER
                && joint.kind() != JunctionKind.INSIDE_CORNER;
        int upper = Math.max(a.traits().level(), b.traits().level());
        BodyFacets.Floor floor = stacked
                ? new BodyFacets.Floor(storeys.get(upper).floorThickness(), 0)
                : floorBehind(joint, mesh, storeys);
        return new Edge(
                Places.name(joint.kind(), first, second.orElse(first)),
                joint.kind(),
                first,
                second,
                Optional.empty(),
                joint.from().point(),
                joint.to().point(),
                joint.externalLength(),
                Math.max(0, joint.internalLength()),
                joint.angle(),
                joint.firstSetBack(),
                joint.secondSetBack(),
                stacked ? storeys.get(upper).name() : "",
                floor.thickness(),
                floor.rise(),
                Places.of(joint.kind(), first, second.orElse(first)));
    }

    /** A storey's floor behind a deck or a flat roof from which its wall rises. */
    static BodyFacets.Floor floorBehind(Joint joint, FacetMesh mesh, ImmutableList<BodyFacets.Above> storeys) {
        Facet flat = mesh.facets().get(joint.first());
        int level = mesh.facets().get(joint.second()).traits().level();
        boolean deck = joint.kind() == JunctionKind.WALL_TO_TERRACE || joint.kind() == JunctionKind.ROOF_STEP;
        return deck && flat.normal().z() > LYING && level >= 0
                ? storeys.get(level).behind(joint.from().point().z() - flat.inset(), flat.inset())
                : BodyFacets.Floor.NONE;
    }
}
