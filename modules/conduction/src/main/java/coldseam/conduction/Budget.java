package coldseam.conduction;

import java.util.function.IntFunction;
import org.eclipse.collections.impl.factory.Lists;

/**
 * How many unknowns solves may have so that memory suffices; refinement that would need more ends there, and the interval
 * stays wider.
 *
 * <p>It follows from the memory alone, never from how much of it happens to be free or how many threads solve: what is too
 * large to be solved on several threads at once waits for its {@link Turn}.
 *
 * @param section of both systems of a section, at least {@link #LEAST}
 * @param body of both systems of a body, likewise
 */
public record Budget(int section, int body) {

    /** Fewer bound nothing worth to be told. */
    public static final int LEAST = 500;

    /** Bytes for each unknown while a section is solved: 700 to 1,500 were measured, from 5,000 unknowns to 400,000. */
    private static final double SECTION_BYTES = 1500;

    /** The same of a body: 480 to 830 were measured. */
    private static final double BODY_BYTES = 700;

    /** Bytes for each unknown of a solution that is kept: 35 were measured over a whole audit. */
    private static final double KEPT_BYTES = 40;

    /** Bytes that an audit takes beside its solutions: programs, catalogue, house and pages. */
    private static final double BESIDE = 44e6;

    /** Of what is left, for the solves at work; the rest is for the solutions that are kept. */
    private static final double AT_WORK = 0.65;

    /** Of the solves at work, for one that is large; the rest is for all threads' small ones. */
    static final double LARGE = 0.75;

    private static final Budget OF_THIS_JVM = ofHeap(Runtime.getRuntime().maxMemory());

    /** @throws IllegalArgumentException where either is less than {@link #LEAST} */
    public Budget {
        if (Math.min(section, body) < LEAST) {
            throw new IllegalArgumentException(
                    "a solve may have at least " + LEAST + " unknowns, got " + Math.min(section, body));
        }
    }

    /** What the most memory that this JVM takes allows. */
    public static Budget ofThisJvm() {
        return OF_THIS_JVM;
    }

    /** @param bytes of memory, for all that is done in it */
    public static Budget ofHeap(long bytes) {
        double large = LARGE * atWork(bytes);
        return new Budget(unknowns(large / SECTION_BYTES), unknowns(large / BODY_BYTES));
    }

    /** As many unknowns for a section as for a body. */
    public static Budget of(int unknowns) {
        return new Budget(unknowns, unknowns);
    }

    /**
     * The same, where solutions are kept that are expected to have so many unknowns together: as much less as they are more
     * than the memory keeps.
     *
     * @param bytes of memory, for all that is done in it
     */
    public Budget keeping(long bytes, int sections, double ofSections, int bodies, double ofBodies) {
        double room = (1 - AT_WORK) * Math.max(0, bytes - BESIDE) / KEPT_BYTES;
        double all = ofSections + ofBodies;
        if (all <= room) {
            return this;
        }
        double share = room / all;
        return new Budget(
                sections == 0 ? section : Math.min(section, unknowns(share * ofSections / sections)),
                bodies == 0 ? body : Math.min(body, unknowns(share * ofBodies / bodies)));
    }

    /**
     * Solves with fewer and fewer unknowns until the memory suffices: what was reckoned is an estimate.
     *
     * @param solve within so many unknowns
     * @param drop gives up what may be taken again
     * @throws SectionException where even the fewest do not
     */
    public static <T> T halving(int allowed, IntFunction<T> solve, Runnable drop) {
        for (int most = allowed; ; most /= 2) {
            try {
                return solve.apply(most);
            } catch (OutOfMemoryError full) {
                drop.run();
                if (most < 2 * LEAST) {
                    throw new SectionException(Lists.immutable.of("its coarsest solution needs more memory than the "
                            + Runtime.getRuntime().maxMemory() / 1_000_000
                            + " MB that the Java machine may take; give it more (java -Xmx2g)"));
                }
            }
        }
    }

    /** Of as many threads as there are, each with its share of what is not for large solves. */
    Budget ofEachThread(int threads) {
        double share = (1 - LARGE) / LARGE / threads;
        return new Budget(unknowns(share * section), unknowns(share * body));
    }

    private static double atWork(long bytes) {
        return AT_WORK * Math.max(0, bytes - BESIDE);
    }

    private static int unknowns(double count) {
        return (int) Math.max(LEAST, Math.min(Integer.MAX_VALUE / 2, count));
    }
}
