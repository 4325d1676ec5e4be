package coldseam.audit.engine;

import coldseam.assemblies.ground.Basement;
import coldseam.assemblies.ground.GroundFloor;
import coldseam.assemblies.ground.SlabOnGround;
import coldseam.assemblies.ground.SuspendedFloor;
import coldseam.audit.Audit;
import coldseam.envelope.Body;
import coldseam.envelope.Exposure;
import coldseam.envelope.shell.Surface;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * What U of floors on the ground, of one kind and height, follows from (ISO 13370); of three methods one is there.
 *
 * @param floors that share it
 * @param ground area, m², exposed perimeter, m, mean thickness of the walls, m, and the ground
 * @param slab level with the ground or over it
 * @param basement floor and walls in the ground
 * @param suspended over a crawl space
 * @param crawlSpace of that; empty where there is none
 */
public record GroundRow(
        ImmutableList<Surface> floors,
        GroundFloor ground,
        Optional<SlabOnGround> slab,
        Optional<Basement> basement,
        Optional<SuspendedFloor> suspended,
        Optional<Body.CrawlSpace> crawlSpace) {

    /** One for each part of an audited house's ground, in the order of its surfaces. */
    public static ImmutableList<GroundRow> of(Audit audit) {
        SurfaceHeats heats = new SurfaceHeats(audit.house(), audit.shell(), Auditor.rimsComputed(audit.junctions()));
        return audit.shell()
                .surfaces()
                .select(surface -> surface.use() != Body.Use.WALL
                        && surface.assembly().isPresent()
                        && (surface.faces(Exposure.Kind.GROUND) || surface.faces(Exposure.Kind.CRAWL_SPACE)))
                .collect(heats::groundRow)
                .select(Optional::isPresent)
                .collect(Optional::get)
                .distinct();
    }

    /** m: dt of the floor, or dg of the ground under a suspended one. */
    public double equivalentThickness() {
        return slab.map(SlabOnGround::equivalentThickness)
                .or(() -> basement.map(Basement::floorThickness))
                .or(() -> suspended.map(SuspendedFloor::equivalentThickness))
                .orElseThrow();
    }

    /** U of the floor, W/(m²·K). */
    public double transmittance() {
        return slab.map(SlabOnGround::transmittance)
                .or(() -> basement.map(Basement::floorTransmittance))
                .or(() -> suspended.map(SuspendedFloor::transmittance))
                .orElseThrow();
    }
}
