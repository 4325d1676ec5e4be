package coldseam.options;

import coldseam.audit.Audit;
import coldseam.audit.BridgeRow;
import coldseam.audit.HeatLoss;
import coldseam.audit.JunctionRow;
import coldseam.audit.PointRow;
import coldseam.audit.engine.Progress;
import coldseam.audit.engine.Unknown;
import coldseam.audit.house.HouseAudit;
import coldseam.conduction.Interval;
import coldseam.envelope.Assembly;
import coldseam.envelope.Exposure;
import coldseam.envelope.House;
import coldseam.envelope.JunctionChoice;
import coldseam.envelope.Opening;
import coldseam.envelope.OwnPsi;
import coldseam.envelope.Point3;
import coldseam.envelope.Retrofit;
import coldseam.envelope.Selector;
import coldseam.envelope.shell.Edge;
import coldseam.envelope.shell.Surface;
import coldseam.options.Renovation.Cold;
import coldseam.options.Renovation.Group;
import coldseam.options.Renovation.Part;
import coldseam.options.Renovation.Stage;
import coldseam.options.Renovation.Unlike;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.factory.Sets;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.map.ImmutableMap;
import org.eclipse.collections.api.set.ImmutableSet;

/**
 * Compares two houses, and builds the second out of the first, measure by measure.
 *
 * <p>A measure is a build-up that differs under its name, all windows and doors that differ, all points that differ, or the
 * details of seams beside which nothing else differs. A seam gets its new detail once all that differs beside it is built;
 * until then its old one stands, in the new build-up where that is there already: that is its temporary edge.
 */
public final class Stages {

    /** W/K; what changes by less is printed as nothing. */
    private static final double SHOWN = 0.005;

    private final HouseAudit before;
    private final HouseAudit after;
    private final HouseAudit named;
    private final House first;
    private final House second;

    private Stages(HouseAudit before, HouseAudit after) {
        this.named = after;
        this.after = after.apartFrom(before);
        this.before = before.knowing(this.after);
        this.first = before.house();
        this.second = this.after.house();
    }

    /** Measures by which a house becomes another, in the second file's order; empty where their shapes differ. */
    public static ImmutableList<String> measures(HouseAudit before, HouseAudit after) {
        return new Stages(before, after).measures();
    }

    /**
     * Compares two houses.
     *
     * @param asked order of building; {@link #measures} that it does not name come last, what it names beside them is idle
     * @param progress hears how many sections are solved
     * @throws coldseam.files.FileFaultException where a house in between has no shell
     */
    public static Renovation compare(
            HouseAudit before, HouseAudit after, ImmutableList<String> asked, Progress progress) {
        return new Stages(before, after).compare(asked, progress);
    }

    private ImmutableList<String> measures() {
        if (shapesDiffer()) {
            return Lists.immutable.empty();
        }
        MutableList<String> measures = Lists.mutable.empty();
        second.assemblies().keysView().toSortedList().forEach(name -> {
            if (differs(name)) {
                measures.add(name);
            }
        });
        if (!first.openings().equals(second.openings())) {
            measures.add(Retrofit.OPENINGS);
        }
        if (!first.points().equals(second.points())) {
            measures.add(Retrofit.POINTS);
        }
        if (before.shell().edges().anySatisfy(edge -> beside(edge).isEmpty() && !isBuiltAlike(edge))) {
            measures.add(Retrofit.DETAILS);
        }
        return measures.toImmutable();
    }

    private boolean shapesDiffer() {
        return !first.body().equals(second.body()) || !first.seams().equals(second.seams());
    }

    private boolean differs(String assembly) {
        Assembly old = first.assemblies().get(assembly);
        return old != null && !old.equals(second.assemblies().get(assembly));
    }

