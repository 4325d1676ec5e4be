package coldseam.envelope.shell;

import coldseam.envelope.Body;
import coldseam.envelope.House;
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
        Shell shell = new ShellAssembler(house, facets.get(), faults).assemble();
        if (faults.notEmpty()) {
            throw new ShellException(faults.all());
        }
        return shell;
    }
}
