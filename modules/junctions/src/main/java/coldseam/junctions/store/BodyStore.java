package coldseam.junctions.store;

import coldseam.conduction.Accuracy;
import coldseam.conduction.solid.BodySolution;
import coldseam.conduction.solid.KeptBody;
import coldseam.conduction.solid.SolidBody;
import coldseam.junctions.BodySolving;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

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
                content -> KeptBody.read(content, body, accuracy),
                () -> solver.solve(body, accuracy),
                solution -> solution.outcome().byMemory() ? Optional.empty() : Optional.of(KeptBody.write(solution)));
    }

    /** The hash of a question; a set has no order of its own. */
    static String name(SolidBody body, Accuracy accuracy) {
        String question = body.name() + "\n" + body.extent() + body.multiplicity()
                + body.cutPlanes().toSortedList() + body.painted() + body.environments() + body.patches()
                + body.probes() + accuracy;
        return Seal.name(SolutionStore.Core.HASH, question.getBytes(StandardCharsets.UTF_8));
    }
}
