package coldseam.audit.assumed;

import coldseam.assemblies.HeatFlow;
import coldseam.assemblies.OuterSurface;
import coldseam.assemblies.Transmittance;
import coldseam.audit.Audit;
import coldseam.envelope.Assembly;
import coldseam.envelope.Exposure;
import coldseam.envelope.Layer;
import coldseam.envelope.Limits;
import coldseam.envelope.Role;
import coldseam.envelope.shell.Surface;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/** What fills build-ups, and what lies outermost or thinnest in them. */
public final class Layering {

    /** m; sheets that stand in the sun for good are thicker, or of metal (common practice, no source). */
    private static final double SHEET = 0.001;

    /** Of what is painted or covered with dust more is sent out (common practice, no source). */
    private static final double BRIGHT_FROM = 0.5;

    /** Air inside the insulation that lies between what carries: outdoor air that gets in there passes all boards by. */
    public static final Assumption<Cavity> CAVITY =
            audit -> OfHouse.assemblies(audit, surface -> true).flatCollect(Layering::cavities);

    /** Those outdoors whose outermost layer is a thin sheet, in sun and wind. */
    public static final Assumption<Assembly> NAKED =
            audit -> OfHouse.assemblies(audit, surface -> surface.exposure().kind() == Exposure.Kind.OUTDOORS)
                    .select(Layering::isNaked)
                    .toImmutableSortedListBy(Assembly::name);

    /** Flat roofs and decks that miss the limit of their U where what is cut to falls is thinnest, though not as a whole. */
    public static final Assumption<Thin> THIN_FALLS =
            audit -> audit.shell().surfaces().flatCollect(surface -> thin(audit, surface));

    /** Air outside of all insulation that is not said to let outdoor air in: it and what lies outside it then count in U. */
    public static final Assumption<Cavity> CLOSED =
            audit -> OfHouse.assemblies(audit, surface -> surface.exposure().kind() == Exposure.Kind.OUTDOORS)
                    .flatCollect(assembly -> assembly.layers()
                            .drop(assembly.layers().detectLastIndex(Layer::insulates) + 1)
                            .select(layer -> layer.air()
                                    .filter(air -> air.ventilation() == Layer.Ventilation.UNVENTILATED)
                                    .isPresent())
                            .collect(air -> new Cavity(assembly, air)))
                    .reject(closed -> closed.assembly().layers().noneSatisfy(Layer::insulates));

    /** What counts for a bright face: air beside it resists the more. */
    public static final Assumption<Cavity> BRIGHT = audit -> OfHouse.assemblies(audit, surface -> true)
            .flatCollect(assembly -> assembly.insideVentilation()
                    .select(layer -> layer.air()
                            .filter(air -> air.lowEmissivity() < BRIGHT_FROM)
                            .isPresent())
                    .collect(air -> new Cavity(assembly, air)));

    private Layering() {}

    /** Air in a build-up. */
    public record Cavity(Assembly assembly, Layer air) {}

    /**
     * A surface cut to falls.
     *
     * @param transmittance W/(m²·K), where it is thinnest
     */
    public record Thin(Surface surface, double transmittance) {}

    private static ImmutableList<Cavity> cavities(Assembly assembly) {
        ImmutableList<Layer> layers = assembly.layers();
        int from = layers.detectIndex(layer -> layer.role() == Role.STRUCTURE);
        int to = layers.detectLastIndex(layer -> layer.role() == Role.STRUCTURE);
        return from < 0 || !layers.drop(to).anySatisfy(Layer::insulates)
                ? Lists.immutable.empty()
                : layers.take(to)
                        .drop(from)
                        .select(layer -> layer.air().isPresent())
                        .collect(air -> new Cavity(assembly, air));
    }

    private static boolean isNaked(Assembly assembly) {
        Layer last = assembly.layers().getLast();
        return last.role() == Role.MEMBRANE
                && last.thickness() < SHEET
                && last.material().conductivity() < Carrying.METAL;
    }

    private static ImmutableList<Thin> thin(Audit audit, Surface surface) {
        double limit = audit.house()
                .limits()
                .surfaces()
                .of(surface.use(), surface.exposure().kind())
                .transmittance();
        return Lists.immutable.fromStream(surface.assembly().stream()
                .map(assembly -> Transmittance.of(
                        assembly, HeatFlow.through(surface.normal()), OuterSurface.of(surface.exposure())))
                .filter(u -> !Limits.over(u.corrected(), limit))
                .flatMap(u -> u.taper().stream())
                .map(taper -> new Thin(surface, 1 / taper.rest()))
                .filter(thin -> Limits.over(thin.transmittance(), limit)));
    }
}
