package coldseam.audit.rules;

import coldseam.audit.Breach.Evidence;
import coldseam.audit.Finding.Severity;
import coldseam.audit.Sheet;
import coldseam.audit.Subject;
import coldseam.envelope.Limits;
import coldseam.files.Groups;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * What the rules share that hold the coldest point where seams meet, at a corner or beside each other, to the temperature factor
 * that is needed. It is colder there than along the seams, so that these may keep it where the meeting does not. Where one of them
 * is found by itself, that is said instead: the cold meeting follows from it.
 *
 * @param <R> a place where they meet
 */
abstract class ColdMeetingRule<R, S extends Sheet> implements Rule {

    /** Places that are judged; each has a sheet. */
    abstract ImmutableList<R> judged(Facts facts);

    abstract S sheet(R row);

    /** Whether a seam that meets there is found by itself. */
    abstract boolean follows(Facts facts, S sheet);

    /** What is wrong with meetings of the same details has one cause. */
    abstract String cause(S sheet);

    abstract Evidence evidence(Facts facts, S worst);

    abstract Subject subject(ImmutableList<R> rows);

    @Override
    public final ImmutableList<Draft> find(Facts facts) {
        ImmutableList<R> under = judged(facts)
                .select(row -> Limits.under(
                                sheet(row).temperatureFactor(), facts.mould().need())
                        && !follows(facts, sheet(row)));
        return Groups.by(under, row -> cause(sheet(row)))
                .collect(rows -> rows.toImmutableSortedListBy(row -> sheet(row).temperatureFactor()))
                .collect(rows -> {
                    S worst = sheet(rows.getFirst());
                    return new Draft(cause(worst), Severity.WEAK, evidence(facts, worst), subject(rows));
                });
    }
}
