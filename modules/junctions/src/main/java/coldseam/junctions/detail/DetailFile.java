package coldseam.junctions.detail;

import coldseam.envelope.Control;
import coldseam.envelope.Material;
import coldseam.envelope.Provenance;
import coldseam.files.Binder;
import coldseam.files.Faults;
import coldseam.files.FileFaultException;
import coldseam.files.Named;
import coldseam.files.SourceDocument;
import coldseam.files.SourceNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;
import org.eclipse.collections.api.map.MutableMap;
import org.eclipse.collections.impl.factory.Maps;

/** Reads detail files. */
public final class DetailFile {

    private DetailFile() {}

    /**
     * Reads one detail.
     *
     * @throws FileFaultException with every fault of the file
     */
    public static Detail read(Path path) {
        Faults faults = new Faults();
        Optional<SourceNode> tree = SourceDocument.read(path, faults);
        faults.throwIfAny();
        try {
            String content = Files.readString(path, StandardCharsets.UTF_8);
            return read(tree.orElseThrow(), content, faults).orElseThrow(() -> refused(faults));
        } catch (IOException gone) {
            throw new UncheckedIOException(gone);
        }
    }

    /** Reads a detail from text; {@code name} stands in messages. */
    public static Detail read(String name, String content) {
        Faults faults = new Faults();
        Optional<Detail> detail = SourceDocument.read(name, content.getBytes(StandardCharsets.UTF_8), faults)
                .flatMap(tree -> read(tree, content, faults));
        faults.throwIfAny();
        return detail.orElseThrow();
    }

    private static FileFaultException refused(Faults faults) {
        return new FileFaultException(faults.sorted());
    }

    /** Binds a tree; adds what is wrong to the faults. */
    public static Optional<Detail> read(SourceNode tree, String content, Faults faults) {
        int before = faults.count();
        Optional<FileDetail> bound = Binder.bind(tree, FileDetail.class, faults);
        if (bound.isEmpty()) {
            return Optional.empty();
        }
        FileDetail file = bound.get();
        BandDrawing drawing = new DrawingReader(file, content, faults).drawing();
        if (faults.count() > before) {
            return Optional.empty();
        }
        return Optional.of(new Detail(
                file.detail().value(),
                file.kind(),
                file.name(),
                file.rank(),
                file.looksLike(),
                file.order(),
                connections(file.connections()),
                file.failures(),
                file.photographs(),
                file.cautions(),
                file.costPerMetre().isPresent()
                        ? Optional.of(new Cost(file.costPerMetre().getAsDouble(), "", "the detail's own file"))
                        : Optional.empty(),
                drawing));
    }

    /** How each control layer passes. */
    public static ImmutableMap<Control, Connection> connections(FileDetail.FileConnections file) {
        return Maps.mutable
                .of(Control.AIR, file.air(), Control.WATER, file.water(), Control.VAPOUR, file.vapour())
                .toImmutable();
    }

    static ImmutableMap<String, Material> materials(FileDetail file) {
        return materials(file.materials());
    }

    /** Materials of a file's own, by name. */
    public static ImmutableMap<String, Material> materials(ImmutableList<Named<FileDetail.FileOwnMaterial>> own) {
        MutableMap<String, Material> materials = Maps.mutable.empty();
        for (Named<FileDetail.FileOwnMaterial> each : own) {
            FileDetail.FileOwnMaterial given = each.value();
            boolean insulates = given.insulates().orElse(given.conductivity() <= Material.INSULATES_UP_TO);
            materials.put(
                    each.name(),
                    new Material(
                            each.name(),
                            given.conductivity(),
                            OptionalDouble.empty(),
                            OptionalDouble.empty(),
                            OptionalDouble.empty(),
                            insulates,
                            new Provenance(given.source(), given.sureness())));
        }
        return materials.toImmutable();
    }
}
