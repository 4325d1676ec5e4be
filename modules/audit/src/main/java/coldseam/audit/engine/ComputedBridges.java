package coldseam.audit.engine;

import coldseam.audit.BridgeSheet;
import coldseam.audit.BridgeSource;
import coldseam.audit.engine.PlannedBridge.Question;
import coldseam.conduction.Interval;
import coldseam.envelope.House;
import coldseam.envelope.Site;
import coldseam.files.quantity.Phrase;
import coldseam.junctions.BridgeResult;
import coldseam.junctions.BridgeSetup;
import coldseam.junctions.DetailDoesNotFit;
import coldseam.junctions.detail.Detail;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
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

    /** What makes two places one sheet: the result (a detail and a setup), whether somebody chose it, what else could be. */
    private record Key(Detail detail, BridgeSetup setup, boolean chosen, ImmutableList<Detail> options) {}

    private final Site site;
    private final Merit merit;
    private final Answers<Question<S>, R> answers;

    /** What closes gaps is printed with its psi: solved as narrowly as what is built, once it is known which it is. */
    private final Answers<Question<S>, R> bests;

    private final Map<Key, BridgeSheet<R>> sheets = new LinkedHashMap<>();

    /**
     * Computes them.
     *
     * @param what they are, for the progress; its first letter begins the sheets' ids
     * @param computer throws {@link DetailDoesNotFit} where a detail does not
     * @param comparing computes, at a wider interval, what others are compared with
     */
    ComputedBridges(
            String what,
            House house,
            ImmutableList<PlannedBridge<S>> planned,
            BiFunction<Detail, S, R> computer,
            BiFunction<Detail, S, R> comparing,
            Progress progress) {
        this.site = house.site();
        this.merit = new Merit(house.limits(), house.site().dimensions());
        this.answers = Answers.compute(
                what,
                questions(planned),
                question -> first(question, question.compared() ? comparing : computer),
                progress);
        Map<Key, MutableList<PlannedBridge<S>>> groups = new LinkedHashMap<>();
        planned.forEach(each -> key(each)
                .ifPresent(key -> groups.computeIfAbsent(key, none -> Lists.mutable.empty())
                        .add(each)));
        ImmutableList<ImmutableList<PlannedBridge<S>>> places =
                Lists.immutable.ofAll(groups.values()).collect(MutableList::toImmutable);
        ImmutableList<PlannedBridge<S>> firsts = places.collect(ImmutableList::getFirst);
        ImmutableList<FramePlanes.Found<R>> inPlanes = FramePlanes.best(places.collect(this::choice), merit);
        ImmutableList<R> best = new GreaterLengths<S, R>(
                        merit,
                        greater -> Answers.compute(
                                what + ", lengths", greater, question -> first(question, comparing), progress))
                .of(firsts, inPlanes.collect(FramePlanes.Found::best));
        ImmutableList<Optional<Question<S>>> asked =
                firsts.zip(best).collect(pair -> best(pair.getOne(), pair.getTwo()));
        this.bests = Answers.compute(
                what + ", the best",
                asked.flatCollect(each -> each.stream().toList()),
                question -> first(question, computer),
                progress);
        String letter = what.substring(0, 1).toUpperCase(Locale.ROOT);
        groups.keySet().forEach(key -> {
            int number = sheets.size();
            sheets.put(
                    key,
                    sheet(
                            letter + (number + 1),
                            places.get(number),
                            asked.get(number).flatMap(bests::result),
                            inPlanes.get(number).elsewhere()));
        });
    }

    /** What is asked of some places, each once. */
    static <S extends BridgeSetup> ImmutableList<Question<S>> questions(ImmutableList<PlannedBridge<S>> planned) {
        return planned.flatCollect(each ->
                        each.comparisons().newWithAll(each.question().stream().toList()))
                .distinct();
    }

    /**
     * The result of the first of a question's details that fits; where others of its rank fit, too, that with the coldest surface.
     * Which of them is built nobody said, so that none may be taken for kinder. Where one is colder and another loses more, both are
     * far beyond any limit for heat, and it is the cold that rots and moulds.
     */
    static <S, R extends BridgeResult> R first(Question<S> question, BiFunction<Detail, S, R> computer) {
        MutableList<R> fit = Lists.mutable.empty();
        MutableList<Phrase> reasons = Lists.mutable.empty();
        for (Detail detail : question.details()) {
            if (fit.notEmpty() && fit.getFirst().detail().rank() != detail.rank()) {
                break;
            }
            try {
                fit.add(computer.apply(detail, question.setup()));
            } catch (DetailDoesNotFit misfit) {
                reasons.addAllIterable(misfit.reasons());
            }
        }
        if (fit.isEmpty()) {
            throw new DetailDoesNotFit(reasons.toImmutable());
        }
        return fit.minBy(BridgeResult::temperatureFactor);
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

    /** Why the detail chosen for a place does not fit, or none that might stand in; empty where one does. */
    ImmutableList<Phrase> misfits(PlannedBridge<S> planned) {
        return planned.setup().isPresent() && result(planned).isEmpty()
                ? planned.hindrances()
                        .collect(Phrase::of)
                        .newWithAll(planned.question().map(answers::reasons).orElse(Lists.immutable.empty()))
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
        return planned.question().flatMap(answers::result);
    }

    private Optional<Key> key(PlannedBridge<S> planned) {
        return result(planned)
                .map(found -> new Key(found.detail(), found.setup(), planned.chosen(), planned.options()));
    }

    private FramePlanes.Choice<R> choice(ImmutableList<PlannedBridge<S>> places) {
        PlannedBridge<S> first = places.getFirst();
        return new FramePlanes.Choice<>(
                result(first).orElseThrow(),
                first.chosen(),
                answers.results(first.comparisons()),
                places.sumOfDouble(PlannedBridge::size),
                places.flatCollect(place -> place.opening().stream().toList()).toImmutableSet());
    }

    /** The question of the best option of a place; none where what is there is the best. */
    private Optional<Question<S>> best(PlannedBridge<S> planned, R best) {
        return best.detail().equals(result(planned).orElseThrow().detail())
                ? Optional.empty()
                : Optional.of(planned.about(best.detail(), false));
    }

    private BridgeSheet<R> sheet(
            String id, ImmutableList<PlannedBridge<S>> places, Optional<R> best, OptionalDouble framesElsewhere) {
        PlannedBridge<S> first = places.getFirst();
        R result = result(first).orElseThrow();
        ImmutableList<R> narrow =
                Lists.immutable.of(result).newWithAll(best.stream().toList());
        ImmutableList<R> options = first.options()
                .flatCollect(detail -> narrow
                        .detectOptional(known -> known.detail().equals(detail))
                        .or(() -> answers.result(first.about(detail, true)))
                        .stream()
                        .toList());
        return new BridgeSheet<>(
                id,
                result,
                best,
                options,
                first.withheld(),
                places.collect(PlannedBridge::name),
                places.sumOfDouble(PlannedBridge::size),
                first.chosen(),
                Moisture.atDesign(site, result.temperatureFactor()),
                framesElsewhere);
    }
}
