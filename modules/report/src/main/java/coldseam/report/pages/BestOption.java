package coldseam.report.pages;

import coldseam.audit.JunctionSheet;
import coldseam.conduction.Interval;
import coldseam.envelope.DimensionSystem;
import coldseam.envelope.quantity.Dimension;
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

    private static final double LEAST = 200;
    private static final double MOST = 340;

    private final Page page;
    private final JunctionSheet sheet;
    private final JunctionResult best;

    BestOption(Page page, JunctionSheet sheet, JunctionResult best) {
        this.page = page;
        this.sheet = sheet;
        this.best = best;
    }

    /** What the sheet's edges lose more than they would with the best option, W/K. */
    static Interval saved(Page page, JunctionSheet sheet, JunctionResult best) {
        DimensionSystem system = page.audit().heatLoss().system();
        return sheet.result().psi(system).plus(best.psi(system).times(-1)).times(sheet.length());
    }

    void write() {
        Flow flow = page.flow();
        Block words = words();
        double rest = words.height(flow.width()) + Legend.HEIGHT + 60;
        flow.need(LEAST + rest);
        flow.heading("Best option of the catalogue for these layers: "
                + best.detail().name());
        SectionPicture picture = SectionPicture.of(
                best, Limits.of(page.audit().house().site()), page.print().units());
        double drawn = Math.max(LEAST, Math.min(MOST, flow.remaining() - rest + 40));
        SectionDrawing drawing = new SectionDrawing(picture, flow.width(), drawn);
        flow.add(Blocks.drawing(drawn + Legend.HEIGHT, (canvas, box) -> {
            drawing.draw(canvas, new Box(box.x0(), box.y0() + Legend.HEIGHT, box.x1(), box.y1()));
            Legend.draw(canvas, box, picture, drawing);
        }));
        flow.space(6);
        flow.add(Blocks.text(
                Rich.of("Materials: ")
                        .plus(drawing.keys()
                                .collect(key -> key.number() + " " + key.material())
                                .makeString(" · ")),
                Style.SMALL));
        flow.space(4);
        flow.add(words);
    }

    private Block words() {
        Print print = page.print();
        MutableList<Block> left = Lists.mutable.empty();
        JunctionSheets.list(left, "Order of building", best.detail().order(), true);
        MutableList<Block> right = Lists.mutable.empty();
        right.add(Blocks.text("What it gives", Style.SUBSECTION));
        right.add(Blocks.text(
                Rich.of("ψ " + print.of(best.psiExternal(), Dimension.LINEAR_TRANSMITTANCE) + " external, "
                                + print.of(best.psiInternal(), Dimension.LINEAR_TRANSMITTANCE) + " internal; f")
                        .plus(Rich.marked("_{Rsi}"))
                        .plus(" " + Print.factor(best.temperatureFactor()) + "; "
                                + (best.penLine().unbroken()
                                        ? "neck " + print.of(best.penLine().neck(), Dimension.THICKNESS) + "."
                                        : "pen line broken.")),
                Style.BODY));
        right.add(Blocks.space(5));
        JunctionSheets.list(right, "Cautions", best.detail().cautions(), false);
        return Blocks.beside(
                18,
                Lists.immutable.of(0.5, 0.5),
                Blocks.stack(left.toImmutable(), 2),
                Blocks.stack(right.toImmutable(), 2));
    }
}
