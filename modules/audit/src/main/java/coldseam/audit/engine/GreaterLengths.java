package coldseam.audit.engine;

import coldseam.audit.engine.Merit.Score;
import coldseam.audit.engine.PlannedBridge.Question;
import coldseam.junctions.BridgeResult;
import coldseam.junctions.BridgeSetup;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.language.DetailParameter;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;
import org.eclipse.collections.impl.list.Interval;
import org.eclipse.collections.impl.tuple.Tuples;

/**
 * The best options with more of the lengths in them that insulate, where they miss a limit as their files have them: one length
 * after the other, then all at once, in steps of what their ranges leave. The least that mends most is taken. Where a detail does
 * not fit with all of them at their most, the greatest share of that with which it fits stands for the most. A length that a
 * threshold and the seam it stands on have in common, such as how far a slab's edge is set back, is then the greater in both.
 */
record GreaterLengths<S extends BridgeSetup, R extends BridgeResult>(
        Merit merit, Function<ImmutableList<Question<S>>, Answers<Question<S>, R>> answers) {

    /** In which a length goes to the end of its range. */
    private static final int STEPS = 3;

    /** Of what ranges leave, in which the greatest that fits is looked for; what does not fit is never solved. */
    private static final int SHARES = 12;

    /** m, to which lengths are set out on site; the latter where less than the third is left of a range. */
    private static final double LATTICE = 0.01;

    private static final double FINE_LATTICE = 0.005;

    private static final double LITTLE = 0.06;

    /** Of a lattice, below which a length lies on it. */
    private static final double SLACK = 1e-6;

    /**
     * What is tried.
     *
     * @param steps of all its lengths together
     */
    private record Try(Detail detail, int steps) {}

    /** What came of it. */
    private record Tried<R>(R result, int steps, Score score) {}

    /**
     * Some places of one sheet by their first, and what is best there.
     *
     * @param lengths that may be greater, each with the most that is tried
     */
    private record Place<S extends BridgeSetup, R extends BridgeResult>(
            PlannedBridge<S> first, R best, ImmutableList<DetailParameter> lengths) {

        static <S extends BridgeSetup, R extends BridgeResult> Place<S, R> of(PlannedBridge<S> first, R best) {
            return new Place<>(
                    first,
                    best,
                    best.detail().parameters().select(each -> each.insulates() && each.value() < each.most()));
        }

        Place<S, R> within(int shares) {
            return new Place<>(
                    first,
                    best,
                    lengths.collect(each -> GreaterLengths.within(each, shares))
                            .select(each -> each.value() < each.most()));
        }

        Question<S> question(Try greater) {
            return first.about(greater.detail(), true);
        }

        /** Whether anything can be had at all shows where all is at its most. */
        Try most() {
            return greater(lengths, STEPS);
        }

        ImmutableList<Try> tries() {
            return Interval.oneTo(STEPS)
                    .toImmutableList()
                    .flatCollect(steps -> lengths.collect(each -> greater(Lists.immutable.of(each), steps))
                            .newWith(greater(lengths, steps)));
        }

        private Try greater(ImmutableList<DetailParameter> lengths, int steps) {
            return new Try(
                    best.detail()
                            .with(lengths.toImmutableMap(DetailParameter::name, each -> greaterLength(each, steps))),
                    steps * lengths.size());
        }
    }

    /** m, so many steps on from its own; a range of less than two lattices leaves no room for steps. */
    static double greaterLength(DetailParameter length, int steps) {
        double left = length.most() - length.value();
        if (steps == STEPS || left < 2 * FINE_LATTICE) {
            return length.most();
        }
        double lattice = left < LITTLE ? FINE_LATTICE : LATTICE;
        return Math.min(length.most(), Math.rint((length.value() + left * steps / STEPS) / lattice) * lattice);
    }

    /** A length with so many shares of what its range leaves, on the lattice towards its own. */
    static DetailParameter within(DetailParameter length, int shares) {
        double left = length.most() - length.value();
        double lattice = left < LITTLE ? FINE_LATTICE : LATTICE;
        double most = shares == SHARES
                ? length.most()
                : Math.max(
                        length.value(),
                        Math.floor((length.value() + left * shares / SHARES) / lattice + SLACK) * lattice);
        return new DetailParameter(
                length.name(), length.value(), length.least(), most, length.says(), true, length.given());
    }

    /** The best of each place, with more in it where that mends what it misses. */
    ImmutableList<R> of(ImmutableList<PlannedBridge<S>> places, ImmutableList<R> bests) {
        ImmutableList<Place<S, R>> all = places.zip(bests).collect(pair -> Place.of(pair.getOne(), pair.getTwo()));
        // By the place itself: what is computed there is long to compare.
        Map<Place<S, R>, Place<S, R>> mended = new IdentityHashMap<>();
        ImmutableList<Place<S, R>> rest =
                all.select(place -> merit.score(place.best(), 1).flawed());
        for (int shares = SHARES; shares > 0; shares--) {
            int some = shares;
            ImmutableList<Place<S, R>> open =
                    rest.select(place -> place.within(some).lengths().notEmpty());
            Answers<Question<S>, R> most = answers.apply(
                    open.collect(place -> place.within(some)).collect(place -> place.question(place.most())));
            rest = open.reject(place -> {
                Place<S, R> within = place.within(some);
                Optional<R> result = most.result(within.question(within.most()));
                result.filter(found -> merit.score(found, 1).flaws(merit.score(place.best(), 1)) < 0)
                        .ifPresent(mends -> mended.put(place, within));
                return result.isPresent();
            });
        }
        Answers<Question<S>, R> tried = answers.apply(all.flatCollect(place -> mended.containsKey(place)
                ? mended.get(place).tries().collect(place::question)
                : Lists.immutable.empty()));
        return level(
                places,
                all.collect(place -> mended.containsKey(place) ? least(mended.get(place), tried) : place.best()));
    }

    /** The same, none with less of a length than what runs on into it; one that would then miss more, or does not fit, stays. */
    private ImmutableList<R> level(ImmutableList<PlannedBridge<S>> places, ImmutableList<R> bests) {
        ImmutableList<Question<S>> questions = places.zip(bests).collect(pair -> {
            ImmutableMap<String, Double> raised = raised(pair.getTwo(), bests);
            return pair.getOne().about(pair.getTwo().detail().with(raised), true);
        });
        Answers<Question<S>, R> levelled = answers.apply(questions
                .zip(bests)
                .reject(pair -> pair.getOne().details().contains(pair.getTwo().detail()))
                .collect(pair -> pair.getOne()));
        return questions
                .zip(bests)
                .collect(pair -> levelled.result(pair.getOne())
                        .filter(result -> merit.score(result, 1).flaws(merit.score(pair.getTwo(), 1)) <= 0)
                        .orElse(pair.getTwo()));
    }

    /** The lengths of one, by name, that are greater in another it runs on into; m. */
    private ImmutableMap<String, Double> raised(R one, ImmutableList<R> others) {
        ImmutableList<DetailParameter> theirs = others.select(other -> runsOn(one, other))
                .flatCollect(other -> other.detail().parameters());
        return one.detail()
                .parameters()
                .select(DetailParameter::insulates)
                .collect(length -> Tuples.pair(
                        length,
                        theirs.select(other -> isSame(length, other) && length.allows(other.value()))
                                .collectDouble(DetailParameter::value)
                                .maxIfEmpty(length.value())))
                .select(pair -> pair.getTwo() > pair.getOne().value() + SLACK)
                .toImmutableMap(pair -> pair.getOne().name(), pair -> pair.getTwo());
    }

    /** Whether one is a threshold and the other the seam on both sides of such a door: between the same build-ups. */
    private static boolean runsOn(BridgeResult one, BridgeResult other) {
        return one.setup() instanceof JunctionSetup here
                && other.setup() instanceof JunctionSetup there
                && here.kind().threshold() != there.kind().threshold()
                && here.assemblies().equals(there.assemblies());
    }

    /** Whether two details call a length the same and say the same of it. */
    private static boolean isSame(DetailParameter one, DetailParameter other) {
        return one.name().equals(other.name()) && one.says().equals(other.says());
    }

    /** The least of what mends most; the most of all is among it. */
    private R least(Place<S, R> place, Answers<Question<S>, R> tried) {
        return place.tries()
                .flatCollect(each -> tried.result(place.question(each)).stream()
                        .map(result -> new Tried<>(result, each.steps(), merit.score(result, 1)))
                        .toList())
                .min(Comparator.<Tried<R>, Score>comparing(Tried::score, Score::flaws)
                        .thenComparingInt(Tried::steps)
                        .thenComparingDouble(each -> each.score().loss()))
                .result();
    }
}
