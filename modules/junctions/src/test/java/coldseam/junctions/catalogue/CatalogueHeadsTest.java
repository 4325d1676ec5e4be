package coldseam.junctions.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.envelope.BridgeKind;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Prices;
import coldseam.files.ResourceFolder;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.detail.DetailFile;
import coldseam.junctions.detail.Rank;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.factory.Sets;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Maps;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the catalogue knows of files before it reads them. */
class CatalogueHeadsTest {

    private static final String PLAIN = """
            detail: parapet-low
            kind: parapet
            also: [flat roof edge]
            name: A low parapet
            rank: worst
            takes-down: [foot of the wall, neighbour's wall]
            """;

    /** Faults of built-in files are found here: a run that does not need a file does not read it. */
    @ParameterizedTest
    @CsvSource({"details, detail, 195", "points, point, 64", "corners, corner, 4"})
    void everyBuiltInFileIsPlainAndIsWhatItsHeadSays(String folder, String sort, int atLeast) {
        ResourceFolder files = new ResourceFolder("/" + folder + "/");
        assertTrue(files.names().size() >= atLeast, () -> files.names().toString());
        for (String file : files.names()) {
            Detail whole = files.read(file, DetailFile::read);
            assertEquals(
                    Optional.of(new DetailHead(
                            whole.id(),
                            whole.kinds().collect(BridgeKind::label),
                            whole.rank(),
                            whole.suits().takesDown())),
                    DetailHead.of(sort, files.text(file)),
                    file);
            assertEquals(file, whole.id() + ".yaml");
        }
    }

    @Test
    void plainLinesTellAHead() {
        assertEquals(
                Optional.of(new DetailHead(
                        "parapet-low",
                        Lists.immutable.of("parapet", "flat roof edge"),
                        Rank.WORST,
                        Lists.immutable.of("foot of the wall", "neighbour's wall"))),
                DetailHead.of("detail", PLAIN));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "detail: parapet-low|detail: \"parapet-low\"",
                "detail: parapet-low|point: parapet-low",
                "kind: parapet|kind: parapet # low",
                "kind: parapet|kind:  parapet",
                "kind: parapet| kind: parapet",
                "also: [flat roof edge]|also: flat roof edge",
                "also: [flat roof edge]|\"also\": [flat roof edge]",
                "rank: worst|rank: good",
                "rank: worst|rank: [worst]",
                "takes-down: [foot of the wall, neighbour's wall]|takes-down:\n- foot of the wall",
                "takes-down: [foot of the wall, neighbour's wall]|takes-down: [foot of the wall,canopy]",
                "takes-down: [foot of the wall, neighbour's wall]|\"takes-down\": [canopy]",
                "takes-down: [foot of the wall, neighbour's wall]\n|takes-down: [canopy]"
            })
    void whatIsNotPlainTellsNone(String change) {
        String[] parts = change.split("\\|");
        String changed = PLAIN.replace(parts[0], parts[1]);
        assertTrue(!changed.equals(PLAIN), change);
        assertEquals(Optional.empty(), DetailHead.of("detail", changed));
    }

    /** Ids, kinds, prices and what is chosen are told without a file; a kind's files are read once, and no others. */
    @Test
    void aFileIsReadWhenItIsAskedFor() {
        MutableList<String> read = Lists.mutable.empty();
        ImmutableList<Detail> all = CatalogueFile.builtIn().details();
        Catalogue catalogue = new Catalogue(all.castToList().stream()
                        .map(detail -> new CatalogueEntry(
                                detail.id(),
                                detail.kind(),
                                detail.rank(),
                                detail.suits().takesDown(),
                                () -> {
                                    synchronized (read) {
                                        read.add(detail.id());
                                    }
                                    return detail;
                                })))
                .priced(new Prices(OptionalDouble.empty(), "EUR", 20, Maps.immutable.empty()))
                .with(new Catalogue(Lists.immutable.empty()));
        assertEquals(all.collect(Detail::id).distinct(), catalogue.ids());
        assertTrue(catalogue.partsTakenDown().contains("verge overhang"));
        assertEquals(Optional.empty(), catalogue.find("nowhere"));
        assertEquals(Lists.mutable.empty(), read);
        BridgeKind hip = JunctionKind.HIP;
        ImmutableList<String> hips = catalogue.options(hip).collect(Detail::id);
        assertEquals(hips, catalogue.options(Sets.immutable.of(hip)).collect(Detail::id));
        assertEquals(hips, catalogue.options(JunctionKind.HIP).collect(Detail::id));
        assertEquals(hips.toSortedList(), read.toSortedList());
        assertEquals(Rank.WORST, catalogue.options(hip).getFirst().rank());
    }
}
