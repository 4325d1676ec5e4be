package coldseam.audit.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.junctions.Once;
import coldseam.junctions.vertex.VertexComputing;
import coldseam.junctions.vertex.VertexResult;
import coldseam.junctions.vertex.VertexSetup;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

/** Whoever asks the corners in their turn never waits for the one that was begun ahead while another is left to do. */
class CornersOnTwoCoresTest {

    @Test
    void oneIsComputedWhileTheFirstIsStillAtWork() {
        CountDownLatch asked = new CountDownLatch(1);
        Thread asking = Thread.currentThread();
        Once<VertexSetup, VertexResult> remembered = new Once<>(setup -> {
            if (Thread.currentThread() == asking) {
                asked.countDown();
            } else {
                assertTrue(within(asked), "a corner was computed beside the one at work");
            }
            return Sample.corner(setup, 0.9);
        });
        VertexComputing corners = remembered::answer;
        assertTrue(Sample.audit(Sample.yaml(), Sample.good(), corners)
                .vertices()
                .allSatisfy(row -> row.sheet().isPresent() || row.obstacle().isPresent()));
        assertEquals(0, asked.getCount(), "the asking thread computed one");
    }

    private static boolean within(CountDownLatch asked) {
        try {
            return asked.await(60, TimeUnit.SECONDS);
        } catch (InterruptedException ended) {
            throw new IllegalStateException(ended);
        }
    }
}
