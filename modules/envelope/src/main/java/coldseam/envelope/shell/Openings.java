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
import coldseam.files.Nearest;
import coldseam.files.quantity.Format;
import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;

/**
 * Windows and doors in their surfaces: checked, placed, and their four sides made junctions ({@link OpeningEdges}).
 *
 * <p>An opening in a surface that is left out is left out with it.
 */
final class Openings {

    /** Rise of a surface along its steepest way, up to which it is level. */
    private static final double FLAT = 0.01;

    /** m, by which a light well is usually wider than its window (judgement). */
    private static final double WELL_BESIDE = 0.3;

    /** m across a façade; walls of two storeys that stand farther apart are two (judgement). */
    private static final double ONE_FACADE = 1;

    private static final JunctionKind OUTSIDE_STAIR = JunctionKind.of("outside stair against the wall");

    private final House house;
    private final FacetMesh mesh;
    private final LightWells wells;
    private final ImmutableList<Optional<Surface>> bare;
    private final ImmutableList<ImmutableList<Point3>> inner;
    private final MutableList<Joint> joints;
    private final ImmutableList<BodyFacets.Above> storeys;
    private final ShellFaults faults;
    private final MutableList<PlacedOpening> placed = Lists.mutable.empty();
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
                PlacedOpening one = placed.get(i);
                PlacedOpening other = placed.get(j);
                if (one.facet() == other.facet() && one.overlaps(other)) {
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
        OpeningEdges sides = new OpeningEdges(mesh, wells, pierced, joints, storeys);
        ImmutableList<Edge> around = placed.toImmutable().flatCollect(sides::around);
        ImmutableList<Edge> porches = new Porches(house.seams(), pierced, joints, faults).edges();
        MutableList<Edge> edges = Lists.mutable.empty();
        joints.select(joint -> joint.externalLength() > PlacedOpening.ROUNDING)
                .forEach(joint -> edges.add(ShellAssembler.edge(joint, pierced, mesh, storeys)));
        edges.addAllIterable(around);
        edges.addAllIterable(porches);
        return edges.toImmutable();
    }

