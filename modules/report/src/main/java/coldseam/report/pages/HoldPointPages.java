package coldseam.report.pages;

import coldseam.audit.HoldPoint;
import coldseam.report.drawing.Align;
import coldseam.report.drawing.Box;
import coldseam.report.drawing.Palette;
import coldseam.report.drawing.Pen;
import coldseam.report.pdf.Block;
import coldseam.report.pdf.Blocks;
import coldseam.report.pdf.Flow;
import coldseam.report.pdf.Rich;
import coldseam.report.pdf.Style;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

/** What must be seen before it is covered, with boxes to tick and room to sign. */
public final class HoldPointPages {

    private HoldPointPages() {}

    public static void write(Page page) {
        if (page.audit().holdPoints().isEmpty()) {
            return;
        }
        Flow flow = page.flow();
        flow.section("Hold points");
        flow.add(Blocks.text(
                "Work stops here until somebody has looked, taken the photographs and signed. In order of building.",
                Style.BODY));
        flow.space(8);
        page.audit().holdPoints().forEachWithIndex((point, i) -> {
            flow.add(point(point, i + 1));
            flow.space(10);
        });
    }

    private static Block point(HoldPoint point, int number) {
        MutableList<Block> out = Lists.mutable.empty();
        out.add(Blocks.text(
                Rich.strong(number + "  " + point.name()),
                Style.BODY.with(Palette.DEEP).sized(10.5, 14)));
        out.add(Blocks.text(
                "Before " + point.before()
                        + (point.sheets().isEmpty()
                                ? ""
                                : " · sheets " + point.sheets().makeString(", ")),
                Style.BODY.with(Palette.SLATE)));
        out.add(Blocks.space(2));
        point.lookAt()
                .forEach(line -> out.add(
                        Blocks.beside(4, Lists.immutable.of(0.035, 0.965), box(), Blocks.text(line, Style.BODY))));
        out.add(Blocks.space(14));
        out.add(Blocks.drawing(12, "Lines to sign: seen by, date, photograph number.", (canvas, box) -> {
            String[] words = {"seen by", "date", "photograph no."};
            double[] shares = {0, 0.46, 0.68, 1.0};
            for (int i = 0; i < words.length; i++) {
                double x0 = box.x0() + shares[i] * box.width();
                double x1 = box.x0() + shares[i + 1] * box.width() - 10;
                canvas.line(x0, box.y1(), x1, box.y1(), Pen.of(0.5, Palette.INK));
                canvas.text(words[i], x0, box.y1() - 8.5, Style.SMALL.type().sized(7), Align.LEFT);
            }
        }));
        return Blocks.panel(Blocks.stack(out.toImmutable(), 2), Palette.WHITE, Palette.DEEP);
    }

    private static Block box() {
        return Blocks.drawing(
                12.6,
                "A box to tick.",
                (canvas, box) -> canvas.outline(
                        new Box(box.x0(), box.y1() - 10.5, box.x0() + 8.4, box.y1() - 2.1).corners(),
                        Pen.of(0.8, Palette.INK)));
    }
}
