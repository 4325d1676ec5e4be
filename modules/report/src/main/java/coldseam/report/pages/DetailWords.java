package coldseam.report.pages;

import coldseam.envelope.Control;
import coldseam.files.quantity.Dimension;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.detail.Connection;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.language.DetailParameter;
import coldseam.report.drawing.Palette;
import coldseam.report.pdf.Block;
import coldseam.report.pdf.Blocks;
import coldseam.report.pdf.Rich;
import coldseam.report.pdf.Style;
import coldseam.report.pdf.Table;
import coldseam.report.words.ControlLineWords;
import java.util.Locale;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

/** What a sheet says of a computed detail beside its drawing: its words in two columns, and the rows of its results. */
final class DetailWords {

    private final Detail detail;
    private final JunctionResult result;
    private final Print print;

    DetailWords(JunctionResult result, Print print) {
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
        out.add(Blocks.text(detail.looksLike(), Style.BODY));
        out.add(Blocks.space(5));
        out.add(Blocks.text("How the layers pass", Style.SUBSECTION));
        boolean unbroken = result.penLine().unbroken();
        out.add(connection("Heat", unbroken ? "the pen line is unbroken" : "broken", unbroken));
        for (Control control : new Control[] {Control.AIR, Control.WATER, Control.VAPOUR}) {
            Connection how = detail.connections().getIfAbsentValue(control, Connection.NOT_SHOWN);
            ControlLineWords words = ControlLineWords.of(
                    how, result.controls().detectOptional(line -> line.control() == control), print.units());
            out.add(connection(Print.capital(control.name().toLowerCase(Locale.ROOT)), words.text(), words.passes()));
        }
        out.add(Blocks.space(5));
        list(out, "Order of building", detail.order(), true, Style.BODY);
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

    /** How one control layer passes. */
    static Block connection(String control, String how, boolean passes) {
        return Blocks.beside(
                6,
                Lists.immutable.of(0.3, 0.7),
                Blocks.text(control, Style.BODY.with(Palette.SLATE)),
                Blocks.text(how, passes ? Style.BODY : Style.BODY.with(Palette.EMBER)));
    }

    private ImmutableList<Block> right() {
        MutableList<Block> out = Lists.mutable.empty();
        list(out, "How it fails", detail.failures(), false, Style.BODY);
        list(out, "Photograph before it is covered", detail.photographs(), false, Style.BODY);
        list(out, "Cautions", detail.cautions(), false, Style.BODY);
        list(
                out,
                "Simplified in the drawing",
                result.notes().newWithAll(result.solution().notes()).distinct(),
                false,
                Style.BODY);
        return out.toImmutable();
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
        return "Section of the " + detail.kind().label() + ", " + detail.name()
                + ", to scale with its layers numbered as in"
                + " the table, isotherms, pen line and weakest path. "
                + (result.penLine().unbroken()
                        ? "The insulation passes without a break."
                        : "The insulation is broken.");
    }

    /** The rows that begin a table of results: psi in both dimension systems. */
    Table psi(Table table) {
        Table one =
                row(table, "ψ, external dimensions", print.of(result.psiExternal(), Dimension.LINEAR_TRANSMITTANCE));
        return row(one, "ψ, internal dimensions", print.of(result.psiInternal(), Dimension.LINEAR_TRANSMITTANCE));
    }

    /** The rows that end it: what psi is made of, the coldest point, the neck and the weakest path. */
    Table rest(Table given) {
        Table table = row(given, "L_{2D}", print.of(result.coupling(), Dimension.LINEAR_TRANSMITTANCE));
        for (JunctionResult.Leg leg : result.legs()) {
            table = table.row(
                    Table.Kind.PLAIN,
                    Table.Cell.of(Rich.of("U of the " + leg.name())),
                    Table.Cell.of(print.of(leg.transmittance(), Dimension.TRANSMITTANCE)));
        }
        table = row(
                table,
                "f_{Rsi}, R_{si} " + print.of(0.25, Dimension.RESISTANCE) + ", estimate",
                Print.factor(result.temperatureFactor()));
        table = row(
                table,
                "neck of the pen line",
                result.penLine().unbroken()
                        ? print.neck(result.penLine().neck()) + " = "
                                + Print.percent(result.penLine().share())
                        : "broken");
        return row(
                table,
                "weakest path, ratio to the weaker surface",
                Print.percent(result.weakestPath().ratio()));
    }

    static Table row(Table table, String what, String value) {
        return table.row(Table.Kind.PLAIN, Table.Cell.of(Rich.marked(what)), Table.Cell.of(value));
    }
}
