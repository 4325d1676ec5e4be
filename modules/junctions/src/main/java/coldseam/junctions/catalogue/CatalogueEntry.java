package coldseam.junctions.catalogue;

import coldseam.envelope.BridgeKind;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.detail.Rank;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.eclipse.collections.api.list.ImmutableList;

/** A detail of a catalogue, for one of its kinds, by what tells whether somebody needs it; the rest of it is read once somebody does. */
final class CatalogueEntry {

    private final String id;
    private final BridgeKind kind;
    private final Rank rank;
    private final ImmutableList<String> takesDown;
    private final Supplier<Detail> reader;
    private Optional<Detail> read = Optional.empty();

    /**
     * @param kind that it is listed for
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

    /** A detail that is at hand, for each of its kinds. */
    static Stream<CatalogueEntry> of(Detail detail) {
        return of(detail.id(), detail.kinds(), detail.rank(), detail.suits().takesDown(), () -> detail);
    }

    /**
     * A detail for each of its kinds.
     *
     * @param reader as of one; asked once for them all
     */
    static Stream<CatalogueEntry> of(
            String id,
            ImmutableList<? extends BridgeKind> kinds,
            Rank rank,
            ImmutableList<String> takesDown,
            Supplier<Detail> reader) {
        CatalogueEntry first = new CatalogueEntry(id, kinds.getFirst(), rank, takesDown, reader);
        return Stream.concat(
                Stream.of(first),
                kinds.castToList().stream()
                        .skip(1)
                        .map(kind -> new CatalogueEntry(
                                id, kind, rank, takesDown, () -> first.detail().lookedAtFor(kind))));
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
