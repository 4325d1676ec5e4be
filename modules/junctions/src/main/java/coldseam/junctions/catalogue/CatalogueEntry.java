package coldseam.junctions.catalogue;

import coldseam.envelope.BridgeKind;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.detail.Rank;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import org.eclipse.collections.api.list.ImmutableList;

/** A detail of a catalogue, by what tells whether somebody needs it; the rest of it is read once somebody does. */
final class CatalogueEntry {

    private final String id;
    private final BridgeKind kind;
    private final Rank rank;
    private final ImmutableList<String> takesDown;
    private final Supplier<Detail> reader;
    private Optional<Detail> read = Optional.empty();

    /**
     * @param id of the detail
     * @param kind of the detail
     * @param rank of the detail
     * @param takesDown parts of an old house that must come down for it
     * @param reader of the whole detail, asked at most once
     */
    CatalogueEntry(String id, BridgeKind kind, Rank rank, ImmutableList<String> takesDown, Supplier<Detail> reader) {
        this.id = id;
        this.kind = kind;
        this.rank = rank;
        this.takesDown = takesDown;
        this.reader = reader;
    }

    /** A detail that is at hand. */
    static CatalogueEntry of(Detail detail) {
        return new CatalogueEntry(
                detail.id(), detail.kind(), detail.rank(), detail.suits().takesDown(), () -> detail);
    }

    String id() {
        return id;
    }

    BridgeKind kind() {
        return kind;
    }

    Rank rank() {
        return rank;
    }

    ImmutableList<String> takesDown() {
        return takesDown;
    }

    /** The whole of it. */
    synchronized Detail detail() {
        if (read.isEmpty()) {
            read = Optional.of(reader.get());
        }
        return read.get();
    }

    /** The same, changed in nothing that stands here. */
    CatalogueEntry changed(UnaryOperator<Detail> change) {
        return new CatalogueEntry(id, kind, rank, takesDown, () -> change.apply(detail()));
    }
}
