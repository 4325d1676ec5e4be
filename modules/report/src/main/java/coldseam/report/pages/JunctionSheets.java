package coldseam.report.pages;

import coldseam.audit.JunctionSheet;
import coldseam.envelope.Control;
import coldseam.envelope.quantity.Dimension;
import coldseam.envelope.quantity.UnitSystem;
import coldseam.junctions.Connection;
import coldseam.junctions.Detail;
import coldseam.junctions.DetailParameter;
import coldseam.junctions.JunctionResult;
import coldseam.report.drawing.Align;
import coldseam.report.drawing.Box;
import coldseam.report.drawing.Palette;
import coldseam.report.pdf.Block;
import coldseam.report.pdf.Blocks;
import coldseam.report.pdf.Flow;
import coldseam.report.pdf.Rich;
import coldseam.report.pdf.Style;
import coldseam.report.pdf.Table;
import coldseam.report.section.Legend;
import coldseam.report.section.SectionDrawing;
import coldseam.report.section.SectionPicture;
import java.util.Locale;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

/** One sheet for each computed junction. */
public final class JunctionSheets {

    /** Least and greatest height of the drawing, points. */
    private static final double LEAST = 235;

    private static final double MOST = 420;

    private JunctionSheets() {}

    public static void write(Page page) {
        for (JunctionSheet sheet : page.audit().sheets()) {
            write(page, sheet);
        }
    }

    private static void write(Page page, JunctionSheet sheet) {
        Flow flow = page.flow();
        Detail detail = sheet.result().detail();
        flow.section(
                sheet.id() + " · " + Print.capital(detail.kind().label()),
                sheet.id() + " · " + Print.capital(detail.kind().label()) + ": " + detail.name());
        flow.add(Blocks.text(Rich.strong(detail.name()), Style.LEAD));
        flow.add(Blocks.text(
                page.print().length(sheet.length()) + " in "
                        + Print.count(sheet.edges().size(), "edge", "edges")
                        + (sheet.chosen()
                                ? " · chosen by the house file"
                                : " · not chosen: this option stands in for it"),
                Style.BODY.with(sheet.chosen() ? Palette.SLATE : Palette.EMBER)));
        flow.space(6);
        SectionPicture picture = SectionPicture.of(
                sheet.result(),
                Limits.of(page.audit().house().site()),
                page.print().units());
        Block words = Blocks.panel(words(page, sheet), Palette.FROST, Palette.DEEP);
        // The drawing takes what the tables and words of the first page leave; a larger one may show more materials.
        double drawn = LEAST;
        SectionDrawing drawing = new SectionDrawing(picture, flow.width(), drawn);
        for (int round = 0; round < 3; round++) {
            double rest = tables(page, sheet, drawing).height(flow.width())
                    + words.height(flow.width())
                    + Legend.HEIGHT
                    + 6
                    + 8
                    + 1;
            double room = Math.max(LEAST, Math.min(MOST, flow.remaining() - rest));
            if (round > 0 && room >= drawn) {
                break;
            }
            drawn = room;
            drawing = new SectionDrawing(picture, flow.width(), drawn);
        }
        SectionDrawing chosen = drawing;
        flow.add(Blocks.drawing(drawn + Legend.HEIGHT, (canvas, box) -> {
            chosen.draw(canvas, new Box(box.x0(), box.y0() + Legend.HEIGHT, box.x1(), box.y1()));
            Legend.draw(canvas, box, picture, chosen);
        }));
        flow.space(6);
        flow.add(tables(page, sheet, chosen));
        flow.space(8);
        flow.add(words);
        flow.space(8);
        flow.add(Blocks.beside(
                18, Lists.immutable.of(0.5, 0.5), Blocks.stack(left(page, sheet), 2), Blocks.stack(right(sheet), 2)));
        edges(page, sheet);
        OptionList.write(page, sheet);
        sheet.best().ifPresent(best -> new BestOption(page, sheet, best).write());
    }

    private static Block tables(Page page, JunctionSheet sheet, SectionDrawing drawing) {
        return Blocks.beside(
                18,
                Lists.immutable.of(0.52, 0.48),
                Blocks.table(keys(page, sheet, drawing)),
                Blocks.table(numbers(page, sheet)));
    }

