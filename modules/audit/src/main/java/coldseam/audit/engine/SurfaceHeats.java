package coldseam.audit.engine;

import coldseam.assemblies.HeatFlow;
import coldseam.assemblies.OuterSurface;
import coldseam.assemblies.Transmittance;
import coldseam.assemblies.ground.Basement;
import coldseam.assemblies.ground.GroundFloor;
import coldseam.assemblies.ground.SlabOnGround;
import coldseam.assemblies.ground.SuspendedFloor;
import coldseam.audit.HeatLoss;
import coldseam.audit.Note;
import coldseam.envelope.Assembly;
import coldseam.envelope.Body;
import coldseam.envelope.Exposure;
import coldseam.envelope.House;
import coldseam.envelope.Point3;
import coldseam.envelope.shell.Edge;
import coldseam.envelope.shell.Shell;
import coldseam.envelope.shell.Surface;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;

/**
 * Transmittances of all surfaces: ISO 6946 in the direction of the heat flow; ISO 13370 where they meet the ground.
 *
 * <p>All floors on the ground share one B', of the outer faces whatever the dimension system, so that the two systems
 * differ by areas alone.
 */
final class SurfaceHeats {

    private final House house;
    private final Shell shell;
    private final boolean rimsComputed;
    private final MutableList<Note> notes = Lists.mutable.empty();

    /**
     * @param rimsComputed whether the floor's edges are computed as sections with their ground: what insulates them is then in
     *     their psi, and edge insulation may not count again
     */
    SurfaceHeats(House house, Shell shell, boolean rimsComputed) {
        this.house = house;
        this.shell = shell;
        this.rimsComputed = rimsComputed;
    }

    /** One for each surface, in the shell's order. */
    ImmutableList<SurfaceHeat> compute() {
        return shell.surfaces().collect(this::heat);
    }

    /** What had to be assumed; complete after {@link #compute()}. */
    ImmutableList<Note> notes() {
        return notes.distinct().toImmutable();
    }

    /** The transmittance of an assembly as a surface uses it. */
    static Optional<Transmittance> build(Surface surface) {
        return surface.assembly()
                .map(assembly -> Transmittance.of(
                        assembly, HeatFlow.through(surface.normal()), OuterSurface.of(surface.exposure())));
    }

    private SurfaceHeat heat(Surface surface) {
        Optional<Transmittance> build = build(surface);
        double plain = build.map(Transmittance::corrected).orElse(0.0);
        Exposure exposure = surface.exposure();
        return switch (exposure.kind()) {
            case OUTDOORS -> new SurfaceHeat(surface, build, plain, 1, HeatLoss.Group.SURFACES);
            case UNHEATED, PARTY -> new SurfaceHeat(surface, build, plain, exposure.factor(), HeatLoss.Group.UNHEATED);
            case GROUND, CRAWL_SPACE ->
                new SurfaceHeat(surface, build, inGround(surface, build), 1, HeatLoss.Group.GROUND);
        };
    }

    private double inGround(Surface surface, Optional<Transmittance> build) {
        if (build.isEmpty()) {
            return 0;
        }
        Exposure.Kind kind = surface.exposure().kind();
        double area = floors(kind).sumOfDouble(Surface::externalArea);
        double perimeter = exposedPerimeter(kind);
        if (!(area > 0 && perimeter > 0)) {
            notes.add(new Note.FloorWithoutEdge(surface));
            return 0;
        }
        if (kind == Exposure.Kind.CRAWL_SPACE) {
            return suspended(build.get()).transmittance();
        }
        GroundFloor floor = groundFloor(kind);
        double depth = depth(surface);
        if (depth > 0) {
            return basement(surface, floor, depth);
        }
        ImmutableList<Body.EdgeInsulation> edges =
                Lists.immutable.withAll(edgeInsulation().stream().toList());
        if (rimsComputed && edges.notEmpty()) {
            notes.add(new Note.EdgeInsulationInSection());
            edges = Lists.immutable.empty();
        }
        return SlabOnGround.of(floor, build.get().surfaceToSurface(), edges).transmittance();
    }

    /** The floors on the ground together; empty where there is none, or none with a rim outdoors. */
    Optional<GroundFloor> onGround() {
        boolean known = floors(Exposure.Kind.GROUND).sumOfDouble(Surface::externalArea) > 0
                && exposedPerimeter(Exposure.Kind.GROUND) > 0;
        return known ? Optional.of(groundFloor(Exposure.Kind.GROUND)) : Optional.empty();
    }

    private GroundFloor groundFloor(Exposure.Kind kind) {
        return new GroundFloor(
                floors(kind).sumOfDouble(Surface::externalArea),
                exposedPerimeter(kind),
                wallThickness(kind),
                house.site().groundConductivity());
    }

    private SuspendedFloor suspended(Transmittance build) {
        return SuspendedFloor.of(groundFloor(Exposure.Kind.CRAWL_SPACE), build.corrected(), crawlSpace());
    }

