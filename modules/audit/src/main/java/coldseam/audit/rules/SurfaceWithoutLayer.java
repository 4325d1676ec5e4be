package coldseam.audit.rules;

import coldseam.audit.Breach.Evidence;
import coldseam.audit.Finding.Severity;
import coldseam.audit.Value;
import coldseam.conduction.Interval;
import coldseam.envelope.Control;
import coldseam.envelope.DimensionSystem;
import coldseam.envelope.shell.Surface;
import coldseam.files.Groups;
import coldseam.files.quantity.Dimension;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/** What the rules about a surface's control layers share: surfaces of one assembly lack a layer for one cause. */
public abstract class SurfaceWithoutLayer implements Rule {

    /**
     * An assembly without a layer.
     *
     * @param area m², of the surfaces that have it, openings taken off
     */
    public record Found(String assembly, Control control, double area, int surfaces) implements Evidence {
        @Override
        public ImmutableList<Value> values() {
            return Lists.immutable.of(Value.of("area", area, Dimension.AREA));
        }
    }

    private final Control control;

    SurfaceWithoutLayer(Control control) {
        this.control = control;
    }

    @Override
    public final ImmutableList<Draft> find(Facts facts) {
        ImmutableList<Surface> lacking =
                facts.shell().surfaces().select(surface -> Facts.needs(surface, control) && !named(surface, control));
        return Groups.by(lacking, Facts::assembly).collect(surfaces -> draft(facts, surfaces));
    }

    /** Whether a layer has the name; one that cannot do it is another rule's finding, as is a surface without assembly. */
    private static boolean named(Surface surface, Control control) {
        return surface.assembly().map(assembly -> assembly.controls(control)).orElse(true);
    }

    private Draft draft(Facts facts, ImmutableList<Surface> surfaces) {
        return Draft.ofAssembly(
                this,
                Severity.GAP,
                new Found(
                        Facts.assembly(surfaces.getFirst()),
                        control,
                        surfaces.sumOfDouble(surface -> opaqueArea(facts, surface)),
                        surfaces.size()),
                surfaces,
                loss(facts, surfaces));
    }

    /** m², in the site's dimension system. */
    static double opaqueArea(Facts facts, Surface surface) {
        boolean external = facts.house().site().dimensions() == DimensionSystem.EXTERNAL;
        return (external ? surface.externalArea() : surface.internalArea()) - surface.openingArea();
    }

    /** W/K lost for the want of the layer; empty where that cannot be said. */
    Optional<Interval> loss(Facts facts, ImmutableList<Surface> surfaces) {
        return Optional.empty();
    }
}
