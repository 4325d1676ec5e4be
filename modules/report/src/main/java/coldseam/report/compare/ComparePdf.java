package coldseam.report.compare;

import coldseam.audit.Audit;
import coldseam.conduction.Interval;
import coldseam.files.Groups;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.Format;
import coldseam.files.quantity.UnitSystem;
import coldseam.options.Alternative;
import coldseam.options.Before;
import coldseam.options.Comparison;
import coldseam.options.Comparison.Answer;
import coldseam.options.Standing;
import coldseam.options.Yearly;
import coldseam.report.drawing.Palette;
import coldseam.report.pdf.Blocks;
import coldseam.report.pdf.DocumentInfo;
import coldseam.report.pdf.Flow;
import coldseam.report.pdf.Paper;
import coldseam.report.pdf.Rich;
import coldseam.report.pdf.Style;
import coldseam.report.pdf.Table;
import coldseam.report.words.CompareWords;
import coldseam.report.words.FrontWords;
import coldseam.report.words.Print;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/** A comparison as a PDF, readable in black and white; the same comparison gives the same bytes. */
public final class ComparePdf {

    private static final double PICTURE = 290;

    private final Comparison comparison;
    private final Audit described;
    private final UnitSystem units;
    private final CompareWords words;
    private final FrontWords front;
    private final Flow flow;

    private ComparePdf(Comparison comparison, UnitSystem units, Flow flow) {
        this.comparison = comparison;
        this.described = comparison.described();
        this.units = units;
        this.words = new CompareWords(units);
        this.front = new FrontWords(comparison, units);
        this.flow = flow;
    }

    /** The document's bytes. */
    public static byte[] bytes(Comparison comparison, UnitSystem units, Paper paper) {
        Audit described = comparison.described();
        String tool = "coldseam " + described.version();
        String data = CompareJson.text(comparison);
        DocumentInfo info = new DocumentInfo(
                "Options before framing: " + described.house().name(),
                "What might be built otherwise, what it costs and what it saves",
                tool,
                "insulation continuity, options, cost, heat loss",
                (data + units + paper).hashCode());
        try (Flow flow = new Flow(paper, info)) {
            ComparePdf pages = new ComparePdf(comparison, units, flow);
            pages.front();
            if (comparison.alternatives().notEmpty()) {
                pages.alone();
                pages.sheets();
                pages.method();
            }
            flow.attach("comparison.json", "The comparison as data", data);
            return flow.finish(described.house().name() + ": options", tool);
        }
    }

    private void front() {
        flow.add(Blocks.text(described.house().name() + ": options before framing", Style.TITLE.sized(22, 26)));
        flow.space(6);
        flow.add(Blocks.text(Rich.trade(front.described()), Style.LEAD));
        front.rests().forEach(text -> flow.small(Rich.trade(text)));
        front.found().ifPresent(text -> flow.body(Rich.trade(text)));
        flow.space(6);
        if (comparison.alternatives().isEmpty()) {
            flow.body(FrontWords.noAlternatives());
            return;
        }
        chosen();
        flow.space(6);
        if (comparison.priced()) {
            flow.add(Blocks.drawing(
                    PICTURE,
                    "The front of cost against heat loss; the tables have its numbers.",
                    (canvas, box) -> new FrontDrawing(comparison, units).draw(canvas, box)));
        } else {
            // Without costs the picture is one column of marks.
            flow.heading("Each option alone");
            inShort();
        }
        flow.space(4);
        answers();
        flow.space(4);
        front.worth().newWith(front.corners()).forEach(text -> flow.body(Rich.trade(text)));
    }

    private void chosen() {
        comparison
                .chosen()
                .flatMap(Answer::best)
                .ifPresent(best -> flow.add(Blocks.panel(
                        Blocks.stack(
                                3,
                                Blocks.text(Rich.strong(front.chosen().orElseThrow() + "."), Style.BODY),
                                Blocks.text(front.set(best.set()), Style.BODY),
                                Blocks.text(Rich.trade(front.outcome(best) + ". " + front.verdict(best)), Style.BODY),
                                Blocks.text(Rich.trade(front.next().orElse("")), Style.BODY)),
                        Palette.FROST,
                        Palette.DEEP)));
    }

    private void answers() {
        flow.heading("What was asked");
        Table table = Table.of(
                Table.Column.share("asked", 0.8),
                Table.Column.share("set", 1.2),
                Table.Column.number("H", 92),
                Table.Column.number("cost more", 58),
                Table.Column.number("as good", 38));
        for (Answer answer : comparison.answers()) {
            Table.Cell asked = Table.Cell.of(Rich.trade(front.question(answer)));
            table = answer.best().isEmpty()
                    ? row(table, asked, front.noAnswer(answer), "", "", "")
                    : row(
                            table,
                            asked,
                            front.sameAs(answer)
                                    .orElseGet(() -> front.set(
                                                    answer.best().get().set()) + ". "
                                            + front.verdict(answer.best().get())),
                            words.loss(answer.best().get().audit()),
                            comparison.priced()
                                    ? Format.of(
                                            "%d %s",
                                            answer.best().get().choice().cost(),
                                            described.house().prices().currency())
                                    : "",
                            String.valueOf(answer.best().get().asGood()));
        }
        flow.add(table);
    }

