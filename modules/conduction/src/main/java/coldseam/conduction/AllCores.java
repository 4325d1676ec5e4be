package coldseam.conduction;

import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReferenceArray;
import java.util.function.Function;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * Works through a list on all cores, each of which takes the next piece when it is done with one.
 *
 * <p>A parallel stream shares the list out beforehand, on two cores by quarters, and whoever has the lighter ones waits in the
 * end. The order in which pieces are done changes nothing: each stands by itself.
 */
public final class AllCores {

    private AllCores() {}

    /**
     * What comes of each piece, in the list's order.
     *
     * @param work done from several threads at once; what it throws is thrown
     * @param heard how many are done, one at a time
     */
    public static <T, R> ImmutableList<R> collect(ImmutableList<T> pieces, Function<T, R> work, IntConsumer heard) {
        AtomicInteger next = new AtomicInteger();
        AtomicReferenceArray<R> results = new AtomicReferenceArray<>(pieces.size());
        AtomicInteger done = new AtomicInteger();
        heard.accept(0);
        IntStream.rangeClosed(0, ForkJoinPool.getCommonPoolParallelism())
                .parallel()
                .forEach(core -> {
                    for (int i = next.getAndIncrement(); i < pieces.size(); i = next.getAndIncrement()) {
                        results.set(i, work.apply(pieces.get(i)));
                        synchronized (done) {
                            heard.accept(done.incrementAndGet());
                        }
                    }
                });
        return Lists.immutable.fromStream(IntStream.range(0, pieces.size()).mapToObj(results::get));
    }
}
