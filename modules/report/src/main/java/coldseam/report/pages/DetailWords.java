package coldseam.report.pages;

import coldseam.envelope.Control;
import coldseam.files.Words;
import coldseam.files.quantity.Dimension;
import coldseam.junctions.BridgeResult;
import coldseam.junctions.ControlLine;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.detail.Connection;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.detail.Photograph;
import coldseam.report.drawing.Palette;
import coldseam.report.pdf.Block;
import coldseam.report.pdf.Blocks;
import coldseam.report.pdf.Rich;
import coldseam.report.pdf.Style;
import coldseam.report.words.ControlLineWords;
import coldseam.report.words.Phrases;
import coldseam.report.words.Print;
import coldseam.report.words.UpkeepWords;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

/** What a sheet says of a computed detail beside its drawing, in two columns. */
record DetailWords(
        Detail detail,
        Optional<JunctionResult> junction,
        ImmutableList<String> upkeep,
        ImmutableList<String> notes,
        Print print) {

    static DetailWords of(BridgeResult result, Print print) {
        return new DetailWords(
                result.detail(),
                Optional.of(result).filter(JunctionResult.class::isInstance).map(JunctionResult.class::cast),
                UpkeepWords.of(result.detail(), result.upkeep()),
                result.notes().newWithAll(result.solution().notes()).distinct(),
                print);
    }

    /**
     * Of a corner's own detail. What it asks to be looked after its seams do.
     *
     * @param notes what was simplified
     */
    static DetailWords of(Detail corner, ImmutableList<String> notes, Print print) {
        return new DetailWords(corner, Optional.empty(), Lists.immutable.empty(), notes, print);
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
        junction.ifPresent(each -> {
            boolean unbroken = each.penLine().unbroken();
            out.add(connection("Heat", unbroken ? "the pen line is unbroken" : "broken", unbroken));
        });
        for (Control control : new Control[] {Control.AIR, Control.WATER, Control.VAPOUR}) {
            Connection how = detail.connections().getIfAbsentValue(control, Connection.NOT_SHOWN);
            ControlLineWords words = ControlLineWords.of(how, line(control), print.units());
            out.add(connection(Phrases.capital(Words.word(control)), words.text(), words.passes()));
        }
        out.add(Blocks.space(5));
        list(out, "Order of building", told(detail.order(), print), true, Style.BODY);
        list(
                out,
                "Lengths in the drawing",
                detail.parameters()
                        .collect(each -> each.name() + " " + print.units().format(each.value(), Dimension.THICKNESS)
                                + ": " + print.units().told(each.says())
                                + (each.given() ? " (set by the house file)" : "")),
                false,
                Style.BODY);
        detail.cost().ifPresent(cost -> out.add(Blocks.text("Cost: " + cost.sourced(print.units()) + ".", Style.BODY)));
        return out.toImmutable();
    }

    /** How a control layer runs through the section; empty where none was followed, as round a point. */
    private Optional<ControlLine> line(Control control) {
        return junction.flatMap(each -> each.controls().detectOptional(line -> line.control() == control));
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
        list(out, UpkeepWords.HEADING, told(upkeep, print), false, Style.BODY);
        list(out, "Cautions", told(detail.cautions(), print), false, Style.BODY);
        list(out, "Simplified in the drawing", told(notes, print), false, Style.BODY);
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
}
