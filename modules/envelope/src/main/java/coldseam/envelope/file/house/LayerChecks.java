package coldseam.envelope.file.house;

import coldseam.envelope.Assembly;
import coldseam.envelope.Control;
import coldseam.envelope.Layer;
import coldseam.envelope.Material;
import coldseam.envelope.Role;
import coldseam.files.Faults;
import coldseam.files.Named;
import coldseam.files.Words;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.Format;
import coldseam.files.quantity.Phrase;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;

/** What of a layer can be checked only with the material that fills it, and beside its neighbours. */
record LayerChecks(FileHouse house, Faults faults, MaterialChecks materials) {

    /**
     * How many times less or more than its material a layer of declared resistance may conduct: products of one kind differ by
     * less; what differs by more is another material (judgement).
     */
    private static final double LIKE_ITS_MATERIAL = 2;

    /** m²·K/W: 0.7 m of good board; no house is known to have more (judgement). */
    private static final double MOST = 20;

    /** W/(m·K); members that conduct more are of metal, whose share is that of thin sheets. */
    private static final double METAL = 10;

    /** Least share of members: webs of I-joists, and of metal sheets (common practice, no source). */
    private static final double LEAST_SHARE = 0.01;

    private static final double LEAST_SHARE_OF_METAL = 0.0005;

    /** Least share of wood that carries: slender studs far apart (common practice, no source). */
    private static final double LEAST_SHARE_OF_STRUCTURE = 0.04;

    /** With more members than filling the layer is of the members' material (judgement). */
    private static final double MOST_SHARE = 0.6;

    /** m; a sheet thinner than this carries no wall, roof or floor by itself: the thinnest of solid timber (judgement). */
    private static final double THINNEST_THAT_CARRIES = 0.04;

    /** m; members thinner than these are battens on what carries (judgement). */
    private static final double THINNEST_MEMBERS = 0.08;

    /** m of still air that resists vapour as much: the thinnest plaster that is said to slow it has 80 mm (judgement). */
    private static final double SLOWS_VAPOUR = 0.05;

    /** m; vacuum panels begin here (common practice, no source). */
    private static final double THINNEST_PANEL = 0.005;

    /** m that a fastener's head holds on to (judgement). */
    private static final double UNDER_THE_HEAD = 0.015;

    /** Adds a fault for each layer that cannot be what it says. */
    static void check(FileHouse house, Faults faults) {
        LayerChecks checks = new LayerChecks(house, faults, new MaterialChecks(house, faults));
        checks.materials.check();
        house.assemblies().forEach(assembly -> {
            checks.layers(assembly.value().layers());
            checks.carries(assembly.value().layers());
            checks.carriedByLinings(assembly.value().layers());
            checks.coats(assembly.value().layers());
            checks.whole(assembly);
            assembly.value().fasteners().ifPresent(fasteners -> checks.fasteners(assembly, fasteners));
        });
    }

    private void whole(Named<FileAssembly> assembly) {
        double resistance = assembly.value().layers().sumOfDouble(this::resistance);
        if (resistance > MOST) {
            faults.add(
                    assembly.place(),
                    "the layers resist more than those of any house",
                    Phrase.of(resistance, Dimension.RESISTANCE),
                    Phrase.of("at most ")
                            .and(MOST, Dimension.RESISTANCE)
                            .and("; usual: ")
                            .and("3", 3, Dimension.RESISTANCE)
                            .and(" to ")
                            .and("12 m²·K/W", 12, Dimension.RESISTANCE),
                    "check thicknesses, conductivities and their units");
        }
    }

    /** m²·K/W where it is thickest; an air layer's is nothing beside what is looked for. */
    private double resistance(FileLayer layer) {
        if (layer.resistance().isPresent()) {
            return layer.resistance().getAsDouble();
        }
        return isAir(layer)
                ? 0
                : material(layer.material())
                        .map(filling -> layer.taper().map(Layer.Taper::thickest).orElse(layer.thickness())
                                / filling.conductivity())
                        .orElse(0.0);
    }

