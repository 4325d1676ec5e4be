package coldseam.audit.rules;

import coldseam.conduction.Interval;
import coldseam.envelope.Control;
import coldseam.envelope.DimensionSystem;
import coldseam.envelope.shell.Surface;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;

/** A surface whose assembly names no insulation. */
final class SurfaceWithoutHeatLayerRule extends SurfaceWithoutLayer {

    SurfaceWithoutHeatLayerRule() {
        super(Control.HEAT, "heat");
    }

    @Override
    public String id() {
        return "surface-without-heat-layer";
    }

    @Override
    public String says() {
        return "Every surface towards outdoors, ground or an unheated space has a continuous insulation layer.";
    }

    @Override
    public String closing() {
        return "Add a continuous layer of insulation, or name the one that is there.";
    }

    @Override
    public int gravity() {
        return 11;
    }

    @Override
    String toDo(String assembly) {
        return "add a continuous layer of insulation to this build-up and join it to its neighbours";
    }

    /** Against the house's own best insulated surface of the same use. */
    @Override
    Optional<Interval> loss(Facts facts, ImmutableList<Surface> surfaces) {
        boolean external = facts.house().site().dimensions() == DimensionSystem.EXTERNAL;
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
            double area = (external ? surface.externalArea() : surface.internalArea()) - surface.openingArea();
            double more = facts.transmittances().get(surface.name()) - best;
            sum += Math.max(0, more) * area * surface.exposure().factor();
        }
        return Optional.of(Interval.of(sum));
    }
}
