package coldseam.envelope.file.house;

import coldseam.envelope.Material;
import coldseam.files.Binder;
import coldseam.files.Defines;
import coldseam.files.Doc;
import coldseam.files.Faults;
import coldseam.files.Named;
import coldseam.files.Noun;
import coldseam.files.SourceDocument;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;

/** The built-in generic materials, read from a data file in which each value has its source. */
public final class MaterialLibrary {

    private static final String RESOURCE = "/materials/materials.yaml";
    private static final ImmutableList<Material> MATERIALS = read();

    private MaterialLibrary() {}

    /** All of them, in the data file's order. */
    public static ImmutableList<Material> materials() {
        return MATERIALS;
    }

    /** The one of this name. */
    public static Optional<Material> named(String name) {
        return MATERIALS.detectOptional(each -> each.name().equals(name));
    }

    @Noun("a material library")
    @Doc("Generic materials.")
    record FileLibrary(@Doc("By name.") @Defines("material") ImmutableList<Named<FileMaterial>> materials) {}

    private static ImmutableList<Material> read() {
        try (InputStream stream = MaterialLibrary.class.getResourceAsStream(RESOURCE)) {
            Faults faults = new Faults();
            FileLibrary library = SourceDocument.read(RESOURCE, stream.readAllBytes(), faults)
                    .flatMap(node -> Binder.bind(node, FileLibrary.class, faults))
                    .orElse(null);
            faults.throwIfAny();
            return library.materials().collect(each -> each.value().material(each.name()));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
