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
import coldseam.report.words.HoldPointWords;
import coldseam.report.words.Print;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

/** What must be seen before it is covered, with boxes to tick and room to sign. */
public final class HoldPointPages {

    /** Of the width: the box to tick, the item's number, what to look at, the fields to sign. */
    private static final ImmutableList<Double> SHARES = Lists.immutable.of(0.03, 0.05, 0.48, 0.44);

    /** Each item is another trade's and another day's. */
    private static final String[] FIELDS = {"seen by", "role", "date", "photograph no."};

    private HoldPointPages() {}

    public static void write(Page page) {
        if (page.audit().holdPoints().isEmpty()) {
            return;
        }
        Flow flow = page.flow();
        flow.section("Hold points");
        flow.body(
                "Work stops here until somebody has looked, taken the photographs and signed, each item for itself. In order of"
                        + " building. In brackets stand the sheets of the seams that are meant; file a photograph under its item's number.");
        flow.space(8);
        page.audit().holdPoints().forEachWithIndex((point, i) -> {
            flow.add(point(page.print(), point, i + 1));
            flow.space(10);
        });
    }

    private static Block point(Print print, HoldPoint point, int number) {
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
        out.add(row(Blocks.space(9), Blocks.space(9), Blocks.space(9), fields(true)));
        point.items()
                .forEachWithIndex((item, i) -> out.add(row(
                        box(),
                        Blocks.text(HoldPointWords.number(number, i + 1), Style.BODY.with(Palette.SLATE)),
                        Blocks.text(HoldPointWords.item(item, print.units()), Style.BODY),
                        fields(false))));
        return Blocks.panel(Blocks.stack(out.toImmutable(), 2), Palette.WHITE, Palette.DEEP);
    }

    private static Block row(Block... cells) {
        return Blocks.beside(6, SHARES, cells);
    }

    /** What each item is signed with: the words over the columns, or a line for each. */
    private static Block fields(boolean words) {
        String alternative = words ? "Columns to sign in: " + String.join(", ", FIELDS) + "." : "Lines to sign.";
        return Blocks.drawing(words ? 9 : 12.6, alternative, (canvas, box) -> {
            double width = box.width() / FIELDS.length;
            for (int i = 0; i < FIELDS.length; i++) {
                double x = box.x0() + i * width;
                if (words) {
                    canvas.text(FIELDS[i], x, box.y0(), Style.SMALL.type().sized(7), Align.LEFT);
                } else {
                    canvas.line(x, box.y0() + 1, x + width - 6, box.y0() + 1, Pen.of(0.5, Palette.INK));
                }
            }
        });
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
