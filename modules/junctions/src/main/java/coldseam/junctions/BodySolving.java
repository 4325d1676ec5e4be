package coldseam.junctions;

import coldseam.conduction.Accuracy;
import coldseam.conduction.solid.BodySolution;
import coldseam.conduction.solid.SolidBody;

/** Solves a body; from the start, or from what was kept of an earlier run. */
@FunctionalInterface
public interface BodySolving {

    /** See {@link coldseam.conduction.solid.BodySolver#solve}. */
    BodySolution solve(SolidBody body, Accuracy accuracy);
}
