package coldseam.conduction;

import java.util.Locale;
import java.util.Optional;

/**
 * Whether a solution's interval came out as narrow as was asked, and if not, why. The interval is proven either way.
 */
public sealed interface Outcome {

    /** The width that was asked for, as a share of the coupling. */
    double asked();

    /** The width that was reached, as a share of the coupling; infinite where the coupling is. */
    double got();

    /** What stood in the way, in plain words; empty where nothing did. */
    Optional<String> why();

    /** K, what the lowest temperature that was aimed at may be off by, where that is more than asked; 0 otherwise. */
    default double unsure() {
        return 0;
    }

    /** Whether more memory would have brought it nearer to what was asked. */
    default boolean byMemory() {
        return false;
    }

    /** Where it stood in the way, m; empty where it is no one place. */
    default Optional<Point> at() {
        return Optional.empty();
    }

    /** What is said beside the solution; empty where nothing stood in the way. */
    default Optional<String> note() {
        return why().map(why -> Double.isInfinite(got())
                ? why
                : String.format(
                        Locale.ROOT,
                        "the interval is %.3g of the coupling wide, not %.3g as asked: %s",
                        got(),
                        asked(),
                        why));
    }

    /** As narrow as asked. */
    record Met(double asked, double got) implements Outcome {

        @Override
        public Optional<String> why() {
            return Optional.empty();
        }
    }

    /**
     * Refinement ended at the unknowns that were allowed.
     *
     * @param unknowns how many there were at the end
     */
    record UnknownsSpent(double asked, double got, int unknowns) implements Outcome {

        @Override
        public Optional<String> why() {
            return Optional.of(
                    "refinement ended at " + unknowns + " unknowns; allow more unknowns or a wider interval");
        }
    }

    /**
     * Refinement ended at the unknowns that the {@link Budget} allows, fewer than were allowed otherwise.
     *
     * @param unknowns how many there were at the end
     */
    record MemorySpent(double asked, double got, int unknowns) implements Outcome {

        @Override
        public Optional<String> why() {
            return Optional.of("refinement ended at " + unknowns + " unknowns, as many as the budget allows; give"
                    + " the Java machine more memory (java -Xmx2g) where nobody set it, or ask for a wider interval");
        }

        @Override
        public boolean byMemory() {
            return true;
        }
    }

    /**
     * The lowest temperature that was aimed at is known less well than asked.
     *
     * @param kelvin what its error is estimated at, K
     * @param end what ended refinement
     */
    record ColdestUnsure(double asked, double got, double kelvin, End end) implements Outcome {

        /** What ended refinement; the order is that of stores. */
        public enum End {
            /** As many unknowns as were allowed. */
            ALLOWED("refinement ended at as many unknowns as were allowed; allow more"),
            /** As many unknowns as the {@link Budget} allows. */
            MEMORY(
                    "refinement ended at as many unknowns as the budget allows; give the Java machine more memory (java -Xmx2g)"
                            + " where nobody set it"),
            /** A corner at which triangles can no longer be halved. */
            SINGULAR(
                    "materials that conduct very differently meet crosswise, and triangles as small as numbers can tell apart do"
                            + " not resolve it; draw the touching corners apart or overlapping, as they will be built");

            private final String words;

            End(String words) {
                this.words = words;
            }
        }

        @Override
        public Optional<String> why() {
            return Optional.of(String.format(
                    Locale.ROOT, "the lowest surface temperature is known to %.2g K only: %s", kelvin, end.words));
        }

        @Override
        public boolean byMemory() {
            return end == End.MEMORY;
        }

        @Override
        public double unsure() {
            return kelvin;
        }

        @Override
        public Optional<String> note() {
            return why();
        }
    }

    /**
     * Refinement ended at a singular corner, where materials meet crosswise: triangles there can no longer be halved without
     * rounding their corners.
     *
     * @param corner of the drawing, m
     */
    record SingularCorner(double asked, double got, Point corner) implements Outcome {

        @Override
        public Optional<String> why() {
            return Optional.of("materials that conduct very differently meet crosswise at " + corner.text()
                    + ", and the heat flow is so crowded there that triangles as small as numbers can tell apart do not"
                    + " resolve it; draw the touching corners apart or overlapping, as they will be built");
        }

        @Override
        public Optional<Point> at() {
            return Optional.of(corner);
        }
    }

    /**
     * The coupling is infinite: two temperatures are prescribed without surface resistance and meet.
     *
     * @param meeting where, m
     */
    record Infinite(double asked, Point meeting) implements Outcome {

        @Override
        public double got() {
            return Double.POSITIVE_INFINITY;
        }

        @Override
        public Optional<String> why() {
            return Optional.of("two temperatures are prescribed without surface resistance and meet at "
                    + meeting.text()
                    + ": the heat flow there is infinite, and so is the coupling between the two; temperatures away"
                    + " from there hold");
        }

        @Override
        public Optional<Point> at() {
            return Optional.of(meeting);
        }
    }
}
