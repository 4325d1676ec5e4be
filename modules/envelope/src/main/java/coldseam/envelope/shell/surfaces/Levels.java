package coldseam.envelope.shell.surfaces;

import coldseam.envelope.Body;
import coldseam.envelope.Exposure;
import coldseam.envelope.Point3;
import coldseam.envelope.Vectors;
import coldseam.envelope.shell.fault.ShellFault;
import coldseam.envelope.shell.fault.ShellFaults;
import coldseam.envelope.shell.lattice.Ring;
import coldseam.envelope.shell.lattice.SurfaceAxes;
import coldseam.envelope.shell.lattice.Vertex;
import coldseam.envelope.shell.mesh.Facet;
import coldseam.envelope.shell.mesh.FacetMesh;
import coldseam.envelope.shell.mesh.FacetNames;
import coldseam.envelope.shell.plan.StepZones;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.operation.overlayng.OverlayNG;

/**
 * The storeys of a body of explicit surfaces: walls that pass a floor are cut there, and each surface is of a storey.
 *
 * <p>A level is a floor's upper face, as where storeys take over from one another; beside a floor that is a surface at that
 * level, a slab beside a cellar, a wall goes down to the floor's underside, and under a deck or roof that ends over a level the
 * lower room's wall goes up to its outer face.
 *
 * @param levels bottom → top
 */
record Levels(ImmutableList<Body.Level> levels, ImmutableList<Facet> floors, Terrain terrain) {

    /** m, by which the lowest level may miss the floor that is a surface: the thickness of a finish that was left out. */
    private static final double MISSED = 0.01;

    /** m, over the lowest level, by which a wall's foot or a floor may be drawn off it and still belong to it. */
    private static final double NEAR = StepZones.HAIR;

    /** m, below the ground, from which a storey's floor is a cellar's; our own rule. */
    private static final double CELLAR = 0.5;

    /** z of a unit normal, downwards, of a floor that is walked on: 8° off the level and less; our own rule. */
    private static final double LYING = 0.99;

    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    /** Steps of a micrometre, as the lattice's: coarser than rounding. */
    private static final PrecisionModel GRID = new PrecisionModel(1e6);

    /** Refuses levels that belong to another house. */
    void check(ImmutableList<Facet> facets, ShellFaults faults) {
        ImmutableList<Facet> floors = facets.select(
                facet -> under(facet) && !facet.missing() && facet.normal().z() < -LYING);
        Body.Level lowest = levels.getFirst();
        floors.minByOptional(Levels::upperFace)
                .filter(floor -> Math.abs(upperFace(floor) - lowest.height()) > MISSED)
                .ifPresent(floor -> faults.add(
                        ShellFault.Part.STOREY,
                        lowest.name(),
                        "Level \"%s\": it lies at %.3f m, but the upper face of the lowest floor, \"%s\", at %.3f m: its corners"
                                + " are those of its underside, and its build-up is %.3f m thick. Correct the height, or the corners.",
                        lowest.name(),
                        lowest.height(),
                        floor.name(),
                        upperFace(floor),
                        floor.inset()));
        ImmutableList<Facet> walls = facets.select(facet -> facet.use() == Body.Use.WALL);
        if (faults.isEmpty()) {
            walls.forEach(wall -> drowned(wall, faults));
        }
        for (Body.Level level : levels.drop(1)) {
            if (walls.noneSatisfy(wall -> low(wall) <= level.height() + NEAR && high(wall) > level.height() + NEAR)) {
                faults.add(
                        ShellFault.Part.STOREY,
                        level.name(),
                        "Level \"%s\": it lies at %.3f m, where no wall reaches; walls go from %.3f m to %.3f m. Correct its height,"
                                + " or leave it out.",
                        level.name(),
                        level.height(),
                        walls.collectDouble(Levels::low).minIfEmpty(0),
                        walls.collectDouble(Levels::high).maxIfEmpty(0));
            }
        }
    }

    /** Ground beside what is a cellar's floor, of which the wall over it would know nothing. */
    private void drowned(Facet wall, ShellFaults faults) {
        double floor = floors.select(each -> Math.abs(low(each) - low(wall)) <= NEAR)
                .collectDouble(Levels::upperFace)
                .maxIfEmpty(low(wall));
        Vertex deepest = wall.outline()
                .maxBy(corner -> terrain.at(corner) - Math.max(corner.point().z(), floor));
        double foot = Math.max(deepest.point().z(), floor);
        if (wall.faces(Exposure.Kind.OUTDOORS) && foot < terrain.at(deepest) - CELLAR) {
            faults.surface(
                    wall.name(),
                    ": it faces outdoors from %.3f m on, but the ground beside [%.3f m, %.3f m] lies at %.3f m. Part it there and"
                            + " let what is below face the ground, or correct %s.",
                    foot,
                    deepest.point().x(),
                    deepest.point().y(),
                    terrain.at(deepest),
                    terrain.line().isEmpty()
                            ? "ground-level; ground that lies lower beside some walls is given by points"
                            : "the points of ground");
        }
    }

