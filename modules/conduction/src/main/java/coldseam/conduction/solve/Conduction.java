package coldseam.conduction.solve;

import coldseam.conduction.Accuracy;
import coldseam.conduction.Budget;
import coldseam.conduction.DrawingFault;
import coldseam.conduction.Section;
import coldseam.conduction.SectionException;
import coldseam.conduction.Solution;
import coldseam.conduction.TemperatureField;
import coldseam.conduction.field.TriangleField;
import coldseam.conduction.mesh.MeshedSection;
import java.io.DataInput;
import java.io.IOException;
import org.eclipse.collections.api.list.ImmutableList;

/** Solves sections. */
public final class Conduction {

    private Conduction() {}

    /** Every fault of a section; one that has none can be solved. */
    public static ImmutableList<DrawingFault> faults(Section section) {
        return MeshedSection.faults(section);
    }

    /**
     * Solves a section to the accuracy asked for.
     *
     * <p>Both energies are computed from the fields as they stand in memory, so the interval holds however well the
     * linear systems were solved; it is widened by what rounding can do to the evaluation itself (see {@code
     * Refinement.form}). It is about the snapped section. Where it cannot be made as narrow as asked within the unknowns
     * allowed, or the memory that this JVM may take, the best one is given, {@code met} is false and a note says so.
     *
     * @throws SectionException with every fault of the section at once
     */
    public static Solution solve(Section section, Accuracy accuracy) {
        return solve(section, accuracy, Budget.ofThisJvm());
    }

    /**
     * The same, within a budget.
     *
     * @throws SectionException likewise, and where the coarsest solution needs more memory than there is
     */
    public static Solution solve(Section section, Accuracy accuracy, Budget budget) {
        return Budget.halving(
                Math.min(budget.section(), accuracy.maximumUnknowns()),
                allowed -> new SectionSolver(section, accuracy, allowed).solve(),
                Workspace::drop);
    }

    /**
     * The field of a solution that {@link TemperatureField#write} wrote.
     *
     * @param section the one that was solved
     */
    public static TemperatureField readField(DataInput in, Section section) throws IOException {
        return TriangleField.read(in, section);
    }
}
