package coldseam.envelope.shell;

import coldseam.envelope.Body;
import coldseam.envelope.House;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Retrofit;
import coldseam.envelope.shell.fault.ShellException;
import coldseam.envelope.shell.fault.ShellFaults;
import coldseam.envelope.shell.mesh.BodyFacets;
import coldseam.envelope.shell.storeys.StoreyFacets;
import coldseam.envelope.shell.surfaces.ExplicitFacets;
import java.util.Optional;

/**
 * Builds the closed shell of a house from its storeys or from its explicit surfaces.
 *
 * <p>Both bodies are first taken apart into facets on a lattice of 0.1 mm; the facets are then split at one another's
 * corners, their edges matched, and every edge classified.
 */
public final class ShellBuilder {

    private ShellBuilder() {}

    /**
     * The shell of a house.
     *
     * @throws ShellException with every fault found, where the body or its openings cannot be built
     */
    public static Shell build(House house) {
        ShellFaults faults = new ShellFaults();
        Optional<BodyFacets> facets = house.body() instanceof Body.Storeys storeys
                ? StoreyFacets.of(house, storeys, faults)
                : ExplicitFacets.of(house, (Body.Explicit) house.body(), faults);
        if (facets.isEmpty()) {
            throw new ShellException(faults.all());
        }
        LightWells wells = new LightWells(house.openings(), facets.get(), faults);
        Shell shell = new ShellAssembler(house, wells, faults).assemble();
        if (faults.notEmpty()) {
            throw new ShellException(faults.all());
        }
        return house.retrofit()
                .map(old -> shell.with(shell.edges().collect(edge -> edge.as(kind(edge, old)))))
                .orElse(shell);
    }

    /**
     * What an edge is in an old house. A floor on the ground that stays is no new slab: what lies under it lies there. Where
     * studs that stay run past a floor, so do the bays between them.
     */
    private static JunctionKind kind(Edge edge, Retrofit old) {
        if (!edge.first().staysIn(old)) {
            return edge.kind();
        }
        if (edge.kind() == JunctionKind.SLAB_EDGE && edge.second().isPresent()) {
            return JunctionKind.EXISTING_SLAB_EDGE;
        }
        return edge.kind() == JunctionKind.INTERMEDIATE_FLOOR
                        && old.balloonFrame()
                        && edge.first().isFramed()
                ? JunctionKind.BALLOON_FRAME_AT_FLOOR
                : edge.kind();
    }
}