    private static Table keys(Page page, JunctionSheet sheet, SectionDrawing drawing) {
        Print print = page.print();
        Table table = Table.of(
                Table.Column.fixed("", 19),
                Table.Column.fixed("", 31),
                Table.Column.share("material", 1),
                new Table.Column(conductivityHead(print), 56, true, Align.RIGHT),
                Table.Column.number("thickness", 52));
        for (SectionPicture.Key key : drawing.keys()) {
            table = table.row(
                    Table.Kind.PLAIN,
                    Swatch.number(key.number()),
                    Swatch.look(key.look()),
                    Table.Cell.of(key.material()),
                    Table.Cell.of(
                            key.solved() ? print.number(key.conductivity(), Dimension.CONDUCTIVITY) : "not counted"),
                    Table.Cell.of(thicknesses(sheet.result(), key.material(), print)));
        }
        return table;
    }

    /** The sign, and below it the unit, broken where it is long. */
    private static Rich conductivityHead(Print print) {
        String unit = print.units().label(Dimension.CONDUCTIVITY);
        int slash = unit.indexOf('/');
        return print.units() == UnitSystem.SI
                ? Rich.of("λ, " + unit)
                : Rich.of("λ, " + unit.substring(0, slash + 1))
                        .plus(Rich.newLine())
                        .plus(unit.substring(slash + 1));
    }

    private static Rich thicknesses(JunctionResult result, String material, Print print) {
        MutableList<String> out = Lists.mutable.empty();
        result.setup()
                .first()
                .layers()
                .select(l -> l.material().name().equals(material))
                .forEach(l -> out.add(print.thickness(l.thickness())));
        result.setup()
                .second()
                .ifPresent(a -> a.layers()
                        .select(l -> l.material().name().equals(material))
                        .forEach(l -> out.add(print.thickness(l.thickness()))));
        MutableList<String> distinct = out.distinct();
        if (distinct.isEmpty()) {
            return Rich.of("–");
        }
        Rich text = Rich.of(distinct.getFirst());
        for (String more : distinct.subList(1, distinct.size())) {
            text = text.plus(Rich.newLine()).plus(more);
        }
        return text;
    }

    private static Table numbers(Page page, JunctionSheet sheet) {
        Print print = page.print();
        JunctionResult r = sheet.result();
        Table table = Table.of(Table.Column.share("result", 1), Table.Column.number("", 122));
        table = row(table, "ψ, external dimensions", print.of(r.psiExternal(), Dimension.LINEAR_TRANSMITTANCE));
        table = row(table, "ψ, internal dimensions", print.of(r.psiInternal(), Dimension.LINEAR_TRANSMITTANCE));
        table = row(table, "L_{2D}", print.of(r.coupling(), Dimension.LINEAR_TRANSMITTANCE));
        for (JunctionResult.Leg leg : r.legs()) {
            table = table.row(
                    Table.Kind.PLAIN,
                    Table.Cell.of(Rich.of("U of the " + leg.name())),
                    Table.Cell.of(print.of(leg.transmittance(), Dimension.TRANSMITTANCE)));
        }
        table = row(table, "f_{Rsi}, R_{si} 0.25 m²·K/W", Print.factor(r.temperatureFactor()));
        table = row(
                table,
                "neck of the pen line",
                r.penLine().unbroken()
                        ? print.neck(r.penLine().neck()) + " = "
                                + Print.percent(r.penLine().share())
                        : "broken");
        table = row(
                table,
                "weakest path, ratio to the weaker surface",
                Print.percent(r.weakestPath().ratio()));
        return table;
    }

    private static Table row(Table table, String what, String value) {
        return table.row(Table.Kind.PLAIN, Table.Cell.of(Rich.marked(what)), Table.Cell.of(value));
    }

