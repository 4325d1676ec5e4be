package coldseam.options;

import coldseam.audit.Audit;
import coldseam.audit.BridgeRow;
import coldseam.audit.BridgeSheet;
import coldseam.audit.BridgeSource;
import coldseam.audit.HeatLoss;
import coldseam.audit.JunctionRow;
import coldseam.audit.engine.Progress;
import coldseam.audit.house.HouseAudit;
import coldseam.conduction.Interval;
import coldseam.envelope.Assembly;
import coldseam.envelope.House;
import coldseam.envelope.JunctionChoice;
import coldseam.envelope.Opening;
import coldseam.envelope.Selector;
import coldseam.envelope.shell.Edge;
import coldseam.envelope.shell.Surface;
import coldseam.options.Renovation.Colder;
import coldseam.options.Renovation.Part;
import coldseam.options.Renovation.Stage;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.factory.Sets;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.set.ImmutableSet;

/**
 * Compares two houses, and builds the second out of the first, measure by measure.
 *
 * <p>A measure is a build-up that differs under its name, all windows and doors that differ, all points that differ, or the
 * details of seams beside which nothing else differs. A seam gets its new detail once all that differs beside it is built;
 * until then its old one stands, in the new build-up where that is there already: that is its temporary edge.
 */
public final class Stages {

    /** The measure of every window and door that differs. */
    public static final String OPENINGS = "windows and doors";

    /** The measure of every set of points that differs. */
    public static final String POINTS = "points";

    /** The measure of every detail that differs with nothing else beside it. */
    public static final String DETAILS = "details";

    /** fRsi is read to this; what falls by less is no colder. */
    private static final double READ_TO = 0.005;

    /** W/K; the heat-loss table's own rounding. */
    private static final double SHOWN = 0.0005;

    private final HouseAudit before;
    private final HouseAudit after;
    private final House first;
    private final House second;

    private Stages(HouseAudit before, HouseAudit after) {
        this.before = before.knowing(after);
        this.after = after;
        this.first = before.house();
        this.second = after.house();
    }

    /** Measures by which a house becomes another, in the second file's order; empty where their shapes differ. */
    public static ImmutableList<String> measures(HouseAudit before, HouseAudit after) {
        return new Stages(before, after).measures();
    }

    /**
     * Compares two houses.
     *
     * @param order of building: all of {@link #measures}, in any order
     * @param progress hears how many sections are solved
     * @throws coldseam.files.FileFaultException where a house in between has no shell
     */
    public static Renovation compare(
            HouseAudit before, HouseAudit after, ImmutableList<String> order, Progress progress) {
        return new Stages(before, after).compare(order, progress);
    }

    private ImmutableList<String> measures() {
        if (!first.body().equals(second.body()) || !first.seams().equals(second.seams())) {
            return Lists.immutable.empty();
        }
        MutableList<String> measures = Lists.mutable.empty();
        second.assemblies().keysView().toSortedList().forEach(name -> {
            if (differs(name)) {
                measures.add(name);
            }
        });
        if (!first.openings().equals(second.openings())) {
            measures.add(OPENINGS);
        }
        if (!first.points().equals(second.points())) {
            measures.add(POINTS);
        }
        if (before.shell()
                .edges()
                .anySatisfy(
                        edge -> beside(edge).isEmpty() && !choice(first, edge).equals(choice(second, edge)))) {
            measures.add(DETAILS);
        }
        return measures.toImmutable();
    }

    private boolean differs(String assembly) {
        Assembly old = first.assemblies().get(assembly);
        return old != null && !old.equals(second.assemblies().get(assembly));
    }

    /** What differs beside an edge. */
    private ImmutableList<String> beside(Edge edge) {
        MutableList<String> beside = Lists.mutable.empty();
        Lists.immutable
                .of(edge.first())
                .newWithAll(edge.second().stream().toList())
                .flatCollect(surface -> surface.assembly().stream().toList())
                .collect(Assembly::name)
                .select(this::differs)
                .forEach(beside::add);
        edge.opening()
                .filter(opening -> !opening(first, opening.name()).equals(opening(second, opening.name())))
                .ifPresent(opening -> beside.add(OPENINGS));
        return beside.distinct().toImmutable();
    }

    private static Optional<Opening> opening(House house, String name) {
        return house.openings().detectOptional(each -> each.name().equals(name));
    }

    private static Optional<JunctionChoice> choice(House house, Edge edge) {
        return house.choices()
                .detectOptional(choice -> edge.isMeantBy(choice.which()))
                .map(choice -> new JunctionChoice(
                        new Selector(Sets.immutable.empty(), Lists.immutable.of(edge.name())),
                        choice.detail(),
                        choice.parameters()));
    }

