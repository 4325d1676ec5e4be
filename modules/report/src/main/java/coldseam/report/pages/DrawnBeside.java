package coldseam.report.pages;

import coldseam.junctions.BridgeResult;
import coldseam.report.pdf.Block;
import coldseam.report.pdf.Blocks;
import coldseam.report.pdf.Flow;
import coldseam.report.pdf.Style;
import coldseam.report.section.Legend;
import coldseam.report.section.SectionDrawing;
import coldseam.report.section.SectionPicture;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

/** A section drawn small, with words beside it. */
final class DrawnBeside {

    /** Points. */
    private static final double LEAST = 215;

    private static final double MOST = 330;
    private static final double GAP = 16;

    /** The drawing's share of the width. */
    private static final double DRAWN = 0.6;

    private DrawnBeside() {}

    static void write(Page page, BridgeResult result, String heading, Block words) {
        write(
                page,
                SectionPicture.of(
                        result,
                        MarkedTemperatures.of(page.audit().house().site()),
                        page.print().units()),
                DrawnResult.of(result, page.print().units()),
                new DetailNumbers(result, page.print()).figure(),
                heading,
                words);
    }

    /**
     * Sets a drawing.
     *
     * @param drawn all that decides it
     * @param figure what it shows, in words
     */
    static void write(Page page, SectionPicture picture, Record drawn, String figure, String heading, Block words) {
        Flow flow = page.flow();
        double left = (flow.width() - GAP) * DRAWN;
        double needed = words.height(flow.width() - GAP - left);
        flow.need(Math.max(LEAST, needed) + 50);
        flow.heading(heading);
        double height = Math.max(LEAST, Math.min(MOST, flow.remaining() - 4)) - Legend.BAR;
        SectionDrawing drawing = new SectionDrawing(picture, left, height);
        Block drawingBlock = SectionBlock.drawn(
                drawn,
                picture,
                drawing,
                Legend.BAR,
                figure,
                (canvas, box) -> Legend.drawBar(canvas, box, picture.system(), drawing));
        MutableList<Block> right = Lists.mutable.of(words);
        right.add(Blocks.text(
                drawing.keys()
                        .collect(key -> key.number() + " " + key.material())
                        .makeString(" · "),
                Style.SMALL));
        flow.add(Blocks.beside(
                GAP, Lists.immutable.of(DRAWN, 1 - DRAWN), drawingBlock, Blocks.stack(right.toImmutable(), 4)));
    }
}
