package coldseam.junctions.store;

import coldseam.conduction.Accuracy;
import coldseam.conduction.solid.BodySolution;
import coldseam.conduction.solid.SolidBody;
import coldseam.junctions.BodySolving;
import java.util.Optional;
import org.eclipse.collections.impl.factory.Lists;

/** Keeps solved bodies on disk as {@link SolutionStore} keeps sections. */
public final class BodyStore implements BodySolving {

    private final KeptFolder folder;
    private final BodySolving solver;

    public BodyStore(KeptFolder folder, BodySolving solver) {
        this.folder = folder;
        this.solver = solver;
    }

    @Override
    public BodySolution solve(SolidBody body, Accuracy accuracy) {
        return folder.answer(
                name(body, accuracy),
                content -> SolutionBytes.read(content, body, accuracy),
                () -> solver.solve(body, accuracy),
                solution ->
                        solution.outcome().byMemory() ? Optional.empty() : Optional.of(SolutionBytes.write(solution)));
    }

    /** The hash of a question. */
    static String name(SolidBody body, Accuracy accuracy) {
        return Seal.name(SolutionStore.HASH, RecordBytes.inFull(Lists.immutable.of(body, accuracy)));
    }
}
