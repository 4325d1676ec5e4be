package coldseam.audit.engine;

import coldseam.audit.BridgeSheet;
import coldseam.audit.JunctionRow;
import coldseam.audit.PairRow;
import coldseam.audit.PairSheet;
import coldseam.audit.Touching;
import coldseam.audit.Touching.Pair;
import coldseam.conduction.Interval;
import coldseam.envelope.House;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.KindForm;
import coldseam.envelope.Point3;
import coldseam.envelope.Seam;
import coldseam.envelope.Vectors;
import coldseam.envelope.shell.Edge;
import coldseam.envelope.shell.Shell;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.kind.Chart;
import coldseam.junctions.pair.PairAnswer;
import coldseam.junctions.pair.PairComputing;
import coldseam.junctions.pair.PairObstacle;
import coldseam.junctions.pair.PairResult;
import coldseam.junctions.pair.PairSetup;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.set.ImmutableSet;
import org.eclipse.collections.impl.factory.Lists;

/**
 * Seams of a house that touch, each two of them computed in one section where they can be: a sheet for each different pair and a
 * row for each.
 *
 * @param sheets in the order of their first pair
 * @param rows in the surfaces' order
 */
record ComputedPairs(ImmutableList<PairSheet> sheets, ImmutableList<PairRow> rows) {

    /** m beside an edge, where it is looked whether the surface is there. */
    private static final double HAIR = 1e-3;

    /** m, how far a door's threshold may lie from the seam that it stands on. */
    private static final double A_FLOOR = 0.5;

    /** Cosine of an angle from which on two edges are parallel. */
    private static final double PARALLEL = 0.999;

    /** Which of two ends is asked about first, so that a pair is the same from either side. */
    private static final Comparator<PairSetup.End> ORDER = Comparator.comparing(
                    (PairSetup.End end) -> end.setup().kind().label())
            .thenComparing(end -> end.detail().id())
            .thenComparing(PairSetup.End::cut);

    /** What makes two pairs one sheet. */
    private record Key(PairSetup setup, boolean chosen) {}

    /**
     * A pair with what is to be computed for it, or why nothing is.
     *
     * @param turned whether that has the second seam first
     */
    private record Planned(
            Touching on, Pair pair, boolean turned, Optional<PairSetup> setup, Optional<PairObstacle> obstacle) {

        static Planned not(Touching on, Pair pair, PairObstacle obstacle) {
            return new Planned(on, pair, false, Optional.empty(), Optional.of(obstacle));
        }

        boolean chosen() {
            return pair.one().source().known() && pair.other().source().known();
        }
    }

    /**
     * Computes every pair that can be one section. What the house file lists has a length on its surface and no place: that it
     * lies clear of the others is an assumption, and no pair is made of where it happens to be drawn.
     *
     * @param computing empty where nobody asks for it
     */
    static ComputedPairs of(
            House house,
            Shell shell,
            ImmutableList<JunctionRow> junctions,
            Optional<PairComputing> computing,
            Progress progress) {
        ImmutableSet<String> listed = house.seams().collect(Seam::name).toImmutableSet();
        ImmutableList<Touching> touching = Touching.of(
                shell, junctions.reject(row -> listed.contains(row.edge().name())));
        ImmutableList<Pair> all = touching.flatCollect(Touching::pairs);
        ImmutableList<Planned> planned = touching.flatCollect(each -> each.pairs()
                .collect(pair -> computing.isPresent()
                        ? new Plan(shell, each, pair, all).planned()
                        : Planned.not(each, pair, PairObstacle.NOT_ASKED)));
        Answers<PairSetup, PairAnswer> answers = computing
                .map(each -> Answers.compute(
                        "pairs of seams",
                        planned.flatCollect(one -> one.setup().stream().toList()),
                        each::compute,
                        progress))
                .orElseGet(Answers::none);
        Map<Key, PairSheet> sheets = new LinkedHashMap<>();
        for (Planned each : planned) {
            each.setup()
                    .flatMap(answers::result)
                    .flatMap(PairAnswer::result)
                    .ifPresent(result -> sheets.computeIfAbsent(
                            new Key(result.setup(), each.chosen()),
                            key -> sheet("T" + (sheets.size() + 1), house, result, each, planned)));
        }
        return new ComputedPairs(
                Lists.immutable.ofAll(sheets.values()), planned.collect(each -> row(each, answers, sheets)));
    }