    /** What differs beside an edge. */
    private ImmutableList<String> beside(Edge edge) {
        boolean opening = edge.opening()
                .filter(each -> !opening(first, each.name()).equals(opening(second, each.name())))
                .isPresent();
        return edge.surfaces()
                .flatCollect(surface -> surface.assembly().stream().toList())
                .collect(Assembly::name)
                .select(this::differs)
                .newWithAll(opening ? Lists.immutable.of(Retrofit.OPENINGS) : Lists.immutable.empty())
                .distinct();
    }

    private static Optional<Opening> opening(House house, String name) {
        return house.openings().detectOptional(each -> each.name().equals(name));
    }

    private boolean isBuiltAlike(Edge edge) {
        return choice(first, edge).equals(choice(second, edge))
                && ownPsi(first, edge)
                        .map(OwnPsi::psi)
                        .equals(ownPsi(second, edge).map(OwnPsi::psi));
    }

    private static Optional<JunctionChoice> choice(House house, Edge edge) {
        return house.choices()
                .detectOptional(choice -> edge.isMeantBy(choice.which()))
                .map(choice -> new JunctionChoice(alone(edge), choice.detail(), choice.parameters()));
    }

    private static Optional<OwnPsi> ownPsi(House house, Edge edge) {
        return house.ownPsi()
                .detectOptional(own -> edge.isMeantBy(own.which()))
                .map(own -> new OwnPsi(alone(edge), own.psi(), own.source()));
    }

    private static Selector alone(Edge edge) {
        return new Selector(Sets.immutable.empty(), Lists.immutable.of(edge.name()));
    }

    private Renovation compare(ImmutableList<String> asked, Progress progress) {
        ImmutableList<String> measures = measures();
        ImmutableList<String> order =
                asked.select(measures::contains).newWithAll(measures).distinct();
        MutableList<HouseAudit> houses = Lists.mutable.of(before.changed(first, Sets.immutable.empty()));
        for (int k = 1; k < order.size(); k++) {
            houses.add(stage(order.take(k).toImmutableSet()));
        }
        houses.add(after.changed(second, Sets.immutable.empty()));
        HouseAudit start = houses.getFirst();
        start.solve(HouseAudit.sections(houses), progress);
        ImmutableList<Audit> audits =
                houses.collect(HouseAudit::computeSections).toImmutable();
        Audit was = audits.getFirst();
        Audit becomes = audits.getLast();
        Interval whole = more(was, becomes);
        Audit asFound = start.compute(progress);
        // By the names that its file has for its details, which those of corners name.
        Audit asBuilt = named.changed(named.house(), Sets.immutable.empty()).compute(progress);
        return new Renovation(
                asFound,
                asBuilt,
                whole,
                Changes.between(asFound, asBuilt),
                unlike(new Uneven(asFound, asBuilt)),
                asked.reject(measures::contains),
                parts(was, becomes),
                cold(was, was),
                order.collectWithIndex(
                        (measure, k) -> stage(measure, order.take(k + 1).toImmutableSet(), audits, k + 1, whole)));
    }

    private Stage stage(
            String measure, ImmutableSet<String> done, ImmutableList<Audit> audits, int number, Interval whole) {
        Audit now = audits.get(number);
        Interval more = more(audits.get(number - 1), now);
        return new Stage(
                measure,
                now,
                more,
                whole.middle() == 0 ? OptionalDouble.empty() : OptionalDouble.of(more.middle() / whole.middle()),
                Changes.between(audits.get(number - 1), now),
                open(done, now),
                openPoints(done, now),
                cold(audits.getFirst(), now),
                now.junctions().select(row -> row.sheet().isEmpty()));
    }

    private static Interval more(Audit before, Audit after) {
        return HeatSum.of(after).minus(HeatSum.of(before)).value();
    }

    /** Unheated spaces and parties that the house has to do with. */
    private static ImmutableSet<Exposure> spaces(HouseAudit house) {
        return house.shell()
                .surfaces()
                .collect(Surface::exposure)
                .select(each -> !each.neighbour().isEmpty())
                .toImmutableSet();
    }

