package coldseam.junctions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

/** Equal questions are answered once, faults are not remembered, and no question waits for another. */
class OnceTest {

    private static final long HANGS_SECONDS = 60;

    /** So many that a map grows several times. */
    private static final int MANY = 200;

    private final AtomicInteger asked = new AtomicInteger();
    private final CountDownLatch begun = new CountDownLatch(1);
    private final CountDownLatch goOn = new CountDownLatch(1);

    private String slow() {
        begun.countDown();
        assertTrue(awaited(goOn), "a question waits for another's answer");
        return "slow";
    }

    private static boolean awaited(CountDownLatch latch) {
        try {
            return latch.await(HANGS_SECONDS, TimeUnit.SECONDS);
        } catch (InterruptedException ended) {
            throw new IllegalStateException(ended);
        }
    }

    @Test
    void equalQuestionsAreAnsweredOnce() {
        Once<String, String> once = new Once<>(question -> {
            asked.incrementAndGet();
            return question.equals("slow") ? slow() : question;
        });
        CompletableFuture<String> first = CompletableFuture.supplyAsync(() -> once.answer("slow"));
        assertTrue(awaited(begun));
        CompletableFuture<String> second = CompletableFuture.supplyAsync(() -> once.answer("slow"));
        goOn.countDown();
        assertEquals("slow", first.join());
        assertEquals("slow", second.join());
        assertEquals("slow", once.answer("slow"));
        assertEquals(1, asked.get());
    }

    @Test
    void noQuestionWaitsForAnother() {
        Once<Integer, String> once = new Once<>(question -> question == 0 ? slow() : "quick");
        CompletableFuture<String> slow = CompletableFuture.supplyAsync(() -> once.answer(0));
        assertTrue(awaited(begun));
        for (int i = 1; i < MANY; i++) {
            assertEquals("quick", once.answer(i));
        }
        goOn.countDown();
        assertEquals("slow", slow.join());
    }

    @Test
    void faultsAreToldToAllWhoAskAndNotRemembered() {
        Once<String, String> once = new Once<>(question -> {
            if (asked.getAndIncrement() == 0) {
                slow();
                throw DetailDoesNotFit.of("too thin");
            }
            return "fits";
        });
        CompletableFuture<DetailDoesNotFit> first =
                CompletableFuture.supplyAsync(() -> assertThrows(DetailDoesNotFit.class, () -> once.answer("detail")));
        assertTrue(awaited(begun));
        goOn.countDown();
        assertEquals("too thin", first.join().getMessage());
        assertEquals("fits", once.answer("detail"));
    }
}
