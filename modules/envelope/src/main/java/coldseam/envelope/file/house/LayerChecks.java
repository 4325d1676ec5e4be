package coldseam.envelope.file.house;

import coldseam.envelope.Material;
import coldseam.envelope.Role;
import coldseam.files.Faults;
import coldseam.files.Named;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.UnitSystem;
import java.util.Locale;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;

/** What of a layer can be checked only with the material that fills it, and beside its neighbours. */
final class LayerChecks {

    /**
     * How many times less or more than its material a layer of declared resistance may conduct: products of one kind differ by
     * less; what differs by more is another material (judgement).
     */
    private static final double LIKE_ITS_MATERIAL = 2;

    /** m²·K/W: a metre of good board; no house is known to have more (judgement). */
    private static final double MOST = 30;

    private final FileHouse house;
    private final Faults faults;

    private LayerChecks(FileHouse house, Faults faults) {
        this.house = house;
        this.faults = faults;
    }

    /** Adds a fault for each layer that cannot be what it says. */
    static void check(FileHouse house, Faults faults) {
        LayerChecks checks = new LayerChecks(house, faults);
        house.assemblies().forEach(assembly -> {
            checks.layers(assembly.value().layers());
            checks.whole(assembly);
        });
    }

    private void whole(Named<FileAssembly> assembly) {
        double resistance = assembly.value().layers().sumOfDouble(this::resistance);
        if (resistance > MOST) {
            faults.add(
                    assembly.place(),
                    "the layers resist more than those of any house",
                    UnitSystem.SI.format(resistance, Dimension.RESISTANCE),
                    "at most " + UnitSystem.SI.format(MOST, Dimension.RESISTANCE) + "; usual: 3 to 12 m²·K/W",
                    "check thicknesses, conductivities and their units");
        }
    }

    /** m²·K/W; an air layer's is nothing beside what is looked for. */
    private double resistance(FileLayer layer) {
        if (layer.resistance().isPresent()) {
            return layer.resistance().getAsDouble();
        }
        return isAir(layer)
                ? 0
                : material(layer.material())
                        .map(filling -> layer.thickness() / filling.conductivity())
                        .orElse(0.0);
    }

    private void layers(ImmutableList<FileLayer> layers) {
        layers.forEachWithIndex((layer, i) -> material(layer.material()).ifPresent(filling -> {
            boolean air = filling.isAir() || layer.role() == Role.AIR_LAYER;
            if (air) {
                air(layer, filling);
            } else {
                layer.resistance().ifPresent(declared -> resistance(layer, filling, declared));
            }
            layer.framing().ifPresent(framing -> framing(layer, framing.material()));
            if (air && i > 0 && isAir(layers.get(i - 1))) {
                faults.add(
                        layer.place(),
                        "two air layers touch",
                        "\"" + layer.material() + "\" beside \""
                                + layers.get(i - 1).material() + "\"",
                        "",
                        "write them as one layer, as thick as both; nothing parts them");
            }
        }));
    }

    /** The house's own materials first; empty for one that is unknown, which is another fault. */
    private Optional<Material> material(String name) {
        return Optional.ofNullable(house.materials().detect(each -> each.name().equals(name)))
                .map(each -> each.value().material(name))
                .or(() -> MaterialLibrary.named(name));
    }

    private boolean isAir(FileLayer layer) {
        return layer.role() == Role.AIR_LAYER
                || material(layer.material()).filter(Material::isAir).isPresent();
    }

    private void air(FileLayer layer, Material filling) {
        if (!filling.isAir()) {
            faults.add(
                    layer.place(),
                    "an air layer is filled with air",
                    "material: " + layer.material(),
                    "material: air",
                    "write material: air, or give the layer another role");
        }
        if (layer.resistance().isPresent()) {
            faults.add(
                    layer.place(),
                    "the resistance of an air layer follows from its thickness (ISO 6946)",
                    "resistance: " + UnitSystem.SI.format(layer.resistance().getAsDouble(), Dimension.RESISTANCE),
                    "",
                    "remove resistance; where one of its faces is bright, write air: {low-emissivity: 0.05}");
        }
        if (layer.taper().isPresent()) {
            faults.add(
                    layer.place(),
                    "an air layer is of even thickness",
                    "a taper",
                    "",
                    "remove taper, and write its least thickness");
        }
    }

    private void framing(FileLayer layer, String members) {
        if (material(members).filter(Material::isAir).isPresent()) {
            faults.add(
                    layer.place(),
                    "members that bridge a layer are solid",
                    "framing of " + members,
                    "",
                    "write material: air for the layer, and what stands in it as framing");
        }
    }

    private void resistance(FileLayer layer, Material filling, double declared) {
        double conductivity = layer.thickness() / declared;
        double ratio = conductivity / filling.conductivity();
        if (ratio >= 1 / LIKE_ITS_MATERIAL && ratio <= LIKE_ITS_MATERIAL) {
            return;
        }
        faults.add(
                layer.place(),
                "the declared resistance does not go with the layer's thickness and material",
                UnitSystem.SI.format(declared, Dimension.RESISTANCE) + " on "
                        + UnitSystem.SI.format(layer.thickness(), Dimension.THICKNESS) + ", which is "
                        + UnitSystem.SI.format(conductivity, Dimension.CONDUCTIVITY),
                String.format(
                        Locale.ROOT,
                        "%s to %s; usual of \"%s\": %s",
                        UnitSystem.SI.format(
                                layer.thickness() / filling.conductivity() / LIKE_ITS_MATERIAL, Dimension.RESISTANCE),
                        UnitSystem.SI.format(
                                layer.thickness() / filling.conductivity() * LIKE_ITS_MATERIAL, Dimension.RESISTANCE),
                        filling.name(),
                        UnitSystem.SI.format(filling.conductivity(), Dimension.CONDUCTIVITY)),
                "correct thickness or resistance, or add a material of its own with its source");
    }
}