    /** Its surfaces by their names, where they lie. */
    private static ImmutableMap<String, ImmutableList<Point3>> places(HouseAudit house) {
        return house.shell().surfaces().toMap(Surface::name, Surface::outline).toImmutable();
    }

    /** Whether what carries some surface that stays, or an opening of one size in it, is another, or gone, in the second house. */
    private boolean structureDiffers() {
        return second.retrofit()
                .filter(old -> after.shell()
                        .surfaces()
                        .select(surface -> surface.keepsStructureIn(old))
                        .anySatisfy(surface -> isGone(surface) || isUnderAnother(surface)))
                .isPresent();
    }

    private boolean isGone(Surface surface) {
        return surface.assembly()
                .flatMap(planned -> Optional.ofNullable(first.assemblies().get(planned.name()))
                        .filter(was -> was.structureGoneFrom(planned).notEmpty()))
                .isPresent();
    }

    /** Whether another lintel is said to be over one of its openings, which is no wider than before. */
    private boolean isUnderAnother(Surface surface) {
        return second.openings()
                .select(surface::holds)
                .anySatisfy(now -> first.openings()
                        .anySatisfy(was -> was.name().equals(now.name())
                                && was.width() == now.width()
                                && !was.lintel().equals(now.lintel())));
    }

    private ImmutableList<Unlike> unlike(Uneven uneven) {
        MutableList<Unlike> unlike = Lists.mutable.empty();
        ImmutableSet<Exposure> spaces = spaces(before);
        boolean beside = !spaces.equals(spaces(after));
        if (shapesDiffer()
                && !(beside
                        && first.seams().equals(second.seams())
                        && places(before).equals(places(after)))) {
            unlike.add(Unlike.SHAPE);
        }
        if (structureDiffers()) {
            unlike.add(Unlike.STRUCTURE);
        }
        if (beside) {
            unlike.add(Unlike.SPACES_BESIDE);
        }
        if (!first.site().equals(second.site())) {
            unlike.add(Unlike.SITE);
        }
        unlike.addAllIterable(uneven.unlike());
        if (!first.limits().equals(second.limits())) {
            unlike.add(Unlike.LIMITS);
        }
        if (!first.prices().heat().equals(second.prices().heat())
                || !first.prices().currency().equals(second.prices().currency())) {
            unlike.add(Unlike.PRICE);
        }
        return unlike.toImmutable();
    }

    /** The house with some of the measures built. */
    private HouseAudit stage(ImmutableSet<String> done) {
        House house = first.withAssemblies(first.assemblies()
                .collectValues((name, assembly) ->
                        done.contains(name) ? second.assemblies().get(name) : assembly));
        house = done.contains(Retrofit.OPENINGS) ? house.withOpenings(second.openings()) : house;
        house = done.contains(Retrofit.POINTS) ? house.withPoints(second.points()) : house;
        // The edges of this stage have the names of both houses' edges, since names come from surfaces and kinds.
        House shaped = house;
        HouseAudit bare = before.changed(shaped, Sets.immutable.empty());
        ImmutableList<Edge> edges = bare.shell().edges();
        ImmutableList<JunctionChoice> choices = edges.flatCollect(edge ->
                choice(built(edge, done) ? second : first, edge).stream().toList());
        ImmutableList<OwnPsi> ownPsi = edges.flatCollect(edge ->
                ownPsi(built(edge, done) ? second : first, edge).stream().toList());
        return before.changed(shaped.withChoices(choices).withOwnPsi(ownPsi), Sets.immutable.empty());
    }

    /** Whether an edge has its new detail: all that differs beside it is built. */
    private boolean built(Edge edge, ImmutableSet<String> done) {
        ImmutableList<String> beside = beside(edge);
        return beside.isEmpty() ? done.contains(Retrofit.DETAILS) : done.containsAll(beside.castToList());
    }

