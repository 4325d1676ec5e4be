package coldseam.report.pages;

import coldseam.envelope.Control;
import coldseam.envelope.DefaultPsi;
import coldseam.files.quantity.Dimension;
import coldseam.junctions.BridgeResult;
import coldseam.junctions.ControlLine;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.NearestDefaultPsi;
import coldseam.junctions.PointResult;
import coldseam.junctions.detail.Connection;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.detail.Photograph;
import coldseam.junctions.language.DetailParameter;
import coldseam.report.drawing.Palette;
import coldseam.report.pdf.Block;
import coldseam.report.pdf.Blocks;
import coldseam.report.pdf.Rich;
import coldseam.report.pdf.Style;
import coldseam.report.pdf.Table;
import coldseam.report.words.ControlLineWords;
import java.util.Locale;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

/** What a sheet says of a computed detail beside its drawing: its words in two columns, and the rows of its results. */
final class DetailWords {

    private final Detail detail;
    private final BridgeResult result;
    private final Print print;

    DetailWords(BridgeResult result, Print print) {
        this.detail = result.detail();
        this.result = result;
        this.print = print;
    }

    /** How it looks, how the layers pass and how it is built, beside how it fails and what to photograph. */
    Block columns() {
        return Blocks.beside(18, Lists.immutable.of(0.5, 0.5), Blocks.stack(left(), 2), Blocks.stack(right(), 2));
    }

    private ImmutableList<Block> left() {
        MutableList<Block> out = Lists.mutable.empty();
        out.add(Blocks.text("What it looks like", Style.SUBSECTION));
        out.add(Blocks.text(print.units().told(detail.looksLike()), Style.BODY));
        out.add(Blocks.text("Suits: " + detail.suits().words() + ".", Style.BODY));
        out.add(Blocks.space(5));
        out.add(Blocks.text("How the layers pass", Style.SUBSECTION));
        if (result instanceof JunctionResult junction) {
            boolean unbroken = junction.penLine().unbroken();
            out.add(connection("Heat", unbroken ? "the pen line is unbroken" : "broken", unbroken));
        }
        for (Control control : new Control[] {Control.AIR, Control.WATER, Control.VAPOUR}) {
            Connection how = detail.connections().getIfAbsentValue(control, Connection.NOT_SHOWN);
            ControlLineWords words = ControlLineWords.of(how, line(control), print.units());
            out.add(connection(Print.capital(control.name().toLowerCase(Locale.ROOT)), words.text(), words.passes()));
        }
        out.add(Blocks.space(5));
        list(out, "Order of building", told(detail.order(), print), true, Style.BODY);
        list(
                out,
                "Set by the house file",
                detail.parameters()
                        .select(DetailParameter::given)
                        .collect(each -> each.name() + " " + print.units().format(each.value(), Dimension.LENGTH) + ": "
                                + each.says()),
                false,
                Style.BODY);
        detail.cost().ifPresent(cost -> out.add(Blocks.text("Cost: " + cost.sourced(print.units()) + ".", Style.BODY)));
        return out.toImmutable();
    }

    /** How a control layer runs through the section; empty where none was followed, as round a point. */
    private Optional<ControlLine> line(Control control) {
        return result instanceof JunctionResult junction
                ? junction.controls().detectOptional(line -> line.control() == control)
                : Optional.empty();
    }

    /** How one control layer passes. */
    private static Block connection(String control, String how, boolean passes) {
        return Blocks.beside(
                6,
                Lists.immutable.of(0.3, 0.7),
                Blocks.text(control, Style.BODY.with(Palette.SLATE)),
                Blocks.text(how, passes ? Style.BODY : Style.BODY.with(Palette.EMBER)));
    }

    private ImmutableList<Block> right() {
        MutableList<Block> out = Lists.mutable.empty();
        list(out, "How it fails", told(detail.failures(), print), false, Style.BODY);
        list(
                out,
                "Photograph before it is covered",
                told(detail.photographs().collect(Photograph::shows), print),
                false,
                Style.BODY);
        list(out, "Cautions", told(detail.cautions(), print), false, Style.BODY);
        list(
                out,
                "Simplified in the drawing",
                told(result.notes().newWithAll(result.solution().notes()).distinct(), print),
                false,
                Style.BODY);
        return out.toImmutable();
    }

