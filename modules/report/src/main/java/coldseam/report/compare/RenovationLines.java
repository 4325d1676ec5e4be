package coldseam.report.compare;

import coldseam.audit.Audit;
import coldseam.audit.BridgeRow;
import coldseam.conduction.Interval;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.UnitSystem;
import coldseam.options.Renovation;
import coldseam.options.Renovation.Colder;
import coldseam.options.Renovation.Stage;
import coldseam.options.Yearly;
import coldseam.report.words.CompareWords;
import coldseam.report.words.VerdictWords;
import java.util.Locale;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;

/** Two houses compared, in lines under headings, for the terminal and the PDF alike. */
public final class RenovationLines {

    /** Seams of a stage that are spelled out; of more only how many. */
    private static final int MOST_SHOWN = 6;

    /** A year, in the house's currency; less is printed as nothing, so it is not printed. */
    private static final double LEAST_MONEY = 0.5;

    private final Renovation renovation;
    private final UnitSystem units;
    private final CompareWords words;
    private final MutableList<Part> parts = Lists.mutable.empty();

    /** A heading with its lines. */
    public record Part(String heading, ImmutableList<String> lines) {}

    private RenovationLines(Renovation renovation, UnitSystem units) {
        this.renovation = renovation;
        this.units = units;
        this.words = new CompareWords(units);
    }

    /** The parts, in the order they are read. */
    public static ImmutableList<Part> of(Renovation renovation, UnitSystem units) {
        RenovationLines lines = new RenovationLines(renovation, units);
        lines.verdicts();
        lines.findings();
        lines.rows();
        lines.stages();
        return lines.parts.toImmutable();
    }

    private void verdicts() {
        parts.add(
                new Part(
                        "Before and after",
                        Lists.immutable.of(
                                "before: " + house(renovation.before()),
                                "after: " + house(renovation.after()),
                                "after it loses " + change(renovation.more()),
                                "H_T and findings here are of surfaces, seams and points; corners where edges meet are in the audit of each house")));
    }

    private String house(Audit audit) {
        return audit.house().name() + ", H_T = " + heat(audit.heatLoss().total())
                + words.year(audit).map(each -> ", " + each).orElse("") + ". "
                + VerdictWords.sentence(audit.verdict());
    }

    private String heat(Interval value) {
        return units.interval(value.lower(), value.upper(), Dimension.HEAT_LOSS_COEFFICIENT);
    }

    private String change(Interval more) {
        return words.heat(more)
                + Yearly.money(more.times(-1), renovation.after().house())
                        .filter(saved -> Math.abs(saved.middle()) >= LEAST_MONEY)
                        .map(saved -> String.format(
                                Locale.ROOT,
                                ", %.0f %s a year %s",
                                Math.abs(saved.middle()),
                                renovation.after().house().prices().currency(),
                                saved.middle() < 0 ? "more to heat" : "saved"))
                        .orElse("");
    }

    private void findings() {
        parts.add(new Part(
                "Findings",
                Lists.immutable.of(words.changes(renovation.changes()).orElse("the same before and after"))));
    }

    private void rows() {
        parts.add(new Part(
                "What loses another amount than before",
                renovation.parts().isEmpty()
                        ? Lists.immutable.of("nothing")
                        : renovation
                                .parts()
                                .collect(part -> part.name() + ": " + side(part.before()) + " to " + side(part.after())
                                        + (part.before().isPresent()
                                                        && part.after().isPresent()
                                                ? "; " + change(part.more())
                                                : ""))));
    }

    private String side(Optional<Interval> value) {
        return value.map(this::heat).orElse("not there or not computed");
    }

    private void stages() {
        if (renovation.stages().isEmpty()) {
            parts.add(new Part(
                    "In the order of building",
                    Lists.immutable.of("nothing is told of stages: the shapes differ, or nothing does")));
        }
        renovation
                .stages()
                .forEachWithIndex((stage, i) -> parts.add(new Part(
                        "Stage " + (i + 1) + ": " + stage.name(),
                        stage(stage, i + 1 == renovation.stages().size()))));
    }

    private ImmutableList<String> stage(Stage stage, boolean last) {
        MutableList<String> lines = Lists.mutable.empty();
        lines.add("H_T = " + heat(stage.audit().heatLoss().total()) + ", " + change(stage.more())
                + (stage.share().isPresent()
                        ? String.format(
                                Locale.ROOT,
                                ", %.0f %% of the whole",
                                100 * stage.share().getAsDouble())
                        : ""));
        lines.add(VerdictWords.sentence(stage.audit().verdict()));
        words.changes(stage.changes()).ifPresent(lines::add);
        if (stage.open().notEmpty()) {
            lines.add("open until a later stage, so to be closed for a while: " + kinds(stage.open()));
        }
        stage.colder().take(MOST_SHOWN).forEach(colder -> lines.add(colder(colder, last)));
        if (stage.colder().size() > MOST_SHOWN) {
            lines.add((stage.colder().size() - MOST_SHOWN) + " more seams are colder than they were found");
        }
        return lines.toImmutable();
    }

    private static String kinds(ImmutableList<BridgeRow> rows) {
        return rows.collect(BridgeRow::kindLabel)
                .distinct()
                .collect(kind -> kind + " (" + rows.count(row -> row.kindLabel().equals(kind)) + ")")
                .makeString(", ");
    }

    private static String colder(Colder colder, boolean last) {
        return String.format(
                Locale.ROOT,
                "colder %s than it was found: %s, fRsi %.2f before, %.2f now; %s",
                last ? "for good" : "for a while",
                colder.row().name(),
                colder.before(),
                colder.now(),
                colder.mould()
                        ? String.format(Locale.ROOT, "MOULD MAY GROW, %.2f is needed", colder.need())
                        : String.format(Locale.ROOT, "enough against mould, %.2f is needed", colder.need()));
    }
}
