package coldseam.envelope.file.house;

import coldseam.envelope.Assembly;
import coldseam.envelope.Material;
import coldseam.files.Bounds;
import coldseam.files.Default;
import coldseam.files.Doc;
import coldseam.files.Noun;
import coldseam.files.Refers;
import coldseam.files.Size;
import coldseam.files.Unit;
import coldseam.files.quantity.Dimension;
import java.util.Optional;
import java.util.function.Function;
import org.eclipse.collections.api.list.ImmutableList;

@Noun("an assembly")
@Doc("A build-up of layers.")
record FileAssembly(
        @Doc("From inside to outside.") @Size(min = 1, max = 40)
        ImmutableList<FileLayer> layers,

        @Doc("Mechanical fasteners through the insulation.") Optional<FileFasteners> fasteners,

        @Doc("Air gaps around the insulation boards: the correction levels of ISO 6946.") @Default("none")
        Assembly.AirGaps gaps,

        @Doc("Rain that reaches the membrane under the insulation of an inverted roof.")
        Optional<Assembly.Rain> rain) {

    @Noun("fasteners")
    @Doc("Mechanical fasteners through the insulation.")
    record FileFasteners(
            @Doc("Material of the shaft.") @Refers("material")
            String material,

            @Doc("Diameter of the shaft.")
            @Unit(Dimension.THICKNESS)
            @Bounds(atLeast = "2 mm", atMost = "20 mm", usual = "4 to 10 mm")
            double diameter,

            @Doc("How many on each area.")
            @Unit(Dimension.PER_AREA)
            @Bounds(atLeast = "1 per m²", atMost = "25 per m²", usual = "4 to 12 per m²")
            double number,

            @Doc("How far the head is sunk into the insulation.")
            @Default("0 mm")
            @Unit(Dimension.THICKNESS)
            @Bounds(atLeast = "0 mm", atMost = "500 mm")
            double recess) {}

    /** Names of all that it is made of. */
    ImmutableList<String> materials() {
        return layers.collect(FileLayer::material)
                .newWithAll(layers.flatCollect(each -> each.framing().stream()
                        .map(FileLayer.FileFraming::material)
                        .toList()))
                .newWithAll(fasteners.stream().map(FileFasteners::material).toList());
    }

    Assembly assembly(String name, Function<String, Material> materials) {
        return new Assembly(
                name,
                layers.collect(each -> each.layer(materials)),
                fasteners.map(each -> new Assembly.Fasteners(
                        materials.apply(each.material), each.diameter, each.number, each.recess)),
                gaps,
                rain);
    }
}
