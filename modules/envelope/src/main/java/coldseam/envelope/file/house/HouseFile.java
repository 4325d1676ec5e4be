package coldseam.envelope.file.house;

import coldseam.envelope.Assembly;
import coldseam.envelope.House;
import coldseam.envelope.Layer;
import coldseam.envelope.Material;
import coldseam.files.Binder;
import coldseam.files.Faults;
import coldseam.files.FileFaultException;
import coldseam.files.KnownNames;
import coldseam.files.Located;
import coldseam.files.Named;
import coldseam.files.SchemaWriter;
import coldseam.files.SourceDocument;
import coldseam.files.SourceNode;
import java.util.Optional;
import java.util.function.Function;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.factory.Maps;
import org.eclipse.collections.api.map.ImmutableMap;
import org.eclipse.collections.api.map.MutableMap;

/** Reads house files: YAML, or JSON where the name ends in {@code .json}. */
public final class HouseFile {

    /** The assembly that is none: the surface is left out and the shell stays open there. */
    static final String NONE = "none";

    private HouseFile() {}

    /**
     * Reads a house from the content of a file.
     *
     * @param file its name, for messages
     * @param content its bytes
     * @param details that junction choices may name
     * @param points details that points may name
     * @param corners details that corners may name
     * @throws FileFaultException with every fault of the file, unknown details among them
     */
    public static LoadedHouse read(
            String file, byte[] content, KnownNames details, KnownNames points, KnownNames corners) {
        ImmutableMap<String, KnownNames> known =
                Maps.immutable.of("detail", details, "point detail", points, "corner detail", corners);
        Faults faults = new Faults();
        Optional<LoadedHouse> house =
                SourceDocument.read(file, content, faults).flatMap(node -> bind(node, known, faults));
        faults.throwIfAny();
        return house.orElseThrow();
    }

    /** The JSON Schema of house files, as text. */
    public static String schema() {
        return SchemaWriter.of(FileHouse.class, "A house file of coldseam");
    }

    private static Optional<LoadedHouse> bind(
            SourceNode node, ImmutableMap<String, KnownNames> details, Faults faults) {
        if (OtherFile.isRefused(node, "a house file", Lists.immutable.of("house"), faults)) {
            return Optional.empty();
        }
        MutableMap<String, KnownNames> known = Maps.mutable.withMap(details.castToMap());
        known.put("material", MaterialLibrary.names());
        known.put(
                "neighbour", KnownNames.of(BodyBuilder.ALWAYS_THERE.keysView()).otherwise(FileBase.SPACE));
        PageText.judging(node, faults);
        Optional<FileHouse> file = Binder.bind(node, FileHouse.class, faults, known.toImmutable());
        return faults.isEmpty() ? file.map(HouseFile::loaded) : Optional.empty();
    }

    private static LoadedHouse loaded(FileHouse file) {
        MutableMap<String, Material> own = Maps.mutable.empty();
        file.materials().forEach(each -> own.put(each.name(), each.value().material(each.name())));
        Function<String, Material> materials = name -> own.containsKey(name)
                ? own.get(name)
                : MaterialLibrary.named(name).orElseThrow();
        ImmutableMap<String, Assembly> assemblies = file.assemblies()
                .toImmutableMap(Named::name, each -> each.value().assembly(each.name(), materials));
        House house = new House(
                file.house().value(),
                file.submittal().submittal(),
                file.site().site(),
                file.retrofit().map(each -> each.retrofit(assemblies, file.openings())),
                usedMaterials(own, assemblies),
                assemblies,
                new BodyBuilder(file, materials).body(),
                file.openings().flatCollect(each -> each.value().openings(each.name())),
                file.junctions().collect(FileChoice::choice),
                file.ownPsi().collect(FileOwnPsi::ownPsi),
                file.seams().collect(each -> each.value().seam(each.name())),
                file.points().collect(each -> each.value().points(each.name())),
                file.corners().collect(Located::value),
                file.limits().limits(file.site().site()),
                file.prices().prices(file.alternatives().currency()));
        return new LoadedHouse(
                house,
                file.junctions()
                        .newWithAll(file.retrofit()
                                .flatMap(FileRetrofit::found)
                                .map(FileFound::junctions)
                                .orElse(Lists.immutable.empty()))
                        .collect(FileChoice::placed),
                file.ownPsi().collect(FileOwnPsi::placed),
                ShapePlaces.of(file),
                file.points().collect(each -> each.value().placed(each)),
                file.retrofit().map(FileRetrofit::builtNew).orElse(Lists.immutable.empty()),
                file.retrofit().map(FileRetrofit::takenDown).orElse(Lists.immutable.empty()),
                file.retrofit()
                        .flatMap(FileRetrofit::found)
                        .map(FileFound::assemblies)
                        .orElse(Lists.immutable.empty())
                        .toImmutableMap(Named::name, Named::place),
                file.retrofit()
                        .flatMap(FileRetrofit::balloonFrame)
                        .filter(Located::value)
                        .map(Located::place),
                file.prices().details().toImmutableMap(Named::name, Named::place),
                new AlternativesBuilder(file, assemblies).decisions(),
                file.site().place());
    }

    private static ImmutableMap<String, Material> usedMaterials(
            MutableMap<String, Material> own, ImmutableMap<String, Assembly> assemblies) {
        MutableMap<String, Material> used = Maps.mutable.withMap(own);
        for (Assembly assembly : assemblies) {
            for (Layer layer : assembly.layers()) {
                used.putIfAbsent(layer.material().name(), layer.material());
                layer.framing()
                        .ifPresent(each -> used.putIfAbsent(each.material().name(), each.material()));
            }
            assembly.fasteners()
                    .ifPresent(each -> used.putIfAbsent(each.material().name(), each.material()));
        }
        return used.toImmutable();
    }
}
