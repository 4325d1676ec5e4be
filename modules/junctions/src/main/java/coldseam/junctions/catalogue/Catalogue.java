package coldseam.junctions.catalogue;

import coldseam.envelope.BridgeKind;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.PointKind;
import coldseam.envelope.Prices;
import coldseam.junctions.detail.Cost;
import coldseam.junctions.detail.Detail;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;

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

    /** What is taken where a house chooses nothing: the worst option, since a seam nobody chose is a seam nobody handled. */
    public Optional<Detail> unchosen(BridgeKind kind) {
        return options(kind).getFirstOptional();
    }
}
