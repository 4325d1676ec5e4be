package coldseam.options;

import coldseam.audit.Audit;
import coldseam.audit.BridgeRow;
import coldseam.conduction.Interval;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * A house as it was found and as it is to become.
 *
 * @param before audit of the first
 * @param after audit of the second
 * @param more W/K that the second loses more; below zero for less
 * @param changes to the findings
 * @param parts that lose another amount than before, in the order of the heat-loss table
 * @param stages in the order of building; empty where the shapes differ, so that there is no house in between
 */
public record Renovation(
        Audit before,
        Audit after,
        Interval more,
        Changes changes,
        ImmutableList<Part> parts,
        ImmutableList<Stage> stages) {

    /**
     * A part of both houses.
     *
     * @param name of a surface or opening, kind of the junctions, or name of a set of points
     * @param before W/K; empty where it is new or not computed
     * @param after W/K; empty where it is gone or not computed
     * @param more W/K that it loses more; of both sides' values only where both are there
     */
    public record Part(String name, Optional<Interval> before, Optional<Interval> after, Interval more) {}

    /**
     * The house once a measure is built.
     *
     * @param name of the measure
     * @param audit of the house at this stage
     * @param more W/K that the house loses more than at the stage before
     * @param share of the whole change; empty where the whole does not change
     * @param changes to the findings since the stage before
     * @param open seams whose detail cannot be built yet, since something beside them is still to come
     * @param colder seams that are colder than they were found, by their temperature factor
     */
    public record Stage(
            String name,
            Audit audit,
            Interval more,
            OptionalDouble share,
            Changes changes,
            ImmutableList<BridgeRow> open,
            ImmutableList<Colder> colder) {}

    /**
     * A seam that is colder for a while, or for good.
     *
     * @param row at the stage
     * @param before fRsi as it was found
     * @param now fRsi at the stage
     * @param need fRsi that keeps mould away, by the month that asks for most where there is a climate, else by the limit
     */
    public record Colder(BridgeRow row, double before, double now, double need) {

        /** Whether mould may grow there. */
        public boolean mould() {
            return now < need;
        }
    }
}
