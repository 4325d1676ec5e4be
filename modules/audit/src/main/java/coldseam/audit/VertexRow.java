package coldseam.audit;

import coldseam.conduction.Interval;
import coldseam.envelope.DimensionSystem;
import coldseam.envelope.shell.corners.Corner;
import coldseam.files.quantity.Phrase;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * One vertex in the audit.
 *
 * @param sheet of it; empty where it is not computed
 * @param obstacle why it is not; empty where it is
 * @param reasons the same of its details, in words, where those stood in the way
 */
public record VertexRow(
        Corner corner, Optional<VertexSheet> sheet, Optional<Obstacle> obstacle, ImmutableList<Phrase> reasons) {

    /** Why a vertex is not computed. */
    public enum Obstacle {
        /** A surface or an edge of it is aslant. */
        ASLANT,
        /** Square, but its surfaces bound no one corner of a room: some go on in one plane, or stand a little apart. */
        NO_CORNER,
        /** An edge of it has no computed detail. */
        NO_DETAIL,
        /** At an edge of it layers go on from one another in one plane. */
        IN_PLANE,
        /** A floor bears into one of its walls, and ends in it where no section shows. */
        FLOOR_ENDS,
        /** The sections of its edges do not say how the corner is built. */
        NOT_SAID,
        /** A detail of the corner's own, which the house names, cannot be built there. */
        MISFIT,
        /** Nobody asked for vertices. */
        NOT_ASKED
    }

    /** chi in a dimension system, W/K; zero where it is not computed. */
    public Interval chi(DimensionSystem system) {
        return sheet.map(found -> found.chi(system)).orElse(Interval.of(0));
    }
}
