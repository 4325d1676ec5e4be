package coldseam.audit;

import coldseam.files.quantity.Phrase;
import coldseam.junctions.JunctionResult;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * The seams of a house as they were found, each beside what is planned in its place.
 *
 * @param seams in the order of the planned sheets; of one sheet, in the order of their first edge
 * @param rows those seams of which the house file says what was found
 * @param heatLoss of the house as found: its surfaces, windows and these seams; what the file does not say is as planned
 */
public record AsFound(ImmutableList<Seam> seams, ImmutableList<JunctionRow> rows, HeatLoss heatLoss) {

    /**
     * What was found in the places of one planned sheet, as far as it is the same.
     *
     * @param planned id of the planned sheet
     * @param sheet what was found; empty where nothing is known or computed
     * @param source where its psi comes from, or why there is none; empty where the house file does not say what was found
     *     there
     * @param misfits why the detail that the house file says was found cannot be computed; empty where it can, or says none
     * @param builtNew whether something that meets there is built new
     * @param places names of the edges
     * @param length m, of all of them as planned, in the site's dimension system
     */
    public record Seam(
            String planned,
            Optional<BridgeSheet<JunctionResult>> sheet,
            Optional<BridgeSource> source,
            ImmutableList<Phrase> misfits,
            boolean builtNew,
            ImmutableList<String> places,
            double length) {}

    /** What was found in the places of a planned sheet. */
    public ImmutableList<Seam> of(BridgeSheet<?> planned) {
        return seams.select(seam -> seam.planned().equals(planned.id()));
    }
}
