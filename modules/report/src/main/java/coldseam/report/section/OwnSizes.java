package coldseam.report.section;

import coldseam.conduction.Point;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.plan.PlanarSubdivision;
import coldseam.report.drawing.Align;
import coldseam.report.drawing.Box;
import coldseam.report.drawing.Canvas;
import coldseam.report.drawing.Palette;
import coldseam.report.drawing.Spot;
import coldseam.report.drawing.Type;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * Width by height of what a detail adds of its own, such as a kerb, a skirt or a lap, written into it where there is room: its
 * size follows from the detail's parameters, which no chain of layers shows.
 */
record OwnSizes(SectionPicture picture, View view, Occupied occupied) {

    private static final Type TYPE = Type.of(5.8).with(Palette.SLATE);

    /** m; a corner this near to a right angle is one. */
    private static final double SQUARE = 1e-6;

    /** Points free around the words. */
    private static final double MARGIN = 1.5;

    void draw(Canvas canvas) {
        for (int part : picture.own()) {
            ImmutableList<Point> corners = picture.parts().get(part).outline().corners();
            Box box = PaintedParts.box(picture.parts().get(part));
            boolean upright = corners.size() == 4
                    && corners.allSatisfy(
                            corner -> near(corner.x(), box.x0(), box.x1()) && near(corner.y(), box.y0(), box.y1()));
            if (upright && inside(view.window(), box) && seen(part, box.middleX(), box.middleY())) {
                write(canvas, box);
            }
        }
    }

    private static boolean near(double at, double low, double high) {
        return Math.abs(at - low) < SQUARE || Math.abs(at - high) < SQUARE;
    }

    private static boolean inside(Box window, Box box) {
        return box.x0() > window.x0() && box.x1() < window.x1() && box.y0() > window.y0() && box.y1() < window.y1();
    }

    private boolean seen(int part, double x, double y) {
        int face = picture.seen().faceAt(x, y);
        return face != PlanarSubdivision.NOTHING
                && picture.seen().faces().get(face).painted() == part;
    }

    private void write(Canvas canvas, Box box) {
        String text = length(box.x1() - box.x0()) + " × " + length(box.y1() - box.y0());
        double k = view.scale().pointsPerMetre();
        double wide = canvas.metrics().width(text, TYPE) + 2 * MARGIN;
        double high = TYPE.size() + 2 * MARGIN;
        double width = (box.x1() - box.x0()) * k;
        double height = (box.y1() - box.y0()) * k;
        boolean level = width >= wide && height >= high;
        boolean turned = !level && height >= wide && width >= high;
        if (!level && !turned) {
            return;
        }
        Spot middle = view.at(new Point(box.middleX(), box.middleY()));
        double x = (level ? wide : high) / 2;
        double y = (level ? high : wide) / 2;
        // Not in the very middle: there the pen line runs.
        for (double off : new double[] {0, 0.3, -0.3}) {
            Spot at = level ? middle.plus(0, off * (height - high)) : middle.plus(off * (width - high), 0);
            if (occupied.tryTake(Box.about(at, x, y))) {
                double drop = 0.33 * TYPE.size();
                canvas.text(text, level ? at.plus(0, -drop) : at.plus(drop, 0), TYPE, Align.CENTRE, level ? 0 : 90);
                return;
            }
        }
    }

    private String length(double metres) {
        UnitSystem system = picture.system();
        double shown = system == UnitSystem.US ? metres : Math.round(metres * 1000) / 1000.0;
        return system.format(shown, Dimension.THICKNESS).replace(" mm", "").replace(" in", "");
    }
}
