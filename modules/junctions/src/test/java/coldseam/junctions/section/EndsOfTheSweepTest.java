package coldseam.junctions.section;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.conduction.Accuracy;
import coldseam.conduction.Interval;
import coldseam.conduction.Solution;
import coldseam.conduction.solve.Conduction;
import coldseam.envelope.JunctionKind;
import coldseam.files.quantity.Phrase;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.BuiltIn;
import coldseam.junctions.DetailDoesNotFit;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.TypicalBuild;
import coldseam.junctions.atlas.Sweep;
import coldseam.junctions.catalogue.CatalogueFile;
import coldseam.junctions.detail.Detail;
import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.atomic.AtomicInteger;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/**
 * Every option without insulation and with the most the atlas sweeps, in both builds: solved, or refused with its reason.
 */
@Timeout(120)
@Tag("slow")
class EndsOfTheSweepTest {

    /** Coarse: that a section can be solved shows at any width, and a thousand are solved. */
    private static final Accuracy SKETCH = new Accuracy(0.05, 20_000);

    private record Task(TypicalBuild build, Sweep sweep, Detail detail, double thickness) {

        @Override
        public String toString() {
            return detail.id() + " in " + build + ", " + 1000 * thickness + " mm on the " + sweep.surface();
        }
    }

    private static ImmutableList<Task> tasks() {
        ImmutableList<Double> steps = Sweep.thicknesses(UnitSystem.SI);
        ImmutableList<Double> ends = Lists.immutable.of(steps.getFirst(), steps.getLast());
        return Lists.immutable
                .of(TypicalBuild.values())
                .flatCollect(build -> JunctionKind.all()
                        .flatCollect(kind -> build.setups(
                                        kind, CatalogueFile.builtIn().options(kind))
                                .flatCollect(setup -> Sweep.of(setup, ""))
                                .flatCollect(sweep -> CatalogueFile.builtIn()
                                        .options(kind)
                                        .select(detail -> build.setup(detail).equals(sweep.setup()))
                                        .flatCollect(detail ->
                                                ends.collect(each -> new Task(build, sweep, detail, each))))));
    }

    @Test
    void everyOptionIsSolvedOrRefusedWithItsReason() {
        Queue<String> faults = new ConcurrentLinkedQueue<>();
        AtomicInteger solved = new AtomicInteger();
        AtomicInteger refused = new AtomicInteger();
        AtomicInteger refusedThick = new AtomicInteger();
        ImmutableList<Task> tasks = tasks();
        tasks.castToList().parallelStream().forEach(task -> {
            Optional<JunctionSetup> setup = task.sweep().at(task.thickness());
            if (setup.isEmpty()) {
                // Nothing is left of the surface; the atlas says so.
                refused.incrementAndGet();
                return;
            }
            try {
                Solution solution = Conduction.solve(
                        Composer.compose(task.detail(), setup.get(), BuiltIn.LIBRARY)
                                .heatFlow(),
                        SKETCH);
                Interval flow = solution.coupling(
                        Surroundings.INDOOR,
                        solution.section()
                                .environments()
                                .detect(each -> !each.name().equals(Surroundings.INDOOR))
                                .name());
                // Written so that NaN fails.
                if (!(solution.met() && flow.lower() <= flow.upper() && flow.upper() > 0)) {
                    faults.add(task + ": " + flow + (solution.met() ? "" : ", wider than asked"));
                }
                solved.incrementAndGet();
            } catch (DetailDoesNotFit misfit) {
                if (misfit.reasons().collect(Phrase::toString).isEmpty()
                        || misfit.reasons().collect(Phrase::toString).anySatisfy(String::isBlank)) {
                    faults.add(task + ": refused without a reason");
                }
                refused.incrementAndGet();
                if (task.thickness() > 0) {
                    refusedThick.incrementAndGet();
                }
            } catch (RuntimeException broken) {
                faults.add(task + ": " + broken);
            }
        });
        assertTrue(faults.isEmpty(), String.join("\n", faults));
        assertEquals(tasks.size(), solved.get() + refused.get());
        // Most options are about insulation and do not fit where there is none; thick, every one must be solved.
        assertEquals(0, refusedThick.get(), "refused at the thick end");
        assertTrue(solved.get() > 400, solved + " solved, " + refused + " refused");
    }
}
