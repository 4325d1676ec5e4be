package coldseam.audit.engine;

import coldseam.audit.engine.PlannedEdge.Question;
import coldseam.junctions.BridgeComputer;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.catalogue.Catalogue;
import java.util.Comparator;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * Computes every question once, on all cores, with the kind's other options beside it for comparison.
 *
 * <p>The order in which threads finish changes nothing: each answer stands by itself.
 */
final class JunctionRun {

    private final Catalogue catalogue;
    private final BridgeComputer computer;
    private final Progress progress;
    private Answers<Question, JunctionResult> answers = Answers.none();

    JunctionRun(Catalogue catalogue, BridgeComputer computer, Progress progress) {
        this.catalogue = catalogue;
        this.computer = computer;
        this.progress = progress;
    }

    /** Computes everything the edges ask for, and all other options of their kinds for the same setups. */
    void compute(ImmutableList<PlannedEdge> edges) {
        answers = Answers.compute(
                "junctions",
                edges.flatCollect(this::allQuestions),
                question -> computer.compute(question.detail(), question.setup()),
                progress);
    }

    private ImmutableList<Question> allQuestions(PlannedEdge edge) {
        if (edge.candidates().isEmpty()) {
            return Lists.immutable.empty();
        }
        ImmutableList<Question> others = edge.setup()
                .map(setup -> catalogue.options(setup.kind()).collect(detail -> new Question(detail, setup)))
                .orElse(Lists.immutable.empty());
        return edge.questions().newWithAll(others);
    }

    /** The result of the first candidate that fits. */
    Optional<JunctionResult> result(PlannedEdge edge) {
        return answers.results(edge.questions()).getFirstOptional();
    }

    /** Why no candidate of an edge fits; empty where one does, or where there is none. */
    ImmutableList<String> misfits(PlannedEdge edge) {
        return result(edge).isPresent() ? Lists.immutable.empty() : answers.reasons(edge.questions());
    }

    /** Every option of the catalogue that fits a setup, from worst to best as the catalogue ranks them. */
    ImmutableList<JunctionResult> options(JunctionSetup setup) {
        return answers.results(catalogue.options(setup.kind()).collect(detail -> new Question(detail, setup)));
    }

    /**
     * The option of the catalogue that goes before a result for its setup: with an unbroken pen line where there is one, then
     * with the least psi.
     *
     * @return empty where none is better
     */
    Optional<JunctionResult> better(JunctionResult than) {
        return Lists.immutable
                .of(than)
                .newWithAll(options(than.setup()))
                .minOptional(Comparator.comparing(
                                (JunctionResult result) -> !result.penLine().unbroken())
                        .thenComparing(result -> result.psiExternal().middle()))
                .filter(best -> !best.detail().equals(than.detail()));
    }
}