    private static PairRow row(Planned planned, Answers<PairSetup, PairAnswer> answers, Map<Key, PairSheet> sheets) {
        Optional<PairAnswer> answer = planned.setup().flatMap(answers::result);
        return new PairRow(
                planned.on().surface(),
                planned.on().decay(),
                planned.pair(),
                planned.setup().map(setup -> sheets.get(new Key(setup, planned.chosen()))),
                planned.obstacle().or(() -> answer.flatMap(PairAnswer::obstacle)),
                answer.map(PairAnswer::lacking).orElse(0.0));
    }

    private static PairSheet sheet(
            String id, House house, PairResult result, Planned first, ImmutableList<Planned> all) {
        ImmutableList<Pair> pairs = all.select(
                        each -> each.setup().equals(first.setup()) && each.chosen() == first.chosen())
                .collect(Planned::pair);
        boolean turned = first.turned();
        BridgeSheet<JunctionResult> one =
                sheet(turned ? first.pair().other() : first.pair().one());
        BridgeSheet<JunctionResult> other =
                sheet(turned ? first.pair().one() : first.pair().other());
        Interval interaction = result.interaction(one.result(), other.result());
        return new PairSheet(
                id,
                result,
                one,
                other,
                interaction,
                pairs.sumOfDouble(Pair::length),
                pairs.collect(pair -> pair.one().name() + " and " + pair.other().name()),
                first.chosen(),
                Moisture.atDesign(house.site(), result.temperatureFactor()));
    }

    private static BridgeSheet<JunctionResult> sheet(JunctionRow row) {
        return row.sheet().orElseThrow();
    }

    /** What is to be asked of one pair. */
    private record Plan(Shell shell, Touching on, Pair pair, ImmutableList<Pair> all) {

        Planned planned() {
            Optional<PairObstacle> obstacle = obstacle();
            if (obstacle.isPresent()) {
                return Planned.not(on, pair, obstacle.get());
            }
            PairSetup.End first = end(pair.one(), towards());
            PairSetup.End second = end(pair.other(), Vectors.times(towards(), -1));
            boolean turned = ORDER.compare(first, second) > 0;
            return new Planned(
                    on,
                    pair,
                    turned,
                    Optional.of(new PairSetup(
                            turned ? second : first, turned ? first : second, JunctionPlan.rounded(distance()))),
                    Optional.empty());
        }

        private Optional<PairObstacle> obstacle() {
            if (!pair.parallel()) {
                return Optional.of(PairObstacle.ASLANT);
            }
            if (unplaced(one()) || unplaced(other())) {
                return Optional.of(PairObstacle.PLACE);
            }
            if (!(on.decay() > 0)) {
                return Optional.of(PairObstacle.GROUND);
            }
            if (all.anySatisfy(this::isThird)) {
                return Optional.of(PairObstacle.THREE);
            }
            if (Touching.clear(pair, on.surface()) < Touching.CLOSE) {
                return Optional.of(PairObstacle.NARROW);
            }
            if (!goesOn(one(), towards()) || !goesOn(other(), Vectors.times(towards(), -1))) {
                return Optional.of(PairObstacle.NOT_BETWEEN);
            }
            boolean door = shell.edges()
                    .anySatisfy(edge -> edge.kind().threshold() && (standsOn(edge, one()) || standsOn(edge, other())));
            return door ? Optional.of(PairObstacle.THRESHOLD) : Optional.empty();
        }

        /** Whether a seam is an edge that one which the file lists is taken out of. */
        private boolean unplaced(Edge edge) {
            KindForm form = edge.kind().form();
            boolean steps = edge.angle() == Vectors.STRAIGHT && Math.abs(edge.firstSetBack()) > HAIR;
            return form.second() == KindForm.Second.THING
                            && edge.upperStorey().isEmpty()
                            && edge.kind() != JunctionKind.LIGHT_WELL
                    || form.second() == KindForm.Second.SURFACE && steps && !form.floorLines();
        }

        /** m between the lines from which both sections measure: of a storey's floor its upper face. */
        private double distance() {
            double up = towards().z();
            return pair.distance() - up * Touching.floorAbove(one()) + up * Touching.floorAbove(other());
        }