    private void layers(ImmutableList<FileLayer> layers) {
        layers.forEachWithIndex((layer, i) -> material(layer.material()).ifPresent(filling -> {
            boolean air = filling.isAir() || layer.part() == Role.AIR_LAYER;
            if (air) {
                air(layer, filling);
            } else {
                materials.thickness(layer.material(), layer.role(), layer.thickness(), layer.place());
                vacuum(layer, filling);
                layer.resistance().ifPresent(declared -> resistance(layer, filling, declared));
                cavity(layers, i, filling);
                coat(layers, i, filling);
                vapour(layer, filling);
            }
            layer.framing()
                    .ifPresent(framing -> material(framing.material())
                            .ifPresent(members -> framing(layer, members, framing.taken())));
            if (air && isWellVentilated(layer) && layers.take(i).allSatisfy(each -> each.part() == Role.MEMBRANE)) {
                faults.add(
                        layer.place(),
                        "a build-up has nothing that holds heat back between the rooms and outdoor air",
                        "a well ventilated air layer as the innermost but for membranes",
                        "write the layers from inside to outside");
            }
            if (air && i > 0 && isAir(layers.get(i - 1))) {
                faults.add(
                        layer.place(),
                        "two air layers touch",
                        "\"" + layer.material() + "\" beside \""
                                + layers.get(i - 1).material() + "\"",
                        "write them as one layer, as thick as both; nothing parts them");
            }
        }));
    }

    /** Panels of one size, which nobody saws: a coat or a film holds no vacuum, and none is cut to falls. */
    private void vacuum(FileLayer layer, Material filling) {
        if (!filling.holdsVacuum()) {
            return;
        }
        if (layer.thickness() < THINNEST_PANEL) {
            faults.add(
                    layer.place(),
                    "what conducts so little holds a vacuum, and is a panel",
                    Phrase.of(layer.thickness(), Dimension.THICKNESS)
                            .and(" of \"" + layer.material() + "\" at ")
                            .and(filling.conductivity(), Dimension.CONDUCTIVITY),
                    Phrase.of("at least ").and(THINNEST_PANEL, Dimension.THICKNESS),
                    "correct thickness or conductivity; what a coat or a film adds is no layer's resistance");
        }
        layer.taper()
                .ifPresent(taper -> faults.add(
                        layer.place(),
                        "what holds a vacuum is not cut",
                        "a taper of \"" + layer.material() + "\"",
                        "remove taper, and cut another layer to falls"));
    }

    /** The house's own materials first; empty for one that is unknown, which is another fault. */
    private Optional<Material> material(String name) {
        return house.materials()
                .detectOptional(each -> each.name().equals(name))
                .map(each -> each.value().material(name))
                .or(() -> MaterialLibrary.named(name));
    }

