package coldseam.audit.engine;

import coldseam.envelope.Assembly;
import coldseam.envelope.Body;
import coldseam.envelope.Exposure;
import coldseam.envelope.House;
import coldseam.envelope.Point3;
import coldseam.envelope.Vectors;
import coldseam.envelope.shell.Edge;
import coldseam.envelope.shell.Shell;
import coldseam.envelope.shell.Surface;
import java.util.Optional;
import org.eclipse.collections.api.factory.Maps;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.MutableMap;

/**
 * The floors on the ground and over crawl spaces, those of one kind and height together: each part with its own area, exposed
 * perimeter, depth and rim.
 *
 * <p>A wall between two of them, under the higher one's edge, is nobody's exposed perimeter; as a surface it counts as buried as
 * deep as the lower one lies, which overstates what it loses.
 */
final class GroundParts {

    /** m, by which floors of one height may differ. */
    private static final double LEVEL = 0.001;

    /**
     * A part.
     *
     * @param floors of it
     * @param perimeter m, exposed
     * @param wallThickness m, mean of the walls on that perimeter, by length
     * @param depth m, of the floors' upper face below the ground outdoors, mean along the perimeter, nothing along what stands
     *     beside an unheated space (ISO 13370:2017 clause 7.3, from memory); zero where it does not lie below
     * @param base what the house file says of it; empty for explicit bodies
     */
    record Part(
            ImmutableList<Surface> floors,
            double perimeter,
            double wallThickness,
            double depth,
            Optional<Body.Base> base) {

        double area() {
            return floors.sumOfDouble(Surface::externalArea);
        }

        /** Whether ISO 13370 can be applied to it. */
        boolean known() {
            return area() > 0 && perimeter > 0;
        }
    }

    private final House house;
    private final Shell shell;

    private final MutableMap<ImmutableList<String>, Part> parts = Maps.mutable.empty();

    GroundParts(House house, Shell shell) {
        this.house = house;
        this.shell = shell;
    }

    /** The part a floor belongs to, or a wall stands on. */
    Part part(Surface surface) {
        Exposure.Kind kind = surface.exposure().kind();
        double level = level(surface, kind);
        ImmutableList<Surface> floors = shell.surfaces()
                .select(each -> each.exposure().kind() == kind && each.use() != Body.Use.WALL)
                .select(each -> Math.abs(upperFace(each) - level) < LEVEL);
        return parts.getIfAbsentPut(floors.collect(Surface::name), () -> part(floors));
    }

    private Part part(ImmutableList<Surface> floors) {
        double perimeter = shell.exposedPerimeter(floors);
        return new Part(floors, perimeter, wallThickness(shell.rims(floors)), depth(floors, perimeter), base(floors));
    }

    /** Buried walls that stand on the same floors as one. */
    ImmutableList<Surface> walls(Surface surface) {
        double level = level(surface, Exposure.Kind.GROUND);
        return buried().select(wall -> Math.abs(level(wall, Exposure.Kind.GROUND) - level) < LEVEL);
    }

    /** m, how deep a buried wall reaches: as deep as its floor lies, or its own mean height where that lies level with the ground. */
    double wallDepth(Surface wall) {
        Part part = part(wall);
        if (part.depth() > 0 || part.floors().isEmpty()) {
            return part.depth();
        }
        Point3 start = wall.outline().getFirst();
        double length = wall.outline()
                .collectDouble(p -> Math.hypot(p.x() - start.x(), p.y() - start.y()))
                .max();
        double thickness =
                part.floors().getFirst().assembly().map(Assembly::thickness).orElse(0.0);
        return Math.max(0, wall.externalArea() / length - thickness);
    }

    private ImmutableList<Surface> buried() {
        return shell.surfaces()
                .select(each -> each.use() == Body.Use.WALL
                        && each.faces(Exposure.Kind.GROUND)
                        && each.assembly().isPresent());
    }

    /** z of the floor: of a wall's, the highest that it stands on; where it stands on none, the lowest of all. */
    private double level(Surface surface, Exposure.Kind kind) {
        if (surface.use() != Body.Use.WALL) {
            return upperFace(surface);
        }
        ImmutableList<Surface> under = shell.edges()
                .select(edge -> edge.angle() < Vectors.STRAIGHT)
                .collect(edge -> beside(edge, surface))
                .select(floor -> floor.isPresent() && floor.get().exposure().kind() == kind)
                .collect(Optional::get);
        return under.notEmpty()
                ? under.collectDouble(GroundParts::upperFace).max()
                : shell.surfaces()
                        .select(each -> each.exposure().kind() == kind && each.use() != Body.Use.WALL)
                        .collectDouble(GroundParts::upperFace)
                        .minIfEmpty(0);
    }

