package coldseam.report.pages;

import coldseam.audit.Finding;
import coldseam.report.drawing.Align;
import coldseam.report.drawing.Spot;
import coldseam.report.house.FindingMark;
import coldseam.report.house.HouseDrawing;
import coldseam.report.pdf.Blocks;
import coldseam.report.pdf.Flow;
import coldseam.report.pdf.Style;
import java.util.function.Supplier;
import org.eclipse.collections.api.list.ImmutableList;

/** The house with every finding numbered where it is. */
public final class HouseViews {

    private static final double HEIGHT = 225;
    /** Without marks, so that "nothing was found" stays on the page, on the shorter paper too. */
    private static final double UNMARKED = 170;

    private HouseViews() {}

    /** @param views of the house; waited for once it is their turn */
    public static void write(Page page, Supplier<HouseDrawing> views) {
        Flow flow = page.flow();
        boolean any = page.audit().findings().notEmpty();
        flow.sectionHere(any ? "The house and where its gaps are" : "The house", HEIGHT + 80);
        HouseDrawing drawing = views.get();
        // Below it: what the marks mean, or that nothing was found.
        double below = (any ? 50 : 95) + (drawing.showsGround() ? 14 : 0);
        double height =
                Math.max(any ? HEIGHT : UNMARKED, Math.min(drawing.height(flow.width()), flow.remaining() - below));
        flow.add(Blocks.drawing(
                height,
                "The house seen from the south-east and from the north-west, each finding numbered where it is; the list of"
                        + " gaps names the places in words.",
                drawing::draw));
        if (drawing.showsGround()) {
            flow.small("Brown: in the ground, up to the line of the ground.");
        }
        if (!any) {
            return;
        }
        flow.space(4);
        flow.add(Blocks.drawing(
                14, "A disc is a gap, a square is unknown, a diamond is a weak spot.", (canvas, box) -> {
                    double x = box.x0();
                    for (Finding.Severity severity : Finding.Severity.values()) {
                        FindingMark.draw(canvas, new Spot(x + 6, box.y0() + 6), severity, 1, 5);
                        String word = FindingMark.word(severity);
                        canvas.text(word, x + 17, box.y0() + 3.2, Style.SMALL.type(), Align.LEFT);
                        x += 34 + canvas.metrics().width(word, Style.SMALL.type());
                    }
                }));
        ImmutableList<Finding> hidden = drawing.hidden();
        if (hidden.notEmpty()) {
            flow.small("Not seen from either side: "
                    + hidden.collect(f -> f.number() + " (" + page.words().place(f) + ")")
                            .makeString(", ")
                    + ".");
        }
    }
}
