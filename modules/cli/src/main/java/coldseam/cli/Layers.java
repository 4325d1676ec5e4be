package coldseam.cli;

import coldseam.audit.engine.HouseJunctions;
import coldseam.audit.house.HouseAudit;
import coldseam.envelope.Assembly;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Site;
import coldseam.files.Nearest;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.TypicalBuild;
import coldseam.junctions.catalogue.Catalogue;
import coldseam.junctions.catalogue.CatalogueFile;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;

/**
 * The layers between which options are looked at: a house's, named ones, or typical ones.
 *
 * @param catalogue with the house's own details, at its prices
 * @param assemblies that may be named
 * @param ofHouse the house's junctions; empty without a house or where build-ups are named
 * @param fromHouse whether a house was given
 * @param site of the house
 * @param first build-up asked for by name
 * @param second likewise
 * @param build whose junctions stand in where the house has none of a kind
 */
record Layers(
        Catalogue catalogue,
        ImmutableList<Assembly> assemblies,
        ImmutableList<HouseJunctions> ofHouse,
        boolean fromHouse,
        Optional<Site> site,
        Optional<Assembly> first,
        Optional<Assembly> second,
        TypicalBuild build) {

    /**
     * A junction to look at.
     *
     * @param setup what details are computed for
     * @param origin where it comes from, in words
     */
    record Place(JunctionSetup setup, String origin) {}

    /**
     * Finds what was asked for.
     *
     * @throws RefusedException where a name means no build-up
     */
    static Layers of(Optional<HouseAudit> house, Optional<String> first, Optional<String> second, TypicalBuild build) {
        ImmutableList<Assembly> known = house.map(
                        each -> each.house().assemblies().toList().toImmutable())
                .orElseGet(() -> Lists.immutable
                        .of(TypicalBuild.values())
                        .flatCollect(TypicalBuild::assemblies)
                        .distinct());
        MutableList<String> faults = Lists.mutable.empty();
        Optional<Assembly> one = first.flatMap(name -> named("--first", name, known, faults));
        Optional<Assembly> other = second.flatMap(name -> named("--second", name, known, faults));
        if (faults.notEmpty()) {
            throw new RefusedException(faults.toImmutable());
        }
        return new Layers(
                house.map(HouseAudit::catalogue).orElseGet(CatalogueFile::builtIn),
                known,
                house.map(each -> HouseJunctions.of(each.house(), each.shell())).orElse(Lists.immutable.empty()),
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
                    + Nearest.to(name, known.collect(Assembly::name))
                            .map(near -> "did you mean \"" + near + "\"?")
                            .orElse("run \"coldseam catalogue --assemblies\" for the build-ups there are"));
        }
        return found;
    }

    /** The junctions of a kind to look at; with a house and no named build-ups those it has, else one. */
    ImmutableList<Place> places(JunctionKind kind) {
        if (fromHouse && first.isEmpty() && second.isEmpty()) {
            return ofHouse.select(each -> each.setup().kind() == kind)
                    .collect(each -> new Place(each.setup(), edges(each.edges())));
        }
        JunctionSetup setup = build.setup(kind);
        Optional<Assembly> other = setup.second().isPresent() ? second.or(setup::second) : Optional.empty();
        return Lists.immutable.of(new Place(
                setup.between(first.orElse(setup.first()), other),
                first.isPresent() || second.isPresent() ? "as named" : "typical build-ups"));
    }

    /** What a sweep of a kind is made for: of junctions between the same build-ups, spaces and frames the first. */
    ImmutableList<Place> swept(JunctionKind kind) {
        return places(kind)
                .distinctBy(place -> Lists.immutable.of(
                        place.setup().first(),
                        place.setup().second(),
                        place.setup().firstExposure(),
                        place.setup().secondExposure(),
                        place.setup().opening()));
    }

    private static String edges(ImmutableList<String> names) {
        return names.size() == 1 ? names.getFirst() : names.getFirst() + " and " + (names.size() - 1) + " more";
    }

    /** The two build-ups in words. */
    static String words(JunctionSetup setup) {
        return setup.first().name()
                + setup.second().map(other -> " and " + other.name()).orElse("");
    }
}
