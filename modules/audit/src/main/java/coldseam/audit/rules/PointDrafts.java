package coldseam.audit.rules;

import coldseam.audit.Finding.Severity;
import coldseam.audit.PointRow;
import coldseam.audit.PointSheet;
import coldseam.audit.Subject;
import coldseam.conduction.Interval;
import coldseam.envelope.Control;
import coldseam.files.quantity.Dimension;
import java.util.Locale;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/** What the rules about points share. */
final class PointDrafts {

    private PointDrafts() {}

    /** Sheets whose detail somebody chose, through surfaces that have the heat layer they need. */
    static ImmutableList<PointSheet> judged(Facts facts) {
        return facts.pointSheets()
                .select(PointSheet::chosen)
                .select(sheet -> rows(facts, sheet).anySatisfy(row -> keeps(row, Control.HEAT)));
    }

    /** The sets of points of a sheet. */
    static ImmutableList<PointRow> rows(Facts facts, PointSheet sheet) {
        return facts.points().select(row -> row.isOn(sheet));
    }

    private static boolean keeps(PointRow row, Control control) {
        return !Facts.needs(row.surface(), control) || Facts.has(row.surface(), control);
    }

    /** Whether a sheet's surface needs a control layer and has it. */
    static boolean pierces(Facts facts, PointSheet sheet, Control control) {
        return rows(facts, sheet)
                .anySatisfy(row -> Facts.needs(row.surface(), control) && Facts.has(row.surface(), control));
    }

    /** Sheets with one detail, each group in the sheets' order: what is wrong with them has one cause. */
    static ImmutableList<ImmutableList<PointSheet>> byDetail(ImmutableList<PointSheet> sheets) {
        return sheets.collect(sheet -> sheet.result().detail().id())
                .distinct()
                .collect(id ->
                        sheets.select(sheet -> sheet.result().detail().id().equals(id)));
    }

    /** A draft about all points of sheets with one detail, the worst sheet first. */
    static Draft about(
            Facts facts,
            ImmutableList<PointSheet> worstFirst,
            Rule rule,
            Severity severity,
            String title,
            String what,
            String toDo) {
        PointSheet worst = worstFirst.getFirst();
        ImmutableList<PointRow> rows = worstFirst.flatCollect(sheet -> rows(facts, sheet));
        return about(
                facts,
                rows,
                rule,
                "point detail " + worst.result().detail().id(),
                severity,
                title,
                what,
                Optional.of(worst),
                lostAgainstBest(facts, worstFirst),
                toDo);
    }

    /** A draft about sets of points. */
    static Draft about(
            Facts facts,
            ImmutableList<PointRow> rows,
            Rule rule,
            String cause,
            Severity severity,
            String title,
            String what,
            Optional<PointSheet> sheet,
            Optional<Interval> loss,
            String toDo) {
        return new Draft(
                rule,
                cause,
                severity,
                title,
                what,
                new Subject.Points(rows),
                Lists.immutable.empty(),
                sheet,
                loss,
                toDo);
    }

    /** W/K that sheets' points lose more than with the best option of their kind; empty where there is none. */
    static Optional<Interval> lostAgainstBest(Facts facts, ImmutableList<PointSheet> sheets) {
        ImmutableList<PointSheet> improvable =
                sheets.select(sheet -> sheet.best().isPresent());
        if (improvable.isEmpty()) {
            return Optional.empty();
        }
        Interval sum = Interval.of(0);
        for (PointSheet sheet : improvable) {
            Interval best = sheet.best().orElseThrow().chi();
            for (PointRow row : rows(facts, sheet)) {
                Interval more =
                        new Interval(row.chi().lower() - best.upper(), row.chi().upper() - best.lower());
                sum = sum.plus(more.times(row.number() * row.factor()));
            }
        }
        return Optional.of(new Interval(Math.max(0, sum.lower()), Math.max(0, sum.upper())));
    }

    /** What the catalogue would do instead, as a next step. */
    static String better(Facts facts, PointSheet sheet) {
        return sheet.best()
                .map(best -> String.format(
                        Locale.ROOT,
                        "the catalogue's best here is \"%s\" (%s), chi %s",
                        best.detail().name(),
                        best.detail().id(),
                        facts.say(best.chi(), Dimension.POINT_TRANSMITTANCE)))
                .orElse("the catalogue has nothing better for these layers");
    }

    /** How many there are: "4 steel posts" cannot be formed for every kind, so the kind comes first. */
    static String counted(PointSheet sheet) {
        return sheet.result().detail().kind().label() + (sheet.number() == 1 ? "" : ", " + sheet.number() + " of them");
    }
}
