package coldseam.audit.rules;

import coldseam.audit.Breach.Evidence;
import coldseam.audit.Finding.Severity;
import coldseam.audit.Value;
import coldseam.conduction.Interval;
import coldseam.envelope.Body;
import coldseam.envelope.Control;
import coldseam.envelope.DimensionSystem;
import coldseam.envelope.shell.Surface;
import coldseam.files.Groups;
import coldseam.files.Words;
import coldseam.files.quantity.Dimension;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * Every surface towards outdoors, ground or an unheated space has a layer for a control, each of which is a rule of its own; surfaces
 * of one assembly lack it for one cause.
 */
public final class SurfaceWithoutLayerRule implements Rule {

    /**
     * An assembly without a layer.
     *
     * @param area m², of the surfaces that have it, openings taken off
     * @param roof whether they are of a roof over the rooms, where a ceiling under a cold loft may have been meant
     */
    public record Found(String assembly, Control control, double area, int surfaces, boolean roof) implements Evidence {
        @Override
        public ImmutableList<Value> values() {
            return Lists.immutable.of(Value.of("area", area, Dimension.AREA));
        }
    }

    private final Control control;

    SurfaceWithoutLayerRule(Control control) {
        this.control = control;
    }

    @Override
    public String id() {
        return "surface-without-" + Words.word(control) + "-layer";
    }

    @Override
    public ImmutableList<Draft> find(Facts facts) {
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
                Severity.GAP,
                new Found(
                        Facts.assembly(surfaces.getFirst()),
                        control,
                        surfaces.sumOfDouble(surface -> opaqueArea(facts, surface)),
                        surfaces.size(),
                        surfaces.allSatisfy(surface -> surface.use() == Body.Use.ROOF)),
                surfaces,
                loss(facts, surfaces));
    }

    /** m², in the site's dimension system. */
    static double opaqueArea(Facts facts, Surface surface) {
        boolean external = facts.house().site().dimensions() == DimensionSystem.EXTERNAL;
        return (external ? surface.externalArea() : surface.internalArea()) - surface.openingArea();
    }

    /** W/K lost for the want of insulation, against the house's own best insulated surface of the same use; empty where there is none. */
    private Optional<Interval> loss(Facts facts, ImmutableList<Surface> surfaces) {
        double sum = 0;
        for (Surface surface : surfaces) {
            ImmutableList<Surface> insulated = facts.shell()
                    .surfaces()
                    .select(other -> other.use() == surface.use()
                            && other.assembly().isPresent()
                            && Facts.has(other, Control.HEAT));
            if (control != Control.HEAT || insulated.isEmpty()) {
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
