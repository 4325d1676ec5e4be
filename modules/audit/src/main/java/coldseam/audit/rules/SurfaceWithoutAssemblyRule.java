package coldseam.audit.rules;

import coldseam.audit.Finding.Severity;
import coldseam.audit.Subject;
import coldseam.envelope.shell.Surface;
import coldseam.files.quantity.Dimension;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/** A surface of which nobody has said what it is built of. */
final class SurfaceWithoutAssemblyRule implements Rule {

    @Override
    public String id() {
        return "surface-without-assembly";
    }

    @Override
    public String says() {
        return "Every surface of the shell has an assembly.";
    }

    @Override
    public String closing() {
        return "Give the surface its build-up, from inside to outside.";
    }

    @Override
    public int gravity() {
        return 1;
    }

    @Override
    public ImmutableList<Draft> find(Facts facts) {
        return facts.shell()
                .surfaces()
                .select(surface -> surface.assembly().isEmpty())
                .collect(surface -> draft(facts, surface));
    }

    private Draft draft(Facts facts, Surface surface) {
        return new Draft(
                this,
                "surface " + surface.name(),
                Severity.GAP,
                "no assembly for " + surface.name(),
                facts.say(surface.externalArea(), Dimension.AREA)
                        + " of the shell have no build-up, so that nothing is known of their insulation",
                new Subject.Surfaces(Lists.immutable.of(surface)),
                Lists.immutable.empty(),
                Optional.empty(),
                Optional.empty(),
                "give the surface an assembly in the house file");
    }
}
