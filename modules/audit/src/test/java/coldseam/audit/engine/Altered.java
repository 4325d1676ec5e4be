package coldseam.audit.engine;

import coldseam.conduction.Interval;
import coldseam.conduction.Solution;
import coldseam.junctions.ControlLine;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.plan.SectionPlan;
import org.eclipse.collections.api.list.ImmutableList;

/** A result of which one thing is another. */
public record Altered(JunctionResult made) {

    public JunctionResult ofDetail(Detail detail) {
        return with(detail, made.solution(), made.plan(), made.psiExternal(), made.psiInternal(), made.controls());
    }

    public JunctionResult drawn(Solution solution, SectionPlan plan) {
        return with(made.detail(), solution, plan, made.psiExternal(), made.psiInternal(), made.controls());
    }

    public JunctionResult withPsi(Interval external, Interval internal) {
        return with(made.detail(), made.solution(), made.plan(), external, internal, made.controls());
    }

    public JunctionResult withControls(ImmutableList<ControlLine> controls) {
        return with(made.detail(), made.solution(), made.plan(), made.psiExternal(), made.psiInternal(), controls);
    }

    private JunctionResult with(
            Detail detail,
            Solution solution,
            SectionPlan plan,
            Interval external,
            Interval internal,
            ImmutableList<ControlLine> controls) {
        return new JunctionResult(
                detail,
                made.setup(),
                solution,
                plan,
                made.legs(),
                made.coupling(),
                external,
                internal,
                made.temperatureFactor(),
                made.coldest(),
                made.penLine(),
                made.weakestPath(),
                controls,
                made.frameSetBack(),
                made.notes());
    }
}
