package coldseam.report.pages;

import coldseam.audit.Audit;
import coldseam.audit.Finding;
import coldseam.files.quantity.Dimension;
import coldseam.report.drawing.Face;
import coldseam.report.drawing.Palette;
import coldseam.report.pdf.Blocks;
import coldseam.report.pdf.Flow;
import coldseam.report.pdf.Rich;
import coldseam.report.pdf.Style;
import coldseam.report.pdf.Table;

/** Every finding, the heaviest first. */
public final class Gaps {

    private Gaps() {}

    public static void write(Page page) {
        Flow flow = page.flow();
        Audit audit = page.audit();
        if (audit.findings().isEmpty()) {
            flow.sectionHere("Gaps and weak spots by weight", 80);
            flow.add(Blocks.text("Nothing was found: no layer is open, broken, pinched or unknown.", Style.BODY));
            return;
        }
        flow.section("Gaps and weak spots by weight");
        flow.add(Blocks.text(
                "Losses are counted against the best option of the catalogue for the same junction. A full disc is a gap, a"
                        + " full square is unknown, an open diamond is a weak spot; the numbers are those of the drawing.",
                Style.BODY));
        flow.space(6);
        boolean money = audit.findings().anySatisfy(f -> f.moneyPerYear().isPresent());
        Table table = Table.of(
                Table.Column.fixed("", 26),
                Table.Column.share("what and where", 1.6),
                Table.Column.share("what to do", 0.9),
                Table.Column.number("length, " + page.print().units().label(Dimension.LENGTH), 42),
                Table.Column.number("lost, " + page.print().units().label(Dimension.HEAT_LOSS_COEFFICIENT), 74));
        if (money) {
            table = new Table(
                    table.columns()
                            .newWith(Table.Column.number(audit.house().prices().currency() + " a year", 48)),
                    table.rows());
        }
        for (Finding finding : audit.findings()) {
            table = table.with(row(finding, page, money));
        }
        flow.add(table);
    }

    private static Table.Row row(Finding finding, Page page, boolean money) {
        Rich what = Rich.trade(page.words().title(finding))
                .with(Face.SEMIBOLD)
                .plus(Rich.newLine())
                .plus(Rich.of(page.words().place(finding)).with(Palette.DEEP))
                .plus(Rich.newLine())
                .plus(Rich.trade(page.words().what(finding)));
        if (finding.sheet().isPresent()) {
            what = what.plus(Rich.newLine())
                    .plus(Rich.of("Sheet " + finding.sheet().get().id() + " · rule " + finding.rule())
                            .with(Palette.SLATE));
        } else {
            what = what.plus(Rich.newLine())
                    .plus(Rich.of("Rule " + finding.rule()).with(Palette.SLATE));
        }
        Print print = page.print();
        Table.Row row = new Table.Row(
                Table.Kind.PLAIN,
                org.eclipse.collections.impl.factory.Lists.immutable.of(
                        Cover.badge(finding),
                        Table.Cell.of(what),
                        Table.Cell.of(Rich.trade(page.words().toDo(finding))),
                        Table.Cell.of(
                                finding.subject().length() > 0
                                        ? print.number(finding.subject().length(), Dimension.LENGTH)
                                        : "–"),
                        Table.Cell.of(finding.loss()
                                .map(loss -> print.number(loss, Dimension.HEAT_LOSS_COEFFICIENT))
                                .orElse("not known"))));
        if (!money) {
            return row;
        }
        String amount = finding.moneyPerYear().isPresent()
                ? Print.money(finding.moneyPerYear().getAsDouble(), "").strip()
                : "–";
        return new Table.Row(row.kind(), row.cells().newWith(Table.Cell.of(amount)));
    }
}