    private static Table row(Table table, Table.Cell first, String... others) {
        return table.with(new Table.Row(
                Table.Kind.PLAIN,
                Lists.immutable.of(first).newWithAll(Lists.immutable.of(others).collect(Table.Cell::of))));
    }

    private void inShort() {
        comparison
                .alternatives()
                .forEach(each -> flow.add(Blocks.item("–", Rich.trade(front.brief(each)), Style.BODY)));
    }

    private void alone() {
        flow.sectionHere("Each option alone", 160);
        if (comparison.priced()) {
            inShort();
            flow.space(6);
        }
        flow.body(
                "Against the house as described, all else left as it is. Where the intervals cannot tell, an option is as good,"
                        + " not better. ● on the front: some set that is worth knowing has it.");
        flow.space(4);
        Table table = Table.of(
                Table.Column.share("option", 1.1),
                Table.Column.number("H more, " + units.label(Dimension.HEAT_LOSS_COEFFICIENT), 84),
                Table.Column.fixed("stands", 44),
                Table.Column.number("a year", 62),
                Table.Column.number("cost more", 58),
                Table.Column.number("years", 50),
                Table.Column.fixed("front", 30));
        if (comparison.before().isPresent()) {
            table = table.row(Table.Kind.GROUP, Table.Cell.of("what is there now"))
                    .row(cells(comparison.before().get()));
        }
        for (ImmutableList<Alternative> options : Groups.by(comparison.alternatives(), Alternative::decision)) {
            table = table.row(
                    Table.Kind.GROUP,
                    Table.Cell.of(front.described(options.getFirst().decision())));
            for (Alternative each : options) {
                table = table.row(cells(each));
            }
        }
        flow.add(table);
    }

    private String[] cells(Before before) {
        return new String[] {
            "as found",
            new Print(units).readable(before.more(), Dimension.HEAT_LOSS_COEFFICIENT),
            CompareWords.standing(Standing.of(before.more())),
            yearly(Yearly.money(before.more(), described.house()), Yearly.energy(before.more(), described.house())),
            "",
            "",
            "–"
        };
    }

    /** What is lost more in a year, in money where it has a price. */
    private String yearly(Optional<Interval> money, Optional<Interval> energy) {
        String currency = described.house().prices().currency();
        return money.map(more ->
                        (Math.abs(more.middle()) < 0.5 ? "0" : Format.of("%+.0f", more.middle())) + " " + currency)
                .orElse(energy.map(more -> units.format(more.middle(), Dimension.ENERGY))
                        .orElse(""));
    }

    private String[] cells(Alternative each) {
        String currency = described.house().prices().currency();
        String front = each.onFront() ? "●" : "–";
        if (each.built().isEmpty()) {
            return new String[] {words.name(each), "", "does not fit", "", "", "", front};
        }
        Alternative.Built built = each.built().get();
        return new String[] {
            words.name(each),
            new Print(units).readable(built.more(), Dimension.HEAT_LOSS_COEFFICIENT),
            each.described()
                    ? "as described"
                    : CompareWords.standing(built.standing())
                            + (each.asGood().isEmpty()
                                    ? ""
                                    : ", as good as "
                                            + comparison
                                                    .asGood(each)
                                                    .collect(words::name)
                                                    .makeString(", ")),
            yearly(
                    built.savesMoney().map(saved -> saved.times(-1)),
                    built.saves().map(saved -> saved.times(-1))),
            built.cost().isPresent() ? Format.of("%+.0f %s", built.cost().getAsDouble(), currency) : "",
            built.payback().map(CompareWords::years).orElse(""),
            front
        };
    }

    private void sheets() {
        flow.section("What each option does");
        for (ImmutableList<Alternative> options : Groups.by(comparison.alternatives(), Alternative::decision)) {
            flow.heading(front.described(options.getFirst().decision()));
            front.worst(options.getFirst().decision())
                    .ifPresent(line -> flow.add(Blocks.item("–", Rich.trade(line), Style.BODY)));
            flow.space(4);
            options.forEach(this::sheet);
        }
    }

    private void sheet(Alternative each) {
        flow.heading(front.name(each));
        each.misfits()
                .forEach(
                        reason -> flow.add(Blocks.item("–", Rich.of("does not fit: " + reason.in(units)), Style.BODY)));
        front.lines(each).forEach(line -> flow.add(Blocks.item("–", Rich.trade(line), Style.BODY)));
        flow.space(4);
    }

    private void method() {
        flow.section("How this was found");
        flow.body(front.counted());
        flow.space(4);
        front.argument().forEach(text -> {
            flow.body(text);
            flow.space(4);
        });
        flow.heading("Cautions");
        CompareWords.cautions().forEach(text -> flow.add(Blocks.item("–", Rich.of(text), Style.BODY)));
    }
}
