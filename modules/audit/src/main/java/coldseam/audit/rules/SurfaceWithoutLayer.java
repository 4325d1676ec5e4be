package coldseam.audit.rules;

import coldseam.audit.Finding.Severity;
import coldseam.audit.Subject;
import coldseam.conduction.Interval;
import coldseam.envelope.Assembly;
import coldseam.envelope.Control;
import coldseam.envelope.DimensionSystem;
import coldseam.envelope.shell.Surface;
import coldseam.files.quantity.Dimension;
import java.util.Locale;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/** What the rules about a surface's control layers share: surfaces of one assembly lack a layer for one cause. */
abstract class SurfaceWithoutLayer implements Rule {

    private final Control control;
    private final String word;

    SurfaceWithoutLayer(Control control, String word) {
        this.control = control;
        this.word = word;
    }

    @Override
    public final ImmutableList<Draft> find(Facts facts) {
        ImmutableList<Surface> lacking = facts.shell()
                .surfaces()
                .select(surface -> Facts.needs(surface, control) && !Facts.has(surface, control));
        return lacking.collect(surface -> surface.assembly().map(Assembly::name).orElse(""))
                .distinct()
                .collect(name -> draft(
                        facts,
                        name,
                        lacking.select(surface -> surface.assembly()
                                .map(Assembly::name)
                                .orElse("")
                                .equals(name))));
    }

    private Draft draft(Facts facts, String assembly, ImmutableList<Surface> surfaces) {
        boolean external = facts.house().site().dimensions() == DimensionSystem.EXTERNAL;
        double area = surfaces.sumOfDouble(
                surface -> (external ? surface.externalArea() : surface.internalArea()) - surface.openingArea());
        String what = String.format(
                Locale.ROOT,
                "no layer of \"%s\" is named for %s control, on %s of %s",
                assembly,
                word,
                facts.say(area, Dimension.AREA),
                surfaces.size() == 1 ? "one surface" : surfaces.size() + " surfaces");
        return new Draft(
                this,
                "assembly " + assembly,
                Severity.GAP,
                String.format(Locale.ROOT, "no %s layer in \"%s\"", word, assembly),
                what,
                new Subject.Surfaces(surfaces),
                Lists.immutable.empty(),
                Optional.empty(),
                loss(facts, surfaces),
                toDo(assembly));
    }

    /** What to do about an assembly without the layer. */
    abstract String toDo(String assembly);

    /** W/K lost for the want of the layer; empty where that cannot be said. */
    Optional<Interval> loss(Facts facts, ImmutableList<Surface> surfaces) {
        return Optional.empty();
    }
}
