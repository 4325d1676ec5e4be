package coldseam.junctions.point;

import coldseam.envelope.PointKind;
import coldseam.files.Binder;
import coldseam.files.Faults;
import coldseam.files.FileFaultException;
import coldseam.files.KnownNames;
import coldseam.files.Position;
import coldseam.files.SourceDocument;
import coldseam.files.SourceNode;
import coldseam.junctions.catalogue.ResourceFolder;
import coldseam.junctions.detail.DetailFile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

/**
 * Point details: the built-in ones, and those a house brings along.
 *
 * @param details by kind, then from worst to best, then by id
 */
public record PointCatalogue(ImmutableList<PointDetail> details) {

    private static final String FOLDER = "/points/";
    private static final String GUIDE = FOLDER + "README.md";

    private static final class BuiltIn {
        private static final PointCatalogue CATALOGUE = readBuiltIn();
    }

    /** The built-in ones. */
    public static PointCatalogue builtIn() {
        return BuiltIn.CATALOGUE;
    }

    /** None at all. */
    public static PointCatalogue empty() {
        return new PointCatalogue(Lists.immutable.empty());
    }

    /** The guide to point files, in Markdown. */
    public static String guide() {
        try (var stream = PointCatalogue.class.getResourceAsStream(GUIDE)) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** The options of a kind, from worst to best. */
    public ImmutableList<PointDetail> options(PointKind kind) {
        return details.select(detail -> detail.kind() == kind);
    }

    /** The one with this id. */
    public Optional<PointDetail> find(String id) {
        return details.detectOptional(detail -> detail.id().equals(id));
    }

    /** What a set of points may name: an id, or a file beside the house file. */
    public KnownNames names(Path folder) {
        return KnownNames.of(details.collect(PointDetail::id))
                .or(name -> looksLikeFile(name) && Files.isRegularFile(folder.resolve(name)));
    }

    private static boolean looksLikeFile(String name) {
        return name.endsWith(".yaml") || name.endsWith(".yml") || name.endsWith(".json");
    }

    /**
     * This catalogue with a house's own details, each under the path by which the house names it.
     *
     * @param folder of the house file
     * @param chosen what the house's points name
     * @throws FileFaultException with every fault of every own file
     */
    public PointCatalogue withOwn(Path folder, Iterable<String> chosen) {
        Faults faults = new Faults();
        MutableList<PointDetail> all = details.toList();
        for (String name : Lists.mutable.withAll(chosen).distinct()) {
            if (find(name).isEmpty() && looksLikeFile(name)) {
                own(folder.resolve(name), faults)
                        .map(detail -> detail.named(name))
                        .ifPresent(all::add);
            }
        }
        faults.throwIfAny();
        return sorted(all);
    }

    private static Optional<PointDetail> own(Path path, Faults faults) {
        Optional<SourceNode> tree = SourceDocument.read(path, faults);
        if (tree.isEmpty()) {
            return Optional.empty();
        }
        try {
            return read(tree.get(), Files.readString(path, StandardCharsets.UTF_8), faults);
        } catch (IOException gone) {
            faults.add(
                    new Position(path.toString(), 1, 1), "the file cannot be read", gone.toString(), "", "try again");
            return Optional.empty();
        }
    }

    /**
     * Reads one point file.
     *
     * @param name for messages
     * @param content the file's text
     * @throws FileFaultException with every fault of it
     */
    public static PointDetail read(String name, String content) {
        Faults faults = new Faults();
        Optional<PointDetail> detail = SourceDocument.read(name, content.getBytes(StandardCharsets.UTF_8), faults)
                .flatMap(tree -> read(tree, content, faults));
        faults.throwIfAny();
        return detail.orElseThrow();
    }

    private static Optional<PointDetail> read(SourceNode tree, String content, Faults faults) {
        int before = faults.count();
        Optional<FilePoint> bound = Binder.bind(tree, FilePoint.class, faults);
        if (bound.isEmpty()) {
            return Optional.empty();
        }
        FilePoint file = bound.get();
        PointDrawing drawing = new PointReader(file, content, faults).drawing();
        if (faults.count() > before) {
            return Optional.empty();
        }
        return Optional.of(new PointDetail(
                file.point().value(),
                file.kind(),
                file.name(),
                file.rank(),
                file.looksLike(),
                file.drawnRound(),
                file.order(),
                DetailFile.connections(file.connections()),
                file.failures(),
                file.photographs(),
                file.cautions(),
                file.costEach(),
                drawing));
    }

    private static PointCatalogue readBuiltIn() {
        Faults faults = new Faults();
        MutableList<PointDetail> all = Lists.mutable.empty();
        for (String file : ResourceFolder.yamlBeside(GUIDE)) {
            try (var stream = PointCatalogue.class.getResourceAsStream(FOLDER + file)) {
                byte[] bytes = stream.readAllBytes();
                SourceDocument.read(FOLDER + file, bytes, faults)
                        .flatMap(tree -> read(tree, new String(bytes, StandardCharsets.UTF_8), faults))
                        .ifPresent(all::add);
            } catch (IOException broken) {
                throw new UncheckedIOException(broken);
            }
        }
        faults.throwIfAny();
        return sorted(all);
    }

    private static PointCatalogue sorted(MutableList<PointDetail> all) {
        return new PointCatalogue(all.toSortedList(Comparator.comparing(PointDetail::kind)
                        .thenComparing(PointDetail::rank)
                        .thenComparing(PointDetail::id))
                .toImmutable());
    }
}
