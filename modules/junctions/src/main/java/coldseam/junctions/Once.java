package coldseam.junctions;

import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;

/**
 * Answers equal questions once; safe to use from several threads. Of two threads with one question the second waits for the
 * first. For another question's answer nobody waits, as threads do for a map that computes inside, whenever it grows and by
 * chance.
 */
public final class Once<Q, R> {

    private final Function<Q, R> answering;
    private final Map<Q, CompletableFuture<R>> answers = new ConcurrentHashMap<>();

    /** @param answering what it throws is thrown, and nothing is remembered of it */
    public Once(Function<Q, R> answering) {
        this.answering = answering;
    }

    /** The answer, remembered or new. */
    public R answer(Q question) {
        CompletableFuture<R> mine = new CompletableFuture<>();
        CompletableFuture<R> first = answers.putIfAbsent(question, mine);
        return first == null ? answered(question, mine) : awaited(first);
    }

    private R answered(Q question, CompletableFuture<R> mine) {
        try {
            R answer = answering.apply(question);
            mine.complete(answer);
            return answer;
        } catch (RuntimeException | Error fault) {
            answers.remove(question, mine);
            mine.completeExceptionally(fault);
            throw fault;
        }
    }

    private static <R> R awaited(CompletableFuture<R> first) {
        try {
            return first.join();
        } catch (CompletionException failed) {
            if (failed.getCause() instanceof Error error) {
                throw error;
            }
            throw (RuntimeException) failed.getCause();
        }
    }
}
