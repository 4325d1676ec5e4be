package coldseam.junctions.catalogue;

import coldseam.envelope.BridgeKind;
import coldseam.envelope.CornerKind;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.PointKind;
import coldseam.envelope.file.house.OtherFile;
import coldseam.envelope.file.house.PageText;
import coldseam.files.Faults;
import coldseam.files.FileFaultException;
import coldseam.files.KnownNames;
import coldseam.files.Position;
import coldseam.files.ResourceFolder;
import coldseam.files.SourceDocument;
import coldseam.files.SourceNode;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.detail.DetailFile;
import coldseam.junctions.hand.DrawnSection;
import coldseam.junctions.hand.HandDrawing;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

/** Reads the catalogue: the built-in details, and those a house brings along. */
public final class CatalogueFile {

    private static final ResourceFolder JUNCTIONS = new ResourceFolder("/details/");
    private static final ResourceFolder POINTS = new ResourceFolder("/points/");
    private static final ResourceFolder CORNERS = new ResourceFolder("/corners/");

    /** By any of these keys a file is one that a house may name. */
    private static final ImmutableList<String> SORTS =
            Lists.immutable.of("detail", "point", "corner", "section", "painted");

    private CatalogueFile() {}

    private static final class BuiltIn {
        private static final Catalogue CATALOGUE = readBuiltIn();
    }

    /** The built-in details: by kind, junctions first, then from worst to best, then by id. */
    public static Catalogue builtIn() {
        return BuiltIn.CATALOGUE;
    }

    /** The guide to the detail language, in Markdown. */
    public static String guide() {
        return JUNCTIONS.readme();
    }

    /** The guide to point files, in Markdown. */
    public static String pointGuide() {
        return POINTS.readme();
    }

    /** The guide to corner files, in Markdown. */
    public static String cornerGuide() {
        return CORNERS.readme();
    }

    /**
     * What a house file may name: an id among these, or a file beside the house file.
     *
     * @param ids such as those of all junctions
     */
    public static KnownNames names(ImmutableList<String> ids, Path folder) {
        return KnownNames.of(ids)
                .or(name -> looksLikeFile(name)
                        && beside(folder, name).filter(Files::isRegularFile).isPresent())
                .otherwise(
                        "coldseam catalogue lists all, with --points or --corners those; a file of your own is named from this file's folder on");
    }

    /** Empty where the name is none that a file can have on this system. */
    private static Optional<Path> beside(Path folder, String name) {
        try {
            return Optional.of(folder.resolve(name));
        } catch (InvalidPathException noName) {
            return Optional.empty();
        }
    }

    private static boolean looksLikeFile(String name) {
        return name.endsWith(".yaml") || name.endsWith(".yml") || name.endsWith(".json");
    }

    /**
     * A catalogue with a house's own details, each under the path by which the house names it.
     *
     * @param junctions what the house's junction choices name
     * @param points what its points name
     * @param corners what its corners name
     * @throws FileFaultException with every fault of every own file
     */
    public static Catalogue withOwn(
            Catalogue catalogue,
            Path folder,
            Iterable<String> junctions,
            Iterable<String> points,
            Iterable<String> corners) {
        Faults faults = new Faults();
        MutableList<Detail> details = Lists.mutable.empty();
        details.addAllIterable(own(catalogue, folder, junctions, JunctionKind.class, faults));
        details.addAllIterable(own(catalogue, folder, points, PointKind.class, faults));
        details.addAllIterable(own(catalogue, folder, corners, CornerKind.class, faults));
        faults.throwIfAny();
        return catalogue.withAll(details);
    }

    /** The files that a house's own details were read from, as the house names them. */
    public static ImmutableList<String> own(Catalogue catalogue) {
        return catalogue.ids().select(CatalogueFile::looksLikeFile);
    }

