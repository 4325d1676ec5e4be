package coldseam.junctions;

import coldseam.conduction.Accuracy;
import coldseam.conduction.Section;
import coldseam.conduction.Solution;

/** Solves a section; from the start, or from what was kept of an earlier run. */
@FunctionalInterface
public interface SectionSolving {

    /** See {@link coldseam.conduction.solve.Conduction#solve}. */
    Solution solve(Section section, Accuracy accuracy);
}
