package coldseam.report.pages;

import coldseam.envelope.shell.Side;
import coldseam.files.Words;
import coldseam.files.quantity.Dimension;
import coldseam.report.pdf.Flow;
import coldseam.report.pdf.Listing;
import coldseam.report.pdf.Rich;
import coldseam.report.pdf.Table;
import coldseam.report.words.Phrases;
import coldseam.report.words.Print;
import coldseam.report.words.TakeOff;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;

/** The take-off: every surface side by side, with what it is built as and what it faces, and every window and door. */
public final class AreaPages {

    private AreaPages() {}

    public static void write(Page page) {
        Flow flow = page.flow();
        Print print = page.print();
        String system = Words.word(page.audit().heatLoss().system());
        flow.section("Areas");
        flow.body(Rich.marked(
                "Surfaces are measured in " + system + " dimensions, gross and net of their windows and doors, which"
                        + " are measured by the outer size of their frames. The heat-loss table takes the net areas with all their"
                        + " digits, which the data has, before it rounds what a line loses; so do the sums here, which may differ"
                        + " from those of the printed areas in their last digit."));
        flow.space(6);
        flow.add(surfaces(page, print));
        ImmutableList<TakeOff.OfOpening> openings = TakeOff.openings(page.audit());
        if (openings.isEmpty()) {
            return;
        }
        Table table = openings(page, print, openings);
        flow.heading("Windows and doors");
        flow.add(table);
    }

    private static Table surfaces(Page page, Print print) {
        String other = Words.word(page.audit().heatLoss().system().other());
        Table table = Table.of(
                Table.Column.share("surface", 1),
                Table.Column.share("built as", 0.7),
                Table.Column.share("faces", 0.55),
                Table.Column.number(print.head("gross", Dimension.AREA), 54),
                Table.Column.number(print.head("openings", Dimension.AREA), 54),
                Table.Column.number(print.head("net", Dimension.AREA), 54),
                Table.Column.number(print.head(other + ", gross", Dimension.AREA), 66));
        ImmutableList<TakeOff.OfSurface> all = TakeOff.surfaces(page.audit());
        for (Side side : Side.values()) {
            ImmutableList<TakeOff.OfSurface> here = TakeOff.surfaces(page.audit(), side);
            if (here.isEmpty()) {
                continue;
            }
            String name = Phrases.capital(page.audit().shell().nameOf(side));
            table = table.row(Table.Kind.GROUP, Table.Cell.of(name));
            for (TakeOff.OfSurface each : here) {
                table = table.with(row(
                        Table.Kind.PLAIN,
                        each.surface().name(),
                        each.builtAs(),
                        each.faces(),
                        Lists.immutable.of(each),
                        print));
            }
            if (here.size() > 1) {
                table = table.with(row(Table.Kind.SUBTOTAL, name + " together", "", "", here, print));
            }
        }
        return table.with(row(Table.Kind.TOTAL, "All surfaces", "", "", all, print));
    }

    private static Table.Row row(
            Table.Kind kind,
            String name,
            String builtAs,
            String faces,
            ImmutableList<TakeOff.OfSurface> sum,
            Print print) {
        return new Table.Row(
                kind,
                Lists.immutable
                        .of(
                                name,
                                builtAs,
                                faces,
                                area(sum.sumOfDouble(TakeOff.OfSurface::gross), print),
                                area(sum.sumOfDouble(each -> each.surface().openingArea()), print),
                                area(sum.sumOfDouble(TakeOff.OfSurface::net), print),
                                area(sum.sumOfDouble(TakeOff.OfSurface::other), print))
                        .collect(Table.Cell::of));
    }

    private static String area(double area, Print print) {
        return print.units().number(area, Dimension.AREA, 2);
    }

    private static Table openings(Page page, Print print, ImmutableList<TakeOff.OfOpening> openings) {
        return Listing.<TakeOff.OfOpening>empty()
                .share("window or door", 1, each -> each.opening().name())
                .share("in", 1, TakeOff.OfOpening::in)
                .fixed("side", 50, each -> each.side(page.audit()))
                .number("width", 58, each -> print.length(each.opening().width()))
                .number("height", 58, each -> print.length(each.opening().height()))
                .number(print.head("area", Dimension.AREA), 48, each -> area(each.area(), print))
                .number(
                        print.head("U", Dimension.TRANSMITTANCE),
                        78,
                        each -> print.number(each.transmittance(), Dimension.TRANSMITTANCE))
                .of(openings);
    }
}
