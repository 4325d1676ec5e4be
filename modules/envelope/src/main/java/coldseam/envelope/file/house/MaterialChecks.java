package coldseam.envelope.file.house;

import coldseam.envelope.Material;
import coldseam.envelope.Role;
import coldseam.files.Faults;
import coldseam.files.Named;
import coldseam.files.Position;
import coldseam.files.Words;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.Format;
import coldseam.files.quantity.Phrase;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.eclipse.collections.api.list.ImmutableList;

/** Whether a house's or a detail's own materials are like the built-in ones whose names they take, and which thicknesses there are of each. */
public final class MaterialChecks {

    /**
     * How many times more or less than the built-in material one of the same name may conduct: kinds of one material differ by
     * less (judgement; bricks of 0.3 to 1.2 W/(m·K) have one name).
     */
    private static final double ALIKE = 3;

    /** The same of insulations, downwards: the best of a kind conducts a fifth less than the usual one (judgement). */
    private static final double INSULATION_ALIKE = 1.4;

    /** The same of what spans or is wood: concretes, metals and woods of one name differ less than masonry does (judgement). */
    private static final double SPANNING_ALIKE = 1.5;

    /**
     * How many times more or less vapour than the built-in material one of the same name may hold back: wood, foams and sheets
     * of one kind differ by as much (judgement).
     */
    private static final double VAPOUR_ALIKE = 10;

    /** m; sheets, foils and mats are thinner (judgement). */
    private static final double THICKEST_MEMBRANE = 0.03;

    /** m; the thickest of insulating plasters, put on in several coats (common practice, no source). */
    private static final double THICKEST_COAT = 0.15;

    /** Words in the names of wood that carries; a name decides nothing, it only asks. */
    private static final Pattern WOOD =
            Pattern.compile("\\b(softwood|hardwood|timber|glulam|logs?|spruce|pine|fir|larch|oak|beech)\\b");

    /** Names of a gas, or of a space that holds one; not of a solid that is made with it. */
    private static final Pattern GAS = Pattern.compile(
            "(?!.*(board|panel|foam|wool|batt|block|bead|blanket|aerogel))(.*\\W)?(air|argon|krypton|xenon)(\\W+(gap|space|layer|cavity|filling))?",
            Pattern.CASE_INSENSITIVE);

    private final FileHouse house;
    private final Faults faults;

    MaterialChecks(FileHouse house, Faults faults) {
        this.house = house;
        this.faults = faults;
    }

    /**
     * Adds a fault for each material that only borrows a name or leaves open whether it is timber, and for edge insulation that
     * does not insulate.
     */
    void check() {
        house.materials().forEach(own -> {
            like(own.name(), own.value().conductivity(), own.place(), faults);
            vapour(own);
            timber(own);
        });
        if (house.body() instanceof FileBody.FileStoreys storeys) {
            bases(storeys).forEach(this::edge);
        }
    }

    private static ImmutableList<FileBase> bases(FileBody.FileStoreys body) {
        ImmutableList<FileBody.FileStack> stacks =
                body.wings().<FileBody.FileStack>collect(Named::value).newWith(body);
        return stacks.flatCollect(each -> each.otherBases()
                .newWith(each.base())
                .newWithAll(each.storeys()
                        .flatCollect(storey -> storey.base().stream().toList())));
    }

    /**
     * Adds a fault where a material only borrows a built-in one's name, or is a gas, which insulates by not moving alone.
     *
     * @param conductivity W/(m·K)
     */
    public static void like(String name, double conductivity, Position place, Faults faults) {
        if (GAS.matcher(name).matches() && !MaterialLibrary.isAir(name) && conductivity <= Material.INSULATES_UP_TO) {
            faults.add(
                    place,
                    "air and other gases move: what they resist follows from the layer (ISO 6946)",
                    conductivity(conductivity).and(" of \"" + name + "\""),
                    Phrase.of("material: air, with the role air layer"),
                    "remove this material; a board that holds a gas is called a board");
            return;
        }
        MaterialLibrary.called(name).ifPresent(known -> {
            double least = known.conductivity() * least(known);
            double most = known.conductivity() * ALIKE;
            if (conductivity < least || conductivity > most) {
                faults.add(
                        place,
                        "a material of a built-in one's name conducts like it",
                        conductivity(conductivity).and(" of \"" + name + "\""),
                        conductivity(least)
                                .and(" to ")
                                .and(conductivity(most))
                                .and("; built in: ")
                                .and(conductivity(known.conductivity())),
                        "correct it, or give the product a name of its own");
            }
        });
    }

    /** The least share of a built-in material's conductivity that one of its name, or a layer of it, may have. */
    static double least(Material known) {
        boolean spans = known.carries() == Material.Carries.SPANS || known.timber();
        return 1 / (known.insulates() ? INSULATION_ALIKE : spans ? SPANNING_ALIKE : ALIKE);
    }

