package coldseam.options;

import coldseam.audit.Audit;
import coldseam.audit.JunctionRow;
import coldseam.audit.PointRow;
import coldseam.conduction.Interval;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * A house as it was found and as it is to become.
 *
 * @param before audit of the first, with its corners
 * @param after audit of the second, likewise
 * @param more W/K that the second loses more; below zero for less; without corners, and without what has no value
 * @param changes to the findings
 * @param unlike what else differs between the files, so that the difference is not of what is built alone
 * @param idle measures that the order names and by which the houses do not differ
 * @param parts that lose another amount than before, in the order of the heat-loss table
 * @param cold seams of the first on which mould may grow
 * @param stages in the order of building; empty where the shapes differ, so that there is no house in between
 */
public record Renovation(
        Audit before,
        Audit after,
        Interval more,
        Changes changes,
        ImmutableList<Unlike> unlike,
        ImmutableList<String> idle,
        ImmutableList<Part> parts,
        ImmutableList<Cold> cold,
        ImmutableList<Stage> stages) {

    /** What two files of one house have in common. */
    public enum Unlike {
        /** The shape, what it stands on, or the seams that it does not show. */
        SHAPE,
        /** What carries what stays of an old house. */
        STRUCTURE,
        /** Unheated spaces and heated neighbours: which there are, or their factors. */
        SPACES_BESIDE,
        /** Temperatures, degree days, ground, dimensions or climate. */
        SITE,
        /** What materials of one name conduct. */
        CONDUCTIVITIES,
        /** Points: of some kind the second has fewer. */
        POINTS_LEFT_OUT,
        /** Fasteners of boards that hang outside: the second has none where the first has some. */
        FASTENERS_LEFT_OUT,
        /** Windows and doors: the second has less of them. */
        OPENINGS_LEFT_OUT,
        /** Seams whose psi is the file's own in one of them alone, or another. */
        OWN_PSI,
        /** Seams and points for which the worst option stands in, since nobody has chosen. */
        NOT_CHOSEN,
        /** The limits of the audit. */
        LIMITS,
        /** The price of heat, or its currency. */
        PRICE
    }

    /** Where a part stands in the heat-loss table. */
    public enum Group {
        SURFACES,
        OPENINGS,
        JUNCTIONS,
        POINTS
    }

    /**
     * A part of both houses.
     *
     * @param group of it
     * @param name of a surface or opening, kind of the junctions, or name of a set of points
     * @param before W/K; empty where it is new or not computed
     * @param after W/K; empty where it is gone or not computed
     * @param more W/K that it loses more; of both sides' values only where both are there
     */
    public record Part(Group group, String name, Optional<Interval> before, Optional<Interval> after, Interval more) {}

    /**
     * The house once a measure is built.
     *
     * @param name of the measure
     * @param audit of the house at this stage, without its corners
     * @param more W/K that the house loses more than at the stage before
     * @param share of the whole change; empty where the whole does not change
     * @param changes to the findings since the stage before
     * @param open seams whose detail cannot be built yet, since something beside them is still to come
     * @param openPoints points that go through a surface of which one is built anew and the other still to come
     * @param cold seams that are colder than they were found, or on which mould may grow, by their temperature factor
     * @param notJudged seams of which no temperature is known
     */
    public record Stage(
            String name,
            Audit audit,
            Interval more,
            OptionalDouble share,
            Changes changes,
            ImmutableList<JunctionRow> open,
            ImmutableList<PointRow> openPoints,
            ImmutableList<Cold> cold,
            ImmutableList<JunctionRow> notJudged) {}

    /**
     * A seam that is cold for a while, or for good.
     *
     * @param row at the stage
     * @param before fRsi as it was found; empty where none was known
     * @param now fRsi at the stage
     * @param need fRsi that keeps mould away, by the month that asks for most where there is a climate, else by the limit
     */
    public record Cold(JunctionRow row, OptionalDouble before, double now, double need) {

        /** fRsi is read to this; what falls by less is no colder. */
        private static final double READ_TO = 0.005;

        /** Whether mould may grow there. */
        public boolean mould() {
            return now < need;
        }

        /** Whether it is colder than it was found. */
        public boolean colder() {
            return before.isPresent() && now < before.getAsDouble() - READ_TO;
        }
    }
}
