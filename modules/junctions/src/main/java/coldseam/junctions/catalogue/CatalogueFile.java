package coldseam.junctions.catalogue;

import coldseam.files.Faults;
import coldseam.files.FileFaultException;
import coldseam.files.KnownNames;
import coldseam.files.Position;
import coldseam.files.SourceDocument;
import coldseam.files.SourceNode;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.detail.DetailFile;
import coldseam.junctions.hand.HandDrawing;
import coldseam.junctions.hand.SectionFile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

/** Reads the catalogue: the built-in details, and those a house brings along. */
public final class CatalogueFile {

    private static final String FOLDER = "/details/";
    private static final String GUIDE = FOLDER + "README.md";

    private CatalogueFile() {}

    private static final class BuiltIn {
        private static final Catalogue CATALOGUE = readBuiltIn();
    }

    /** The built-in details: by kind, then from worst to best, then by id. */
    public static Catalogue builtIn() {
        return BuiltIn.CATALOGUE;
    }

    /** The guide to the detail language, in Markdown. */
    public static String guide() {
        try (var stream = CatalogueFile.class.getResourceAsStream(GUIDE)) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** What a junction choice may name: an id of the catalogue, or a file beside the house file. */
    public static KnownNames names(Catalogue catalogue, Path folder) {
        return KnownNames.of(catalogue.details().collect(Detail::id))
                .or(name -> looksLikeFile(name) && Files.isRegularFile(folder.resolve(name)));
    }

    private static boolean looksLikeFile(String name) {
        return name.endsWith(".yaml") || name.endsWith(".yml") || name.endsWith(".json");
    }

    /**
     * A catalogue with a house's own details, each under the path by which the house names it.
     *
     * @param folder of the house file
     * @param chosen what the house's junction choices name
     * @throws FileFaultException with every fault of every own file
     */
    public static Catalogue withOwn(Catalogue catalogue, Path folder, Iterable<String> chosen) {
        Faults faults = new Faults();
        MutableList<Detail> details = Lists.mutable.withAll(catalogue.details());
        for (String name : Lists.mutable.withAll(chosen).distinct()) {
            if (catalogue.find(name).isEmpty() && looksLikeFile(name)) {
                own(folder.resolve(name), name, faults).ifPresent(details::add);
            }
        }
        faults.throwIfAny();
        return sorted(details);
    }

    /** A detail file, or a section file with a junction block. */
    private static Optional<Detail> own(Path path, String name, Faults faults) {
        Optional<SourceNode> tree = SourceDocument.read(path, faults);
        if (tree.isEmpty()) {
            return Optional.empty();
        }
        if (tree.get() instanceof SourceNode.Mapping mapping
                && mapping.entry("section").isPresent()) {
            return SectionFile.bind(mapping, faults).flatMap(drawn -> HandDrawing.detail(name, drawn, faults));
        }
        try {
            return DetailFile.read(tree.get(), Files.readString(path, StandardCharsets.UTF_8), faults)
                    .map(detail -> named(detail, name));
        } catch (IOException gone) {
            faults.add(
                    new Position(path.toString(), 1, 1), "the file cannot be read", gone.toString(), "", "try again");
            return Optional.empty();
        }
    }

    private static Detail named(Detail detail, String id) {
        return new Detail(
                id,
                detail.kind(),
                detail.name(),
                detail.rank(),
                detail.looksLike(),
                detail.order(),
                detail.connections(),
                detail.failures(),
                detail.photographs(),
                detail.cautions(),
                detail.cost(),
                detail.drawing());
    }

    private static Catalogue sorted(MutableList<Detail> details) {
        return new Catalogue(details.toSortedList((a, b) -> {
                    int byKind = a.kind().compareTo(b.kind());
                    int byRank = byKind != 0 ? byKind : a.rank().compareTo(b.rank());
                    return byRank != 0 ? byRank : a.id().compareTo(b.id());
                })
                .toImmutable());
    }

    private static Catalogue readBuiltIn() {
        Faults faults = new Faults();
        MutableList<Detail> details = Lists.mutable.empty();
        for (String file : ResourceFolder.yamlBeside(GUIDE)) {
            try (var stream = CatalogueFile.class.getResourceAsStream(FOLDER + file)) {
                byte[] bytes = stream.readAllBytes();
                SourceDocument.read(FOLDER + file, bytes, faults)
                        .flatMap(tree -> DetailFile.read(tree, new String(bytes, StandardCharsets.UTF_8), faults))
                        .ifPresent(details::add);
            } catch (IOException broken) {
                throw new UncheckedIOException(broken);
            }
        }
        faults.throwIfAny();
        return sorted(details);
    }
}
