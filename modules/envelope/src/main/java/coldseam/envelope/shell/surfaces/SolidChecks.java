package coldseam.envelope.shell.surfaces;

import coldseam.envelope.Body;
import coldseam.envelope.Exposure;
import coldseam.envelope.Point3;
import coldseam.envelope.Vectors;
import coldseam.envelope.shell.fault.ShellFault;
import coldseam.envelope.shell.fault.ShellFaults;
import coldseam.envelope.shell.lattice.SurfaceAxes;
import coldseam.envelope.shell.lattice.Vertex;
import coldseam.envelope.shell.mesh.Facet;
import coldseam.envelope.shell.mesh.FacetMesh;
import coldseam.envelope.shell.mesh.OnGround;
import coldseam.files.quantity.Format;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.locationtech.jts.algorithm.PointLocation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * Whether explicit surfaces bound a solid: none crosses itself or another, each part that hangs together encloses a room,
 * and what each is to the house fits the way it faces and where it stands.
 *
 * <p>Edges that nothing meets are no fault here: they are holes in the envelope, which the shell names.
 */
final class SolidChecks {

    /** m, by which one surface may reach through another: corners are measured to 0.1 mm, planes to 1 mm. */
    private static final double THROUGH = 0.002;

    /** z of a unit normal: what lies flatter than 26° off the level is no wall; our own rule. */
    private static final double FLAT = 0.9;

    /** z of a unit normal of what one can lie under or stand on: 45° off the level and less; our own rule. */
    private static final double LYING = 0.7;

    /** z of a unit normal of a flat roof, as the shell tells it from a slope. */
    private static final double LEVEL = 0.999;

    /** z of a unit normal of a deck that is walked on: 8° off the level and less; our own rule. */
    private static final double DECK = 0.99;

    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    private final ImmutableList<Facet> facets;
    private final Terrain terrain;
    private final ShellFaults faults;

    /** Closed parts that hang together. */
    private final MutableList<ImmutableList<Facet>> parts = Lists.mutable.empty();

    SolidChecks(ImmutableList<Facet> facets, Terrain terrain, ShellFaults faults) {
        this.facets = facets;
        this.terrain = terrain;
        this.faults = faults;
    }

    public void check() {
        parts();
        if (faults.notEmpty()) {
            // What is turned inside out faces the wrong way all over.
            return;
        }
        facets.forEach(this::facing);
        facets.forEach(this::place);
        buried();
        marks();
        ImmutableList<Flat> flats = facets.collect(Flat::of);
        MutableList<Flat> simple = Lists.mutable.empty();
        for (Flat flat : flats) {
            if (flat.outline().isValid()) {
                simple.add(flat);
            } else {
                fault(flat.facet(), "its outline crosses or touches itself. Give its corners one after the other.");
            }
        }
        for (int i = 0; i < simple.size(); i++) {
            for (int j = i + 1; j < simple.size(); j++) {
                through(simple.get(i), simple.get(j));
                over(simple.get(i), simple.get(j));
            }
        }
        if (faults.isEmpty()) {
            within();
        }
        if (faults.isEmpty()) {
            facets.forEach(facet -> OnGround.fault(facet, terrain::at).ifPresent(what -> fault(facet, what)));
        }
    }

    /** A parapet stands around something level, a gable goes on from a wall beside a ceiling. */
    private void marks() {
        FacetMesh mesh = FacetMesh.of(facets, Vertex.ONE);
        for (int f = 0; f < facets.size(); f++) {
            int here = f;
            Facet facet = facets.get(f);
            if (facet.traits().mark() == Facet.Mark.PARAPET && facet.normal().z() < LEVEL) {
                fault(
                        facet,
                        Format.of(
                                "it slopes by %.1f° and has a parapet-height; only a flat roof, up to 2.5°, has one. Remove the key.",
                                Math.toDegrees(Math.acos(facet.normal().z()))));
            }
            boolean ceiling = mesh.lines()
                    .anySatisfy(line -> line.facets().contains(here)
                            && line.facets().anySatisfy(g -> facets.get(g).use() == Body.Use.CEILING));
            if (facet.traits().mark() == Facet.Mark.UNDER_GABLE && !ceiling) {
                fault(
                        facet,
                        "it is said to go on as the gable of a loft, but meets no ceiling. Remove the key gable, or give the"
                                + " ceiling's corners on its upper edge.");
            }
        }
    }

    private void facing(Facet facet) {
        double up = facet.normal().z();
        String found =
                Format.of("its outward side is inclined %.0f° to the upward vertical", Math.toDegrees(Math.acos(up)));
        boolean fits = switch (facet.use()) {
            case FLOOR, OVERHANG -> up <= -LYING;
            case TERRACE -> up >= DECK;
            case CEILING -> up >= LYING;
            case ROOF -> up > 0;
            case WALL -> up < FLAT && up > -LYING;
        };
        if (!fits) {
            String asked = switch (facet.use()) {
                case FLOOR, OVERHANG -> "a floor faces downwards, 135° to 180°";
                case TERRACE -> "a terrace is level and faces upwards, 0° to 8°";
                case CEILING -> "a ceiling under a loft faces upwards, 0° to 45°";
                case ROOF -> "a roof faces upwards, less than 90°";
                case WALL -> "a wall stands, 26° to 135°";
            };
            fault(facet, found + ", but " + asked + ". Change its use, or the sense of its corners.");
        }
    }

