package coldseam.audit.assumed;

import coldseam.audit.Audit;
import coldseam.audit.BridgeSheet;
import coldseam.envelope.Assembly;
import coldseam.envelope.Layer;
import coldseam.envelope.Material;
import coldseam.envelope.file.house.MaterialLibrary;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.set.ImmutableSet;

/** What is said of the materials in use: those of all layers and of the framing in them, but for air. */
public final class Materials {

    /** W/(m·K); foams and fibres conduct more (common practice, no source). */
    private static final double STILL = 0.018;

    /**
     * Those of the house file that are said to insulate, to control air, water or vapour, or to bear ground, splash, load or rain,
     * beyond what their values or the built-in list say.
     */
    public static final Assumption<Material> OVERRIDE = audit -> used(audit).select(Materials::isOverride);

    /** Those of the built-in list that count as insulation by its word alone, such as blocks that carry. */
    public static final Assumption<Material> INSULATES_BY_SOURCE = audit -> used(audit)
            .select(each ->
                    MaterialLibrary.isBuiltIn(each) && each.insulatesSource().isPresent() && each.insulates());

    /** Those of the house file that conduct less than boards without a vacuum do. */
    public static final Assumption<Material> STILL_AIR = audit ->
            used(audit).select(material -> material.conductivity() < STILL && !MaterialLibrary.isBuiltIn(material));

    /**
     * W/(m·K); fibres and foams that air gets into conduct as much as it, 0.025 at 10 °C (ISO 10456:2007 table 4, from memory), and what
     * goes along them and shines through them, as much as 0.030 together (common practice, no source).
     */
    private static final double AIR_AND_FIBRES = 0.029;

    /** Vapour resistance factor; foams that keep their gas have more (common practice, no source). */
    private static final double KEEPS_GAS = 20;

    /**
     * Those of the house file, or of a layer's declared resistance, that conduct less than what air gets into does, since they are open
     * to vapour or nobody says: only what keeps another gas, or holds air in the smallest pores, conducts as little.
     */
    public static final Assumption<Material> GASEOUS = audit -> used(audit)
            .select(material -> material.conductivity() >= STILL
                    && material.conductivity() < AIR_AND_FIBRES
                    && material.vapourResistanceFactor().orElse(0) < KEEPS_GAS
                    && !MaterialLibrary.isBuiltIn(material));

    /** Times as much; what products of one name differ by is less, the usual one taken for all (common practice, no source). */
    private static final double UNUSUAL = 1.25;

    /**
     * Those of the house file, or of a layer's declared resistance, that conduct much less than what the built-in list, or a detail
     * that draws it, has by that name; where it is told what was found, also those that conduct much more: they lost it before.
     */
    public static final Assumption<Unlike> UNLIKE = audit -> used(audit)
            .reject(MaterialLibrary::isBuiltIn)
            .reject(STILL_AIR.in(audit).newWithAll(GASEOUS.in(audit))::contains)
            .flatCollect(material -> usual(audit, material)
                    .filter(usual -> material.conductivity() * UNUSUAL < usual
                            || material.conductivity() > usual * UNUSUAL
                                    && audit.found().isPresent())
                    .map(usual -> Lists.immutable.of(new Unlike(material, usual)))
                    .orElse(Lists.immutable.empty()));

    /** W/(m·K); concretes that span rooms conduct more, by half and more (common practice, no source). */
    private static final double LIGHTER_THAN_CONCRETE = 1;

    /** W/(m·K); filled blocks that carry conduct as much (common practice, no source). */
    private static final double LIGHTER_THAN_BLOCKS = 0.08;

    /**
     * Those of the house file that carry by themselves and conduct less than what carries as they do: concrete, or blocks where the
     * file says that they stand; not wood.
     */
    public static final Assumption<Material> CARRIES_LIGHTLY = audit -> {
        ImmutableSet<Material> alone = audit.house()
                .assemblies()
                .valuesView()
                .flatCollect(Assembly::structure)
                .select(layer -> layer.framing().isEmpty())
                .collect(Layer::material)
                .toSet()
                .toImmutable();
        return used(audit)
                .select(material ->
                        alone.contains(material) && !MaterialLibrary.isBuiltIn(material) && !material.insulates())
                .select(material -> switch (material.carries()) {
                    case SPANS -> material.conductivity() < LIGHTER_THAN_CONCRETE;
                    case STANDS -> material.conductivity() < LIGHTER_THAN_BLOCKS;
                    default -> false;
                });
    };

    /** Those that hold a vacuum, of the house file or of the built-in list: a screw ends it. */
    public static final Assumption<Material> VACUUM = audit -> used(audit).select(Material::holdsVacuum);

    /** Conductivities that are generic ones, of the built-in list or by the house file's own words. */
    public static final Assumption<Generic> WITHOUT_PRODUCT = audit -> {
        ImmutableList<Material> used = used(audit);
        int generic = used.count(
                each -> MaterialLibrary.isBuiltIn(each) || !each.provenance().isDeclared());
        return generic > 0 ? Lists.immutable.of(new Generic(generic, used.size())) : Lists.immutable.empty();
    };

    private Materials() {}

    /**
     * A material that has little of another but its name.
     *
     * @param usual W/(m·K), by that name
     */
    public record Unlike(Material material, double usual) {}

    /**
     * How many conductivities are generic.
     *
     * @param all how many are in use
     */
    public record Generic(int generic, int all) {}

    static ImmutableList<Material> used(Audit audit) {
        return audit.house()
                .assemblies()
                .valuesView()
                .asLazy()
                .flatCollect(Assembly::materials)
                .concatenate(audit.house().materials().valuesView())
                .reject(Material::isAir)
                .toSet()
                .toImmutableSortedListBy(Material::name);
    }

    /** W/(m·K). */
    private static Optional<Double> usual(Audit audit, Material material) {
        return Lists.immutable
                .<BridgeSheet<?>>ofAll(audit.sheets())
                .newWithAll(audit.pointSheets())
                .collect(sheet -> sheet.result().detail().drawing().material(material.name()))
                .detectOptional(Optional::isPresent)
                .orElseGet(() -> MaterialLibrary.called(material.name()))
                .map(Material::conductivity);
    }

    private static boolean isOverride(Material material) {
        return !MaterialLibrary.isBuiltIn(material)
                && (material.insulatesSource().isPresent()
                        || (material.controls().notEmpty() || material.bears().notEmpty())
                                && MaterialLibrary.materials()
                                        .noneSatisfy(like -> like.controls().equals(material.controls())
                                                && like.bears().equals(material.bears())));
    }
}