    /** The facets with their storeys, walls cut at the levels that they pass. */
    ImmutableList<Facet> applied(ImmutableList<Facet> facets) {
        // At one another's corners first, so that two that share an edge are cut in one point.
        ImmutableList<Facet> whole = FacetMesh.of(facets, Vertex.ONE).facets();
        MutableList<Facet> all = Lists.mutable.empty();
        whole.forEach(facet ->
                all.addAllIterable(facet.use() == Body.Use.WALL ? cut(facet, whole) : Lists.immutable.of(of(facet))));
        return FacetNames.numbered(all);
    }

    /** Index of the storey that a height belongs to. */
    private int storey(double z) {
        return Math.max(0, levels.count(level -> level.height() <= z + NEAR) - 1);
    }

    private Facet of(Facet facet) {
        return at(facet, storey(under(facet) ? upperFace(facet) : low(facet) - facet.inset()), -1);
    }

    private Facet at(Facet facet, int storey, int level) {
        boolean floor = facet.use() == Body.Use.FLOOR;
        double height = levels.get(storey).height();
        double face = floor ? upperFace(facet) : height;
        boolean cellar = face < ground(face) - CELLAR;
        Facet.Mark mark = facet.traits().mark();
        if (mark == Facet.Mark.NONE && cellar && (floor || facet.use() == Body.Use.WALL)) {
            mark = Facet.Mark.CELLAR;
        }
        return facet.withTraits(new Facet.Traits(levels.get(storey).name(), level, height, mark));
    }

    /** m, z of the ground beside the floors at a height, mean round them; beside all floors where none lies there. */
    private double ground(double height) {
        ImmutableList<Facet> here = floors.select(floor -> Math.abs(upperFace(floor) - height) <= NEAR);
        return terrain.mean((here.isEmpty() ? floors : here).collect(Facet::outline));
    }

    private ImmutableList<Facet> cut(Facet wall, ImmutableList<Facet> all) {
        MutableList<Facet> parts = Lists.mutable.of(wall);
        for (Body.Level level : levels.drop(1)) {
            double height = level.height();
            ImmutableList<Facet> floors = all.select(each -> under(each) && Math.abs(upperFace(each) - height) <= NEAR);
            ImmutableList<Side> upper = beside(wall, floors);
            ImmutableList<Side> lower = beside(
                    wall,
                    all.select(each -> over(each) && low(each) - each.inset() < height - NEAR && low(each) > height));
            parts = parts.flatCollect(part -> low(part) < height - NEAR && high(part) > height + NEAR
                    ? new Cut(part, Vertex.height(height), upper.newWithAll(lower)).parts(upper, lower)
                    : Lists.immutable.of(part));
        }
        boolean several = parts.size() > 1;
        return parts.collect(part -> {
                    int storey = storey((low(part) + high(part)) / 2);
                    String name =
                            several ? wall.name() + ", " + levels.get(storey).name() : wall.name();
                    return at(part, storey, storey).partNamed(name);
                })
                .toImmutable();
    }

    /** A side of a wall's outline. */
    private record Side(Vertex a, Vertex b) {}

    /** Those sides of a wall that it shares with others. */
    private static ImmutableList<Side> beside(Facet wall, ImmutableList<Facet> others) {
        ImmutableList<Vertex> outline = wall.outline();
        return outline.collectWithIndex((a, i) -> new Side(a, outline.get((i + 1) % outline.size())))
                .select(side -> others.anySatisfy(other ->
                        other.outline().contains(side.a()) && other.outline().contains(side.b())));
    }

    private static boolean over(Facet facet) {
        return facet.use() == Body.Use.ROOF || facet.use() == Body.Use.TERRACE;
    }

    private static boolean under(Facet facet) {
        return facet.use() == Body.Use.FLOOR || facet.use() == Body.Use.OVERHANG;
    }

    private static double low(Facet facet) {
        return facet.outline().collectDouble(v -> v.point().z()).min();
    }

    private static double high(Facet facet) {
        return facet.outline().collectDouble(v -> v.point().z()).max();
    }

    private static double upperFace(Facet floor) {
        return low(floor) + floor.inset();
    }

    /** A wall parted at a height: every corner of the parts is one of its own, or where a side passes that height. */
    private static final class Cut {

        private final Facet wall;
        private final SurfaceAxes axes;
        private final long height;
        private final MutableList<Vertex> corners = Lists.mutable.empty();
        private final Geometry whole;

