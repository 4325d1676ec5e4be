package coldseam.report.pages;

import coldseam.audit.BridgeSheet;
import coldseam.conduction.Interval;
import coldseam.envelope.DimensionSystem;
import coldseam.files.quantity.Dimension;
import coldseam.junctions.JunctionResult;
import coldseam.report.drawing.Box;
import coldseam.report.pdf.Block;
import coldseam.report.pdf.Blocks;
import coldseam.report.pdf.Flow;
import coldseam.report.pdf.Rich;
import coldseam.report.pdf.Style;
import coldseam.report.section.Legend;
import coldseam.report.section.SectionDrawing;
import coldseam.report.section.SectionPicture;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

/** The best option of the catalogue for the same layers: what closes the gap. */
final class BestOption {

    private static final double LEAST = 215;
    private static final double MOST = 330;
    private static final double GAP = 16;

    private static final Style WORDS = Style.BODY.sized(8.6, 11.1);

    /** The drawing's share of the width. */
    private static final double DRAWN = 0.6;

    private final Page page;
    private final BridgeSheet<JunctionResult> sheet;
    private final JunctionResult best;

    BestOption(Page page, BridgeSheet<JunctionResult> sheet, JunctionResult best) {
        this.page = page;
        this.sheet = sheet;
        this.best = best;
    }

    /** What the sheet's edges lose more than they would with the best option, W/K. */
    static Interval saved(Page page, BridgeSheet<JunctionResult> sheet, JunctionResult best) {
        DimensionSystem system = page.audit().heatLoss().system();
        return sheet.result().psi(system).plus(best.psi(system).times(-1)).times(sheet.size());
    }

    void write() {
        Flow flow = page.flow();
        double left = (flow.width() - GAP) * DRAWN;
        Block words = words();
        SectionPicture picture = SectionPicture.of(
                best,
                MarkedTemperatures.of(page.audit().house().site()),
                page.print().units());
        double needed = words.height(flow.width() - GAP - left);
        flow.need(Math.max(LEAST, needed) + 50);
        flow.heading("Best option of the catalogue for these layers: "
                + best.detail().name());
        double drawn = Math.max(LEAST, Math.min(MOST, flow.remaining() - 4)) - Legend.BAR;
        SectionDrawing drawing = new SectionDrawing(picture, left, drawn);
        Block drawingBlock =
                Blocks.drawing(drawn + Legend.BAR, new DetailWords(best, page.print()).figure(), (canvas, box) -> {
                    drawing.draw(canvas, new Box(box.x0(), box.y0() + Legend.BAR, box.x1(), box.y1()));
                    Legend.drawBar(canvas, box, picture.system(), drawing);
                });
        MutableList<Block> right = Lists.mutable.of(words);
        right.add(Blocks.text(
                drawing.keys()
                        .collect(key -> key.number() + " " + key.material())
                        .makeString(" · "),
                Style.SMALL));
        flow.add(Blocks.beside(
                GAP, Lists.immutable.of(DRAWN, 1 - DRAWN), drawingBlock, Blocks.stack(right.toImmutable(), 4)));
    }

    private Block words() {
        Print print = page.print();
        MutableList<Block> out = Lists.mutable.empty();
        out.add(Blocks.text(
                Rich.of("ψ " + print.of(best.psiExternal(), Dimension.LINEAR_TRANSMITTANCE) + " external, "
                                + print.of(best.psiInternal(), Dimension.LINEAR_TRANSMITTANCE) + " internal; ")
                        .plus(Rich.marked("f_{Rsi} "))
                        .plus(Print.factor(best.temperatureFactor()) + "; "
                                + (best.penLine().unbroken()
                                        ? "neck " + print.neck(best.penLine().neck()) + "."
                                        : "pen line broken.")),
                WORDS));
        out.add(Blocks.space(3));
        DetailWords.list(out, "Order of building", best.detail().order(), true, WORDS);
        DetailWords.list(out, "Cautions", best.detail().cautions(), false, WORDS);
        return Blocks.stack(out.toImmutable(), 2);
    }
}
