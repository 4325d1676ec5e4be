package coldseam.audit.rules;

import coldseam.audit.Finding.Severity;
import coldseam.audit.JunctionRow;
import coldseam.audit.JunctionSheet;
import coldseam.conduction.Interval;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Limits;
import coldseam.files.quantity.Dimension;
import java.util.Locale;
import org.eclipse.collections.api.factory.Sets;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.set.ImmutableSet;

/**
 * A junction that loses more than a bridge-free one may.
 *
 * <p>The limit is for external dimensions. Where the surfaces meet at more than 180° measured indoors, geometry alone makes
 * the external psi positive and the internal one negative; there the smaller of the two is held to the limit (judgement).
 */
final class PsiOverLimitRule implements Rule {

    private static final double STRAIGHT = 180;

    private static final ImmutableSet<JunctionKind> OPENINGS = Sets.immutable.of(
            JunctionKind.JAMB,
            JunctionKind.HEAD,
            JunctionKind.SILL,
            JunctionKind.SHUTTER_BOX,
            JunctionKind.ROOFLIGHT,
            JunctionKind.SLAB_THRESHOLD,
            JunctionKind.TERRACE_THRESHOLD);

    @Override
    public String id() {
        return "psi-over-limit";
    }

    @Override
    public String says() {
        return "No junction's psi is above the limit for its kind.";
    }

    @Override
    public String closing() {
        return "Choose a detail with less heat flow, or raise the limit with a reason.";
    }

    @Override
    public int gravity() {
        return 30;
    }

    @Override
    public ImmutableList<Draft> find(Facts facts) {
        ImmutableList<JunctionSheet> over =
                facts.judged().select(sheet -> psi(facts, sheet).upper() > limit(facts, sheet));
        return Facts.byDetail(over)
                .collect(sheets -> draft(
                        facts,
                        sheets.toSortedListBy(sheet -> -psi(facts, sheet).middle())
                                .toImmutable()));
    }

    private static double limit(Facts facts, JunctionSheet sheet) {
        Limits limits = facts.house().limits();
        return OPENINGS.contains(sheet.result().setup().kind()) ? limits.openingPsi() : limits.psi();
    }

    /** What is held to the limit: the largest of the sheet's edges. */
    private static Interval psi(Facts facts, JunctionSheet sheet) {
        JunctionRow worst = facts.rows(sheet).maxBy(row -> row.psi().upper());
        Interval external = facts.externalPsi(sheet, worst);
        boolean reentrant = worst.edge().angle() > STRAIGHT;
        double toInternal = sheet.result().psiInternal().middle()
                - sheet.result().psiExternal().middle();
        return reentrant && toInternal < 0 ? external.plus(toInternal) : external;
    }

    private Draft draft(Facts facts, ImmutableList<JunctionSheet> worstFirst) {
        JunctionSheet sheet = worstFirst.getFirst();
        return facts.about(
                worstFirst,
                this,
                Severity.WEAK,
                "much heat lost at the " + sheet.result().setup().kind().label(),
                String.format(
                        Locale.ROOT,
                        "psi is %s, the limit %s",
                        facts.say(psi(facts, sheet), Dimension.LINEAR_TRANSMITTANCE),
                        facts.say(limit(facts, sheet), Dimension.LINEAR_TRANSMITTANCE)),
                "lessen the heat flow; " + facts.better(sheet));
    }
}