        /** The way from the first seam to the second, across both. */
        private Point3 towards() {
            Point3 between = Vectors.minus(other().from(), one().from());
            return Vectors.unit(Vectors.minus(between, Vectors.times(along(), Vectors.dot(between, along()))));
        }

        private Edge one() {
            return pair.one().edge();
        }

        private Edge other() {
            return pair.other().edge();
        }

        private Point3 along() {
            return direction(one());
        }

        /** From where to where on the first seam's line an edge beside it runs. */
        private double[] range(Edge edge) {
            double a = Vectors.dot(along(), Vectors.minus(edge.from(), one().from()));
            double b = Vectors.dot(along(), Vectors.minus(edge.to(), one().from()));
            return new double[] {Math.min(a, b), Math.max(a, b)};
        }

        private double[] shared() {
            double[] a = range(one());
            double[] b = range(other());
            return new double[] {Math.max(a[0], b[0]), Math.min(a[1], b[1])};
        }

        /** m that an edge shares of the place where the two run beside each other. */
        private double shared(Edge edge) {
            double[] here = shared();
            double[] there = range(edge);
            return Math.min(here[1], there[1]) - Math.max(here[0], there[0]);
        }

        /** Whether another pair has one of the two seams, at the same place along it. */
        private boolean isThird(Pair another) {
            if (another == pair || !another.parallel()) {
                return false;
            }
            ImmutableList<String> mine = Lists.immutable.of(one().name(), other().name());
            boolean first = mine.contains(another.one().name());
            boolean second = mine.contains(another.other().name());
            return first != second && shared((first ? another.other() : another.one()).edge()) > Touching.BESIDE;
        }

        /** Whether a door's threshold stands on a seam where the two run beside each other. */
        private boolean standsOn(Edge threshold, Edge seam) {
            if (seam.opening().isPresent() || Math.abs(Vectors.dot(direction(threshold), along())) < PARALLEL) {
                return false;
            }
            Point3 between = Vectors.minus(threshold.from(), seam.from());
            double apart =
                    Vectors.length(Vectors.minus(between, Vectors.times(along(), Vectors.dot(between, along()))));
            return apart < A_FLOOR && shared(threshold) > Touching.BESIDE;
        }

        /** Whether the surface goes on from an edge that way: not the opening of which it is a side, nor what lies past its rim. */
        private boolean goesOn(Edge edge, Point3 way) {
            double[] here = shared();
            Point3 middle = Vectors.plus(
                    Vectors.plus(one().from(), Vectors.times(along(), (here[0] + here[1]) / 2)),
                    edge == one() ? Vectors.ZERO : Vectors.times(towards(), pair.distance()));
            if (edge.opening().isPresent()) {
                ImmutableList<Point3> ends = shell.edges()
                        .select(each -> each.opening().equals(edge.opening()))
                        .flatCollect(each -> Lists.immutable.of(each.from(), each.to()));
                return Vectors.dot(Vectors.minus(Vectors.mean(ends), middle), way) < 0;
            }
            return on.surface().covers(Vectors.plus(middle, Vectors.times(way, HAIR)));
        }

        private PairSetup.End end(JunctionRow row, Point3 way) {
            JunctionResult result = sheet(row).result();
            return new PairSetup.End(result.detail(), result.setup(), cut(row.edge(), way));
        }

        private Chart.Cut cut(Edge edge, Point3 way) {
            if (edge.kind().form().second() == KindForm.Second.THING) {
                if (edge.kind() == JunctionKind.LIGHT_WELL) {
                    // Its far face looks to the light, round which its edges run counterclockwise, seen from outdoors.
                    Point3 light = Vectors.cross(on.surface().normal(), direction(edge));
                    return Vectors.dot(way, light) > 0 ? Chart.Cut.FIRST_BEYOND : Chart.Cut.FIRST_AWAY;
                }
                // Its page shows the first band below.
                return way.z() < 0 ? Chart.Cut.FIRST_AWAY : Chart.Cut.FIRST_BEYOND;
            }
            return edge.first().name().equals(on.surface().name()) ? Chart.Cut.FIRST_AWAY : Chart.Cut.SECOND_AWAY;
        }
    }

    private static Point3 direction(Edge edge) {
        return Vectors.unit(Vectors.minus(edge.to(), edge.from()));
    }
}
