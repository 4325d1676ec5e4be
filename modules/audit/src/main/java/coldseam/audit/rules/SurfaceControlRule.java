package coldseam.audit.rules;

import coldseam.audit.Breach.Evidence;
import coldseam.audit.Finding.Severity;
import coldseam.envelope.Control;
import coldseam.envelope.shell.Surface;
import coldseam.files.Groups;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * What the rules about the layers that surfaces name for a control share: surfaces of one assembly have one fault for each
 * control, and all of an assembly's faults are one breach.
 *
 * @param <F> a fault
 */
abstract class SurfaceControlRule<F> implements Rule {

    @Override
    public final ImmutableList<Draft> find(Facts facts) {
        ImmutableList<Surface> faulty = facts.shell()
                .surfaces()
                .select(surface ->
                        surface.assembly().isPresent() && faults(facts, surface).notEmpty());
        return Groups.by(faulty, Facts::assembly).collect(surfaces -> draft(facts, surfaces));
    }

    private ImmutableList<F> faults(Facts facts, Surface surface) {
        return Lists.immutable
                .of(Control.values())
                .select(control -> Facts.needs(surface, control))
                .collect(control -> fault(facts, surface, control))
                .select(Optional::isPresent)
                .collect(Optional::get);
    }

    private Draft draft(Facts facts, ImmutableList<Surface> surfaces) {
        ImmutableList<F> faults =
                faults(facts, surfaces.maxBy(surface -> faults(facts, surface).size()));
        return Draft.ofAssembly(
                faults.collect(this::severity).min(),
                evidence(Facts.assembly(surfaces.getFirst()), faults),
                surfaces,
                Optional.empty());
    }

    /** What is wrong with a surface that has an assembly and needs the control; empty where nothing is. */
    abstract Optional<F> fault(Facts facts, Surface surface, Control control);

    /** How grave a fault is. */
    abstract Severity severity(F fault);

    /** An assembly's faults. */
    abstract Evidence evidence(String assembly, ImmutableList<F> faults);
}
