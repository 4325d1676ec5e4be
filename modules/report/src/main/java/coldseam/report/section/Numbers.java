package coldseam.report.section;

import coldseam.conduction.Point;
import coldseam.report.drawing.Align;
import coldseam.report.drawing.Box;
import coldseam.report.drawing.Canvas;
import coldseam.report.drawing.Face;
import coldseam.report.drawing.Palette;
import coldseam.report.drawing.Pen;
import coldseam.report.drawing.Spot;
import coldseam.report.drawing.Type;
import coldseam.report.section.SectionPicture.Key;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.collections.api.list.ImmutableList;

/** Sets each material's number: on it where there is room, else beside the drawing with a line to it. */
final class Numbers {

    private static final double STEP = 2;
    private static final double RADIUS = 5.2;
    private static final Type TYPE = Type.of(6.6).with(Face.SEMIBOLD);

    private final Arrangement arrangement;
    private final View view;
    private final Occupied occupied;
    private final ImmutableList<Key> keys;
    private final Box box;
    private final int columns;
    private final int rows;
    private final int[] grid;

    /** @param box the whole drawing with its rim */
    Numbers(Arrangement arrangement, View view, Occupied occupied, ImmutableList<Key> keys, Box box) {
        this.arrangement = arrangement;
        this.view = view;
        this.occupied = occupied;
        this.keys = keys;
        this.box = box;
        this.columns = Math.max(1, (int) (view.page().width() / STEP));
        this.rows = Math.max(1, (int) (view.page().height() / STEP));
        this.grid = raster();
    }

    private int[] raster() {
        int[] ofPart = new int[arrangement.parts().size()];
        for (int p = 0; p < ofPart.length; p++) {
            Part part = arrangement.parts().get(p);
            ofPart[p] = keys.detectOptional(k -> k.material().equals(part.material()) && k.look() == part.look())
                    .map(Key::number)
                    .orElse(0);
        }
        int[] out = new int[columns * rows];
        for (int r = 0; r < rows; r++) {
            for (int c = 0; c < columns; c++) {
                Point p = view.under(x(c), y(r));
                int part = arrangement.topAt(p.x(), p.y());
                out[r * columns + c] = part == Arrangement.NOTHING ? 0 : ofPart[part];
            }
        }
        return out;
    }

    private double x(int column) {
        return view.page().x0() + (column + 0.5) * STEP;
    }

    private double y(int row) {
        return view.page().y0() + (row + 0.5) * STEP;
    }

    void draw(Canvas canvas) {
        List<Key> outside = new ArrayList<>();
        for (Key key : keys) {
            Spot inside = roomiest(key.number());
            if (inside == null) {
                outside.add(key);
            } else {
                badge(canvas, inside, key.number());
            }
        }
        for (Key key : outside) {
            leader(canvas, key.number());
        }
    }

    /** Where a badge fits with the most room to spare; null where it fits nowhere. */
    private Spot roomiest(int number) {
        double[] room = distances(number);
        Spot best = null;
        double most = RADIUS + 1;
        for (int r = 0; r < rows; r++) {
            for (int c = 0; c < columns; c++) {
                double d = Math.min(room[r * columns + c] * STEP, 14);
                Spot at = new Spot(x(c), y(r));
                if (d > most && occupied.free(around(at))) {
                    most = d;
                    best = at;
                }
            }
        }
        return best;
    }

    private static Box around(Spot at) {
        return new Box(at.x() - RADIUS - 1, at.y() - RADIUS - 1, at.x() + RADIUS + 1, at.y() + RADIUS + 1);
    }

    /** Chamfer distances to the nearest cell of another material, in cells. */
    private double[] distances(int number) {
        double far = 1e9;
        double diagonal = Math.sqrt(2);
        double[] d = new double[grid.length];
        for (int i = 0; i < grid.length; i++) {
            d[i] = grid[i] == number ? far : 0;
        }
        for (int r = 0; r < rows; r++) {
            for (int c = 0; c < columns; c++) {
                d[r * columns + c] = Math.min(
                        d[r * columns + c],
                        Math.min(
                                Math.min(at(d, r, c - 1) + 1, at(d, r - 1, c) + 1),
                                Math.min(at(d, r - 1, c - 1) + diagonal, at(d, r - 1, c + 1) + diagonal)));
            }
        }
        for (int r = rows - 1; r >= 0; r--) {
            for (int c = columns - 1; c >= 0; c--) {
                d[r * columns + c] = Math.min(
                        d[r * columns + c],
                        Math.min(
                                Math.min(at(d, r, c + 1) + 1, at(d, r + 1, c) + 1),
                                Math.min(at(d, r + 1, c + 1) + diagonal, at(d, r + 1, c - 1) + diagonal)));
            }
        }
        return d;
    }

    private double at(double[] d, int r, int c) {
        return r < 0 || c < 0 || r >= rows || c >= columns ? 0 : d[r * columns + c];
    }

    private void badge(Canvas canvas, Spot at, int number) {
        occupied.take(around(at));
        canvas.disc(at, RADIUS, Palette.WHITE);
        canvas.circle(at, RADIUS, Pen.of(0.6, Palette.INK));
        canvas.text(Integer.toString(number), at.x(), at.y() - 2.2, TYPE, Align.CENTRE);
    }

