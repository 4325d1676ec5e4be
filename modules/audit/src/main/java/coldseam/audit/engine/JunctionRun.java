package coldseam.audit.engine;

import coldseam.audit.engine.PlannedEdge.Question;
import coldseam.junctions.Catalogue;
import coldseam.junctions.DetailDoesNotFit;
import coldseam.junctions.JunctionComputer;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.JunctionSetup;
import java.util.Comparator;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.factory.Maps;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.MutableMap;

/**
 * Computes every question once, on all cores, with the kind's other options beside it for comparison.
 *
 * <p>The order in which threads finish changes nothing: each answer stands by itself.
 */
final class JunctionRun {

    private final Catalogue catalogue;
    private final JunctionComputer computer;
    private final Progress progress;
    private final MutableMap<Question, Answer> answers = Maps.mutable.empty();

    JunctionRun(Catalogue catalogue, JunctionComputer computer, Progress progress) {
        this.catalogue = catalogue;
        this.computer = computer;
        this.progress = progress;
    }

    /**
     * What came of a question.
     *
     * @param result empty where the detail does not fit
     * @param reasons why it does not
     */
    record Answer(Optional<JunctionResult> result, ImmutableList<String> reasons) {}

    /** Computes everything the edges ask for, and all other options of their kinds for the same setups. */
    void compute(ImmutableList<PlannedEdge> edges) {
        ImmutableList<Question> questions =
                edges.flatCollect(this::allQuestions).distinct();
        AtomicInteger done = new AtomicInteger();
        Object turn = new Object();
        progress.at("junctions", 0, questions.size());
        ImmutableList<Answer> computed = Lists.immutable.fromStream(questions.castToList().parallelStream()
                .map(question -> {
                    Answer answer = answer(question);
                    synchronized (turn) {
                        progress.at("junctions", done.incrementAndGet(), questions.size());
                    }
                    return answer;
                }));
        questions.zip(computed).forEach(pair -> answers.put(pair.getOne(), pair.getTwo()));
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

    private Answer answer(Question question) {
        try {
            return new Answer(
                    Optional.of(computer.compute(question.detail(), question.setup())), Lists.immutable.empty());
        } catch (DetailDoesNotFit misfit) {
            return new Answer(Optional.empty(), misfit.reasons());
        }
    }

    /** The result of the first candidate that fits. */
    Optional<JunctionResult> result(PlannedEdge edge) {
        return edge.questions()
                .collect(answers::get)
                .detectOptional(answer -> answer.result().isPresent())
                .flatMap(Answer::result);
    }

    /** Why no candidate of an edge fits; empty where one does, or where there is none. */
    ImmutableList<String> misfits(PlannedEdge edge) {
        return result(edge).isPresent()
                ? Lists.immutable.empty()
                : edge.questions().flatCollect(question -> answers.get(question).reasons());
    }

    /** Every option of the catalogue that fits a setup, from worst to best as the catalogue ranks them. */
    ImmutableList<JunctionResult> options(JunctionSetup setup) {
        return catalogue
                .options(setup.kind())
                .collect(detail -> answers.get(new Question(detail, setup)))
                .select(answer -> answer != null && answer.result().isPresent())
                .collect(answer -> answer.result().get());
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