    /** The floor across an edge from a wall. */
    private static Optional<Surface> beside(Edge edge, Surface wall) {
        Optional<Surface> second = edge.second();
        if (second.isEmpty()) {
            return Optional.empty();
        }
        Optional<Surface> other = edge.first().name().equals(wall.name())
                ? second
                : second.get().name().equals(wall.name()) ? Optional.of(edge.first()) : Optional.empty();
        return other.filter(
                surface -> surface.use() != Body.Use.WALL && surface.normal().z() < 0);
    }

    /** z of a floor's upper face. */
    private static double upperFace(Surface floor) {
        return floor.foot() + floor.assembly().map(Assembly::thickness).orElse(0.0);
    }

    private static double wallThickness(ImmutableList<Shell.Rim> rims) {
        ImmutableList<Shell.Rim> built =
                rims.select(rim -> rim.wall().assembly().isPresent());
        double length = built.sumOfDouble(Shell.Rim::exposed);
        double sum = built.sumOfDouble(
                rim -> rim.exposed() * rim.wall().assembly().orElseThrow().thickness());
        return length > 0 ? sum / length : 0;
    }

    private double depth(ImmutableList<Surface> floors, double perimeter) {
        if (floors.isEmpty()) {
            return 0;
        }
        if (house.body() instanceof Body.Storeys storeys) {
            Body.Stack stack = storeys.stackOf(floors.getFirst().storey());
            boolean lowest =
                    floors.getFirst().storey().equals(stack.storeys().getFirst().name());
            if (!lowest || stack.ground().isEmpty()) {
                return lowest ? level(stack.base().depth(), floors, perimeter) : 0;
            }
            return stack.base().kind() == Body.Base.Kind.HEATED_CELLAR ? inSlope(floors, perimeter) : 0;
        }
        Body.Explicit explicit = (Body.Explicit) house.body();
        if (explicit.ground().notEmpty()) {
            return inSlope(floors, perimeter);
        }
        double lowest = floors.collectDouble(GroundParts::upperFace).minIfEmpty(explicit.groundLevel());
        return level(Math.max(0, explicit.groundLevel() - lowest), floors, perimeter);
    }

    /** m: so much below level ground, by the length of all that stands in it; beside an unheated space nothing does. */
    private double level(double depth, ImmutableList<Surface> floors, double perimeter) {
        double beside = shell.rims(floors)
                .select(rim -> rim.wall().faces(Exposure.Kind.UNHEATED))
                .sumOfDouble(Shell.Rim::exposed);
        return beside > 0 ? depth * (1 - beside / perimeter) : depth;
    }

    /** m: what stands in the ground over the floor's upper face, by the length of all that could. */
    private double inSlope(ImmutableList<Surface> floors, double perimeter) {
        double sunk = shell.rims(floors)
                .select(rim -> rim.wall().faces(Exposure.Kind.GROUND))
                .sumOfDouble(rim -> {
                    double thickness =
                            rim.floor().assembly().map(Assembly::thickness).orElse(0.0);
                    double length = rim.edge().externalLength();
                    return (rim.wall().externalArea() / length - thickness) * rim.exposed();
                });
        return perimeter > 0 ? Math.max(0, sunk / perimeter) : 0;
    }

    private Optional<Body.Base> base(ImmutableList<Surface> floors) {
        if (floors.isEmpty() || !(house.body() instanceof Body.Storeys storeys)) {
            return Optional.empty();
        }
        Surface floor = floors.getFirst();
        Body.Stack stack = storeys.stackOf(floor.storey());
        Optional<Body.Base> own =
                floor.storey().equals(stack.storeys().getFirst().name())
                        ? Optional.of(stack.base())
                        : stack.storeys()
                                .detectOptional(storey -> storey.name().equals(floor.storey()))
                                .flatMap(Body.Storey::base);
        Optional<Body.Base> other = stack.otherBases()
                .collect(Body.AreaBase::base)
                .detectOptional(base -> base.exposure().equals(floor.exposure())
                        && base.assembly().equals(floor.assembly().map(Assembly::name)));
        boolean fits = own.map(base -> base.exposure().equals(floor.exposure())
                        && base.assembly().equals(floor.assembly().map(Assembly::name)))
                .orElse(false);
        return fits ? own : other.or(() -> own);
    }
}
