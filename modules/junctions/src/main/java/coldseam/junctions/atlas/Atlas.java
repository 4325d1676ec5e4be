package coldseam.junctions.atlas;

import coldseam.conduction.AllCores;
import coldseam.conduction.SectionException;
import coldseam.files.quantity.Phrase;
import coldseam.junctions.DetailDoesNotFit;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.Measuring;
import coldseam.junctions.detail.Detail;
import java.util.Optional;
import java.util.function.Function;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;

/**
 * Sweeps options over thicknesses, on all cores.
 *
 * <p>The order in which threads finish changes nothing. Resuming is a matter of who measures: one that keeps its solved
 * sections on disk answers at once what it has solved before.
 */
public final class Atlas {

    private Atlas() {}

    /** Hears how far it has come; from several threads, one at a time. */
    public interface Progress {

        /** So many sections of so many are done. */
        void at(int done, int of);
    }

    /** One question. */
    private record Task(Sweep sweep, Detail detail, double thickness) {}

    /**
     * Every option of each sweep, at every thickness; in the sweeps' order, then the options'.
     *
     * @param options of a sweep's junction
     * @param thicknesses m, of the insulation that changes, rising
     */
    public static ImmutableList<AtlasCurve> compute(
            ImmutableList<Sweep> sweeps,
            ImmutableList<Double> thicknesses,
            Function<JunctionSetup, ImmutableList<Detail>> options,
            Measuring measuring,
            Progress progress) {
        ImmutableList<Task> tasks = sweeps.flatCollect(sweep -> options.apply(sweep.setup())
                .flatCollect(detail -> thicknesses.collect(each -> new Task(sweep, detail, each))));
        ImmutableList<AtlasCurve.AtlasPoint> points =
                AllCores.collect(tasks, task -> point(task, measuring), done -> progress.at(done, tasks.size()));
        int each = thicknesses.size();
        return Lists.immutable.fromStream(java.util.stream.IntStream.range(0, tasks.size() / each)
                .mapToObj(i -> new AtlasCurve(
                        tasks.get(i * each).sweep(),
                        tasks.get(i * each).detail(),
                        points.drop(i * each).take(each))));
    }

    private static AtlasCurve.AtlasPoint point(Task task, Measuring measuring) {
        Optional<JunctionSetup> setup = task.sweep().at(task.thickness());
        if (setup.isEmpty()) {
            return AtlasCurve.AtlasPoint.misfit(
                    task.thickness(),
                    Lists.immutable.of(
                            Phrase.of("nothing is left of the " + task.sweep().surface() + " without insulation")));
        }
        try {
            return AtlasCurve.AtlasPoint.of(task.thickness(), measuring.measure(task.detail(), setup.get()));
        } catch (DetailDoesNotFit misfit) {
            return AtlasCurve.AtlasPoint.misfit(task.thickness(), misfit.reasons());
        } catch (SectionException undrawable) {
            return AtlasCurve.AtlasPoint.misfit(
                    task.thickness(), undrawable.faults().collect(Phrase::of));
        }
    }
}
