package coldseam.junctions.store;

import coldseam.conduction.Accuracy;
import coldseam.conduction.solid.BodyImage;
import coldseam.conduction.solid.BodySolution;
import coldseam.conduction.solid.SolidBody;
import coldseam.junctions.BodySolving;
import coldseam.junctions.Once;
import java.util.Optional;
import org.eclipse.collections.impl.factory.Lists;

/**
 * Solves what bodies have in common once, and remembers it; on disk, too, where there is a folder, as {@link SolutionStore} keeps
 * sections.
 */
public final class BodyStore implements BodySolving {

    private final Optional<KeptFolder> folder;
    private final BodySolving solver;
    private final Once<Question, BodySolution> answers = new Once<>(this::answer);

    private record Question(SolidBody body, Accuracy accuracy) {}

    /** @param folder empty where nothing outlives this JVM */
    public BodyStore(Optional<KeptFolder> folder, BodySolving solver) {
        this.folder = folder;
        this.solver = solver;
    }

    @Override
    public BodySolution solve(SolidBody body, Accuracy accuracy) {
        BodyImage image = BodyImage.of(body);
        return image.of(answers.answer(new Question(image.common(), image.common(accuracy))), accuracy);
    }

    private BodySolution answer(Question asked) {
        return folder.map(each -> each.answer(
                        name(asked.body, asked.accuracy),
                        content -> SolutionBytes.read(content, asked.body, asked.accuracy),
                        () -> solved(asked),
                        solution -> solution.outcome().byMemory()
                                ? Optional.empty()
                                : Optional.of(SolutionBytes.write(solution))))
                .orElseGet(() -> solved(asked));
    }

    private BodySolution solved(Question asked) {
        return solver.solve(asked.body, asked.accuracy);
    }

    /** The hash of a question. */
    static String name(SolidBody body, Accuracy accuracy) {
        return Seal.name(SolutionStore.HASH, RecordBytes.inFull(Lists.immutable.of(body, accuracy)));
    }
}
