package coldseam.report.pages;

import coldseam.audit.BridgeSheet;
import coldseam.audit.PointRow;
import coldseam.files.quantity.Dimension;
import coldseam.junctions.PointResult;
import coldseam.report.drawing.Palette;
import coldseam.report.pdf.Block;
import coldseam.report.pdf.Blocks;
import coldseam.report.pdf.Flow;
import coldseam.report.pdf.Rich;
import coldseam.report.pdf.Style;
import coldseam.report.pdf.Table;
import coldseam.report.words.SourceWords;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

/** One sheet for each computed point, after a register of all of them. */
public final class PointSheets {

    private PointSheets() {}

    public static void write(Page page) {
        if (page.audit().points().isEmpty()) {
            return;
        }
        register(page);
        page.audit().pointSheets().forEach(sheet -> write(page, sheet));
    }

    private static void register(Page page) {
        Flow flow = page.flow();
        Print print = page.print();
        flow.section("Points");
        flow.add(Blocks.text(
                "What goes through the insulation at a spot, as the house file lists it: posts, columns, brackets, pipes and"
                        + " ducts. χ is what one loses beyond the surface it goes through. What the file does not list is not"
                        + " here: count it on site.",
                Style.BODY));
        flow.space(6);
        Table table = Table.of(
                Table.Column.share("points", 1),
                Table.Column.fixed("sheet", 32),
                Table.Column.number("number", 44),
                Table.Column.number("χ, " + print.units().label(Dimension.POINT_TRANSMITTANCE), 100),
                Table.Column.number("b", 28),
                Table.Column.number("loss, " + print.units().label(Dimension.HEAT_LOSS_COEFFICIENT), 74),
                Table.Column.share("χ comes from", 0.5));
        for (PointRow row : page.audit().points()) {
            table = table.row(
                    Print.capital(row.points().name()) + ": " + row.kind().label() + ", "
                            + row.surface().name(),
                    row.sheet().map(BridgeSheet::id).orElse("–"),
                    Integer.toString(row.number()),
                    row.sheet().isPresent() ? print.number(row.chi(), Dimension.POINT_TRANSMITTANCE) : "–",
                    print.number(row.factor(), Dimension.RATIO),
                    row.sheet().isPresent() ? print.number(row.loss(), Dimension.HEAT_LOSS_COEFFICIENT) : "–",
                    SourceWords.brief(row.source()));
        }
        flow.add(table);
    }

    private static void write(Page page, BridgeSheet<PointResult> sheet) {
        Flow flow = page.flow();
        var detail = sheet.result().detail();
        String head = sheet.id() + " · " + Print.capital(detail.kind().label());
        flow.section(head, head + ": " + detail.name(), "Points");
        flow.add(Blocks.text(Rich.strong(detail.name()), Style.LEAD));
        flow.add(Blocks.text(
                (int) sheet.size() + " through \""
                        + sheet.result().setup().host().name() + "\": "
                        + sheet.places().makeString(", ")
                        + (sheet.chosen()
                                ? " · chosen by the house file"
                                : " · not chosen: this option stands in for it"),
                Style.BODY.with(sheet.chosen() ? Palette.SLATE : Palette.EMBER)));
        flow.space(6);
        new PointDetailSheet(flow, page.print(), sheet.result())
                .write(MarkedTemperatures.of(page.audit().house().site()), words(page, sheet));
    }

    /** What a builder takes from the numbers. */
    private static Block words(Page page, BridgeSheet<PointResult> sheet) {
        Print print = page.print();
        var site = page.audit().house().site();
        MutableList<Block> out = Lists.mutable.empty();
        out.add(Blocks.text(
                "At " + print.of(site.indoorTemperature(), Dimension.TEMPERATURE) + " indoors and "
                        + print.of(site.outdoorTemperature(), Dimension.TEMPERATURE)
                        + " outdoors the coldest point gets wet when the indoor air holds "
                        + JunctionSheets.humidity(sheet.dewPointHumidity()) + "; mould may grow on it from "
                        + JunctionSheets.humidity(sheet.mouldHumidity()) + ".",
                Style.BODY));
        sheet.best()
                .ifPresent(best -> out.add(Blocks.text(
                        "The best option of the catalogue for this surface is “"
                                + best.detail().name() + "” ("
                                + best.detail().id() + "), with χ "
                                + print.of(best.chi(), Dimension.POINT_TRANSMITTANCE) + " each.",
                        Style.BODY)));
        return Blocks.panel(Blocks.stack(out.toImmutable(), 4), Palette.FROST, Palette.DEEP);
    }
}
