package coldseam.report.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;

/** Steps that wait, and work beside them. */
class StepsTest {

    private final StringBuilder taken = new StringBuilder();

    private Runnable says(String word) {
        return () -> taken.append(word);
    }

    /** As a table that runs over pages: what is inside stays inside, whenever somebody asks for all to be taken. */
    @Test
    void theyAreTakenInTheirOrderTheInnerOnesInside() {
        try (Steps steps = new Steps()) {
            steps.add(says("a"));
            steps.around(
                    () -> {
                        steps.add(says("b"));
                        steps.take();
                        steps.around(() -> steps.add(says("c")), inner -> {
                            taken.append('[');
                            inner.run();
                            taken.append(']');
                        });
                        steps.add(says("d"));
                    },
                    inner -> {
                        taken.append('(');
                        inner.run();
                        taken.append(')');
                    });
            steps.add(says("e"));
            assertEquals("", taken.toString());
            steps.finish();
            assertEquals("a(b[c]d)e", taken.toString());
            steps.finish();
            assertEquals("a(b[c]d)e", taken.toString());
        }
    }

    /** While whoever adds the steps waits for them, no core is idle. */
    @Test
    void asMuchIsWorkedBesideThemAtOnceAsThereAreCores() {
        try (Steps steps = new Steps()) {
            int cores = Runtime.getRuntime().availableProcessors();
            CountDownLatch atWork = new CountDownLatch(cores);
            for (int core = 0; core < cores; core++) {
                Supplier<Boolean> work = steps.beside(() -> {
                    atWork.countDown();
                    return atWork.await(60, TimeUnit.SECONDS);
                });
                steps.add(() -> assertTrue(work.get(), "all were at work at once"));
            }
            steps.finish();
        }
    }

    @Test
    void workBesideThemIsBegunAtOnceAndWaitedForInItsPlace() throws InterruptedException {
        try (Steps steps = new Steps()) {
            CountDownLatch begun = new CountDownLatch(1);
            CountDownLatch goOn = new CountDownLatch(1);
            Supplier<String> drawn = steps.beside(() -> {
                begun.countDown();
                awaited(goOn);
                return "b";
            });
            steps.add(says("a"));
            steps.add(() -> {
                goOn.countDown();
                taken.append(drawn.get());
            });
            steps.add(says("c"));
            assertTrue(begun.await(60, TimeUnit.SECONDS), "nothing was begun before its turn");
            steps.finish();
            assertEquals("abc", taken.toString());
        }
    }

    /** One step waits for what only comes after all were given: nobody waits for it before. */
    @Test
    void othersAreSetWhileTheyAreTaken() {
        CountDownLatch set = new CountDownLatch(1);
        try (Steps steps = new Steps()) {
            steps.add(() -> {
                awaited(set);
                taken.append('a');
            });
            steps.take();
            steps.add(says("b"));
            assertEquals("", taken.toString());
            set.countDown();
            steps.take();
            steps.add(says("c"));
            steps.finish();
            assertEquals("abc", taken.toString());
        }
    }

    @Test
    void stepThatFailsFailsWhenTheNextAreTakenAndNoneIsAfterwards() {
        try (Steps steps = new Steps()) {
            steps.add(() -> {
                throw new IllegalArgumentException("a fault");
            });
            steps.take();
            steps.add(says("b"));
            assertEquals(
                    "a fault",
                    assertThrows(IllegalArgumentException.class, steps::finish).getMessage());
        }
        assertEquals("", taken.toString());
    }

    @Test
    void nothingIsTakenOnceTheyAreClosed() {
        CountDownLatch begun = new CountDownLatch(1);
        Steps steps = new Steps();
        steps.add(begun::countDown);
        steps.add(() -> {
            try {
                Thread.sleep(60_000);
            } catch (InterruptedException ended) {
                taken.append('a');
            }
        });
        steps.take();
        awaited(begun);
        steps.close();
        assertEquals("a", taken.toString());
    }

    @Test
    void workThatFailsFailsWhereItIsWaitedFor() {
        try (Steps steps = new Steps()) {
            Supplier<String> fault = steps.beside(() -> {
                throw new IllegalArgumentException("a fault");
            });
            Supplier<String> error = steps.beside(() -> {
                throw new OutOfMemoryError("as good as none left");
            });
            assertEquals(
                    "a fault",
                    assertThrows(IllegalArgumentException.class, fault::get).getMessage());
            assertThrows(OutOfMemoryError.class, error::get);
        }
    }

    private static void awaited(CountDownLatch latch) {
        try {
            assertTrue(latch.await(60, TimeUnit.SECONDS));
        } catch (InterruptedException ended) {
            throw new IllegalStateException(ended);
        }
    }
}
