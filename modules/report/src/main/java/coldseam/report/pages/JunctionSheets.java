package coldseam.report.pages;

import coldseam.audit.BridgeSheet;
import coldseam.audit.Mould;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.detail.Detail;
import coldseam.report.drawing.Align;
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
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

/** One sheet for each computed junction. */
public final class JunctionSheets {

    /** Least and greatest height of the drawing, points. */
    private static final double LEAST = 235;

    private static final double MOST = 420;

    private JunctionSheets() {}

    public static void write(Page page) {
        for (BridgeSheet<JunctionResult> sheet : page.audit().sheets()) {
            write(page, sheet);
        }
    }

    private static void write(Page page, BridgeSheet<JunctionResult> sheet) {
        Flow flow = page.flow();
        Detail detail = sheet.result().detail();
        String heading = sheet.id() + " · " + Print.capital(detail.kind().label());
        flow.section(heading, heading + ": " + detail.name(), "Junctions");
        flow.add(Blocks.text(Rich.strong(detail.name()), Style.LEAD));
        flow.add(Blocks.text(
                page.print().length(sheet.size()) + " in "
                        + Print.count(sheet.places().size(), "edge", "edges")
                        + (sheet.chosen()
                                ? " · chosen by the house file"
                                : " · not chosen: this option stands in for it"),
                Style.BODY.with(sheet.chosen() ? Palette.SLATE : Palette.EMBER)));
        flow.space(6);
        SectionPicture picture = SectionPicture.of(
                sheet.result(),
                MarkedTemperatures.of(page.audit().house().site()),
                page.print().units());
        Block words = Blocks.panel(words(page, sheet), Palette.FROST, Palette.DEEP);
        // The drawing takes what the tables and words of the first page leave.
        SectionBlock section = SectionBlock.fit(picture, flow.width(), LEAST, drawing -> {
            double rest = tables(page, sheet, drawing).height(flow.width())
                    + words.height(flow.width())
                    + Legend.HEIGHT
                    + 6
                    + 8
                    + 1;
            return Math.max(LEAST, Math.min(MOST, flow.remaining() - rest));
        });
        flow.add(section.block(new DetailWords(sheet.result(), page.print()).figure()));
        flow.space(6);
        flow.add(tables(page, sheet, section.drawing()));
        flow.space(8);
        flow.add(words);
        flow.space(8);
        flow.add(new DetailWords(sheet.result(), page.print()).columns());
        edges(page, sheet);
        OptionList.write(page, sheet);
        sheet.best().ifPresent(best -> new BestOption(page, sheet, best).write());
    }

    private static Block tables(Page page, BridgeSheet<JunctionResult> sheet, SectionDrawing drawing) {
        return Blocks.beside(
                18,
                Lists.immutable.of(0.52, 0.48),
                Blocks.table(keys(page, sheet, drawing)),
                Blocks.table(numbers(page, sheet)));
    }

    private static Table keys(Page page, BridgeSheet<JunctionResult> sheet, SectionDrawing drawing) {
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

    private static Table numbers(Page page, BridgeSheet<JunctionResult> sheet) {
        DetailWords words = new DetailWords(sheet.result(), page.print());
        return words.rest(words.psi(Table.of(Table.Column.share("result", 1), Table.Column.number("", 122))));
    }

    /** What a builder takes from the numbers. */
    private static Block words(Page page, BridgeSheet<JunctionResult> sheet) {
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
        own(page, sheet, out);
        sheet.best().ifPresent(best -> {
            var system = page.audit().heatLoss().system();
            out.add(Blocks.text(
                    "The best option of the catalogue for these layers is “"
                            + best.detail().name() + "”: it would save "
                            + print.of(BestOption.saved(page, sheet, best), Dimension.HEAT_LOSS_COEFFICIENT) + " over "
                            + print.length(sheet.size()) + ", with ψ "
                            + print.of(best.psi(system), Dimension.LINEAR_TRANSMITTANCE)
                            + ". It is drawn at the end of this sheet.",
                    Style.BODY));
        });
        return Blocks.stack(out.toImmutable(), 4);
    }

    /** What the house's own humidity means for it. */
    private static void own(Page page, BridgeSheet<JunctionResult> sheet, MutableList<Block> out) {
        var mould = page.audit().mould();
        String own = page.print().of(page.audit().house().site().indoorHumidity(), Dimension.SHARE);
        boolean wet = Mould.among(mould.wetAtDesign(), sheet);
        if (!wet) {
            return;
        }
        boolean byMonth = Mould.among(mould.wetByMonth(), sheet);
        String months = mould.monthly().isEmpty()
                ? " It was not judged by months, since the house file gives no monthly climate."
                : byMonth
                        ? " By monthly means, too, it is too cold; see Moisture."
                        : " By monthly means, which ISO 13788 asks for, none is expected.";
        out.add(Blocks.text(
                Rich.of("The house's own " + own + " is enough for that: in a cold spell mould is possible here."
                        + months),
                Style.BODY.with(Palette.EMBER)));
    }

    static String humidity(double humidity) {
        return humidity >= 1
                ? "100 % relative humidity (never, at these temperatures)"
                : Print.percent(humidity) + " relative humidity";
    }

    private static void edges(Page page, BridgeSheet<JunctionResult> sheet) {
        page.flow().heading("Where it is");
        Table table = Table.of(Table.Column.share("place", 1), Table.Column.number("length", 74));
        for (var row : page.audit().junctions().select(row -> row.isOn(sheet))) {
            table = table.row(row.edge().place(), page.print().length(row.length()));
        }
        page.flow().add(table);
    }
}
