package coldseam.audit.engine;

import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.audit.Audit;
import coldseam.junctions.Once;
import coldseam.junctions.vertex.VertexComputing;
import coldseam.junctions.vertex.VertexResult;
import coldseam.junctions.vertex.VertexSetup;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

/** Whoever asks the corners in their turn never waits for the one that was begun ahead while another is left to do. */
class CornersOnTwoCoresTest {

    /**
     * The audit runs on a thread of its own, as a command's does: on one of those that run tests the other tests' threads would help it,
     * and one of them might take the corner that is looked for.
     */
    @Test
    void twoAreComputedAtOnce() throws Exception {
        CountDownLatch atWork = new CountDownLatch(2);
        Once<VertexSetup, VertexResult> remembered = new Once<>(setup -> {
            atWork.countDown();
            assertTrue(within(atWork), "a corner was computed beside the one at work");
            return Sample.corner(setup, 0.9);
        });
        VertexComputing corners = remembered::answer;
        FutureTask<Audit> audit = new FutureTask<>(() -> Sample.audit(Sample.yaml(), Sample.good(), corners));
        Thread asking = new Thread(audit, "asking");
        asking.setDaemon(true);
        asking.start();
        assertTrue(audit.get()
                .vertices()
                .allSatisfy(row -> row.sheet().isPresent() || row.obstacle().isPresent()));
        assertTrue(within(atWork), "two corners are different");
    }

    private static boolean within(CountDownLatch atWork) {
        try {
            return atWork.await(60, TimeUnit.SECONDS);
        } catch (InterruptedException ended) {
            throw new IllegalStateException(ended);
        }
    }
}
