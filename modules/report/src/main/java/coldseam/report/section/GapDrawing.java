package coldseam.report.section;

import coldseam.conduction.GapPlaces;
import coldseam.conduction.Point;
import coldseam.conduction.Solution;
import coldseam.conduction.TemperatureField;
import coldseam.files.quantity.Format;
import coldseam.files.quantity.UnitSystem;
import coldseam.report.drawing.Align;
import coldseam.report.drawing.Box;
import coldseam.report.drawing.Canvas;
import coldseam.report.drawing.Face;
import coldseam.report.drawing.Ink;
import coldseam.report.drawing.Palette;
import coldseam.report.drawing.Pen;
import coldseam.report.drawing.Spot;
import coldseam.report.drawing.Type;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

/**
 * Where the width of a solution's interval comes from: the whole section, small, in squares of equal size on paper, each
 * as dark as its share of the gap.
 *
 * <p>Squares and not the mesh's triangles: the triangles that matter are smaller than a dot of ink, and in a good mesh all
 * carry about the same. A triangle larger than a square is cut into pieces that share its gap by their areas.
 */
public final class GapDrawing {

    /** Side of a square, points. */
    private static final double SQUARE = 4;

    /** Rows reach this far under the next, so that no hair of white shows between them, points. */
    private static final double SEAM = 0.2;

    private static final double TITLE = 22;
    private static final double WORDS = 34;

    /** Lowest share of the gap of each step of the scale, and its colour; quiet, and in order in black and white too. */
    private static final double[] LEAST = {0.03, 0.01, 0.003, 0.001, 0};

    private static final Ink[] INKS = {
        Ink.of(0x14505C), Ink.of(0x4C8490), Ink.of(0x8BB3BA), Ink.of(0xC3DADD), Ink.of(0xEAF1F0)
    };

    private static final String[] NAMES = {"3 % and more", "1 to 3 %", "0.3 to 1 %", "0.1 to 0.3 %", "less"};

    private final Solution solution;
    private final UnitSystem system;
    private final Box window;
    private final double pointsPerMetre;
    private final int across;
    private final int up;
    private final double[] share;
    private final boolean[] inside;
    private final double total;

    /**
     * Lays it out.
     *
     * @param width points there are
     * @param height points there are at most
     */
    public GapDrawing(Solution solution, UnitSystem system, double width, double height) {
        this.solution = solution;
        this.system = system;
        ImmutableList<TemperatureField.Cell> cells = solution.field().cells();
        window = Box.around(cells.flatCollect(cell -> Lists.immutable.of(cell.a(), cell.b(), cell.c()))
                .collect(point -> new Spot(point.x(), point.y())));
        pointsPerMetre = Math.min(width / window.width(), (height - TITLE - WORDS) / window.height());
        across = Math.max(1, (int) Math.ceil(window.width() * pointsPerMetre / SQUARE));
        up = Math.max(1, (int) Math.ceil(window.height() * pointsPerMetre / SQUARE));
        share = new double[across * up];
        inside = new boolean[across * up];
        total = GapPlaces.total(solution.field());
        for (TemperatureField.Cell cell : cells) {
            spread(cell.a(), cell.b(), cell.c(), total > 0 ? cell.error() / total : 0);
        }
    }

    /** Height it takes, points. */
    public double height() {
        return TITLE + up * SQUARE + WORDS;
    }

    /** Halves a triangle across its longest side until it fits a square, and adds each piece's share where it lies. */
    private void spread(Point a, Point b, Point c, double gap) {
        double ab = a.distance(b);
        double bc = b.distance(c);
        double ca = c.distance(a);
        double longest = Math.max(ab, Math.max(bc, ca));
        if (longest * pointsPerMetre > SQUARE) {
            if (longest == ab) {
                Point m = a.middle(b);
                spread(a, m, c, gap / 2);
                spread(m, b, c, gap / 2);
            } else if (longest == bc) {
                spread(b, c, a, gap);
            } else {
                spread(c, a, b, gap);
            }
            return;
        }
        int i = square((a.x() + b.x() + c.x()) / 3 - window.x0(), across);
        int j = square((a.y() + b.y() + c.y()) / 3 - window.y0(), up);
        share[j * across + i] += gap;
        inside[j * across + i] = true;
    }

