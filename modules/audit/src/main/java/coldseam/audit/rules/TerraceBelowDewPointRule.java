package coldseam.audit.rules;

import coldseam.audit.Finding.Severity;
import coldseam.audit.Subject;
import coldseam.audit.TerraceLine;
import coldseam.envelope.shell.Surface;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/** A terrace deck whose underside gets wet from the room below. */
final class TerraceBelowDewPointRule implements Rule {

    @Override
    public String id() {
        return "terrace-below-dew-point";
    }

    @Override
    public String says() {
        return "The structure under a terrace's insulation stays above the dew point of the room's air.";
    }

    @Override
    public String closing() {
        return "Put more of the insulation above the structure.";
    }

    @Override
    public int gravity() {
        return 16;
    }

    @Override
    public ImmutableList<Draft> find(Facts facts) {
        return facts.terraces().reject(TerraceLine::safe).collect(line -> draft(facts, line));
    }

    private Draft draft(Facts facts, TerraceLine line) {
        Surface surface = facts.shell().surfaces().detect(each -> each.name().equals(line.surface()));
        return new Draft(
                this,
                "surface " + line.surface(),
                Severity.WEAK,
                "terrace deck below the dew point",
                line.sentence(),
                new Subject.Surfaces(Lists.immutable.of(surface)),
                Lists.immutable.empty(),
                Optional.empty(),
                Optional.empty(),
                "put more insulation above the structure, none below it, and keep the room's air away from it");
    }
}
