package coldseam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.audit.Work;
import coldseam.audit.engine.Progress;
import coldseam.audit.house.HouseAudit;
import coldseam.audit.house.Workshop;
import coldseam.junctions.BodySolving;
import coldseam.junctions.SectionSolving;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What an audit says beforehand that it will solve is what it solves. */
@Tag("slow")
class WorkTest {

    /** An estimate from means; the fixture houses keep to a factor of 2.5. */
    private static final double WITHIN = 3;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "ferry-cottage.yaml",
                "marsh-bungalow.yaml",
                "shapes/court-and-bay.yaml",
                "shapes/dormers.yaml",
                "shapes/ell-roof.yaml",
                "shapes/lean-to.yaml",
                "shapes/round-end.yaml"
            })
    void isWhatIsSolved(String house) {
        Counting counting = new Counting();
        List<Work> said = new ArrayList<>();
        Map<String, Integer> done = new ConcurrentHashMap<>();
        HouseAudit.of(CommittedReport.ROOT.resolve("fixtures/houses").resolve(house), counting.workshop)
                .compute(new Progress() {
                    @Override
                    public void begins(Work work) {
                        assertEquals(0, counting.unknowns.get(), "nothing is solved before it is said");
                        said.add(work);
                    }

                    @Override
                    public void at(String step, int count, int of) {
                        done.put(step, of);
                    }
                });
        assertEquals(1, said.size());
        Work work = said.get(0);
        assertEquals(done.getOrDefault("junctions", 0), work.junctions());
        assertEquals(done.getOrDefault("found seams", 0), work.found());
        assertEquals(house.equals("ferry-cottage.yaml"), work.found() > 0);
        assertEquals(done.getOrDefault("points", 0), work.points());
        assertEquals(done.getOrDefault("vertices", 0), work.corners());
        double share = work.unknowns() / counting.unknowns.get();
        assertTrue(share < WITHIN && share > 1 / WITHIN, () -> work + " for " + counting.unknowns);
    }

    /** Counts what is solved; what several houses have in common is solved once, and counts for each. */
    private static final class Counting {

        private final AtomicLong unknowns = new AtomicLong();
        private final SectionSolving sections = (section, accuracy) -> {
            var solution = Bench.once(section, accuracy);
            unknowns.addAndGet(solution.unknowns());
            return solution;
        };
        private final BodySolving bodies = (body, accuracy) -> {
            var solution = Bench.once(body, accuracy);
            unknowns.addAndGet(solution.unknowns());
            return solution;
        };
        private final Workshop workshop = Bench.narrow(sections, bodies);
    }
}
