package coldseam.audit;

import coldseam.audit.Finding.Severity;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * The verdict.
 *
 * @param gaps number of findings that break a layer or leave it unknown
 * @param weakSpots number of findings that pinch it or miss a limit
 */
public record Verdict(int gaps, int weakSpots) {

    /** What findings come to. */
    public static Verdict of(ImmutableList<Finding> findings) {
        int weak = findings.count(finding -> finding.severity() == Severity.WEAK);
        return new Verdict(findings.size() - weak, weak);
    }

    /** Whether insulation, air, water and vapour control pass everywhere: nothing is open, broken or unknown. */
    public boolean unbroken() {
        return gaps == 0;
    }
}
