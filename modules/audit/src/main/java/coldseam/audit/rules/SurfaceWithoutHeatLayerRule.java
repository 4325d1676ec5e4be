package coldseam.audit.rules;

import coldseam.conduction.Interval;
import coldseam.envelope.Control;
import coldseam.envelope.shell.Surface;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;

/** Every surface towards outdoors, ground or an unheated space has a continuous insulation layer. */
public final class SurfaceWithoutHeatLayerRule extends SurfaceWithoutLayer {

    SurfaceWithoutHeatLayerRule() {
        super(Control.HEAT);
    }

    /** Against the house's own best insulated surface of the same use. */
    @Override
    Optional<Interval> loss(Facts facts, ImmutableList<Surface> surfaces) {
        double sum = 0;
        for (Surface surface : surfaces) {
            ImmutableList<Surface> insulated = facts.shell()
                    .surfaces()
                    .select(other -> other.use() == surface.use()
                            && other.assembly().isPresent()
                            && Facts.has(other, Control.HEAT));
            if (insulated.isEmpty()) {
                return Optional.empty();
            }
            double best = insulated
                    .collectDouble(other -> facts.transmittances().get(other.name()))
                    .min();
            double more = facts.transmittances().get(surface.name()) - best;
            sum += Math.max(0, more)
                    * opaqueArea(facts, surface)
                    * surface.exposure().factor();
        }
        return Optional.of(Interval.of(sum));
    }
}