    /** A line from a badge in the side margin to the nearest place where the material is seen. */
    private record Leader(Spot badge, Spot tip, double cost) {}

    private void leader(Canvas canvas, int number) {
        List<Spot> tips = places(number);
        Leader best = null;
        for (Spot badge : badges()) {
            for (Spot tip : tips) {
                double length = badge.distance(tip);
                double least = length + 0.6 * Math.min(Math.abs(badge.x() - tip.x()), Math.abs(badge.y() - tip.y()));
                if (length > RADIUS + 5 && (best == null || least < best.cost)) {
                    double cost = least + crossings(badge, tip, number);
                    if (best == null || cost < best.cost) {
                        best = new Leader(badge, tip, cost);
                    }
                }
            }
        }
        if (best != null) {
            draw(canvas, best, number);
        }
    }

    private void draw(Canvas canvas, Leader leader, int number) {
        Spot tip = leader.tip;
        double length = leader.badge.distance(tip);
        Spot start = leader.badge.plus(
                (tip.x() - leader.badge.x()) / length * RADIUS, (tip.y() - leader.badge.y()) / length * RADIUS);
        canvas.line(start.x(), start.y(), tip.x(), tip.y(), Pen.of(1.4, Palette.WHITE));
        canvas.line(start.x(), start.y(), tip.x(), tip.y(), Pen.of(0.45, Palette.INK));
        canvas.disc(tip, 1.3, Palette.INK);
        for (double t = 0; t <= 1; t += 6 / Math.max(length, 6)) {
            double x = start.x() + t * (tip.x() - start.x());
            double y = start.y() + t * (tip.y() - start.y());
            occupied.take(new Box(x - 1.5, y - 1.5, x + 1.5, y + 1.5));
        }
        badge(canvas, leader.badge, number);
    }

    /** Places for badges beside the materials: in the air of the drawing and in its side margins. */
    private List<Spot> badges() {
        List<Spot> out = new ArrayList<>();
        Box page = view.page();
        for (double y = page.y0() + RADIUS + 2; y <= page.y1() - RADIUS - 2; y += 5) {
            for (double x : new double[] {box.x0() + RADIUS + 2, box.x1() - RADIUS - 2}) {
                if (occupied.free(around(new Spot(x, y)))) {
                    out.add(new Spot(x, y));
                }
            }
        }
        double[] room = distances(0);
        int reach = (int) Math.ceil((RADIUS + 2) / STEP);
        for (int r = reach; r < rows - reach; r += 3) {
            for (int c = reach; c < columns - reach; c += 3) {
                Spot at = new Spot(x(c), y(r));
                if (room[r * columns + c] * STEP > RADIUS + 2 && occupied.free(around(at))) {
                    out.add(at);
                }
            }
        }
        return out;
    }

    /** What a line costs for running over other lines and over other materials. */
    private double crossings(Spot from, Spot to, int number) {
        double cost = 0;
        double length = from.distance(to);
        for (double t = RADIUS / length; t < 1; t += 4 / length) {
            double x = from.x() + t * (to.x() - from.x());
            double y = from.y() + t * (to.y() - from.y());
            if (!occupied.free(new Box(x - 1, y - 1, x + 1, y + 1))) {
                cost += 20;
            }
            int c = (int) ((x - view.page().x0()) / STEP);
            int r = (int) ((y - view.page().y0()) / STEP);
            if (c >= 0 && r >= 0 && c < columns && r < rows) {
                int met = grid[r * columns + c];
                cost += met == 0 || met == number ? 0 : 6;
            }
        }
        return cost;
    }

    /** Places where a material is seen, a few of them. */
    private List<Spot> places(int number) {
        List<Spot> out = new ArrayList<>();
        for (int r = 1; r < rows - 1; r++) {
            for (int c = 1; c < columns - 1; c++) {
                if (grid[r * columns + c] == number) {
                    out.add(new Spot(x(c), y(r)));
                }
            }
        }
        if (out.isEmpty()) {
            thin(number, out);
        }
        int every = Math.max(1, out.size() / 80);
        List<Spot> few = new ArrayList<>();
        for (int i = 0; i < out.size(); i += every) {
            few.add(out.get(i));
        }
        return few;
    }

    /** A layer thinner than the grid: the middles of its outline. */
    private void thin(int number, List<Spot> out) {
        Key key = keys.get(number - 1);
        for (Arrangement.Seen edge : arrangement.seen(view.window())) {
            for (int side : new int[] {edge.left(), edge.right()}) {
                if (side != Arrangement.NOTHING
                        && arrangement.parts().get(side).material().equals(key.material())
                        && arrangement.parts().get(side).look() == key.look()) {
                    for (double t = 0.1; t < 1; t += 0.1) {
                        Spot at = view.at(
                                edge.from().x()
                                        + t * (edge.to().x() - edge.from().x()),
                                edge.from().y()
                                        + t * (edge.to().y() - edge.from().y()));
                        if (view.page().contains(at.x(), at.y())) {
                            out.add(at);
                        }
                    }
                }
            }
        }
    }
}
