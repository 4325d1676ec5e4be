package coldseam.junctions;

import coldseam.envelope.JunctionKind;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * The options for each kind of junction.
 *
 * @param details all of them, by kind and from worst to best
 */
public record Catalogue(ImmutableList<Detail> details) {

    /** The options of a kind, from worst to best; empty where the catalogue has none. */
    public ImmutableList<Detail> options(JunctionKind kind) {
        return details.select(detail -> detail.kind() == kind);
    }

    /** The option with this id. */
    public Optional<Detail> find(String id) {
        return Optional.ofNullable(details.detect(detail -> detail.id().equals(id)));
    }

    /** What is taken where a house chooses nothing: the worst option, since a seam nobody chose is a seam nobody handled. */
    public Optional<Detail> unchosen(JunctionKind kind) {
        return options(kind).getFirstOptional();
    }
}
