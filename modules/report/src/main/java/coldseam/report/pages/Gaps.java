package coldseam.report.pages;

import coldseam.audit.Audit;
import coldseam.audit.Finding;
import coldseam.files.quantity.Dimension;
import coldseam.report.drawing.Face;
import coldseam.report.drawing.Palette;
import coldseam.report.pdf.Flow;
import coldseam.report.pdf.Listing;
import coldseam.report.pdf.Rich;
import coldseam.report.pdf.Table;
import coldseam.report.words.FindingWords;
import coldseam.report.words.Phrases;
import coldseam.report.words.Print;
import java.util.Optional;

/** Every finding, the heaviest first. */
public final class Gaps {

    private Gaps() {}

    public static void write(Page page) {
        Flow flow = page.flow();
        Audit audit = page.audit();
        if (audit.findings().isEmpty()) {
            flow.sectionHere("Gaps and weak spots by weight", 80);
            flow.body("Nothing was found: no layer is open, broken, pinched or unknown.");
            return;
        }
        flow.section("Gaps and weak spots by weight");
        flow.body(
                "Losses are counted against the best option of the catalogue for the same junction. A full disc is a gap, a"
                        + " full square is unknown, an open diamond is a weak spot; the numbers are those of the drawing.");
        Optional<String> once = page.words().toldOnce(audit.findings());
        once.ifPresent(flow::body);
        flow.space(6);
        Print print = page.print();
        Listing<Finding> listing = Listing.<Finding>empty()
                .cell(Table.Column.fixed("", 26), Cover::badge)
                .rich(
                        Table.Column.share("what and where", 1.6),
                        finding -> what(finding, page.words(), unchosen(once, finding, page.words())))
                .rich(
                        Table.Column.share("what to do", 0.9),
                        finding -> unchosen(once, finding, page.words())
                                .map(unchosen -> Rich.trade(Phrases.capital(unchosen.best() + ".")))
                                .orElseGet(() -> Rich.trade(page.words().toDo(finding))))
                .number(
                        print.head("length", Dimension.LENGTH),
                        42,
                        finding -> finding.subject().length() > 0
                                ? print.number(finding.subject().length(), Dimension.LENGTH)
                                : "–")
                .number(
                        print.head("lost", Dimension.HEAT_LOSS_COEFFICIENT),
                        74,
                        finding -> finding.loss()
                                .map(loss -> print.number(loss, Dimension.HEAT_LOSS_COEFFICIENT))
                                .orElse("not known"));
        boolean money = audit.findings().anySatisfy(f -> f.moneyPerYear().isPresent());
        flow.add((money
                        ? listing.number(
                                audit.house().prices().currency() + " a year",
                                48,
                                finding -> finding.moneyPerYear().isPresent()
                                        ? Print.spacedMoney(
                                                finding.moneyPerYear().getAsDouble())
                                        : "–")
                        : listing)
                .of(audit.findings()));
    }

    private static Optional<FindingWords.Unchosen> unchosen(
            Optional<String> once, Finding finding, FindingWords words) {
        return once.flatMap(told -> words.unchosen(finding));
    }

    private static Rich what(Finding finding, FindingWords words, Optional<FindingWords.Unchosen> unchosen) {
        return Rich.trade(words.title(finding))
                .with(Face.SEMIBOLD)
                .plus(Rich.newLine())
                .plus(Rich.of(words.place(finding)).with(Palette.DEEP))
                .plus(Rich.newLine())
                .plus(Rich.trade(unchosen.map(each -> "Stands in: " + each.standIn() + ".")
                        .orElseGet(() -> words.what(finding))))
                .plus(Rich.newLine())
                .plus(Rich.of(finding.sheet()
                                        .map(sheet -> "Sheet " + sheet.id() + " · rule ")
                                        .orElse("Rule ")
                                + finding.rule())
                        .with(Palette.SLATE));
    }
}
