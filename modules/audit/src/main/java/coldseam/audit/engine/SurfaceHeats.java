package coldseam.audit.engine;

import coldseam.assemblies.HeatFlow;
import coldseam.assemblies.OuterSurface;
import coldseam.assemblies.Transmittance;
import coldseam.assemblies.ground.Basement;
import coldseam.assemblies.ground.FloorOnGround;
import coldseam.assemblies.ground.GroundFloor;
import coldseam.assemblies.ground.SlabOnGround;
import coldseam.assemblies.ground.SuspendedFloor;
import coldseam.audit.HeatLoss;
import coldseam.audit.Note;
import coldseam.envelope.Body;
import coldseam.envelope.Exposure;
import coldseam.envelope.House;
import coldseam.envelope.shell.Shell;
import coldseam.envelope.shell.Surface;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;

/**
 * Transmittances of all surfaces: ISO 6946 in the direction of the heat flow; ISO 13370 where they meet the ground.
 *
 * <p>All floors of one kind and height share one B', of the outer faces whatever the dimension system, so that the two systems
 * differ by areas alone ({@link GroundParts}).
 */
final class SurfaceHeats {

    private final House house;
    private final Shell shell;
    private final boolean rimsComputed;
    private final double groundFactor;
    private final GroundParts ground;
    private final MutableList<Note> notes = Lists.mutable.empty();

    /**
     * @param rimsComputed whether the floor's edges are computed as sections with their ground: what insulates them is then in
     *     their psi, and edge insulation may not count again
     */
    SurfaceHeats(House house, Shell shell, boolean rimsComputed) {
        this(house, shell, rimsComputed, 1);
    }

    /** @param groundFactor by which the ground's conductivity is multiplied */
    SurfaceHeats(House house, Shell shell, boolean rimsComputed, double groundFactor) {
        this.groundFactor = groundFactor;
        this.house = house;
        this.shell = shell;
        this.rimsComputed = rimsComputed;
        this.ground = new GroundParts(house, shell);
    }

    /** One for each surface, in the shell's order. */
    ImmutableList<SurfaceHeat> compute() {
        if (house.openings().anySatisfy(opening -> opening.lightWell().isPresent())) {
            notes.add(new Note.LightWells());
        }
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
        GroundParts.Part part = ground.part(surface);
        if (surface.use() == Body.Use.WALL && surface.faces(Exposure.Kind.GROUND)) {
            return buried(surface, part, build.get());
        }
        if (!part.known()) {
            notes.add(new Note.FloorWithoutEdge(surface));
            return 0;
        }
        return onGround(surface, part, build.get()).transmittance();
    }

    /** What U of a floor on the ground follows from; empty where ISO 13370 cannot be applied to it. */
    Optional<GroundRow> groundRow(Surface floor) {
        GroundParts.Part part = ground.part(floor);
        return part.known()
                ? build(floor).map(build -> new GroundRow(part.floors(), onGround(floor, part, build)))
                : Optional.empty();
    }

    private FloorOnGround onGround(Surface surface, GroundParts.Part part, Transmittance build) {
        if (surface.faces(Exposure.Kind.CRAWL_SPACE)) {
            return suspended(part, build);
        }
        if (part.depth() > 0) {
            return basement(surface, part, part.depth());
        }
        ImmutableList<Body.EdgeInsulation> edges =
                Lists.immutable.withAll(edgeInsulation(surface).stream().toList());
        if (rimsComputed && edges.notEmpty()) {
            notes.add(new Note.EdgeInsulationInSection());
            edges = Lists.immutable.empty();
        }
        return SlabOnGround.of(groundFloor(part), build.surfaceToSurface(), edges);
    }

    /** A wall's is that of a basement's; a slab's formula never fits it, and without a floor on the ground there is none that does. */
    private double buried(Surface wall, GroundParts.Part part, Transmittance build) {
        double depth = ground.wallDepth(wall);
        if (!part.known() || !(depth > 0)) {
            notes.add(new Note.WallInGroundAlone(wall));
            return build.corrected();
        }
        return basement(wall, part, depth).wallTransmittance();
    }

    private Basement basement(Surface surface, GroundParts.Part part, double depth) {
        return Basement.of(
                groundFloor(part), depth, meanResistance(part.floors()), meanResistance(ground.walls(surface)));
    }

    /** The floors on the ground that a surface belongs to; empty where there is none, or none with a rim outdoors. */
    Optional<GroundFloor> onGround(Surface surface) {
        return Optional.of(ground.part(surface)).filter(GroundParts.Part::known).map(this::groundFloor);
    }

    private GroundFloor groundFloor(GroundParts.Part part) {
        return new GroundFloor(
                part.area(),
                part.perimeter(),
                part.wallThickness(),
                house.site().groundConductivity() * groundFactor);
    }

    private SuspendedFloor suspended(GroundParts.Part part, Transmittance build) {
        return SuspendedFloor.of(groundFloor(part), build.corrected(), crawlSpace(part));
    }

    /**
     * What a surface faces, for its sections: the temperature factor of a crawl space follows from ISO 13370, so that the
     * section's floor loses what the house's does.
     */
    Exposure exposure(Surface surface) {
        Exposure given = surface.exposure();
        if (given.kind() != Exposure.Kind.CRAWL_SPACE) {
            return given;
        }
        Optional<Transmittance> build = build(surface);
        if (build.isEmpty()) {
            return given;
        }
        GroundParts.Part part = ground.part(surface);
        return part.known()
                ? new Exposure(
                        given.kind(),
                        given.neighbour(),
                        suspended(part, build.get()).temperatureFactor())
                : given;
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

    /** m, of the floor's upper face below the ground outdoors; zero where it does not lie below. */
    double depth(Surface surface) {
        return ground.part(surface).depth();
    }

    /** Along the rim of a slab, as the house file says. */
    Optional<Body.EdgeInsulation> edgeInsulation(Surface surface) {
        return ground.part(surface).base().flatMap(Body.Base::edge);
    }

    private Body.CrawlSpace crawlSpace(GroundParts.Part part) {
        Optional<Body.CrawlSpace> given = part.base().flatMap(Body.Base::crawlSpace);
        if (given.isPresent()) {
            return given.get();
        }
        // Common practice, no source: 1.5 W/(m²·K), 0.0015 m²/m, 4 m/s, average shielding, bare ground.
        Body.CrawlSpace assumed = new Body.CrawlSpace(0.4, 1.5, 0.0015, 4, 0.05, 0);
        notes.add(new Note.CrawlSpaceAssumed(assumed));
        return assumed;
    }
}