    /** Sentences of a detail, their lengths as the reader measures. */
    static ImmutableList<String> told(ImmutableList<String> sentences, Print print) {
        return sentences.collect(print.units()::told);
    }

    /** Adds a titled list; nothing where it is empty. */
    static void list(MutableList<Block> out, String title, ImmutableList<String> items, boolean numbered, Style style) {
        if (items.isEmpty()) {
            return;
        }
        out.add(Blocks.text(title, Style.SUBSECTION));
        items.forEachWithIndex((item, i) -> out.add(Blocks.item(numbered ? (i + 1) + "." : "–", Rich.of(item), style)));
        out.add(Blocks.space(5));
    }

    /** What a section's drawing shows, for readers that do not see it. */
    String figure() {
        if (result instanceof JunctionResult junction) {
            return "Section of the " + detail.kind().label() + ", " + detail.name()
                    + ", to scale with its layers numbered as in"
                    + " the table, isotherms, pen line and weakest path. "
                    + (junction.penLine().unbroken()
                            ? "The insulation passes without a break."
                            : "The insulation is broken.");
        }
        return "Section through the middle of the " + detail.kind().label() + ", " + detail.name()
                + ", turned about its axis, to scale with its materials numbered as in the table and isotherms.";
    }

    /**
     * The table of results: psi or chi, what it is made of and the coldest point.
     *
     * @param tabulated whether what ISO 14683 has for the kind stands beside it
     */
    Table numbers(boolean tabulated) {
        Table table = Table.of(Table.Column.share("result", 1), Table.Column.number("", 122));
        return result instanceof JunctionResult junction
                ? line(table, junction, tabulated)
                : round(table, (PointResult) result);
    }

    private Table line(Table given, JunctionResult junction, boolean tabulated) {
        Table table = row(given, "ψ, external dimensions", print.of(junction.psiExternal(), junction.dimension()));
        table = row(table, "ψ, internal dimensions", print.of(junction.psiInternal(), junction.dimension()));
        Optional<DefaultPsi> beside = tabulated ? NearestDefaultPsi.of(junction) : Optional.empty();
        if (beside.isPresent()) {
            table = row(
                    table,
                    "ISO 14683 " + beside.get().code() + ": " + DefaultPsi.CAUTION,
                    print.number(beside.get().external(), junction.dimension()) + " ext., "
                            + print.number(beside.get().internal(), junction.dimension()) + " int.");
        }
        table = row(table, "L_{2D}", print.bounds(junction.coupling(), junction.dimension()));
        for (JunctionResult.Leg leg : junction.legs()) {
            table = table.row(
                    Table.Kind.PLAIN,
                    Table.Cell.of(Rich.of("U of the " + leg.name())),
                    Table.Cell.of(print.of(leg.transmittance(), Dimension.TRANSMITTANCE)));
        }
        table = coldest(table);
        table = row(
                table,
                "neck of the pen line",
                junction.penLine().unbroken()
                        ? print.neck(junction.penLine().neck()) + " = "
                                + Print.percent(junction.penLine().share())
                        : "broken");
        return row(
                table,
                "weakest path, ratio to the weaker surface",
                Print.percent(junction.weakestPath().ratio()));
    }

    private Table round(Table given, PointResult point) {
        Table table = row(given, "χ, each", print.of(point.chi(), point.dimension()));
        table = row(
                table,
                "L_{3D} of a " + (point.body().isPresent() ? "square" : "disc") + " of "
                        + print.of(point.area(), Dimension.AREA),
                print.bounds(point.coupling(), point.dimension()));
        table = row(table, "U of the surface", print.of(point.transmittance(), Dimension.TRANSMITTANCE));
        return coldest(table);
    }

    private Table coldest(Table table) {
        return row(
                table,
                "f_{Rsi}, R_{si} " + print.of(0.25, Dimension.RESISTANCE) + ", estimate",
                Print.factor(result.temperatureFactor()));
    }

    private static Table row(Table table, String what, String value) {
        return table.row(Table.Kind.PLAIN, Table.Cell.of(Rich.marked(what)), Table.Cell.of(value));
    }
}