    /**
     * What a surface faces, for its sections: the temperature factor of a crawl space follows from ISO 13370, so that the
     * section's floor loses what the house's does.
     */
    Exposure exposure(Surface surface) {
        Exposure given = surface.exposure();
        Optional<Transmittance> build = build(surface);
        boolean known = build.isPresent() && exposedPerimeter(given.kind()) > 0;
        return given.kind() == Exposure.Kind.CRAWL_SPACE && known
                ? new Exposure(
                        given.kind(), given.neighbour(), suspended(build.get()).temperatureFactor())
                : given;
    }

    private double basement(Surface surface, GroundFloor floor, double depth) {
        ImmutableList<Surface> walls = shell.surfaces()
                .select(each -> each.use() == Body.Use.WALL
                        && each.exposure().kind() == Exposure.Kind.GROUND
                        && each.assembly().isPresent());
        Basement basement =
                Basement.of(floor, depth, meanResistance(floors(Exposure.Kind.GROUND)), meanResistance(walls));
        return surface.use() == Body.Use.WALL ? basement.wallTransmittance() : basement.floorTransmittance();
    }

    /** m²·K/W without surfaces, of several surfaces beside one another: their conductances' mean. */
    private static double meanResistance(ImmutableList<Surface> surfaces) {
        double area = 0;
        double conductance = 0;
        for (Surface surface : surfaces) {
            Optional<Transmittance> build = build(surface);
            if (build.isPresent()) {
                area += surface.externalArea();
                conductance += surface.externalArea() / build.get().surfaceToSurface();
            }
        }
        return conductance > 0 ? area / conductance : 0;
    }

    private ImmutableList<Surface> floors(Exposure.Kind kind) {
        return shell.surfaces().select(each -> each.exposure().kind() == kind && each.use() != Body.Use.WALL);
    }

    /** m, of the floors' edges beyond which no heated neighbour lies; an unheated space outside the fabric counts. */
    private double exposedPerimeter(Exposure.Kind kind) {
        double shared = rims(kind).sumOfDouble(Edge::externalLength);
        ImmutableList<String> names = floors(kind).collect(Surface::name);
        double open = shell.openEdges()
                .select(edge -> edge.surfaces().anySatisfy(names::contains))
                .sumOfDouble(edge -> edge.length());
        return shared + open;
    }

    private ImmutableList<Edge> rims(Exposure.Kind kind) {
        return shell.edges().select(edge -> {
            if (edge.second().isEmpty()) {
                return false;
            }
            return isRim(edge.first(), edge.second().get(), kind)
                    || isRim(edge.second().get(), edge.first(), kind);
        });
    }

    private static boolean isRim(Surface floor, Surface wall, Exposure.Kind kind) {
        return floor.use() != Body.Use.WALL
                && floor.exposure().kind() == kind
                && wall.use() == Body.Use.WALL
                && wall.exposure().kind() != Exposure.Kind.PARTY;
    }

    /** m, mean of the walls that stand on the floors, by length. */
    private double wallThickness(Exposure.Kind kind) {
        double length = 0;
        double sum = 0;
        for (Edge edge : rims(kind)) {
            Surface wall = edge.first().use() == Body.Use.WALL
                    ? edge.first()
                    : edge.second().orElseThrow();
            if (wall.assembly().isPresent()) {
                length += edge.externalLength();
                sum += edge.externalLength() * wall.assembly().get().thickness();
            }
        }
        return length > 0 ? sum / length : 0;
    }

    /** m, of the lowest floor's upper face below the ground outdoors; zero where it does not lie below. */
    double depth(Surface surface) {
        if (house.body() instanceof Body.Storeys storeys) {
            return storeys.base().depth();
        }
        if (house.body() instanceof Body.Explicit explicit) {
            ImmutableList<Surface> floors = floors(surface.exposure().kind());
            // Points lie on the outer shell: the floor's upper face is its whole assembly higher.
            double lowest = floors.collectDouble(
                            floor -> floor.outline().collectDouble(Point3::z).min()
                                    + floor.assembly().map(Assembly::thickness).orElse(0.0))
                    .minIfEmpty(explicit.groundLevel());
            return Math.max(0, explicit.groundLevel() - lowest);
        }
        return 0;
    }

    /** Along the rim of a slab, as the house file says. */
    Optional<Body.EdgeInsulation> edgeInsulation() {
        return house.body() instanceof Body.Storeys storeys ? storeys.base().edge() : Optional.empty();
    }

    private Body.CrawlSpace crawlSpace() {
        Optional<Body.CrawlSpace> given =
                house.body() instanceof Body.Storeys storeys ? storeys.base().crawlSpace() : Optional.empty();
        if (given.isPresent()) {
            return given.get();
        }
        // Common practice, no source: 1.5 W/(m²·K), 0.0015 m²/m, 4 m/s, average shielding, bare ground.
        Body.CrawlSpace assumed = new Body.CrawlSpace(0.4, 1.5, 0.0015, 4, 0.05, 0);
        notes.add(new Note.CrawlSpaceAssumed(assumed));
        return assumed;
    }
}
