package coldseam.envelope.file.house;

import coldseam.envelope.House;
import coldseam.envelope.Material;
import coldseam.files.Defines;
import coldseam.files.Doc;
import coldseam.files.KnownNames;
import coldseam.files.Named;
import coldseam.files.Noun;
import coldseam.files.Position;
import coldseam.files.Refers;
import coldseam.files.ResourceFolder;
import coldseam.files.Short;
import coldseam.files.Words;
import java.util.Optional;
import org.eclipse.collections.api.factory.Maps;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;

/** The built-in generic materials, read from a data file in which each value has its source. */
public final class MaterialLibrary {

    private static final FileLibrary FILE =
            new ResourceFolder("/materials/").read("materials.yaml", FileLibrary.class, Maps.immutable.empty());

    private static final ImmutableList<Named<FileMaterial>> FILED = FILE.materials();

    private static final ImmutableList<Material> MATERIALS =
            FILED.collect(each -> each.value().material(each.name()));

    private MaterialLibrary() {}

    /** All of them, in the data file's order. */
    public static ImmutableList<Material> materials() {
        return MATERIALS;
    }

    /** The one of this name. */
    public static Optional<Material> named(String name) {
        return MATERIALS.detectOptional(each -> each.name().equals(name));
    }

    /** The one whose name reads like this. */
    public static Optional<Material> called(String name) {
        String aloud = Words.aloud(name);
        return MATERIALS.detectOptional(each -> Words.aloud(each.name()).equals(aloud));
    }

    /** Whether it is what the built-in list says of its name. */
    public static boolean isBuiltIn(Material material) {
        return named(material.name()).filter(material::equals).isPresent();
    }

    /** What a house's file says of materials, by name, where the built-in list does not say the same. */
    public static ImmutableMap<String, Material> ownOf(House house) {
        return house.materials().reject((name, each) -> isBuiltIn(each));
    }

    /** As its file describes it. */
    static Optional<FileMaterial> filed(String name) {
        return FILED.detectOptional(each -> each.name().equals(name)).map(Named::value);
    }

    /** What files may name without a material of their own. */
    static KnownNames names() {
        return KnownNames.of(MATERIALS.collect(Material::name))
                .alsoCalled(FILE.alsoCalled()
                        .toImmutableMap(Named::name, each -> each.value().material()))
                .otherwise("coldseam catalogue --materials lists all; define one of your own under materials");
    }

    /** Whether it is one that rain dissolves or swells. */
    public static boolean isForIndoorsAlone(String name) {
        return FILE.indoorsAlone().contains(name);
    }

    /** Whether it is the one of air, or a house's own of its name. */
    public static boolean isAir(String name) {
        return name.equals(FILE.air());
    }

    @Noun("a material library")
    @Doc("Generic materials.")
    record FileLibrary(
            @Doc("The one that is no solid.") @Refers("material")
            String air,

            @Doc("Those that rain dissolves or swells.") @Refers("material")
            ImmutableList<String> indoorsAlone,

            @Doc("What people write instead of their names, in small letters.")
            ImmutableList<Named<FileSameMaterial>> alsoCalled,

            @Doc("By name.") @Defines("material") ImmutableList<Named<FileMaterial>> materials) {}

    @Short
    @Noun("a material")
    @Doc("A material by its name.")
    record FileSameMaterial(
            @Doc("Its name.") @Refers("material") String material, Position place) {}
}
