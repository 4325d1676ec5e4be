package coldseam.audit.engine;

import coldseam.assemblies.moisture.SurfaceHumidity;
import coldseam.audit.BridgeSource;
import coldseam.audit.PointRow;
import coldseam.audit.PointSheet;
import coldseam.conduction.Interval;
import coldseam.envelope.House;
import coldseam.envelope.PointKind;
import coldseam.junctions.BridgeComputer;
import coldseam.junctions.PointResult;
import coldseam.junctions.PointSetup;
import coldseam.junctions.catalogue.Catalogue;
import coldseam.junctions.detail.Detail;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;

/**
 * The points of a house, computed: a sheet for each different one and a row for each set.
 *
 * @param sheets in the order of their first set
 * @param rows in the house file's order
 */
record ComputedPoints(ImmutableList<PointSheet> sheets, ImmutableList<PointRow> rows) {

    /** A detail for a setup: what is computed once, however many sets ask. */
    private record Question(Detail detail, PointSetup setup) {}

    /** What makes two sets one sheet. */
    private record Key(Detail detail, PointSetup setup, boolean chosen) {}

    /** Computes every set, with its kind's other options beside it. */
    static final class Run {
        private final House house;
        private final Catalogue catalogue;
        private final BridgeComputer computer;
        private Answers<Question, PointResult> answers = Answers.none();

        Run(House house, Catalogue catalogue, BridgeComputer computer) {
            this.house = house;
            this.catalogue = catalogue;
            this.computer = computer;
        }

        ComputedPoints compute(ImmutableList<HousePoints> sets, Progress progress) {
            answers = Answers.compute(
                    "points",
                    sets.flatCollect(this::allQuestions),
                    question -> computer.compute(question.detail(), question.setup()),
                    progress);
            Map<Key, MutableList<HousePoints>> groups = new LinkedHashMap<>();
            for (HousePoints set : sets) {
                key(set).ifPresent(key -> groups.computeIfAbsent(key, none -> Lists.mutable.empty())
                        .add(set));
            }
            Map<Key, PointSheet> sheets = new LinkedHashMap<>();
            groups.forEach((key, group) -> sheets.put(key, sheet("P" + (sheets.size() + 1), group)));
            return new ComputedPoints(
                    Lists.immutable.ofAll(sheets.values()), sets.collect(set -> row(set, key(set).map(sheets::get))));
        }

        private Optional<Key> key(HousePoints set) {
            return result(set).map(found -> new Key(found.detail(), found.setup(), chosen(set)));
        }

        private ImmutableList<Question> allQuestions(HousePoints set) {
            return questions(set).newWithAll(options(set));
        }

        /** The kind's options, with those of the set's lengths that they have too and allow. */
        private ImmutableList<Question> options(HousePoints set) {
            if (set.setup().isEmpty()) {
                return Lists.immutable.empty();
            }
            return catalogue
                    .options(kind(set))
                    .collect(detail -> new Question(
                            detail.withAllowed(set.points().parameters()),
                            set.setup().get()));
        }

        private static boolean chosen(HousePoints set) {
            return set.points().detail().isPresent();
        }

        private PointKind kind(HousePoints set) {
            return set.points()
                    .kind()
                    .orElseGet(() -> catalogue
                            .find(set.points().detail().orElseThrow())
                            .orElseThrow()
                            .point());
        }

        /** The chosen detail alone, or else all of the kind, from the worst on, of which the first that fits stands in. */
        private ImmutableList<Question> questions(HousePoints set) {
            if (set.setup().isEmpty()) {
                return Lists.immutable.empty();
            }
            return set.points()
                    .detail()
                    .map(id -> Lists.immutable.of(new Question(
                            catalogue.find(id).orElseThrow().with(set.points().parameters()),
                            set.setup().get())))
                    .orElseGet(() -> options(set));
        }

        private Optional<PointResult> result(HousePoints set) {
            return answers.results(questions(set)).getFirstOptional();
        }

        private ImmutableList<String> reasons(HousePoints set) {
            return answers.reasons(questions(set));
        }

        private PointRow row(HousePoints set, Optional<PointSheet> sheet) {
            double factor = set.setup()
                    .map(each -> each.exposure().factor())
                    .orElse(set.surface().exposure().factor());
            return new PointRow(
                    set.points(),
                    kind(set),
                    set.surface(),
                    set.number(),
                    sheet,
                    sheet.map(found -> found.result().chi()).orElse(Interval.of(0)),
                    factor,
                    source(set, sheet.isPresent()),
                    sheet.isEmpty() && chosen(set) ? reasons(set) : Lists.immutable.empty());
        }

        private static BridgeSource source(HousePoints set, boolean computed) {
            if (computed) {
                return chosen(set) ? new BridgeSource.Computed() : new BridgeSource.StandIn();
            }
            return new BridgeSource.None(
                    set.setup().isEmpty()
                            ? BridgeSource.Reason.NO_ASSEMBLY
                            : chosen(set) ? BridgeSource.Reason.CHOSEN_DOES_NOT_FIT : BridgeSource.Reason.NONE_FITS);
        }

        private PointSheet sheet(String id, MutableList<HousePoints> sets) {
            PointResult result = result(sets.getFirst()).orElseThrow();
            double indoors = house.site().indoorTemperature();
            double outdoors = house.site().outdoorTemperature();
            SurfaceHumidity humidity = SurfaceHumidity.of(Math.min(1, result.temperatureFactor()), indoors, outdoors);
            return new PointSheet(
                    id,
                    result,
                    best(sets.getFirst())
                            .filter(best ->
                                    !best.detail().id().equals(result.detail().id())),
                    sets.collect(set -> set.points().name()).toImmutable(),
                    (int) sets.sumOfInt(HousePoints::number),
                    chosen(sets.getFirst()),
                    Math.min(1, humidity.humidityAtDewPoint()),
                    Math.min(1, humidity.humidityAtMouldLimit()));
        }

        /** The option of the kind with the least chi on this surface. */
        private Optional<PointResult> best(HousePoints set) {
            return answers.results(options(set).newWithAll(questions(set)))
                    .minByOptional(result -> result.chi().middle());
        }
    }
}