    /** What faces the ground or a crawl space lies where it can. */
    private void place(Facet facet) {
        boolean ground = facet.faces(Exposure.Kind.GROUND);
        boolean crawl = facet.faces(Exposure.Kind.CRAWL_SPACE);
        if (ground && facet.use() != Body.Use.FLOOR && facet.use() != Body.Use.WALL) {
            fault(facet, "it faces the ground, but only floors and walls can. Say what it faces, or change its use.");
        }
        if (ground && facet.use() == Body.Use.WALL) {
            inGround(facet);
        }
        if (crawl && facets.noneSatisfy(f -> f.use() == Body.Use.FLOOR && f.faces(Exposure.Kind.CRAWL_SPACE))) {
            fault(facet, "it faces a crawl space, but no floor does. Let the floor over it face the crawl space, too.");
        }
    }

    /** No corner of a wall in the ground stands out of it, and not all of them lie on it. */
    private void inGround(Facet wall) {
        ImmutableList<Vertex> outline = wall.outline();
        Vertex lowest = outline.minBy(corner -> over(corner));
        Vertex highest = outline.maxBy(corner -> over(corner));
        boolean begins = over(lowest) >= -THROUGH;
        if (begins || over(highest) > THROUGH) {
            Vertex at = begins ? lowest : highest;
            boolean level = terrain.line().isEmpty();
            fault(
                    wall,
                    Format.of(
                            "it faces the ground, but %s %.3f m and the ground %slies at %.3f m. %s, or correct %s.",
                            begins ? "begins at" : "rises to",
                            at.point().z(),
                            level
                                    ? ""
                                    : Format.of(
                                            "beside [%.3f m, %.3f m] ",
                                            at.point().x(), at.point().y()),
                            terrain.at(at),
                            begins ? "Let it face outdoors" : "Part it there and let what stands free face outdoors",
                            level ? "ground-level" : "the points of ground"));
        }
    }

    /** m, by which a corner lies over the ground beside it. */
    private double over(Vertex corner) {
        return corner.point().z() - terrain.at(corner);
    }

    /** A house that lies in the ground altogether is no house. */
    private void buried() {
        double top = facets.collectDouble(SolidChecks::high).max();
        if (terrain.highest() > top) {
            faults.add(
                    ShellFault.Part.BODY,
                    "",
                    "Body: the ground lies at %.3f m, over the highest corner of the surfaces at %.3f m. Correct %s.",
                    terrain.highest(),
                    top,
                    terrain.line().isEmpty() ? "ground-level" : "the points of ground");
        }
    }

    private static double high(Facet facet) {
        return facet.outline().collectDouble(v -> v.point().z()).max();
    }

    private void through(Flat one, Flat other) {
        Optional<Point3> at = one.piercedBy(other.facet()).or(() -> other.piercedBy(one.facet()));
        at.ifPresent(point -> fault(
                other.facet(),
                Format.of(
                        "it passes through \"%s\" at [%.3f m, %.3f m, %.3f m]. Let them end where they meet.",
                        one.facet().name(), point.x(), point.y(), point.z())));
    }

    /** Two in one plane that lie over one another are one surface twice, or what lies between two heated rooms. */
    private void over(Flat one, Flat other) {
        one.covers(other)
                .ifPresent(
                        at -> fault(
                                other.facet(),
                                Format.of(
                                        "it lies on \"%s\" at [%.3f m, %.3f m, %.3f m]. %s",
                                        one.facet().name(),
                                        at.x(),
                                        at.y(),
                                        at.z(),
                                        Vectors.dot(
                                                                one.facet().normal(),
                                                                other.facet().normal())
                                                        > 0
                                                ? "Give what lies there once."
                                                : "What stands between two heated rooms is no part of the shell: leave both out there.")));
    }

    /** Rooms that stand in another room were counted twice. */
    private void within() {
        ImmutableList<ImmutableList<Facet>> closed = parts.toImmutable();
        for (ImmutableList<Facet> part : closed) {
            Vertex corner = part.getFirst().outline().getFirst();
            closed.reject(other -> other == part)
                    .detectOptional(other -> Math.abs(turns(other, corner.point())) > 0.5)
                    .ifPresent(other -> fault(
                            part.getFirst(),
                            Format.of(
                                    "it and what it meets stand inside the room that \"%s\" bounds. Leave them out, or move them.",
                                    other.getFirst().name())));
        }
    }

