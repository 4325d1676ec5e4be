package coldseam.audit.rules;

import coldseam.audit.Breach.Evidence;
import coldseam.audit.Finding.Severity;
import coldseam.audit.Subject;
import coldseam.envelope.LightWell;
import coldseam.envelope.Opening;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/** Water leaves every light well, and its floor lies so far under the sill that rain, leaves and snow stay below the window. */
public final class LightWellFloodsRule implements Rule {

    /** m, from a light well's floor to the sill over it (common practice, no source). */
    public static final double UPSTAND = 0.15;

    /** m; nobody builds to less. */
    private static final double HAIR = 0.001;

    /**
     * Light wells, each by the window that states it.
     *
     * @param undrained from which water goes nowhere
     * @param shallow whose floor lies too high
     */
    public record Found(ImmutableList<Opening> undrained, ImmutableList<Opening> shallow) implements Evidence {}

    @Override
    public ImmutableList<Draft> find(Facts facts) {
        ImmutableList<Opening> wells =
                facts.house().openings().select(opening -> opening.lightWell().isPresent());
        ImmutableList<Opening> undrained = wells.select(opening -> well(opening).drain() == LightWell.Drain.NONE);
        ImmutableList<Opening> shallow = wells.select(opening -> well(opening).belowSill() < UPSTAND - HAIR);
        if (undrained.isEmpty() && shallow.isEmpty()) {
            return Lists.immutable.empty();
        }
        return Lists.immutable.of(new Draft(
                "light wells",
                undrained.notEmpty() ? Severity.GAP : Severity.WEAK,
                new Found(undrained, shallow),
                new Subject.Surfaces(facts.shell()
                        .surfaces()
                        .select(surface -> undrained.newWithAll(shallow).anySatisfy(surface::holds)))));
    }

    private static LightWell well(Opening opening) {
        return opening.lightWell().orElseThrow();
    }
}