    private int square(double metres, int most) {
        return Math.max(0, Math.min(most - 1, (int) (metres * pointsPerMetre / SQUARE)));
    }

    /** Draws it into the upper part of a box. */
    public void draw(Canvas canvas, Box box) {
        canvas.text(
                "Where the intervals' width comes from",
                box.x0(),
                box.y1() - 10,
                Type.of(9).with(Face.SEMIBOLD).with(Palette.DEEP),
                Align.LEFT);
        double x0 = box.x0();
        double y0 = box.y1() - TITLE - up * SQUARE;
        ImmutableList<GapPlaces.Place> places = GapPlaces.of(solution, 3);
        if (places.notEmpty()) {
            squares(canvas, x0, y0);
        }
        outlines(canvas, x0, y0);
        words(canvas, x0, y0 - 12, places);
    }

    private void squares(Canvas canvas, double x0, double y0) {
        for (int j = 0; j < up; j++) {
            int i = 0;
            while (i < across) {
                int first = i;
                int step = step(j * across + i);
                while (i < across && step(j * across + i) == step) {
                    i++;
                }
                if (step >= 0) {
                    canvas.fill(
                            new Box(x0 + first * SQUARE, y0 + j * SQUARE, x0 + i * SQUARE, y0 + (j + 1) * SQUARE + SEAM)
                                    .corners(),
                            INKS[step]);
                }
            }
        }
    }

    /** The step of the scale a square is drawn in; -1 outside the section. */
    private int step(int at) {
        if (!inside[at]) {
            return -1;
        }
        int step = 0;
        while (share[at] < LEAST[step]) {
            step++;
        }
        return step;
    }

    private void outlines(Canvas canvas, double x0, double y0) {
        MutableList<ImmutableList<Spot>> lines = Lists.mutable.empty();
        solution.section().regions().forEach(region -> {
            ImmutableList<Spot> spots = region.outline().corners().collect(p -> at(p, x0, y0));
            lines.add(spots.newWith(spots.get(0)));
        });
        canvas.strokes(lines.toImmutable(), Pen.of(0.3, Palette.SLATE));
    }

    private Spot at(Point p, double x0, double y0) {
        return new Spot(x0 + (p.x() - window.x0()) * pointsPerMetre, y0 + (p.y() - window.y0()) * pointsPerMetre);
    }

    private void words(Canvas canvas, double x0, double y, ImmutableList<GapPlaces.Place> places) {
        Type type = Type.of(7.2);
        if (places.isEmpty()) {
            canvas.text("The intervals are as wide as rounding alone makes them.", x0, y, type, Align.LEFT);
            return;
        }
        double x = x0;
        for (int i = 0; i < INKS.length; i++) {
            Box sample = new Box(x, y - 1, x + 8, y + 7);
            canvas.fill(sample.corners(), INKS[i]);
            canvas.outline(sample.corners(), Pen.of(0.3, Palette.SLATE));
            canvas.text(NAMES[i], x + 11, y, type, Align.LEFT);
            x += 11 + canvas.metrics().width(NAMES[i], type) + 12;
        }
        canvas.text("of the width, in one square", x, y, type.with(Palette.SLATE), Align.LEFT);
        double unit = system == UnitSystem.SI ? 1e-3 : 0.0254;
        canvas.text(
                "Most of it around "
                        + places.collect(place -> Format.of(
                                        "(%.0f, %.0f): %.0f %%",
                                        place.at().x() / unit, place.at().y() / unit, 100 * place.share()))
                                .makeString("; ")
                        + (system == UnitSystem.SI ? "; places in mm" : "; places in inches"),
                x0,
                y - 12,
                type,
                Align.LEFT);
    }
}
