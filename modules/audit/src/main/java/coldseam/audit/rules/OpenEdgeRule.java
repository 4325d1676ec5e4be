package coldseam.audit.rules;

import coldseam.audit.Breach.Evidence;
import coldseam.audit.Finding.Severity;
import coldseam.audit.Subject;
import coldseam.audit.Value;
import coldseam.envelope.shell.Hole;
import coldseam.envelope.shell.OpenEdge;
import coldseam.files.quantity.Dimension;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/** Every edge of the shell is shared by exactly two surfaces; open ones that touch at their ends surround one hole. */
public final class OpenEdgeRule implements Rule {

    /** A hole in the shell. */
    public record Found(ImmutableList<OpenEdge> hole) implements Evidence {
        /** m, along it. */
        public double length() {
            return hole.sumOfDouble(OpenEdge::length);
        }

        @Override
        public ImmutableList<Value> values() {
            return Lists.immutable.of(Value.of("length", length(), Dimension.LENGTH));
        }
    }

    @Override
    public ImmutableList<Draft> find(Facts facts) {
        return Hole.of(facts.shell())
                .collect(Hole::edges)
                .collect(hole -> new Draft(
                        "hole " + hole.getFirst().place(), Severity.GAP, new Found(hole), new Subject.Hole(hole)));
    }
}