    private boolean isAir(FileLayer layer) {
        return layer.part() == Role.AIR_LAYER
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
                    Phrase.of("resistance: ").and(layer.resistance().getAsDouble(), Dimension.RESISTANCE),
                    "remove resistance; where one of its faces is bright, write air: {low-emissivity: 0.05}");
        }
        if (layer.taper().isPresent()) {
            faults.add(
                    layer.place(),
                    "an air layer is of even thickness",
                    "a taper",
                    "remove taper, and write its least thickness");
        }
    }

    private void vapour(FileLayer layer, Material filling) {
        filling.vapourResistanceFactor().ifPresent(factor -> {
            double slows = factor * layer.thickness();
            if (layer.controls().contains(Control.VAPOUR)
                    && filling.canControl(Control.VAPOUR)
                    && slows < SLOWS_VAPOUR) {
                faults.add(
                        layer.place(),
                        "a layer that controls vapour slows it more than a little air does",
                        Phrase.of(layer.thickness(), Dimension.THICKNESS)
                                .and(" of a vapour-resistance-factor of " + MaterialChecks.factor(factor) + ", as ")
                                .and(slows, Dimension.THICKNESS)
                                .and(" of air"),
                        Phrase.of("as ").and(SLOWS_VAPOUR, Dimension.THICKNESS).and(" of air, or more"),
                        "correct thickness or factor, or take vapour out of its controls");
            }
        });
    }

    /** A coat, or a sheet glued on, whose only neighbours are batts or loose fill without members: lath and boards are fixed to those. */
    private void coat(ImmutableList<FileLayer> layers, int i, Material filling) {
        if (filling.carries() != Material.Carries.COAT
                || layers.get(i).framing().isPresent()) {
            return;
        }
        Optional<FileLayer> behind =
                layers.take(i).reject(LayerChecks::isMembrane).getLastOptional();
        Optional<FileLayer> before =
                layers.drop(i + 1).reject(LayerChecks::isMembrane).getFirstOptional();
        Optional<FileLayer> fill = behind.or(() -> before).filter(this::isFill);
        boolean held = behind.isPresent() && before.filter(this::isFirm).isPresent();
        if (fill.isPresent() && !held) {
            faults.add(
                    layers.get(i).place(),
                    "a coat, or a sheet glued on, has something firm along its whole face",
                    layers.get(i).material() + " on " + fill.get().material(),
                    "on a board, boards or masonry",
                    "write what is between them as a layer of its own, or a board in the place of "
                            + fill.get().material());
        }
    }

    /** Whether it holds nothing that is put on it, be it between. */
    private static boolean isMembrane(FileLayer layer) {
        return layer.part() == Role.MEMBRANE;
    }

    private boolean isFill(FileLayer layer) {
        return layer.framing().isEmpty()
                && material(layer.material())
                        .filter(each -> each.carries() == Material.Carries.FILL)
                        .isPresent();
    }

    /** Whether a sheet before it holds on it, as in a roof that is turned round. */
    private boolean isFirm(FileLayer layer) {
        return (layer.part() == Role.STRUCTURE || layer.part() == Role.INSULATION) && !isFill(layer) && !isAir(layer);
    }

    /** What fills the cavity of masonry is of the structure, for floors and lintels may bear on both leaves; other filling carries nothing. */
    private void cavity(ImmutableList<FileLayer> layers, int i, Material filling) {
        FileLayer layer = layers.get(i);
        boolean fills = i > 0
                && i + 1 < layers.size()
                && isLeaf(layers.get(i - 1))
                && isLeaf(layers.get(i + 1))
                && layer.framing().isEmpty();
        if (layer.part() == Role.STRUCTURE
                && !fills
                && layer.framing().isEmpty()
                && filling.conductivity() <= Layer.CARRIES_NOTHING) {
            faults.add(
                    layer.place(),
                    "a structure carries, and insulation alone does not",
                    "structure of " + layer.material(),
                    "between two leaves of masonry",
                    "write what stands in it as framing, or give it the role insulation");
        }
        if (layer.part() == Role.INSULATION
                && fills
                && layers.anySatisfy(other -> other != layer && other.part() == Role.INSULATION)) {
            faults.add(
                    layer.place(),
                    "what fills the cavity between two leaves that carry is of the structure, where other insulation runs past both",
                    Phrase.of("role: insulation for ")
                            .and(layer.thickness(), Dimension.THICKNESS)
                            .and(" of " + layer.material() + " between "
                                    + layers.get(i - 1).material() + " and "
                                    + layers.get(i + 1).material()),
                    Phrase.of("role: structure"),
                    "write role: structure here; or give a leaf that carries nothing the role cladding");
        }
    }

    private boolean isLeaf(FileLayer layer) {
        return layer.role() == FilePart.STRUCTURE
                && layer.framing().isEmpty()
                && layer.thickness() >= THINNEST_THAT_CARRIES
                && material(layer.material())
                        .filter(material -> !material.isAir() && material.conductivity() > Layer.CARRIES_NOTHING)
                        .isPresent();
    }

    /** Studs called insulation between sheets called structure: sections would take the sheets for what carries. */
    private void carries(ImmutableList<FileLayer> layers) {
        if (layers.anySatisfy(layer -> layer.part() == Role.STRUCTURE
                && (layer.framing().isPresent() || layer.thickness() >= THINNEST_THAT_CARRIES))) {
            return;
        }
        layers.select(layer -> layer.part() == Role.INSULATION
                        && layer.thickness() >= THINNEST_MEMBERS
                        && layer.framing()
                                .filter(framing -> framing.taken() >= LEAST_SHARE_OF_STRUCTURE)
                                .isPresent())
                .take(1)
                .forEach(layer -> faults.add(
                        layer.place(),
                        "studs, joists and rafters carry, with what is between them",
                        Phrase.of("role: insulation for ")
                                .and(layer.thickness(), Dimension.THICKNESS)
                                .and(" of " + layer.material() + " between "
                                        + layer.framing().orElseThrow().material()
                                        + ", and nothing else that carries"),
                        Phrase.of("role: structure; or at least ")
                                .and(THINNEST_THAT_CARRIES, Dimension.THICKNESS)
                                .and(" of another layer with it"),
                        "write role: structure here, and role: insulation for what runs past the members; or give what"
                                + " carries instead the role structure"));
    }

    /** Sheathing is of the structure beside its members, and carries nothing without them. */
    private void carriedByLinings(ImmutableList<FileLayer> layers) {
        ImmutableList<FileLayer> structure = layers.select(layer -> layer.part() == Role.STRUCTURE && !isAir(layer));
        if (structure.allSatisfy(layer -> layer.framing().isEmpty()
                && material(layer.material())
                        .filter(each -> each.carries().nothing())
                        .isPresent())) {
            structure
                    .take(1)
                    .forEach(layer -> faults.add(
                            layer.place(),
                            "a structure carries; linings, plasters, screeds and sheets alone do not",
                            "structure of " + layer.material(),
                            "write what stands in it as framing, or what carries it as a layer of its own"));
        }
    }

    /** A lining or a weather face ends a build-up; amid it details would draw it where none is, and take it for the end. */
    private void coats(ImmutableList<FileLayer> layers) {
        layers.forEachWithIndex((layer, i) -> {
            ImmutableList<Role> inside = layers.take(i).collect(FileLayer::part);
            ImmutableList<Role> outside = layers.drop(i + 1).collect(FileLayer::part);
            boolean amid = switch (layer.part()) {
                case FINISH ->
                    inside.contains(Role.STRUCTURE) && outside.contains(Role.INSULATION)
                            || inside.contains(Role.INSULATION) && outside.contains(Role.STRUCTURE);
                case CLADDING -> inside.contains(Role.STRUCTURE) && outside.contains(Role.INSULATION);
                case STRUCTURE, INSULATION, AIR_LAYER, MEMBRANE -> false;
            };
            if (amid) {
                faults.add(
                        layer.place(),
                        "no lining or cladding lies between what carries and what insulates",
                        "role: " + Words.word(layer.role()) + " for " + layer.material(),
                        "role: old coat for render, plaster or siding that stays under new boards, structure for sheathing",
                        "write role: old coat, or role: structure");
            }
        });
    }

    private void framing(FileLayer layer, Material members, double share) {
        if (members.isAir() || members.insulates()) {
            faults.add(
                    layer.place(),
                    "members that bridge a layer are solid",
                    "framing of " + members.name(),
                    members.isAir()
                            ? "write material: air for the layer, and what stands in it as framing"
                            : "write the insulation as the layer, and what stands in it as framing");
            return;
        }
        double least = members.conductivity() > METAL
                ? LEAST_SHARE_OF_METAL
                : layer.part() == Role.STRUCTURE ? LEAST_SHARE_OF_STRUCTURE : LEAST_SHARE;
        if (share < least || share > MOST_SHARE) {
            faults.add(
                    layer.place(),
                    "members have no such share of a layer with the role " + Words.word(layer.role()),
                    percent(share) + " of " + members.name(),
                    percent(least) + " to " + percent(MOST_SHARE) + "; usual: wood 9 to 25 %, steel sheet 0.1 to 0.5 %",
                    "count plates, lintels and corners in; webs of I-joists are the framing of a layer with the role"
                            + " insulation");
        }
    }

    /** With its small digits, which are what is wrong. */
    private static String percent(double share) {
        return Format.of("%.3g %%", 100 * share);
    }

    private void fasteners(Named<FileAssembly> assembly, FileAssembly.FileFasteners fasteners) {
        material(fasteners.material())
                .filter(shaft -> shaft.isAir() || shaft.insulates())
                .ifPresent(shaft -> faults.add(
                        assembly.place(),
                        "a fastener's shaft is solid",
                        "fasteners of " + shaft.name(),
                        "write what the shaft is of, such as stainless steel"));
        Optional<Assembly> built = built(assembly);
        built.flatMap(Assembly::vacuumPierced)
                .ifPresent(panel -> faults.add(
                        assembly.place(),
                        "no fastener goes through what holds a vacuum",
                        "fasteners through \"" + panel.material().name() + "\"",
                        "remove fasteners, and say what holds the panels beside them as framing of their layer; or take boards that"
                                + " may be screwed through"));
        double insulation =
                built.map(each -> each.pierced().sumOfDouble(Layer::thickness)).orElse(Double.POSITIVE_INFINITY);
        if (fasteners.recess() > 0 && insulation - fasteners.recess() < UNDER_THE_HEAD) {
            faults.add(
                    assembly.place(),
                    "a fastener's head has insulation to hold",
                    Phrase.of("a recess of ")
                            .and(fasteners.recess(), Dimension.THICKNESS)
                            .and(" in ")
                            .and(insulation, Dimension.THICKNESS),
                    Phrase.of("up to ").and(Math.max(0, insulation - UNDER_THE_HEAD), Dimension.THICKNESS),
                    "correct the recess");
        }
    }

    /** Empty where a material is unknown, which is another fault. */
    private Optional<Assembly> built(Named<FileAssembly> assembly) {
        return assembly.value().materials().allSatisfy(name -> material(name).isPresent())
                ? Optional.of(assembly.value()
                        .assembly(assembly.name(), name -> material(name).orElseThrow()))
                : Optional.empty();
    }

    private static boolean isWellVentilated(FileLayer layer) {
        return layer.air()
                .filter(air -> air.ventilation() == Layer.Ventilation.WELL_VENTILATED)
                .isPresent();
    }

    private void resistance(FileLayer layer, Material filling, double declared) {
        double conductivity = layer.thickness() / declared;
        double ratio = conductivity / filling.conductivity();
        double least = Math.max(1 / LIKE_ITS_MATERIAL, MaterialChecks.least(filling));
        if (ratio >= least && ratio <= LIKE_ITS_MATERIAL) {
            return;
        }
        faults.add(
                layer.place(),
                "the declared resistance does not go with the layer's thickness and material",
                Phrase.of(declared, Dimension.RESISTANCE)
                        .and(" on ")
                        .and(layer.thickness(), Dimension.THICKNESS)
                        .and(", which is ")
                        .and(conductivity, Dimension.CONDUCTIVITY),
                Phrase.of(layer.thickness() / filling.conductivity() / LIKE_ITS_MATERIAL, Dimension.RESISTANCE)
                        .and(" to ")
                        .and(layer.thickness() / filling.conductivity() / least, Dimension.RESISTANCE)
                        .and("; usual of \"" + filling.name() + "\": ")
                        .and(filling.conductivity(), Dimension.CONDUCTIVITY),
                "correct thickness or resistance, or add a material of its own with its source");
    }
}
