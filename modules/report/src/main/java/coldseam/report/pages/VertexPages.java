package coldseam.report.pages;

import coldseam.audit.Audit;
import coldseam.audit.VertexRow;
import coldseam.audit.VertexSheet;
import coldseam.conduction.solid.BodySolution;
import coldseam.conduction.solid.Box;
import coldseam.envelope.DimensionSystem;
import coldseam.files.quantity.Dimension;
import coldseam.report.pdf.Blocks;
import coldseam.report.pdf.Flow;
import coldseam.report.pdf.Rich;
import coldseam.report.pdf.Style;
import coldseam.report.pdf.Table;
import coldseam.report.solid.BodyPicture;
import coldseam.report.words.VertexWords;

/** The corners where three or more edges meet: every one by name, and a sheet for each different one that is computed. */
final class VertexPages {

    /** Points. */
    private static final double HEIGHT = 210;

    /** m; what is shown of a corner that stands on metres of ground. */
    private static final Box NEAR = Box.of(-1.2, -1.2, -1.2, 1.2, 1.2, 1.2);

    private VertexPages() {}

    static void write(Page page) {
        Audit audit = page.audit();
        if (audit.vertices().isEmpty()) {
            return;
        }
        Flow flow = page.flow();
        flow.section("Corners");
        flow.add(Blocks.text(
                Print.capital(VertexWords.count(audit))
                        + ". A corner is put together from its edges' own details and solved in three dimensions; χ is what"
                        + " it adds to the heat that surfaces and edges lose without it.",
                Style.BODY));
        flow.space(6);
        register(page);
        audit.vertexSheets().forEach(sheet -> sheet(page, sheet));
    }

    private static void register(Page page) {
        Print print = page.print();
        DimensionSystem system = page.audit().heatLoss().system();
        Table table = Table.of(
                Table.Column.share("corner", 1),
                Table.Column.fixed("sheet", 32),
                Table.Column.number("χ, " + print.units().label(Dimension.POINT_TRANSMITTANCE), 104),
                Table.Column.number("fRsi", 40),
                Table.Column.share("", 0.7));
        for (VertexRow row : page.audit().vertices()) {
            table = table.row(
                    row.corner().name(),
                    row.sheet().map(VertexSheet::id).orElse("–"),
                    row.sheet()
                            .flatMap(sheet -> sheet.result().heat())
                            .map(heat -> print.number(heat.chi(system), Dimension.POINT_TRANSMITTANCE))
                            .orElse("–"),
                    row.sheet()
                            .map(sheet -> Print.factor(sheet.temperatureFactor()))
                            .orElse("–"),
                    VertexWords.status(row, page.audit().mould()));
        }
        page.flow().add(table);
    }

    private static void sheet(Page page, VertexSheet sheet) {
        Flow flow = page.flow();
        Print print = page.print();
        String heading = sheet.id() + " · " + Print.capital(sheet.kind());
        flow.need(HEIGHT + 130);
        flow.space(10);
        flow.heading(heading);
        flow.add(Blocks.text(
                Print.count(sheet.places().size(), "corner", "corners") + " · details of "
                        + sheet.edges().makeString(", ")
                        + sheet.result()
                                .corner()
                                .map(own -> " · built as " + own.detail().who())
                                .orElse("")
                        + (sheet.chosen() ? "" : " · not all chosen: the worst stands in"),
                Style.BODY));
        flow.space(4);
        BodySolution solution = sheet.result().surface();
        boolean onGround = sheet.result().heat().isEmpty();
        BodyPicture picture =
                onGround ? new BodyPicture(solution, print.units(), NEAR) : new BodyPicture(solution, print.units());
        flow.add(Blocks.drawing(
                HEIGHT,
                onGround
                        ? "An upright and a level cut through the coldest place of the corner"
                        : "The corner from outside with the temperatures of its surfaces, and a cut through its coldest place",
                picture::drawBeside));
        flow.space(4);
        Table table = Table.of(Table.Column.share("", 1), Table.Column.number("", 190));
        table = line(table, Rich.of("χ with external dimensions"), chi(print, sheet, DimensionSystem.EXTERNAL));
        table = line(table, Rich.of("χ with internal dimensions"), chi(print, sheet, DimensionSystem.INTERNAL));
        table = line(
                table,
                Rich.marked("lowest temperature factor f_{Rsi}, an estimate; limit "
                        + Print.factor(page.audit().house().limits().temperatureFactor())),
                Print.factor(sheet.temperatureFactor()));
        table = line(
                table,
                Rich.of("indoor humidity from which mould may grow there, at the design temperatures"),
                Print.percent(sheet.mouldHumidity()));
        flow.add(table);
    }

    private static String chi(Print print, VertexSheet sheet, DimensionSystem system) {
        return sheet.result()
                .heat()
                .map(heat -> print.of(heat.chi(system), Dimension.POINT_TRANSMITTANCE))
                .orElse("in the U of the floor, ISO 13370");
    }

    private static Table line(Table table, Rich what, String value) {
        return table.row(Table.Kind.PLAIN, Table.Cell.of(what), Table.Cell.of(value));
    }
}