    /** What a builder takes from the numbers. */
    private static Block words(Page page, JunctionSheet sheet) {
        Print print = page.print();
        var site = page.audit().house().site();
        String indoors = print.of(site.indoorTemperature(), Dimension.TEMPERATURE);
        String outdoors = print.of(site.outdoorTemperature(), Dimension.TEMPERATURE);
        MutableList<Block> out = Lists.mutable.empty();
        out.add(Blocks.text(
                "At " + indoors + " indoors and " + outdoors
                        + " outdoors the coldest point gets wet when the indoor air holds "
                        + humidity(sheet.dewPointHumidity()) + "; mould may grow on it from "
                        + humidity(sheet.mouldHumidity())
                        + ".",
                Style.BODY));
        sheet.best().ifPresent(best -> {
            var system = page.audit().heatLoss().system();
            out.add(Blocks.text(
                    "The best option of the catalogue for these layers is “"
                            + best.detail().name() + "”: it would save "
                            + print.of(BestOption.saved(page, sheet, best), Dimension.HEAT_LOSS_COEFFICIENT) + " over "
                            + print.length(sheet.length()) + ", with ψ "
                            + print.of(best.psi(system), Dimension.LINEAR_TRANSMITTANCE)
                            + ". It is drawn at the end of this sheet.",
                    Style.BODY));
        });
        return Blocks.stack(out.toImmutable(), 4);
    }

    private static String humidity(double humidity) {
        return humidity >= 1
                ? "100 % relative humidity (never, at these temperatures)"
                : Print.percent(humidity) + " relative humidity";
    }

    private static ImmutableList<Block> left(Page page, JunctionSheet sheet) {
        Detail detail = sheet.result().detail();
        MutableList<Block> out = Lists.mutable.empty();
        out.add(Blocks.text("What it looks like", Style.SUBSECTION));
        out.add(Blocks.text(detail.looksLike(), Style.BODY));
        out.add(Blocks.space(5));
        out.add(Blocks.text("How the layers pass", Style.SUBSECTION));
        out.add(connection("Heat", sheet.result().penLine().unbroken() ? "the pen line is unbroken" : "broken"));
        for (Control control : new Control[] {Control.AIR, Control.WATER, Control.VAPOUR}) {
            Connection how = detail.connections().getIfAbsentValue(control, Connection.NOT_SHOWN);
            out.add(connection(
                    Print.capital(control.name().toLowerCase(Locale.ROOT)),
                    how.name().toLowerCase(Locale.ROOT).replace('_', ' ')));
        }
        out.add(Blocks.space(5));
        list(out, "Order of building", detail.order(), true);
        list(
                out,
                "Set by the house file",
                detail.parameters()
                        .select(DetailParameter::given)
                        .collect(each -> each.name() + " "
                                + page.print().units().format(each.value(), Dimension.LENGTH) + ": " + each.says()),
                false);
        return out.toImmutable();
    }

    private static Block connection(String control, String how) {
        return Blocks.beside(
                6,
                Lists.immutable.of(0.3, 0.7),
                Blocks.text(control, Style.BODY.with(Palette.SLATE)),
                Blocks.text(
                        how,
                        how.equals("broken") || how.equals("not shown") ? Style.BODY.with(Palette.EMBER) : Style.BODY));
    }

    private static ImmutableList<Block> right(JunctionSheet sheet) {
        Detail detail = sheet.result().detail();
        MutableList<Block> out = Lists.mutable.empty();
        list(out, "How it fails", detail.failures(), false);
        list(out, "Photograph before it is covered", detail.photographs(), false);
        list(out, "Cautions", detail.cautions(), false);
        list(
                out,
                "Simplified in the drawing",
                sheet.result()
                        .notes()
                        .newWithAll(sheet.result().solution().notes())
                        .distinct()
                        .toImmutable(),
                false);
        return out.toImmutable();
    }

    static void list(MutableList<Block> out, String title, ImmutableList<String> items, boolean numbered) {
        list(out, title, items, numbered, Style.BODY);
    }

    static void list(MutableList<Block> out, String title, ImmutableList<String> items, boolean numbered, Style style) {
        if (items.isEmpty()) {
            return;
        }
        out.add(Blocks.text(title, Style.SUBSECTION));
        items.forEachWithIndex((item, i) -> out.add(Blocks.item(numbered ? (i + 1) + "." : "–", Rich.of(item), style)));
        out.add(Blocks.space(5));
    }

    private static void edges(Page page, JunctionSheet sheet) {
        page.flow().heading("Where it is");
        Table table = Table.of(Table.Column.share("place", 1), Table.Column.number("length", 74));
        for (var row : page.audit()
                .junctions()
                .select(j -> sheet.edges().contains(j.edge().name()))) {
            table = table.row(Print.placeAlone(row.edge().place()), page.print().length(row.length()));
        }
        page.flow().add(table);
    }
}
