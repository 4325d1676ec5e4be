package coldseam.audit.rules;

import coldseam.audit.Breach.Evidence;
import coldseam.audit.BridgeSheet;
import coldseam.audit.Finding.Severity;
import coldseam.envelope.Assembly;
import coldseam.envelope.Body;
import coldseam.envelope.Control;
import coldseam.envelope.Duty;
import coldseam.envelope.Exposure;
import coldseam.envelope.Layer;
import coldseam.envelope.Role;
import coldseam.envelope.shell.Surface;
import coldseam.files.Groups;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;

/**
 * Insulation in the ground, where rain splashes up or under a load is of a kind that bears it.
 *
 * <p>Of a surface: what lies outside its structure in the ground, with nothing that keeps out water beyond it; what lies under
 * a floor on the ground, between a floor's structure and its finish, and on a terrace's deck, but for layers whose members carry
 * the load. Of a seam: what its drawing shows outside the wall's structure under the ground and up to
 * {@link Duty#SPLASH_HEIGHT} above it.
 */
public final class InsulationUnfitRule implements Rule {

    /**
     * Insulation where its kind does not belong.
     *
     * @param duty that it does not bear
     */
    public record Unfit(Duty duty, String material) {}

    /**
     * Insulation of one assembly, or in the drawings of one detail.
     *
     * @param where the assembly's name, or the kind of seam
     * @param seam whether it is a seam
     * @param unfit each material and duty once
     */
    public record Found(String where, boolean seam, ImmutableList<Unfit> unfit) implements Evidence {}

    @Override
    public ImmutableList<Draft> find(Facts facts) {
        ImmutableList<Surface> surfaces =
                facts.shell().surfaces().select(surface -> unfit(surface).notEmpty());
        ImmutableList<Draft> planes = Groups.by(surfaces, Facts::assembly).collect(this::draft);
        ImmutableList<BridgeSheet<?>> sheets = facts.sheets()
                .select(sheet -> sheet.chosen() && unfit(facts, sheet).notEmpty());
        return planes.newWithAll(Facts.byDetail(sheets).collect(alike -> {
            ImmutableList<Unfit> unfit =
                    alike.flatCollect(sheet -> unfit(facts, sheet)).distinct();
            Found found = new Found(alike.getFirst().kind(), true, unfit);
            return facts.about(alike, severity(unfit), found);
        }));
    }

    private Draft draft(ImmutableList<Surface> surfaces) {
        ImmutableList<Unfit> unfit =
                surfaces.flatCollect(InsulationUnfitRule::unfit).distinct();
        return Draft.ofAssembly(
                severity(unfit),
                new Found(Facts.assembly(surfaces.getFirst()), false, unfit),
                surfaces,
                Optional.empty());
    }

    /** What lies wet in the ground is no insulation for long. */
    private static Severity severity(ImmutableList<Unfit> unfit) {
        return unfit.anySatisfy(each -> each.duty() == Duty.GROUND) ? Severity.GAP : Severity.WEAK;
    }

    private static ImmutableList<Unfit> unfit(Facts facts, BridgeSheet<?> sheet) {
        return sheet.junction()
                .map(junction -> SplashZone.of(junction, facts.house().materials()))
                .orElse(Lists.immutable.empty());
    }

    private static ImmutableList<Unfit> unfit(Surface surface) {
        ImmutableList<Layer> layers = surface.assembly().map(Assembly::layers).orElse(Lists.immutable.empty());
        boolean inGround = surface.faces(Exposure.Kind.GROUND);
        boolean flat = surface.use() == Body.Use.FLOOR || surface.use() == Body.Use.OVERHANG;
        int structure = layers.detectLastIndex(InsulationUnfitRule::bearing);
        int finish = layers.detectIndex(layer -> !layer.insulates() && layer.role() != Role.MEMBRANE);
        int keptDry = layers.detectLastIndex(layer ->
                layer.controls().contains(Control.WATER) && layer.material().canControl(Control.WATER));
        MutableList<Unfit> unfit = Lists.mutable.empty();
        layers.forEachWithIndex((layer, i) -> {
            if (!layer.insulates() || layer.framing().isPresent()) {
                return;
            }
            boolean outside = structure >= 0 && i > structure;
            boolean floating = finish >= 0 && i > finish && i < structure;
            if (inGround && outside && i >= keptDry) {
                add(unfit, Duty.GROUND, layer);
            }
            boolean loaded = flat && (floating || inGround && outside) || surface.use() == Body.Use.TERRACE && outside;
            if (loaded) {
                add(unfit, Duty.LOAD, layer);
            }
        });
        return unfit.toImmutable();
    }

    /** Whether a layer carries the rest: solid, and not its own insulation. */
    private static boolean bearing(Layer layer) {
        return layer.role() == Role.STRUCTURE
                && !layer.insulates()
                && layer.air().isEmpty();
    }

    private static void add(MutableList<Unfit> to, Duty duty, Layer layer) {
        if (!layer.material().canBear(duty)) {
            to.add(new Unfit(duty, layer.material().name()));
        }
    }
}
