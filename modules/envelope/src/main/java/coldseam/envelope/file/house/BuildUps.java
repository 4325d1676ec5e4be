package coldseam.envelope.file.house;

import coldseam.envelope.Assembly;
import coldseam.envelope.BridgeKind;
import coldseam.envelope.JunctionKind;
import coldseam.files.Default;
import coldseam.files.Defines;
import coldseam.files.Named;
import coldseam.files.Noun;
import coldseam.files.Refers;
import coldseam.files.ResourceFolder;
import java.util.Optional;
import org.eclipse.collections.api.factory.Maps;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;

/**
 * The build-up of a use, such as "wall" or "pitched roof", in the two ways of building.
 *
 * @param masonry in a house of brick and concrete
 * @param frame in a framed house
 * @param onGround whether it lies on the ground
 */
public record BuildUps(Assembly masonry, Assembly frame, boolean onGround) {

    private static final FileBuildUps FILE = new ResourceFolder("/kinds/")
            .read("build-ups.yaml", FileBuildUps.class, Maps.immutable.of("material", MaterialLibrary.names()));

    private static final ImmutableMap<String, BuildUps> ALL = read();

    /** Those that the files of the kinds name, by use. */
    public static ImmutableMap<String, BuildUps> all() {
        return ALL;
    }

    /** The use of what stands in for a surface that must be insulated inside what carries it, by the way it faces. */
    public static String insulatedInside(BridgeKind.Facing facing) {
        return FILE.insulatedInside().facing(facing);
    }

    /** The use of what stands in for a framed surface that must be insulated inside its studs or joists, by the way it faces. */
    public static String frameInsulatedInside(BridgeKind.Facing facing) {
        return FILE.frameInsulatedInside().facing(facing);
    }

    /**
     * The use of what stands in for a kind's first or second surface, 0 or 1, where that is insulated in its frame alone: what
     * its usual one says, else by the way it faces.
     */
    public static String inItsFrame(JunctionKind kind, int which) {
        JunctionKind.Typical typical = kind.typical();
        Optional<String> usual = which == 0 ? Optional.of(typical.first()) : typical.second();
        return usual.flatMap(use -> FILE.uses().get(use).inItsFrame())
                .orElseGet(() -> FILE.inItsFrame().facing(kind.faces().get(which)));
    }

    /** The use of what stands in for a wall whose blocks are all that insulates it. */
    public static String monolithic() {
        return FILE.monolithic();
    }

    @Noun("typical build-ups")
    record FileBuildUps(
            ImmutableMap<String, FileUse> uses,
            FileFacing insulatedInside,
            FileFacing frameInsulatedInside,
            FileFacing inItsFrame,
            String monolithic,
            @Defines("assembly") ImmutableList<Named<FileAssembly>> assemblies) {}

    @Noun("a use")
    record FileUse(
            @Refers("assembly") String masonry,
            @Refers("assembly") String frame,
            Optional<String> inItsFrame,
            @Default("false") boolean onGround) {}

    @Noun("uses by the way a surface faces")
    record FileFacing(String up, String side, String down) {

        String facing(BridgeKind.Facing facing) {
            return switch (facing) {
                case UP -> up;
                case SIDE -> side;
                case DOWN -> down;
            };
        }
    }

    private static ImmutableMap<String, BuildUps> read() {
        ImmutableMap<String, Assembly> assemblies = FILE.assemblies()
                .toImmutableMap(
                        Named::name,
                        each -> each.value()
                                .assembly(
                                        each.name(),
                                        material ->
                                                MaterialLibrary.named(material).orElseThrow()));
        return FILE.uses()
                .collectValues((use, each) ->
                        new BuildUps(assemblies.get(each.masonry()), assemblies.get(each.frame()), each.onGround()));
    }
}
