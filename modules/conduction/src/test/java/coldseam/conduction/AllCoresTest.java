package coldseam.conduction;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.eclipse.collections.impl.list.primitive.IntInterval;
import org.junit.jupiter.api.Test;

/** Work on all cores gives what work on one gives, and no piece waits behind a slow one. */
class AllCoresTest {

    private static final ImmutableList<Integer> PIECES =
            IntInterval.fromTo(1, 40).collect(each -> each).toImmutable();

    @Test
    void resultsAreInTheListsOrderAndEachIsHeardOnce() {
        StringBuffer heard = new StringBuffer();
        ImmutableList<Integer> squares = AllCores.collect(
                PIECES, each -> each * each, done -> heard.append(done).append(' '));
        assertEquals(PIECES.collect(each -> each * each), squares);
        assertEquals("0 " + PIECES.makeString(" ") + " ", heard.toString());
    }

    /**
     * The first piece ends only once all others have: a share of the list that held another one would never end. Begun as the
     * command begins it, outside the tests' own pool, whose other thread would do the rest only when its class of tests is done.
     */
    @Test
    void noPieceWaitsBehindASlowOne() throws Exception {
        CountDownLatch others = new CountDownLatch(PIECES.size() - 1);
        FutureTask<ImmutableList<Boolean>> begun = new FutureTask<>(() -> AllCores.collect(
                PIECES,
                each -> {
                    if (each > 1) {
                        others.countDown();
                        return true;
                    }
                    return await(others);
                },
                done -> {}));
        new Thread(begun, "no worker of a pool").start();
        assertTrue(begun.get().getFirst(), "other pieces waited behind the first");
    }

    private static boolean await(CountDownLatch others) {
        try {
            return others.await(60, TimeUnit.SECONDS);
        } catch (InterruptedException ended) {
            throw new IllegalStateException(ended);
        }
    }

    @Test
    void faultsAreThrown() {
        assertThrows(
                SectionException.class,
                () -> AllCores.collect(
                        PIECES,
                        each -> {
                            throw new SectionException(Lists.immutable.of("piece " + each));
                        },
                        done -> {}));
    }
}
