package coldseam.report.pages;

import static coldseam.report.pdf.Listing.perhaps;

import coldseam.audit.Audit;
import coldseam.audit.PairRow;
import coldseam.audit.PairSheet;
import coldseam.envelope.DimensionSystem;
import coldseam.files.quantity.Dimension;
import coldseam.report.pdf.Blocks;
import coldseam.report.pdf.Flow;
import coldseam.report.pdf.Listing;
import coldseam.report.pdf.Rich;
import coldseam.report.pdf.Style;
import coldseam.report.pdf.Table;
import coldseam.report.section.SectionPicture;
import coldseam.report.words.PairWords;
import coldseam.report.words.Phrases;
import coldseam.report.words.Print;

/** The seams that touch: every two of them, and a sheet for each different pair that is solved in one section. */
final class PairPages {

    private PairPages() {}

    static void write(Page page) {
        Audit audit = page.audit();
        if (audit.pairs().isEmpty()) {
            return;
        }
        Print print = page.print();
        Flow flow = page.flow();
        DimensionSystem system = audit.heatLoss().system();
        flow.section("Seams beside each other");
        flow.body(Rich.trade(PairWords.count(audit, print.units())
                        .map(count -> Phrases.capital(count) + ". ")
                        .orElse("")
                + "The two sections are cut where both show the same of their common surface, and put together there; what both"
                + " then lose more than the sum of their ψ, below zero for less, is a line"
                + " of H_T. Weakest paths and control layers are those of each by itself."));
        flow.space(6);
        flow.add(Listing.<PairRow>empty()
                .share(
                        "seams",
                        1,
                        row -> Phrases.capital(row.pair().one().edge().place()) + "; "
                                + row.pair().other().edge().place())
                .fixed("sheet", 32, perhaps(row -> row.sheet().map(PairPages::ids)))
                .number("apart", 50, row -> print.length(row.pair().distance()))
                .number("length", 50, row -> print.length(row.pair().length()))
                .number(
                        print.head("ψ of both", Dimension.LINEAR_TRANSMITTANCE),
                        96,
                        perhaps(row -> row.sheet()
                                .map(sheet -> print.number(sheet.psi(system), Dimension.LINEAR_TRANSMITTANCE))))
                .number("fRsi", 34, perhaps(row -> row.sheet().map(sheet -> Print.factor(sheet.temperatureFactor()))))
                .share("", 0.6, row -> PairWords.status(row, audit.mould(), print.units()))
                .of(audit.pairs()));
        audit.pairSheets().forEach(sheet -> sheet(page, sheet));
    }

    private static String ids(PairSheet sheet) {
        return sheet.id() + ": " + sheet.one().id() + ", " + sheet.other().id();
    }

    private static void sheet(Page page, PairSheet sheet) {
        Print print = page.print();
        Table facts = Table.of(Table.Column.share("", 1), Table.Column.number("", 74))
                .fact(Rich.of("apart"), print.length(PairWords.apart(page.audit(), sheet)))
                .fact(Rich.of("beside each other"), print.length(sheet.length()))
                .fact(
                        Rich.of("more than the sum of both ψ"),
                        print.of(sheet.interaction(), Dimension.LINEAR_TRANSMITTANCE))
                .fact(
                        Rich.marked("lowest temperature factor f_{Rsi}, an estimate"),
                        Print.factor(sheet.temperatureFactor()))
                .fact(
                        Rich.of("indoor humidity from which mould may grow there, at the design temperatures"),
                        Print.percent(sheet.mouldHumidity()));
        DrawnBeside.write(
                page,
                SectionPicture.of(
                        sheet.result(),
                        MarkedTemperatures.of(page.audit().house().site()),
                        print.units()),
                DrawnResult.of(
                        sheet.result().solution(), print.units(), sheet.result().setup()),
                "The section of both with its isotherms",
                sheet.id() + " · " + Phrases.capital(sheet.kind()),
                Blocks.stack(
                        4,
                        Blocks.text(
                                sheet.one().id() + ", "
                                        + sheet.one().result().detail().name() + "; "
                                        + sheet.other().id() + ", "
                                        + sheet.other().result().detail().name() + ".",
                                Style.BODY),
                        Blocks.table(facts)));
    }
}
