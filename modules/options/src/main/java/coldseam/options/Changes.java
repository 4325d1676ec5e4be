package coldseam.options;

import coldseam.audit.Audit;
import coldseam.audit.Breach;
import coldseam.audit.BridgeRow;
import coldseam.audit.Finding;
import coldseam.envelope.shell.OpenEdge;
import coldseam.envelope.shell.Surface;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.set.ImmutableSet;

/**
 * What one house has found in it that another has not. A finding is new where it finds, by some rule, fault with a place that
 * had no fault by that rule.
 *
 * @param appear findings of the second that are new
 * @param vanish findings of the first that are gone, in whole or in part
 */
public record Changes(ImmutableList<Finding> appear, ImmutableList<Finding> vanish) {

    private record Fault(String rule, String place) {}

    /** Whether only weak spots appear: nobody is advised to open a gap, whatever it saves. */
    public boolean breaksNothing() {
        return appear.allSatisfy(finding -> finding.severity() == Finding.Severity.WEAK);
    }

    /** From one house to another. */
    public static Changes between(Audit first, Audit second) {
        ImmutableSet<Fault> before = faults(first.findings());
        ImmutableSet<Fault> after = faults(second.findings());
        return new Changes(
                second.findings()
                        .reject(finding -> before.containsAll(faults(finding).castToList())),
                first.findings()
                        .reject(finding -> after.containsAll(faults(finding).castToList())));
    }

    private static ImmutableSet<Fault> faults(ImmutableList<Finding> findings) {
        return findings.flatCollect(Changes::faults).toImmutableSet();
    }

    private static ImmutableList<Fault> faults(Finding finding) {
        ImmutableList<String> places = finding.subject()
                .match(
                        bridges -> bridges.rows().collect(BridgeRow::name),
                        surfaces -> surfaces.all().collect(Surface::name),
                        hole -> hole.edges().collect(OpenEdge::place),
                        corners -> corners.rows().collect(row -> row.corner().name()));
        return finding.breaches().collect(Breach::rule).flatCollect(rule -> places.collect(at -> new Fault(rule, at)));
    }
}