    private static ImmutableList<Detail> own(
            Catalogue catalogue,
            Path folder,
            Iterable<String> names,
            Class<? extends BridgeKind> wanted,
            Faults faults) {
        ImmutableList<String> known = catalogue.ids();
        MutableList<Detail> own = Lists.mutable.empty();
        for (String name : Lists.mutable.withAll(names).distinct()) {
            Optional<Path> file = looksLikeFile(name) ? beside(folder, name) : Optional.empty();
            if (!known.contains(name) && file.isPresent()) {
                Path path = file.get();
                Optional<Detail> read = own(path, name, faults);
                read.filter(detail -> wanted.isInstance(detail.kind())).ifPresent(own::add);
                read.filter(detail -> !wanted.isInstance(detail.kind()))
                        .ifPresent(detail -> misplaced(path, detail, wanted, faults));
            }
        }
        return own.toImmutable();
    }

    private static void misplaced(Path path, Detail detail, Class<? extends BridgeKind> wanted, Faults faults) {
        faults.add(
                new Position(path.toString(), 1, 1),
                wanted == PointKind.class
                        ? "points need the detail of a point"
                        : wanted == CornerKind.class
                                ? "corners need the detail of a corner"
                                : "a junction choice needs the detail of a junction",
                "one for: " + detail.kind().label(),
                "name it under " + key(detail.kind()) + ", or choose another file");
    }

    private static String key(BridgeKind kind) {
        return kind instanceof PointKind ? "points" : kind instanceof CornerKind ? "corners" : "junctions";
    }

    /** A detail file, or a section file with a junction block. */
    private static Optional<Detail> own(Path path, String name, Faults faults) {
        Optional<SourceNode> tree = SourceDocument.read(path, faults);
        if (tree.isEmpty() || OtherFile.isRefused(tree.get(), "a detail's file", SORTS, faults)) {
            return Optional.empty();
        }
        PageText.judgingDetail(tree.get(), faults);
        if (tree.get() instanceof SourceNode.Mapping mapping
                && mapping.entry("section").isPresent()) {
            return DrawnSection.bind(mapping, faults).flatMap(drawn -> HandDrawing.detail(name, drawn, faults));
        }
        try {
            return DetailFile.read(tree.get(), Files.readString(path, StandardCharsets.UTF_8), faults)
                    .map(detail -> detail.ofHouse(name));
        } catch (IOException gone) {
            faults.add(new Position(path.toString(), 1, 1), "the file cannot be read", gone.toString(), "try again");
            return Optional.empty();
        }
    }

    private static Catalogue readBuiltIn() {
        return Catalogue.sorted(Stream.of(
                        entries(JUNCTIONS, "detail", JunctionKind.all()),
                        entries(POINTS, "point", PointKind.all()),
                        entries(CORNERS, "corner", CornerKind.all()))
                .flatMap(List::stream));
    }

    /** A list, since a stream that is laid into another is gone through on one core. */
    private static List<CatalogueEntry> entries(
            ResourceFolder folder, String sort, ImmutableList<? extends BridgeKind> kinds) {
        return folder.names().castToList().parallelStream()
                .flatMap(file -> entries(folder, file, sort, kinds))
                .toList();
    }

    /** By the file's head alone, or by all of it where the head does not say plainly what it is of. */
    private static Stream<CatalogueEntry> entries(
            ResourceFolder folder, String file, String sort, ImmutableList<? extends BridgeKind> kinds) {
        Supplier<Detail> whole = () -> folder.read(file, DetailFile::read);
        Optional<DetailHead> head = DetailHead.of(sort, folder.text(file));
        return head.flatMap(said -> {
                    ImmutableList<? extends BridgeKind> of = said.kinds()
                            .flatCollect(
                                    label -> kinds.select(kind -> kind.label().equals(label)));
                    return of.size() < said.kinds().size()
                            ? Optional.empty()
                            : Optional.of(CatalogueEntry.of(said.id(), of, said.rank(), said.takesDown(), whole));
                })
                .orElseGet(() -> CatalogueEntry.of(whole.get()));
    }
}