    private Surface pierced(Surface s, int facet) {
        ImmutableList<Opening> own = placed.select(p -> p.facet() == facet)
                .collect(PlacedOpening::opening)
                .toImmutable();
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
            ImmutableList<String> names = mesh.facets().reject(Facet::step).collect(Facet::name);
            faults.opening(
                    opening.name(),
                    ": the surface \"%s\" is not part of the shell. Name one of: \"%s\".%s",
                    opening.surface(),
                    names.makeString("\", \""),
                    meant(opening.surface(), names));
            return;
        }
        if (opening.lightWell().isPresent() && well.isEmpty()) {
            return;
        }
        if (named.isEmpty() && opening.inGableWithoutSill()) {
            faults.opening(
                    opening.name(),
                    ": it has no sill, and under \"%s\" stands \"%s\", of one piece with it down to the floor, from which sills are"
                            + " measured. Give it its sill.",
                    opening.surface(),
                    mesh.facets().get(candidates.getFirst()).name());
            return;
        }
        MutableList<String> misfits = Lists.mutable.empty();
        for (int f : candidates) {
            if (bare.get(f).isEmpty()) {
                return;
            }
            Exposure beside = mesh.facets().get(f).exposure();
            if (beside.factor() == 0) {
                faults.opening(
                        opening.name(),
                        ": \"%s\" faces \"%s\", as warm as the rooms: no heat leaves by an opening there, and none of its sides is a"
                                + " seam. Remove it from openings; the wall stands for it.",
                        mesh.facets().get(f).name(),
                        beside.neighbour());
                return;
            }
            if (mesh.facets().get(f).faces(Exposure.Kind.GROUND)
                    && mesh.facets().get(f).use() != Body.Use.WALL) {
                faults.opening(
                        opening.name(),
                        ": \"%s\" lies on the ground, and nothing opens into that. Move it to a wall or a roof; a hatch to what lies"
                                + " below is in a floor over an unheated space.",
                        mesh.facets().get(f).name());
                return;
            }
            PlacedOpening there = placed(opening, f);
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

    private PlacedOpening placed(Opening opening, int f) {
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
        return new PlacedOpening(opening, f, axes, a, b, a + opening.width(), b + opening.height());
    }

    private double floor(int f) {
        double floor = mesh.facets().get(f).traits().floor();
        return Double.isNaN(floor) ? inner.get(f).collectDouble(Point3::z).min() : floor;
    }

    /** The name that is nearest, or all parts of a wall whose parts are numbered: which of them nobody can guess. */
    private static String meant(String surface, ImmutableList<String> names) {
        ImmutableList<String> parts = names.select(name -> name.matches(Pattern.quote(surface) + " \\(?\\d+\\)?"));
        return parts.size() > 1
                ? " It is in parts; did you mean \"" + parts.makeString("\" or \"") + "\"?"
                : Nearest.to(surface, ofItsStorey(surface, names))
                        .map(name -> " Did you mean \"" + name + "\"?")
                        .orElse("");
    }

    /** The walls of the storey with which a surface's name begins; all surfaces where it begins with none. */
    private static ImmutableList<String> ofItsStorey(String surface, ImmutableList<String> names) {
        ImmutableList<String> same = names.select(name -> {
            String storey = name.replaceFirst(" \\S+ wall.*$", "");
            return !storey.equals(name) && surface.startsWith(storey + " ");
        });
        return same.isEmpty() ? names : same;
    }

    /** Nothing opens into the ground: a window does into its light well, a door to the foot of its stair. */
    private Optional<String> inGround(PlacedOpening p) {
        Opening opening = p.opening();
        Facet facet = mesh.facets().get(p.facet());
        Polygon outside = p.axes().polygon(facet.outline().collect(Vertex::point));
        if (!facet.faces(Exposure.Kind.GROUND) || facet.use() != Body.Use.WALL || !outside.intersects(p.rectangle())) {
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

    private Optional<String> misfit(PlacedOpening p) {
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
                        + " at most%s.%s%s Make it smaller, or move it.",
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
                asWide(p, outside, inside, zero),
                upright ? lifted(p, foot, zero) : sloping(p, Math.max(out.getMinY(), in.getMinY()), in, out),
                upright && p.d() > Math.min(out.getMaxY(), in.getMaxY()) + PlacedOpening.ROUNDING
                        ? above(p.facet())
                        : ""));
    }

    /** Under slopes the most room is not at the opening's place: from where to where it is free there, over all its width. */
    private static String asWide(PlacedOpening p, Polygon outside, Polygon inside, double zero) {
        double[] levels = Stream.of(outside, inside)
                .filter(Polygon::isValid)
                .flatMap(each -> Arrays.stream(p.over(each).intersection(each).getCoordinates()))
                .mapToDouble(corner -> corner.y)
                .sorted()
                .toArray();
        double from = 0;
        double to = 0;
        for (double low : levels) {
            for (double high : levels) {
                if (high - low > to - from && p.between(low, high).within(outside, inside)) {
                    from = low;
                    to = high;
                }
            }
        }
        Envelope box = outside.getEnvelopeInternal().intersection(inside.getEnvelopeInternal());
        return to - from > PlacedOpening.ROUNDING && to < box.getMaxY() - PlacedOpening.ROUNDING
                ? Format.of(
                        ", and where it stands, all its width, from %.3f m to %.3f m",
                        shown(from - zero), shown(to - zero))
                : "";
    }

    /** What a window that is too high for its wall is told: a wall ends with its storey. */
    private String above(int wall) {
        Facet below = mesh.facets().get(wall);
        return facets(f -> oneFacade(f, below))
                .select(f -> floor(f) > floor(wall) + PlacedOpening.ROUNDING)
                .minByOptional(this::floor)
                .map(f -> Format.of(
                        " The wall ends with its storey; over it stands \"%s\": what reaches on into that is an opening of its own"
                                + " there.",
                        mesh.facets().get(f).name()))
                .orElse("");
    }

    private String lifted(PlacedOpening p, double foot, double zero) {
        if (p.b() >= foot - PlacedOpening.ROUNDING || shown(foot - zero) <= 0) {
            return "";
        }
        String raise = p.opening().inGableWithoutSill()
                ? "give it a sill of that or more, measured from the floor"
                : "raise the sill to that";
        return under(p, foot)
                .map(name -> Format.of(
                        " The wall begins %.3f m above the floor; under it stands \"%s\": %s, or give the opening a place in"
                                + " \"%s\".",
                        shown(foot - zero), name, raise, name))
                .orElseGet(() -> Format.of(
                        " Outside, what lies before this wall (the ground, a deck with all its layers, a roof, a base) ends"
                                + " %.3f m above the floor: %s, or lower what lies there.",
                        shown(foot - zero), raise));
    }

    /** The wall in open air on which the opening's wall stands, and which ends where the opening may begin, as under a gable. */
    private Optional<String> under(PlacedOpening p, double foot) {
        Facet wall = mesh.facets().get(p.facet());
        return facets(f -> f != wall && !f.faces(Exposure.Kind.GROUND) && oneFacade(f, wall))
                .collect(mesh.facets()::get)
                .detectOptional(f -> {
                    Envelope extent =
                            p.axes().polygon(f.outline().collect(Vertex::point)).getEnvelopeInternal();
                    return Math.abs(extent.getMaxY() - foot) < PlacedOpening.ROUNDING
                            && extent.getMinX() < p.c()
                            && extent.getMaxX() > p.a();
                })
                .map(Facet::name);
    }

    /** Whether two walls face the same way and stand in one façade, or nearly. */
    private static boolean oneFacade(Facet one, Facet other) {
        return one.use() == Body.Use.WALL
                && Vectors.dot(one.normal(), other.normal()) > 0.999
                && Math.abs(Vectors.dot(one.normal(), one.outline().get(0).point())
                                - Vectors.dot(
                                        other.normal(), other.outline().get(0).point()))
                        < ONE_FACADE;
    }

    /** Along a slope a place is not its height: from where to where the sill may lie, as the file gives it. */
    private String sloping(PlacedOpening p, double lowest, Envelope in, Envelope out) {
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
    private static double foot(PlacedOpening p, Polygon outside, Polygon inside) {
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
}