        /** @param beside sides of the wall whose ends it is parted at as well */
        Cut(Facet wall, long height, ImmutableList<Side> beside) {
            this.wall = wall;
            this.height = height;
            this.axes = SurfaceAxes.of(
                    wall.normal(), wall.outline().getFirst().at(height).point());
            ImmutableList<Vertex> outline = wall.outline();
            for (int i = 0; i < outline.size(); i++) {
                Vertex a = outline.get(i);
                Vertex b = outline.get((i + 1) % outline.size());
                corners.add(a);
                if (Math.min(a.z(), b.z()) < height && height < Math.max(a.z(), b.z())) {
                    corners.add(passing(a, b));
                }
            }
            this.whole = axes.polygon(corners.toImmutable().collect(Vertex::point));
            beside.flatCollect(side -> Lists.immutable.of(side.a(), side.b()))
                    .forEach(end -> corners.addAllIterable(Lists.immutable.of(end, Vertex.of(onHeight(end)))));
        }

        /** Where the wall passes the height above or below an end. */
        private Point3 onHeight(Vertex end) {
            return axes.space(axes.flat(end.point()).x, 0);
        }

        /** Where a side passes the height: the same from both of its ends. */
        private Vertex passing(Vertex one, Vertex other) {
            Vertex a = one.compareTo(other) < 0 ? one : other;
            Vertex b = a == one ? other : one;
            double share = (double) (height - a.z()) / (b.z() - a.z());
            return new Vertex(
                    a.x() + Math.round(share * (b.x() - a.x())), a.y() + Math.round(share * (b.y() - a.y())), height);
        }

        /**
         * The parts, those under the height first.
         *
         * @param upper sides that it shares with a floor at this height: what is beside that belongs to what is over it
         * @param lower sides that it shares with a deck or roof which is parted by the height: so does what is beside that
         *     to what is under it
         */
        ImmutableList<Facet> parts(ImmutableList<Side> upper, ImmutableList<Side> lower) {
            Geometry under = half(false);
            Geometry over = half(true);
            Geometry rim = strip(upper, under);
            Geometry edge = strip(lower, over);
            return areas(moved(under, rim, edge))
                    .newWithAll(areas(moved(over, edge, rim)))
                    .collect(this::facet);
        }

        private static Geometry moved(Geometry part, Geometry without, Geometry with) {
            return overlay(overlay(part, without, OverlayNG.DIFFERENCE), with, OverlayNG.UNION);
        }

        /** What lies between sides and the height. */
        private Geometry strip(ImmutableList<Side> sides, Geometry half) {
            Geometry strips = GEOMETRY.createPolygon();
            for (Side side : sides) {
                Geometry strip = axes.polygon(
                        Lists.immutable.of(side.a().point(), side.b().point(), onHeight(side.b()), onHeight(side.a())));
                strips = overlay(strips, strip, OverlayNG.UNION);
            }
            return overlay(half, strips, OverlayNG.INTERSECTION);
        }

        private Geometry half(boolean over) {
            Envelope box = whole.getEnvelopeInternal();
            Envelope half = new Envelope(
                    box.getMinX() - 1, box.getMaxX() + 1, over ? 0 : box.getMinY() - 1, over ? box.getMaxY() + 1 : 0);
            return overlay(whole, GEOMETRY.toGeometry(half), OverlayNG.INTERSECTION);
        }

        /** The areas alone, without slivers of rounding. */
        private static Geometry overlay(Geometry one, Geometry other, int how) {
            return GEOMETRY.buildGeometry(
                    areas(OverlayNG.overlay(one, other, how, GRID)).castToList());
        }

        private static ImmutableList<Geometry> areas(Geometry all) {
            MutableList<Geometry> areas = Lists.mutable.empty();
            for (int i = 0; i < all.getNumGeometries(); i++) {
                if (all.getGeometryN(i).getArea() > 0) {
                    areas.add(all.getGeometryN(i));
                }
            }
            return areas.toImmutable();
        }

        private Facet facet(Geometry part) {
            return wall.withOutline(onLattice(part));
        }

        private ImmutableList<Vertex> onLattice(Geometry part) {
            MutableList<Vertex> outline = Lists.mutable
                    .of(part.getCoordinates())
                    .collect(at ->
                            corners.minBy(corner -> axes.flat(corner.point()).distance(at)));
            ImmutableList<Vertex> tidy = Ring.tidy(outline.toImmutable());
            Vertex area = Ring.doubleArea(tidy);
            boolean outwards = Vectors.dot(area.point(), wall.normal()) > 0;
            return outwards ? tidy : tidy.toReversed();
        }
    }
}
