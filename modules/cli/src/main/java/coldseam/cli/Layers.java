package coldseam.cli;

import coldseam.audit.engine.HouseJunctions;
import coldseam.audit.engine.HousePoints;
import coldseam.audit.house.HouseAudit;
import coldseam.envelope.Assembly;
import coldseam.envelope.BridgeKind;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.PointKind;
import coldseam.envelope.Site;
import coldseam.files.Nearest;
import coldseam.junctions.BridgeSetup;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.PointSetup;
import coldseam.junctions.TypicalBuild;
import coldseam.junctions.catalogue.Catalogue;
import coldseam.junctions.catalogue.CatalogueFile;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.section.Composer;
import coldseam.report.pages.DetailSheet;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.factory.Maps;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.map.ImmutableMap;

/**
 * The layers between which, or through which, options are looked at: a house's, named ones, or typical ones.
 *
 * @param catalogue with the house's own details, at its prices
 * @param assemblies that may be named
 * @param junctions the house's; empty without a house
 * @param points the house's sets of points; empty without a house
 * @param fromHouse whether a house was given
 * @param first build-up asked for by name
 * @param second likewise
 * @param build whose junctions stand in where the house has none of a kind
 */
record Layers(
        Catalogue catalogue,
        ImmutableList<Assembly> assemblies,
        ImmutableList<HouseJunctions> junctions,
        ImmutableList<HousePoints> points,
        boolean fromHouse,
        Optional<Site> site,
        Optional<Assembly> first,
        Optional<Assembly> second,
        TypicalBuild build) {

    /**
     * A junction, or a surface, to look at.
     *
     * @param setup what details are computed for
     * @param chosen details that the house chooses there, with the lengths it gives them
     * @param parameters m, that the house gives whatever stands there
     * @param origin where it comes from, in words
     */
    record Place<S extends BridgeSetup>(
            S setup, ImmutableList<Detail> chosen, ImmutableMap<String, Double> parameters, String origin) {

        Place(S setup, String origin) {
            this(setup, Lists.immutable.empty(), Maps.immutable.empty(), origin);
        }

        /** A detail as the house would build it there: with those of its lengths that it has too and allows. */
        Detail laid(Detail detail) {
            return chosen.detectOptional(each -> each.id().equals(detail.id()))
                    .orElseGet(() -> detail.withAllowed(parameters));
        }

        /** Its build-ups in words. */
        String words() {
            return DetailSheet.layers(setup);
        }
    }

    /**
     * Finds what was asked for.
     *
     * @throws RefusedException where a name means no build-up
     */
    static Layers of(Optional<HouseAudit> house, Optional<String> first, Optional<String> second, TypicalBuild build) {
        ImmutableList<Assembly> known = house.map(
                        each -> each.house().assemblies().toImmutableList())
                .orElseGet(() -> Lists.immutable
                        .of(TypicalBuild.values())
                        .flatCollect(TypicalBuild::assemblies)
                        .distinct());
        MutableList<String> faults = Lists.mutable.empty();
        Optional<Assembly> one = first.flatMap(name -> named("--first", name, known, faults));
        Optional<Assembly> other = second.flatMap(name -> named("--second", name, known, faults));
        RefusedException.throwIfAny(faults);
        return new Layers(
                house.map(HouseAudit::catalogue).orElseGet(CatalogueFile::builtIn),
                known,
                house.map(each -> HouseJunctions.of(each.house(), each.shell(), each.catalogue()))
                        .orElse(Lists.immutable.empty()),
                house.map(each -> HousePoints.of(each.house(), each.shell())).orElse(Lists.immutable.empty()),
                house.isPresent(),
                house.map(each -> each.house().site()),
                one,
                other,
                build);
    }

    private static Optional<Assembly> named(
            String option, String name, ImmutableList<Assembly> known, MutableList<String> faults) {
        Optional<Assembly> found = known.detectOptional(each -> each.name().equals(name));
        if (found.isEmpty()) {
            faults.add(option + ": got \"" + name + "\"; "
                    + Nearest.meant(name, known.collect(Assembly::name))
                            .orElse("run \"coldseam catalogue --assemblies\" for the build-ups there are"));
        }
        return found;
    }

    /** Whether neither a house nor a build-up was named. */
    boolean typical() {
        return !fromHouse && first.isEmpty() && second.isEmpty();
    }

    /** What of a kind there is to look at: with a house what it has, between named build-ups where any are; else one. */
    ImmutableList<? extends Place<?>> places(BridgeKind kind) {
        return kind instanceof PointKind point ? surfaces(point) : junctions((JunctionKind) kind);
    }

    /** The options of a kind that are meant for what is at a place: of typical build-ups those that are drawn for them. */
    ImmutableList<Detail> options(BridgeKind kind, BridgeSetup there) {
        return catalogue.options(kind).select(detail -> isFor(detail, there));
    }

    private boolean isFor(Detail detail, BridgeSetup there) {
        return !(there instanceof JunctionSetup junction)
                || (typical() ? build.setup(detail).equals(junction) : Composer.isFor(detail, junction));
    }

    /** Where a detail is to be looked at: of typical build-ups those it is drawn for, else all that it is meant for, or would refuse. */
    ImmutableList<? extends Place<?>> places(Detail detail) {
        if (typical() && detail.kind() instanceof JunctionKind) {
            return Lists.immutable.of(new Place<>(build.setup(detail), "typical build-ups"));
        }
        ImmutableList<? extends Place<?>> all = places(detail.kind());
        ImmutableList<? extends Place<?>> meant = all.select(place -> isFor(detail, place.setup()));
        return meant.isEmpty() ? all : meant;
    }

    private ImmutableList<Place<JunctionSetup>> junctions(JunctionKind kind) {
        ImmutableList<HouseJunctions> there = junctions
                .select(each -> each.setup().kind() == kind)
                .select(each ->
                        first.isEmpty() || first.get().equals(each.setup().first()))
                .select(each -> second.isEmpty() || second.equals(each.setup().second()));
        if (there.notEmpty() || fromHouse && first.isEmpty() && second.isEmpty()) {
            // Where the house has a seam between them, how they stand there counts, and the ground it lies on.
            return there.collect(
                    each -> new Place<>(each.setup(), each.chosen(), Maps.immutable.empty(), edges(each.edges())));
        }
        if (typical()) {
            return build.setups(kind, catalogue.options(kind))
                    .collect(setup -> new Place<>(setup, "typical build-ups"));
        }
        JunctionSetup setup = build.setup(kind);
        Optional<Assembly> other = setup.second().isPresent() ? second.or(setup::second) : Optional.empty();
        return Lists.immutable.of(new Place<>(setup.between(first.orElse(setup.first()), other), "as named"));
    }

    private ImmutableList<Place<PointSetup>> surfaces(PointKind kind) {
        if (first.isPresent()) {
            return Lists.immutable.of(new Place<>(build.setup(kind, first.get()), "as named"));
        }
        if (fromHouse) {
            return points.select(set -> set.setup().isPresent() && set.kind(catalogue) == kind)
                    .collect(set -> new Place<>(
                            set.setup().orElseThrow(),
                            Lists.immutable.empty(),
                            set.points().parameters(),
                            set.points().name() + ", " + set.surface().name()));
        }
        return Lists.immutable.of(new Place<>(build.setup(kind), "typical build-up"));
    }

    /**
     * What a sweep of a kind is made for: of junctions between the same build-ups, spaces and frames, with one step, the first; of
     * typical ones at each angle that a detail is drawn for.
     */
    ImmutableList<Place<JunctionSetup>> swept(JunctionKind kind) {
        return junctions(kind)
                .distinctBy(place -> Lists.immutable.of(
                        place.setup().first(),
                        place.setup().second(),
                        place.setup().innerStep(),
                        place.setup().firstExposure(),
                        place.setup().secondExposure(),
                        place.setup().opening(),
                        fromHouse() ? 0.0 : place.setup().angle()));
    }

    private static String edges(ImmutableList<String> names) {
        return names.size() == 1 ? names.getFirst() : names.getFirst() + " and " + (names.size() - 1) + " more";
    }
}
