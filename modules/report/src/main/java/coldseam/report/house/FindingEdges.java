package coldseam.report.house;

import coldseam.audit.Audit;
import coldseam.audit.Finding;
import coldseam.audit.JunctionRow;
import coldseam.envelope.shell.Edge;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;

/**
 * The edges a finding stands for. A finding names one edge; where it is about several, its length tells which: those of its
 * sheet, of its kind, or of its kind and unknown.
 */
final class FindingEdges {

    /** m, of lengths that are the same. */
    private static final double SAME = 0.02;

    private final Audit audit;

    FindingEdges(Audit audit) {
        this.audit = audit;
    }

    ImmutableList<Edge> of(Finding finding) {
        Optional<JunctionRow> named = finding.edge()
                .flatMap(name -> audit.junctions()
                        .detectOptional(row -> row.edge().name().equals(name)));
        if (named.isEmpty()) {
            return Lists.immutable.empty();
        }
        JunctionRow one = named.get();
        ImmutableList<JunctionRow> kind =
                audit.junctions().select(row -> row.edge().kind() == one.edge().kind());
        ImmutableList<JunctionRow> sheet = kind.select(row -> row.sheet().equals(one.sheet()));
        return Lists.immutable
                .of(sheet, kind, kind.select(JunctionRow::unknown), sheet.select(JunctionRow::unknown))
                .detectOptional(rows -> Math.abs(rows.sumOfDouble(JunctionRow::length) - finding.length()) < SAME)
                .orElse(Lists.immutable.of(one))
                .collect(JunctionRow::edge);
    }
}
