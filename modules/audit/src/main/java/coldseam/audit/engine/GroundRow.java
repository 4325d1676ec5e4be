package coldseam.audit.engine;

import coldseam.assemblies.ground.FloorOnGround;
import coldseam.audit.Audit;
import coldseam.envelope.Body;
import coldseam.envelope.Exposure;
import coldseam.envelope.shell.Surface;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * What U of floors on the ground, of one kind and height, follows from (ISO 13370).
 *
 * @param floors that share it
 * @param method by which it is reckoned, with all that it takes
 */
public record GroundRow(ImmutableList<Surface> floors, FloorOnGround method) {

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

    /** Names of the floors. */
    public String name() {
        return floors.collect(Surface::name).makeString(", ");
    }
}