    private Renovation compare(ImmutableList<String> order, Progress progress) {
        MutableList<HouseAudit> houses = Lists.mutable.empty();
        for (int k = 1; k < order.size(); k++) {
            houses.add(stage(order.take(k).toSet().toImmutable()));
        }
        HouseAudit start = before.changed(first, Sets.immutable.empty());
        HouseAudit end = after.changed(second, Sets.immutable.empty());
        start.solve(HouseAudit.sections(Lists.mutable.of(start, end).withAll(houses)), progress);
        Audit was = start.computeSections();
        Audit becomes = end.computeSections();
        Interval whole = HeatSum.of(becomes).minus(HeatSum.of(was)).value();
        MutableList<Stage> stages = Lists.mutable.empty();
        Audit last = was;
        for (int k = 1; k <= order.size(); k++) {
            Audit now = k == order.size() ? becomes : houses.get(k - 1).computeSections();
            Interval more = HeatSum.of(now).minus(HeatSum.of(last)).value();
            stages.add(new Stage(
                    order.get(k - 1),
                    now,
                    more,
                    whole.middle() == 0 ? OptionalDouble.empty() : OptionalDouble.of(more.middle() / whole.middle()),
                    Changes.between(last, now),
                    open(order.take(k).toSet().toImmutable(), now),
                    colder(was, now)));
            last = now;
        }
        return new Renovation(
                was, becomes, whole, Changes.between(was, becomes), parts(was, becomes), stages.toImmutable());
    }

    /** The house with some of the measures built. */
    private HouseAudit stage(ImmutableSet<String> done) {
        House house = first.withAssemblies(first.assemblies()
                .collectValues((name, assembly) ->
                        done.contains(name) ? second.assemblies().get(name) : assembly));
        house = done.contains(OPENINGS) ? house.withOpenings(second.openings()) : house;
        house = done.contains(POINTS) ? house.withPoints(second.points()) : house;
        // The edges of this stage have the names of both houses' edges, since names come from surfaces and kinds.
        House shaped = house;
        HouseAudit bare = before.changed(shaped, Sets.immutable.empty());
        ImmutableList<JunctionChoice> choices = bare.shell()
                .edges()
                .flatCollect(edge -> choice(built(edge, done) ? second : first, edge).stream()
                        .toList());
        return before.changed(shaped.withChoices(choices), Sets.immutable.empty());
    }

    /** Whether an edge has its new detail: all that differs beside it is built. */
    private boolean built(Edge edge, ImmutableSet<String> done) {
        ImmutableList<String> beside = beside(edge);
        return beside.isEmpty() ? done.contains(DETAILS) : done.containsAll(beside.castToList());
    }

    /** Seams with something built beside them and something still to come. */
    private ImmutableList<BridgeRow> open(ImmutableSet<String> done, Audit now) {
        return now.junctions()
                .select(row -> {
                    ImmutableList<String> beside = beside(row.edge());
                    return beside.anySatisfy(done::contains) && !done.containsAll(beside.castToList());
                })
                .collect(row -> row);
    }

    private static ImmutableList<Colder> colder(Audit was, Audit now) {
        double need = now.mould()
                .monthly()
                .map(month -> month.critical().temperatureFactor())
                .map(month -> Math.max(month, now.mould().limit()))
                .orElse(now.mould().limit());
        Map<String, Double> found = new LinkedHashMap<>();
        was.junctions().forEach(row -> factor(row).ifPresent(factor -> found.put(row.name(), factor)));
        return now.junctions()
                .select(row -> found.containsKey(row.name())
                        && factor(row)
                                .filter(factor -> factor < found.get(row.name()) - READ_TO)
                                .isPresent())
                .collect(row ->
                        new Colder(row, found.get(row.name()), factor(row).orElseThrow(), need))
                .toSortedListBy(Colder::now)
                .toImmutable();
    }

    private static Optional<Double> factor(JunctionRow row) {
        return row.sheet().map(BridgeSheet::temperatureFactor);
    }

    /** Surfaces and openings by name, junctions by kind, points by set: those that change. */
    private static ImmutableList<Part> parts(Audit was, Audit becomes) {
        Map<String, HeatSum> old = sums(was);
        Map<String, HeatSum> fresh = sums(becomes);
        return Lists.immutable
                .withAll(old.keySet())
                .newWithAll(fresh.keySet())
                .distinct()
                .collect(name -> {
                    Optional<HeatSum> one = Optional.ofNullable(old.get(name));
                    Optional<HeatSum> two = Optional.ofNullable(fresh.get(name));
                    return new Part(
                            name,
                            one.map(HeatSum::value),
                            two.map(HeatSum::value),
                            two.orElse(HeatSum.NOTHING)
                                    .minus(one.orElse(HeatSum.NOTHING))
                                    .value());
                })
                .select(part -> part.more().lower() > SHOWN || part.more().upper() < -SHOWN);
    }

    private static Map<String, HeatSum> sums(Audit audit) {
        Map<String, HeatSum> sums = new LinkedHashMap<>();
        audit.heatLoss().lines().forEach(line -> {
            if (line.part() instanceof HeatLoss.Part.OfSurface of) {
                sums.put(name(of.surface()), HeatSum.exactly(line.loss().middle()));
            } else if (line.part() instanceof HeatLoss.Part.OfOpening of) {
                sums.put(of.opening().name(), HeatSum.exactly(line.loss().middle()));
            }
        });
        HeatSum.rows(audit)
                .forEach(row -> sums.merge(name(row), HeatSum.bridges(audit, Lists.immutable.of(row)), HeatSum::plus));
        // What has no value counts as nothing in the sum; a part that holds some is not told as a number.
        HeatSum.rows(audit)
                .select(row -> row.source() instanceof BridgeSource.None)
                .forEach(row -> sums.remove(name(row)));
        return sums;
    }

    private static String name(BridgeRow row) {
        return row instanceof JunctionRow ? row.kindLabel() : row.name();
    }

    private static String name(Surface surface) {
        return surface.name();
    }
}
