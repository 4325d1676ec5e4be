package coldseam.report.pages;

import coldseam.audit.BridgeRow;
import coldseam.audit.BridgeSheet;
import coldseam.conduction.Interval;
import coldseam.envelope.DimensionSystem;
import coldseam.junctions.BridgeResult;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.PointResult;
import coldseam.report.pdf.Block;
import coldseam.report.pdf.Blocks;
import coldseam.report.pdf.Rich;
import coldseam.report.pdf.Style;
import coldseam.report.words.Phrases;
import coldseam.report.words.Print;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

/** The best option of the catalogue for the same layers: what closes the gap. */
record BestOption(Page page, BridgeResult best) {

    private static final Style WORDS = Style.BODY.sized(8.6, 11.1);

    /** What the sheet's places lose more than they would with the best option, W/K. */
    static Interval saved(Page page, BridgeSheet<?> sheet, BridgeResult best) {
        DimensionSystem system = page.audit().heatLoss().system();
        return sheet.result()
                .psiOrChi(system)
                .plus(best.psiOrChi(system).times(-1))
                .times(sheet.size() * factor(page, sheet));
    }

    /** That weighs it: a computed psi holds the factors of its spaces already, a chi is for the whole difference. */
    private static double factor(Page page, BridgeSheet<?> sheet) {
        return page.audit()
                .points()
                .detectOptional(row -> row.isOn(sheet))
                .map(BridgeRow::factor)
                .orElse(1.0);
    }

    void write() {
        DrawnBeside.write(
                page,
                best,
                "Best option of the catalogue for "
                        + (best instanceof PointResult ? "this surface: " : "these layers: ")
                        + best.detail().name()
                        + new Phrases(page.print().units()).given(best.detail()),
                words());
    }

    private Block words() {
        Print print = page.print();
        MutableList<Block> out = Lists.mutable.empty();
        out.add(Blocks.text(
                Rich.of(transmittance(print) + "; ")
                        .plus(Rich.marked("f_{Rsi} "))
                        .plus(Print.factor(best.temperatureFactor()) + insulation(print)),
                WORDS));
        out.add(Blocks.space(3));
        DetailWords.list(
                out, "Order of building", DetailWords.told(best.detail().order(), print), true, WORDS);
        DetailWords.list(out, "Cautions", DetailWords.told(best.detail().cautions(), print), false, WORDS);
        return Blocks.stack(out.toImmutable(), 2);
    }

    private String transmittance(Print print) {
        return best instanceof JunctionResult junction
                ? "ψ " + print.of(junction.psiExternal(), junction.dimension()) + " external, "
                        + print.of(junction.psiInternal(), junction.dimension()) + " internal"
                : "χ " + print.of(((PointResult) best).chi(), best.dimension()) + " each";
    }

    private String insulation(Print print) {
        if (best instanceof JunctionResult junction) {
            return junction.penLine().unbroken()
                    ? "; neck " + print.neck(junction.penLine()) + "."
                    : "; pen line broken.";
        }
        return ".";
    }
}