    private void vapour(Named<FileMaterial> own) {
        OptionalDouble built = MaterialLibrary.called(own.name())
                .map(Material::vapourResistanceFactor)
                .orElse(OptionalDouble.empty());
        OptionalDouble said = own.value().material("").vapourResistanceFactor();
        if (built.isEmpty() || said.isEmpty() || Double.isInfinite(built.getAsDouble())) {
            return;
        }
        double least = Math.max(1, built.getAsDouble() / VAPOUR_ALIKE);
        double most = built.getAsDouble() * VAPOUR_ALIKE;
        if (said.getAsDouble() < least || said.getAsDouble() > most) {
            faults.add(
                    own.place(),
                    "a material of a built-in one's name holds vapour back like it",
                    Double.isInfinite(said.getAsDouble())
                            ? "vapour-tight: true"
                            : "vapour-resistance-factor: " + factor(said.getAsDouble()),
                    factor(least) + " to " + factor(most) + "; built in: " + factor(built.getAsDouble()),
                    "correct it, or give the product a name of its own");
        }
    }

    /** A vapour resistance factor, as files have them. */
    static String factor(double value) {
        return Format.of(value < 10 ? "%.2g" : "%.0f", value);
    }

    private void timber(Named<FileMaterial> own) {
        Optional<FileMaterial> known = MaterialLibrary.filed(own.name());
        Optional<Boolean> said = own.value().timber();
        Optional<Boolean> builtIn = known.map(each -> each.timber().orElse(false));
        if (said.isPresent() && builtIn.isPresent() && !said.equals(builtIn)) {
            faults.add(
                    own.place(),
                    "a material of a built-in one's name is timber where that is, and only there",
                    "timber: " + said.get(),
                    "timber: " + builtIn.get(),
                    "remove timber, or give the product a name of its own");
        }
        Optional<Material.Carries> carries =
                known.map(each -> each.saidToCarry().orElse(Material.Carries.SPANS));
        own.value()
                .carries()
                .filter(it -> carries.isPresent() && it != carries.get())
                .ifPresent(it -> faults.add(
                        own.place(),
                        "a material of a built-in one's name carries what that does",
                        "carries: " + Words.word(it),
                        "carries: " + Words.word(carries.get()),
                        "remove carries, or give the product a name of its own"));
        if (said.isEmpty()
                && own.value().carries().isEmpty()
                && known.isEmpty()
                && own.value().mayBeTimber()
                && WOOD.matcher(own.name().toLowerCase(Locale.ROOT)).find()
                && carriesAlone(own.name())) {
            faults.add(
                    own.place(),
                    "a structure of a material that is called like wood is timber or masonry: floors and lintels hang on it",
                    "\"" + own.name() + "\" without timber",
                    "timber: true or timber: false",
                    "say which in the material");
        }
    }

    private boolean carriesAlone(String material) {
        return house.assemblies()
                .anySatisfy(assembly -> assembly.value()
                        .layers()
                        .anySatisfy(layer -> layer.part() == Role.STRUCTURE
                                && layer.framing().isEmpty()
                                && layer.material().equals(material)));
    }

    private void edge(FileBase base) {
        base.edge()
                .filter(edge -> named(edge.material(), each -> Optional.of(each.material("")))
                        .filter(each -> !each.insulates())
                        .isPresent())
                .ifPresent(edge -> faults.add(
                        base.place(),
                        "edge insulation insulates",
                        "edge of " + edge.material(),
                        "name an insulation that bears the ground, or remove edge"));
    }

    /**
     * Adds a fault where there is no layer so thin or so thick of a material.
     *
     * @param thickness m
     */
    void thickness(String material, FilePart role, double thickness, Position place) {
        double thinnest = named(
                        material, each -> each.thinnest().stream().boxed().findFirst())
                .orElse(0.0);
        double thickest = named(
                        material, each -> each.thickest().stream().boxed().findFirst())
                .orElse(
                        role == FilePart.MEMBRANE
                                ? THICKEST_MEMBRANE
                                : named(material, FileMaterial::saidToCarry)
                                        .filter(Material.Carries.COAT::equals)
                                        .map(coat -> THICKEST_COAT)
                                        .orElse(Double.POSITIVE_INFINITY));
        if (thickness < thinnest || thickness > thickest) {
            faults.add(
                    place,
                    "there is no such layer of " + material
                            + (role == FilePart.MEMBRANE ? " as a " : " with the role ")
                            + Words.word(role),
                    Phrase.of(thickness, Dimension.THICKNESS),
                    (thinnest > 0 ? Phrase.of(thinnest, Dimension.THICKNESS).and(" to ") : Phrase.of("up to "))
                            .and(thickest, Dimension.THICKNESS),
                    "check the unit, or give a material of its own with thinnest, thickest and a source");
        }
    }

    /** Something of a material: of the house's own where it says it, else of the built-in one's. */
    private <T> Optional<T> named(String material, Function<FileMaterial, Optional<T>> what) {
        return house.materials()
                .detectOptional(each -> each.name().equals(material))
                .flatMap(each -> what.apply(each.value()))
                .or(() -> MaterialLibrary.filed(material).flatMap(what));
    }

    private static Phrase conductivity(double value) {
        return Phrase.of(value, Dimension.CONDUCTIVITY);
    }
}
