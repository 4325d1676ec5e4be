package coldseam.audit.rules;

import coldseam.audit.Finding.Severity;
import coldseam.audit.JunctionRow;
import coldseam.audit.JunctionSheet;
import coldseam.audit.Subject;
import coldseam.envelope.JunctionKind;
import coldseam.files.quantity.Dimension;
import java.util.Locale;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;

/** Junctions of one kind for which nobody chose a detail: how their layers pass is unknown. */
final class JunctionWithoutDetailRule implements Rule {

    @Override
    public String id() {
        return "junction-without-detail";
    }

    @Override
    public String says() {
        return "Every junction has a detail that somebody chose.";
    }

    @Override
    public String closing() {
        return "Choose an option of the catalogue, or draw the detail yourself.";
    }

    @Override
    public int gravity() {
        return 2;
    }

    @Override
    public ImmutableList<Draft> find(Facts facts) {
        ImmutableList<JunctionRow> open = facts.rows().select(row -> undecided(facts, row));
        return open.collect(row -> row.edge().kind())
                .distinct()
                .collect(
                        kind -> draft(facts, kind, open.select(row -> row.edge().kind() == kind)));
    }

    private static boolean undecided(Facts facts, JunctionRow row) {
        boolean noAssembly = Facts.beside(row.edge())
                .anySatisfy(surface -> surface.assembly().isEmpty());
        if (noAssembly) {
            return false;
        }
        return row.sheet()
                .map(sheet -> !sheet.chosen())
                .orElseGet(() -> !facts.misfits().containsKey(row.edge().name()));
    }

    private Draft draft(Facts facts, JunctionKind kind, ImmutableList<JunctionRow> rows) {
        double length = rows.sumOfDouble(JunctionRow::length);
        ImmutableList<JunctionSheet> sheets = rows.collect(JunctionRow::sheet)
                .select(Optional::isPresent)
                .collect(Optional::get)
                .distinct();
        return new Draft(
                this,
                "kind " + kind,
                Severity.UNKNOWN,
                "no detail chosen: " + kind.label(),
                what(facts, length, sheets, rows),
                new Subject.Edges(rows),
                sheets,
                Optional.empty(),
                facts.lostAgainstBest(sheets),
                toDo(facts, sheets));
    }

    private static String what(
            Facts facts, double length, ImmutableList<JunctionSheet> sheets, ImmutableList<JunctionRow> rows) {
        String start = String.format(Locale.ROOT, "nobody chose how %s is built", facts.say(length, Dimension.LENGTH));
        if (sheets.notEmpty()) {
            JunctionSheet sheet = sheets.getFirst();
            return String.format(
                    Locale.ROOT,
                    "%s; the worst option stands in, \"%s\" with psi %s",
                    start,
                    sheet.result().detail().name(),
                    facts.say(sheet.result().psiExternal(), Dimension.LINEAR_TRANSMITTANCE));
        }
        return rows.anySatisfy(row -> !row.source().known())
                ? start + "; nothing stands in for it, since no detail of the catalogue is for it"
                : start + "; its psi is given, yet not how the layers pass";
    }

    private static String toDo(Facts facts, ImmutableList<JunctionSheet> sheets) {
        return sheets.getFirstOptional()
                .map(sheet -> "choose a detail for it under junctions; " + facts.better(sheet))
                .orElse("name a detail file of your own for it under junctions");
    }
}
