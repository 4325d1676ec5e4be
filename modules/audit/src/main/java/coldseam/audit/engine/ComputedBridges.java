package coldseam.audit.engine;

import coldseam.assemblies.moisture.SurfaceHumidity;
import coldseam.audit.BridgeSheet;
import coldseam.audit.BridgeSource;
import coldseam.audit.engine.PlannedBridge.Question;
import coldseam.conduction.Interval;
import coldseam.envelope.DimensionSystem;
import coldseam.envelope.Site;
import coldseam.junctions.BridgeResult;
import coldseam.junctions.BridgeSetup;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.detail.Detail;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;

/**
 * The junctions of a house, or its points, computed once for each question, with the other options of their kinds beside
 * them: a sheet for each different one.
 */
final class ComputedBridges<S extends BridgeSetup, R extends BridgeResult> {

    /** What makes two places one sheet: the result (a detail and a setup) and whether somebody chose it. */
    private record Key(Detail detail, BridgeSetup setup, boolean chosen) {}

    /** An unbroken pen line goes before a broken one, then the least psi or chi does. */
    private static final Comparator<BridgeResult> BEST = Comparator.comparing(
                    (BridgeResult result) -> result instanceof JunctionResult junction
                            && !junction.penLine().unbroken())
            .thenComparing(result -> result.psiOrChi(DimensionSystem.EXTERNAL).middle());

    private final Site site;
    private final Answers<Question<S>, R> answers;
    private final Map<Key, BridgeSheet<R>> sheets = new LinkedHashMap<>();

    /**
     * Computes them.
     *
     * @param what they are, for the progress; its first letter begins the sheets' ids
     * @param computer throws {@link coldseam.junctions.DetailDoesNotFit} where a detail does not
     */
    ComputedBridges(
            String what,
            Site site,
            ImmutableList<PlannedBridge<S>> planned,
            BiFunction<Detail, S, R> computer,
            Progress progress) {
        this.site = site;
        this.answers = Answers.compute(
                what,
                planned.flatCollect(each -> each.questions().newWithAll(each.comparisons())),
                question -> computer.apply(question.detail(), question.setup()),
                progress);
        Map<Key, MutableList<PlannedBridge<S>>> groups = new LinkedHashMap<>();
        planned.forEach(each -> key(each)
                .ifPresent(key -> groups.computeIfAbsent(key, none -> Lists.mutable.empty())
                        .add(each)));
        String letter = what.substring(0, 1).toUpperCase(Locale.ROOT);
        groups.forEach((key, group) -> sheets.put(key, sheet(letter + (sheets.size() + 1), group)));
    }

    /** In the order of their first place. */
    ImmutableList<BridgeSheet<R>> sheets() {
        return Lists.immutable.ofAll(sheets.values());
    }

    /** The sheet of a place; empty where nothing could be computed. */
    Optional<BridgeSheet<R>> sheet(PlannedBridge<S> planned) {
        return key(planned).map(sheets::get);
    }

    /** Where the psi or chi of a place without one of its own comes from. */
    BridgeSource source(PlannedBridge<S> planned) {
        if (result(planned).isPresent()) {
            return planned.chosen() ? new BridgeSource.Computed() : new BridgeSource.StandIn();
        }
        return new BridgeSource.None(
                planned.setup().isEmpty()
                        ? BridgeSource.Reason.NO_ASSEMBLY
                        : planned.candidates().isEmpty()
                                ? BridgeSource.Reason.NO_DETAIL_OF_THE_KIND
                                : planned.chosen()
                                        ? BridgeSource.Reason.CHOSEN_DOES_NOT_FIT
                                        : BridgeSource.Reason.NONE_FITS);
    }

    /** Why the detail chosen for a place does not fit; empty where it does, or where none is chosen. */
    ImmutableList<String> misfits(PlannedBridge<S> planned) {
        return planned.chosen() && result(planned).isEmpty()
                ? answers.reasons(planned.questions())
                : Lists.immutable.empty();
    }

    /**
     * What a place whose chosen detail does not fit can come to, by the other options of its kind that do: from the least to
     * the most; empty where none fits.
     */
    Optional<Interval> range(PlannedBridge<S> planned, Function<R, Interval> transmittance) {
        ImmutableList<Interval> all = answers.results(planned.comparisons()).collect(transmittance::apply);
        return all.isEmpty()
                ? Optional.empty()
                : Optional.of(new Interval(
                        all.collectDouble(Interval::lower).min(),
                        all.collectDouble(Interval::upper).max()));
    }

    /** The result of the first candidate that fits. */
    private Optional<R> result(PlannedBridge<S> planned) {
        return answers.results(planned.questions()).getFirstOptional();
    }

    private Optional<Key> key(PlannedBridge<S> planned) {
        return result(planned).map(found -> new Key(found.detail(), found.setup(), planned.chosen()));
    }

    private BridgeSheet<R> sheet(String id, MutableList<PlannedBridge<S>> places) {
        PlannedBridge<S> first = places.getFirst();
        R result = result(first).orElseThrow();
        ImmutableList<R> options = answers.results(first.comparisons());
        SurfaceHumidity humidity = SurfaceHumidity.of(
                Math.min(1, result.temperatureFactor()), site.indoorTemperature(), site.outdoorTemperature());
        return new BridgeSheet<>(
                id,
                result,
                Lists.immutable
                        .of(result)
                        .newWithAll(options)
                        .minOptional(BEST)
                        .filter(best -> !best.detail().equals(result.detail())),
                options,
                places.collect(PlannedBridge::name).toImmutable(),
                places.sumOfDouble(PlannedBridge::size),
                first.chosen(),
                Math.min(1, humidity.humidityAtDewPoint()),
                Math.min(1, humidity.humidityAtMouldLimit()));
    }
}
