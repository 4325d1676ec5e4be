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
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.set.ImmutableSet;

/**
 * The options for each kind of bridge.
 *
 * @param details all of them, junctions first, by kind and from worst to best
 */
public record Catalogue(ImmutableList<Detail> details) {

    /** The options for junctions. */
    public ImmutableList<Detail> junctions() {
        return details.select(detail -> detail.kind() instanceof JunctionKind);
    }

    /** The options for points. */
    public ImmutableList<Detail> points() {
        return details.select(detail -> detail.kind() instanceof PointKind);
    }

    /** The options for corners. */
    public ImmutableList<Detail> corners() {
        return details.select(detail -> detail.kind() instanceof CornerKind);
    }

    /** The options of a kind, from worst to best; empty where the catalogue has none. */
    public ImmutableList<Detail> options(BridgeKind kind) {
        return details.select(detail -> detail.kind() == kind);
    }

    /** The option with this id. */
    public Optional<Detail> find(String id) {
        return details.detectOptional(detail -> detail.id().equals(id));
    }

    /** The same options at the prices of a house; one without a price keeps its file's, in the house's currency. */
    public Catalogue priced(Prices prices) {
        return new Catalogue(details.collect(detail -> {
            Prices.OfDetail price = prices.details().get(detail.id());
            return price == null
                    ? detail.cost()
                            .map(own -> detail.at(own.in(prices.currency())))
                            .orElse(detail)
                    : detail.at(Cost.perMetre(price.perMetre(), prices.currency(), price.source()));
        }));
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
        return new Catalogue(details.select(detail ->
                used.contains(detail.id()) || open.contains(detail.kind()) || detail.kind() instanceof CornerKind));
    }

    /** These and those of another that are not among them. */
    public Catalogue with(Catalogue other) {
        return new Catalogue(details.newWithAll(
                other.details().reject(detail -> find(detail.id()).isPresent())));
    }

    /** What is taken where a house chooses nothing: the worst option, since a seam nobody chose is a seam nobody handled. */
    public Optional<Detail> unchosen(BridgeKind kind) {
        return options(kind).getFirstOptional();
    }
}