    /**
     * How often surfaces run round a point: the sum of the solid angles of their triangles over 4 π, 1 inside and 0 outside
     * (A. van Oosterom, J. Strackee, "The solid angle of a plane triangle", IEEE Trans. Biomed. Eng. 30, 1983, equation 8; from
     * memory).
     */
    static double turns(ImmutableList<Facet> part, Point3 at) {
        double sum = 0;
        for (Facet facet : part) {
            ImmutableList<Point3> rays = facet.outline().collect(corner -> Vectors.minus(corner.point(), at));
            for (int i = 1; i + 1 < rays.size(); i++) {
                Point3 a = rays.get(0);
                Point3 b = rays.get(i);
                Point3 c = rays.get(i + 1);
                double la = Vectors.length(a);
                double lb = Vectors.length(b);
                double lc = Vectors.length(c);
                sum += 2
                        * Math.atan2(
                                Vectors.dot(a, Vectors.cross(b, c)),
                                la * lb * lc
                                        + Vectors.dot(a, b) * lc
                                        + Vectors.dot(b, c) * la
                                        + Vectors.dot(c, a) * lb);
            }
        }
        return sum / (4 * Math.PI);
    }

    /** Surfaces that hang together over shared edges and are closed must enclose a room from outdoors. */
    private void parts() {
        FacetMesh mesh = FacetMesh.of(facets, Vertex.ONE);
        MutableList<Integer> waiting = Lists.mutable.empty();
        for (int f = 0; f < facets.size(); f++) {
            waiting.add(f);
        }
        while (waiting.notEmpty()) {
            MutableList<Integer> part = Lists.mutable.of(waiting.remove(0));
            boolean closed = true;
            for (int i = 0; i < part.size(); i++) {
                int here = part.get(i);
                for (FacetMesh.Line line : mesh.lines()) {
                    if (line.facets().contains(here)) {
                        closed &= line.shared();
                        line.facets().select(g -> waiting.remove((Object) g)).forEach(part::add);
                    }
                }
            }
            double volume = part.sumOfDouble(f -> volume(facets.get(f)));
            if (closed) {
                parts.add(part.collect(facets::get).toImmutable());
            }
            if (closed && volume < 0) {
                fault(
                        facets.get(part.getFirst()),
                        "it and what it meets enclose nothing: all their points run clockwise seen from outdoors. Reverse"
                                + " every one's points.");
            }
        }
    }

    /** Six times the volume between a facet and the origin, lattice units cubed. */
    private static double volume(Facet facet) {
        Vertex a = facet.outline().get(0);
        double volume = 0;
        for (int i = 1; i + 1 < facet.outline().size(); i++) {
            volume += a.dot(facet.outline().get(i).cross(facet.outline().get(i + 1)));
        }
        return volume;
    }

    private void fault(Facet facet, String message) {
        faults.surface(facet.name(), ": %s", message);
    }

    /** A facet in its own plane. */
    private record Flat(Facet facet, SurfaceAxes axes, Polygon outline) {

        static Flat of(Facet facet) {
            Point3 origin = facet.outline().get(0).point();
            Point3 u = Vectors.unit(Vectors.minus(
                    facet.outline().get(1).point(), facet.outline().get(0).point()));
            SurfaceAxes axes = SurfaceAxes.along(facet.normal(), origin, u);
            return new Flat(facet, axes, axes.polygon(facet.outline().collect(Vertex::point)));
        }

        /** A point that another facet of this one's plane covers, by more than a sliver at its rim. */
        Optional<Point3> covers(Flat other) {
            Point3 normal = facet.normal();
            boolean here = other.facet()
                    .outline()
                    .allSatisfy(corner ->
                            Math.abs(Vectors.dot(normal, Vectors.minus(corner.point(), axes.origin()))) <= THROUGH);
            if (!here) {
                return Optional.empty();
            }
            Geometry common = OverlayNGRobust.overlay(
                            outline,
                            axes.polygon(other.facet().outline().collect(Vertex::point)),
                            OverlayNG.INTERSECTION)
                    .buffer(-THROUGH);
            Coordinate within = common.getInteriorPoint().getCoordinate();
            return common.isEmpty() ? Optional.empty() : Optional.of(axes.space(within.x, within.y));
        }

        /** Where a side of another facet passes through this one, clear of both one's rims. */
        Optional<Point3> piercedBy(Facet other) {
            Point3 normal = facet.normal();
            for (int i = 0; i < other.outline().size(); i++) {
                Point3 a = other.outline().get(i).point();
                Point3 b = other.outline().get((i + 1) % other.outline().size()).point();
                double before = Vectors.dot(normal, Vectors.minus(a, axes.origin()));
                double after = Vectors.dot(normal, Vectors.minus(b, axes.origin()));
                if (Math.min(before, after) < -THROUGH && Math.max(before, after) > THROUGH) {
                    double share = before / (before - after);
                    Point3 at = Vectors.plus(a, Vectors.times(Vectors.minus(b, a), share));
                    Coordinate flat = axes.flat(at);
                    boolean inside = PointLocation.locateInRing(
                                    flat, outline.getExteriorRing().getCoordinates())
                            == Location.INTERIOR;
                    if (inside && outline.getExteriorRing().distance(GEOMETRY.createPoint(flat)) > THROUGH) {
                        return Optional.of(at);
                    }
                }
            }
            return Optional.empty();
        }
    }
}