    /** Seams with something built beside them and something still to come. */
    private ImmutableList<JunctionRow> open(ImmutableSet<String> done, Audit now) {
        return now.junctions().select(row -> {
            ImmutableList<String> beside = beside(row.edge());
            return beside.anySatisfy(done::contains) && !done.containsAll(beside.castToList());
        });
    }

    /** Points in something built while they are still to come, or the other way round. */
    private ImmutableList<PointRow> openPoints(ImmutableSet<String> done, Audit now) {
        return now.points()
                .select(row -> !first.points()
                                .detectOptional(row.points()::equals)
                                .equals(second.points().detectOptional(row.points()::equals))
                        && row.surface()
                                .assembly()
                                .map(Assembly::name)
                                .filter(name -> differs(name) && done.contains(name) != done.contains(Retrofit.POINTS))
                                .isPresent());
    }

    private static ImmutableList<Cold> cold(Audit was, Audit now) {
        double need = now.mould().need();
        Map<String, OptionalDouble> found = new LinkedHashMap<>();
        was.junctions().forEach(row -> found.put(row.name(), factor(row)));
        return now.junctions()
                .select(row -> factor(row).isPresent())
                .collect(row -> new Cold(
                        row,
                        found.getOrDefault(row.name(), OptionalDouble.empty()),
                        factor(row).getAsDouble(),
                        need))
                .select(cold -> cold.mould() || cold.colder())
                .toImmutableSortedListBy(Cold::now);
    }

    private static OptionalDouble factor(JunctionRow row) {
        return row.sheet()
                .map(sheet -> OptionalDouble.of(sheet.temperatureFactor()))
                .orElse(OptionalDouble.empty());
    }

    /** What a part is called. */
    private record Name(Group group, String name) {}

    /** Surfaces and openings by name, junctions by kind, points by set: those that change. */
    private static ImmutableList<Part> parts(Audit was, Audit becomes) {
        Map<Name, HeatSum> old = sums(was);
        Map<Name, HeatSum> fresh = sums(becomes);
        return Lists.immutable
                .withAll(old.keySet())
                .newWithAll(fresh.keySet())
                .distinct()
                .toSortedListBy(Name::group)
                .collect(name -> {
                    Optional<HeatSum> one = Optional.ofNullable(old.get(name));
                    Optional<HeatSum> two = Optional.ofNullable(fresh.get(name));
                    return new Part(
                            name.group(),
                            name.name(),
                            one.map(HeatSum::value),
                            two.map(HeatSum::value),
                            two.orElse(HeatSum.NOTHING)
                                    .minus(one.orElse(HeatSum.NOTHING))
                                    .value());
                })
                .select(part -> part.more().lower() > SHOWN || part.more().upper() < -SHOWN)
                .toImmutable();
    }

    private static Map<Name, HeatSum> sums(Audit audit) {
        Map<Name, HeatSum> sums = new LinkedHashMap<>();
        audit.heatLoss().lines().forEach(line -> {
            HeatSum loss = HeatSum.exactly(line.loss().middle());
            if (line.part() instanceof HeatLoss.Part.OfSurface of) {
                sums.put(new Name(Group.SURFACES, of.surface().name()), loss);
            } else if (line.part() instanceof HeatLoss.Part.OfOpening of) {
                sums.put(new Name(Group.OPENINGS, of.opening().name()), loss);
            }
        });
        audit.bridges()
                .forEach(row -> sums.merge(name(row), HeatSum.bridges(audit, Lists.immutable.of(row)), HeatSum::plus));
        // What has no value counts as nothing in the sum; a part that holds some is not told as a number.
        Unknown.of(audit).bridges().forEach(row -> sums.remove(name(row)));
        return sums;
    }

    private static Name name(BridgeRow row) {
        return row instanceof JunctionRow
                ? new Name(Group.JUNCTIONS, row.kindLabel())
                : new Name(Group.POINTS, row.name());
    }
}
