package coldseam.junctions;

import coldseam.conduction.Accuracy;
import coldseam.conduction.solid.BodySolution;
import coldseam.conduction.solid.SolidBody;

/** Solves a body; from the start, or from what was kept of an earlier run. */
@FunctionalInterface
public interface BodySolving {

    /** See {@link coldseam.conduction.solid.BodySolver#solve}. */
    BodySolution solve(SolidBody body, Accuracy accuracy);

    /** The width from which on, as far as cuts let expect it, refinement is aimed at the coldest place alone: the field has its shape. */
    double BEFORE_AIMING = 1e-3;

    /** What is asked of a solution that a surface temperature is read from; see {@link SectionSolving#aimed}. */
    static Accuracy aimed(Accuracy accuracy, String environment, double difference) {
        return SectionSolving.aimed(accuracy, BEFORE_AIMING, environment, difference);
    }
}
