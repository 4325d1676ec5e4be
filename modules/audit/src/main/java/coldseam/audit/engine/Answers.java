package coldseam.audit.engine;

import coldseam.conduction.AllCores;
import coldseam.files.quantity.Phrase;
import coldseam.junctions.DetailDoesNotFit;
import java.util.Optional;
import java.util.function.Function;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.factory.Maps;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;

/**
 * What came of questions that were computed side by side, on all cores. The order in which threads finish changes nothing:
 * each answer stands by itself.
 *
 * @param <Q> a detail for a setup
 * @param <R> what is computed of it
 */
record Answers<Q, R>(ImmutableMap<Q, Answer<R>> all) {

    /**
     * One answer.
     *
     * @param result empty where the detail does not fit
     * @param reasons why it does not
     */
    record Answer<R>(Optional<R> result, ImmutableList<Phrase> reasons) {}

    static <Q, R> Answers<Q, R> none() {
        return new Answers<>(Maps.immutable.empty());
    }

    /**
     * Answers every question once.
     *
     * @param what the questions are about, for the progress
     * @param compute throws {@link DetailDoesNotFit} where a detail does not
     */
    static <Q, R> Answers<Q, R> compute(
            String what, ImmutableList<Q> asked, Function<Q, R> compute, Progress progress) {
        ImmutableList<Q> questions = asked.distinct();
        if (questions.isEmpty()) {
            return none();
        }
        ImmutableList<Answer<R>> computed = AllCores.collect(
                questions, question -> answer(question, compute), done -> progress.at(what, done, questions.size()));
        return new Answers<>(questions.zip(computed).toImmutableMap(pair -> pair.getOne(), pair -> pair.getTwo()));
    }

    private static <Q, R> Answer<R> answer(Q question, Function<Q, R> compute) {
        try {
            return new Answer<>(Optional.of(compute.apply(question)), Lists.immutable.empty());
        } catch (DetailDoesNotFit misfit) {
            return new Answer<>(Optional.empty(), misfit.reasons());
        }
    }

    /** What came of one; empty where it does not fit, or was not asked. */
    Optional<R> result(Q question) {
        return Optional.ofNullable(all.get(question)).flatMap(Answer::result);
    }

    /** The results of those that fit, in the order asked. */
    ImmutableList<R> results(ImmutableList<Q> questions) {
        return questions.flatCollect(question -> result(question).stream().toList());
    }

    /** Why one does not fit. */
    ImmutableList<Phrase> reasons(Q question) {
        return all.get(question).reasons();
    }
}
