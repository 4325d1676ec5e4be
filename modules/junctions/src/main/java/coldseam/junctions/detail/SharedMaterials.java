package coldseam.junctions.detail;

import coldseam.envelope.Material;
import coldseam.files.Named;
import coldseam.files.Noun;
import coldseam.files.ResourceFolder;
import org.eclipse.collections.api.factory.Maps;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;

/** Materials that several details draw, told in one file: {@code drawn-materials.yaml}. */
final class SharedMaterials {

    /** By their names. */
    static final ImmutableMap<String, Material> ALL = new ResourceFolder("/")
            .read("drawn-materials.yaml", FileMaterials.class, Maps.immutable.empty())
            .materials()
            .toImmutableMap(Named::name, each -> each.value().named(each.name()));

    @Noun("materials of details")
    record FileMaterials(ImmutableList<Named<FileText.FileOwnMaterial>> materials) {}

    private SharedMaterials() {}
}
