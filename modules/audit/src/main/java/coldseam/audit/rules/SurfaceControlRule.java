package coldseam.audit.rules;

import coldseam.audit.Finding.Severity;
import coldseam.audit.Subject;
import coldseam.envelope.Assembly;
import coldseam.envelope.Control;
import coldseam.envelope.shell.Surface;
import java.util.Locale;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/** What the rules about the layers that surfaces name share: surfaces of one assembly have one fault, with one cause. */
abstract class SurfaceControlRule implements Rule {

    /**
     * What is wrong with a surface's control.
     *
     * @param severity how grave
     * @param title ends a title that begins with the control and the assembly
     * @param what a sentence without its full stop
     * @param toDo what closes it
     */
    record Fault(Severity severity, String title, String what, String toDo) {}

    @Override
    public final ImmutableList<Draft> find(Facts facts) {
        ImmutableList<Surface> faulty = facts.shell()
                .surfaces()
                .select(surface ->
                        surface.assembly().isPresent() && faulty(facts, surface).notEmpty());
        return faulty.collect(SurfaceControlRule::assembly)
                .distinct()
                .collect(name -> draft(
                        facts, name, faulty.select(surface -> assembly(surface).equals(name))));
    }

    private static String assembly(Surface surface) {
        return surface.assembly().map(Assembly::name).orElseThrow();
    }

    private ImmutableList<Control> faulty(Facts facts, Surface surface) {
        return Layers.CONNECTED.select(control ->
                Facts.needs(surface, control) && fault(facts, surface, control).isPresent());
    }

    private Draft draft(Facts facts, String assembly, ImmutableList<Surface> surfaces) {
        Surface worst = surfaces.maxBy(surface -> faulty(facts, surface).size());
        ImmutableList<Control> controls = faulty(facts, worst);
        ImmutableList<Fault> faults =
                controls.collect(control -> fault(facts, worst, control).orElseThrow());
        return new Draft(
                this,
                "assembly " + assembly,
                faults.collect(Fault::severity).min(),
                String.format(
                        Locale.ROOT,
                        "%s of \"%s\" %s",
                        Facts.sentence(Layers.phrase(controls)),
                        assembly,
                        faults.getFirst().title()),
                faults.collect(Fault::what).distinct().makeString("; "),
                new Subject.Surfaces(surfaces),
                Lists.immutable.empty(),
                Optional.empty(),
                Optional.empty(),
                faults.collect(Fault::toDo).distinct().makeString("; "));
    }

    static String word(Control control) {
        return control.name().toLowerCase(Locale.ROOT);
    }

    /** What is wrong with a surface that has an assembly and needs the control; empty where nothing is. */
    abstract Optional<Fault> fault(Facts facts, Surface surface, Control control);
}
