package coldseam.junctions;

import coldseam.conduction.Accuracy;
import coldseam.conduction.Section;
import coldseam.conduction.Solution;

/** Solves a section; from the start, or from what was kept of an earlier run. */
@FunctionalInterface
public interface SectionSolving {

    /** See {@link coldseam.conduction.solve.Conduction#solve}. */
    Solution solve(Section section, Accuracy accuracy);

    /** Of the temperature difference: a tenth of what fRsi is printed to. */
    double STEADY = 0.001;

    /** The width from which on refinement is aimed at all places that may be coldest. */
    double BEFORE_AIMING = 1e-2;

    /**
     * What is asked of a solution that a surface temperature is read from; the coupling itself is read from another.
     *
     * @param accuracy of that other
     * @param environment that the surface faces
     * @param difference of the temperatures, K; of none no place is the coldest, and nothing is aimed at
     */
    static Accuracy aimed(Accuracy accuracy, String environment, double difference) {
        return aimed(accuracy, BEFORE_AIMING, environment, difference);
    }

    /** The same, aimed from a width on. */
    static Accuracy aimed(Accuracy accuracy, double from, String environment, double difference) {
        Accuracy before = new Accuracy(Math.max(accuracy.relativeWidth(), from), accuracy.maximumUnknowns());
        return difference > 0 ? before.aimedAt(environment, STEADY * difference) : before;
    }
}
