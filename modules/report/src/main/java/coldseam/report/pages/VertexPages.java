package coldseam.report.pages;

import static coldseam.report.pdf.Listing.perhaps;

import coldseam.audit.Audit;
import coldseam.audit.VertexRow;
import coldseam.audit.VertexSheet;
import coldseam.envelope.DimensionSystem;
import coldseam.files.quantity.Dimension;
import coldseam.report.pdf.Flow;
import coldseam.report.pdf.Listing;
import coldseam.report.pdf.Rich;
import coldseam.report.words.Phrases;
import coldseam.report.words.Print;
import coldseam.report.words.VertexWords;

/** The corners where three or more edges meet: every one by name, and a sheet for each different one that is computed. */
final class VertexPages {

    private VertexPages() {}

    static void write(Page page) {
        Audit audit = page.audit();
        if (audit.vertices().isEmpty()) {
            return;
        }
        Flow flow = page.flow();
        flow.section("Corners");
        flow.body(Phrases.capital(VertexWords.count(audit))
                + ". A corner is put together from its edges' own details and solved in three dimensions; χ is what"
                + " it adds to the heat that surfaces and edges lose without it."
                + (audit.house().openings().isEmpty()
                        ? ""
                        : " Where head, sill or threshold of a window or door meet its jambs, three planes lose heat as well:"
                                + " such a corner may be colder than they are. "
                                + VertexWords.ofOpenings(audit, page.print().units())));
        flow.space(6);
        register(page);
        audit.vertexSheets().forEach(sheet -> sheet(page, sheet));
    }

    private static void register(Page page) {
        Print print = page.print();
        DimensionSystem system = page.audit().heatLoss().system();
        page.flow()
                .add(Listing.<VertexRow>empty()
                        .share("corner", 1, row -> row.corner().name())
                        .fixed("sheet", 32, perhaps(row -> row.sheet().map(VertexSheet::id)))
                        .number(
                                print.head("χ", Dimension.POINT_TRANSMITTANCE),
                                104,
                                perhaps(row -> row.sheet()
                                        .flatMap(sheet -> sheet.result().heat())
                                        .map(heat -> print.number(heat.chi(system), Dimension.POINT_TRANSMITTANCE))))
                        .number(
                                "fRsi",
                                40,
                                perhaps(row -> row.sheet().map(sheet -> Print.factor(sheet.temperatureFactor()))))
                        .share(
                                "",
                                0.7,
                                row -> VertexWords.status(row, page.audit().mould(), print.units()))
                        .of(page.audit().vertices()));
    }

    private static void sheet(Page page, VertexSheet sheet) {
        Flow flow = page.flow();
        String heading = sheet.id() + " · " + Phrases.capital(sheet.kind());
        flow.need(CornerSheet.HEIGHT + 130);
        flow.space(10);
        flow.heading(heading);
        flow.body(Phrases.count(sheet.places().size(), "corner", "corners") + " · details of "
                + sheet.edges().makeString(", ")
                + sheet.result()
                        .corner()
                        .map(own -> " · built as " + own.detail().who())
                        .orElse("")
                + (sheet.chosen() ? "" : " · not all chosen: the worst stands in"));
        Finds.write(page, finding -> finding.subject().isAbout(sheet));
        flow.space(4);
        CornerSheet corner = new CornerSheet(page.print(), sheet.result());
        flow.add(corner.view());
        flow.space(4);
        flow.add(corner.numbers()
                .fact(
                        Rich.marked("limit for f_{Rsi}"),
                        Print.factor(page.audit().house().limits().temperatureFactor()))
                .fact(
                        Rich.of("indoor humidity from which mould may grow there, at the design temperatures"),
                        Print.percent(sheet.mouldHumidity())));
        flow.space(4);
        sheet.result().inDoubt().forEach(flow::small);
        corner.words(flow);
    }
}
