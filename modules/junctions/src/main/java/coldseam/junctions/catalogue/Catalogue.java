package coldseam.junctions.catalogue;

import coldseam.envelope.BridgeKind;
import coldseam.envelope.CornerKind;
import coldseam.envelope.House;
import coldseam.envelope.JunctionChoice;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.PointKind;
import coldseam.envelope.Prices;
import coldseam.junctions.detail.Cost;
import coldseam.junctions.detail.Detail;
import java.util.Comparator;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.set.ImmutableSet;

/**
 * The options for each kind of bridge. The file of a built-in one is read when it is first asked for: an audit needs those of
 * the kinds that its house has.
 */
public final class Catalogue {

    private final ImmutableList<CatalogueEntry> entries;

    /**
     * A catalogue of details at hand.
     *
     * @param details junctions first, by kind and from worst to best
     */
    public Catalogue(ImmutableList<Detail> details) {
        this(details.castToList().stream().flatMap(CatalogueEntry::of));
    }

    Catalogue(Stream<CatalogueEntry> entries) {
        this.entries = Lists.immutable.withAll(entries.toList());
    }

    /** All of them, each for each of its kinds: junctions first, by kind and from worst to best. */
    public ImmutableList<Detail> details() {
        return details(entry -> true);
    }

    /** Those that are asked for, whose files are read side by side on all cores. */
    private ImmutableList<Detail> details(Predicate<CatalogueEntry> asked) {
        return Lists.immutable.withAll(entries.castToList().parallelStream()
                .filter(asked)
                .map(CatalogueEntry::detail)
                .toList());
    }

    /** The options for junctions. */
    public ImmutableList<Detail> junctions() {
        return details(entry -> entry.kind() instanceof JunctionKind);
    }

    /** The options for points. */
    public ImmutableList<Detail> points() {
        return details(entry -> entry.kind() instanceof PointKind);
    }

    /** The options for corners. */
    public ImmutableList<Detail> corners() {
        return details(entry -> entry.kind() instanceof CornerKind);
    }

    /** The options of some kinds. */
    public ImmutableList<Detail> options(ImmutableSet<BridgeKind> kinds) {
        return details(entry -> kinds.contains(entry.kind()));
    }

    /** The options of a kind, from worst to best; empty where the catalogue has none. */
    public ImmutableList<Detail> options(BridgeKind kind) {
        return entries.select(entry -> entry.kind() == kind).collect(CatalogueEntry::detail);
    }

    /** The ids of all of them. */
    public ImmutableList<String> ids() {
        return entries.collect(CatalogueEntry::id).distinct();
    }

    /** The ids of the options for junctions, for points or for corners. */
    public ImmutableList<String> ids(Class<? extends BridgeKind> sort) {
        return entries.select(entry -> sort.isInstance(entry.kind()))
                .collect(CatalogueEntry::id)
                .distinct();
    }

    /** The parts of an old house that must come down for one or other of them, in alphabetical order. */
    public ImmutableList<String> partsTakenDown() {
        return entries.flatCollect(CatalogueEntry::takesDown).distinct().toImmutableSortedList();
    }

    /** The option with this id, for the first of its kinds in the catalogue's order. */
    public Optional<Detail> find(String id) {
        return entries.detectOptional(entry -> entry.id().equals(id)).map(CatalogueEntry::detail);
    }

    /** The option with this id, for a kind where it is for that. */
    public Optional<Detail> find(String id, BridgeKind kind) {
        return entries.detectOptional(entry -> entry.id().equals(id) && entry.kind() == kind)
                .map(CatalogueEntry::detail)
                .or(() -> find(id));
    }

    /** The same options at the prices of a house; one without a price keeps its file's, in the house's currency. */
    public Catalogue priced(Prices prices) {
        return new Catalogue(entries.castToList().stream()
                .map(entry -> entry.changed(detail -> {
                    Prices.OfDetail price = prices.details().get(detail.id());
                    return price == null
                            ? detail.cost()
                                    .map(own -> detail.at(own.in(prices.currency())))
                                    .orElse(detail)
                            : detail.at(Cost.perMetre(price.perMetre(), prices.currency(), price.source()));
                })));
    }

    /**
     * The same without the details that nothing could need: those of kinds that a house chooses one for wherever they are,
     * except those that it or somebody names, and those of corners.
     *
     * @param open kinds of which some bridge has no detail chosen
     */
    public Catalogue narrowed(House house, ImmutableSet<BridgeKind> open, ImmutableSet<String> named) {
        ImmutableSet<String> used = house.choices()
                .collect(JunctionChoice::detail)
                .newWithAll(house.points()
                        .flatCollect(points -> points.detail().stream().toList()))
                .toImmutableSet()
                .newWithAll(named);
        return new Catalogue(entries.castToList().stream()
                .filter(entry -> used.contains(entry.id())
                        || open.contains(entry.kind())
                        || entry.kind() instanceof CornerKind));
    }

    /** These and those of another that are not among them. */
    public Catalogue with(Catalogue other) {
        ImmutableSet<String> known = ids().toImmutableSet();
        return new Catalogue(Stream.concat(
                entries.castToList().stream(),
                other.entries.castToList().stream().filter(entry -> !known.contains(entry.id()))));
    }

    /** These and some at hand, in the order of a catalogue: by kind, junctions first, then from worst to best, then by id. */
    Catalogue withAll(Iterable<Detail> own) {
        return sorted(Stream.concat(
                entries.castToList().stream(),
                StreamSupport.stream(own.spliterator(), false).flatMap(CatalogueEntry::of)));
    }

    /** All of some, in the order of a catalogue. */
    static Catalogue sorted(Stream<CatalogueEntry> entries) {
        ImmutableList<BridgeKind> kinds = BridgeKind.every();
        return new Catalogue(
                entries.sorted(Comparator.<CatalogueEntry>comparingInt(entry -> kinds.indexOf(entry.kind()))
                        .thenComparing(CatalogueEntry::rank)
                        .thenComparing(CatalogueEntry::id)));
    }
}
