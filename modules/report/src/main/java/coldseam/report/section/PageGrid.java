package coldseam.report.section;

import coldseam.conduction.Point;
import coldseam.report.drawing.Box;
import coldseam.report.drawing.Spot;
import java.util.Arrays;
import java.util.function.IntUnaryOperator;
import org.eclipse.collections.api.list.ImmutableList;

/** What is seen in each small square of a drawing, to find room on the page. */
final class PageGrid {

    /** Side of a square, points. */
    static final double STEP = 2;

    private final View view;
    private final int columns;
    private final int rows;
    private final int[] part;
    private final int[] painted;

    PageGrid(PaintedParts parts, View view) {
        this.view = view;
        this.columns = Math.max(1, (int) (view.page().width() / STEP));
        this.rows = Math.max(1, (int) (view.page().height() / STEP));
        this.part = new int[columns * rows];
        Arrays.fill(part, PaintedParts.NOTHING);
        for (int i = 0; i < parts.parts().size(); i++) {
            paint(i, parts.parts().get(i).outline().corners());
        }
        this.painted = sums();
    }

    /** Row by row, between the outline's crossings with the middle of the row. */
    private void paint(int index, ImmutableList<Point> outline) {
        ImmutableList<Spot> corners = view.at(outline);
        double[] met = new double[corners.size()];
        Box box = Box.around(corners);
        int from = Math.max(0, (int) Math.floor((box.y0() - view.page().y0()) / STEP - 0.5));
        int to = Math.min(rows - 1, (int) Math.ceil((box.y1() - view.page().y0()) / STEP - 0.5));
        for (int r = from; r <= to; r++) {
            double y = y(r);
            int count = 0;
            Spot b = corners.getLast();
            for (Spot a : corners) {
                if (a.y() > y != b.y() > y) {
                    met[count++] = (b.x() - a.x()) * (y - a.y()) / (b.y() - a.y()) + a.x();
                }
                b = a;
            }
            Arrays.sort(met, 0, count);
            for (int i = 0; i + 1 < count; i += 2) {
                int first = Math.max(0, (int) Math.ceil((met[i] - view.page().x0()) / STEP - 0.5));
                int last = Math.min(columns, (int)
                        Math.ceil((met[i + 1] - view.page().x0()) / STEP - 0.5));
                if (first < last) {
                    Arrays.fill(part, r * columns + first, r * columns + last, index);
                }
            }
        }
    }

    /** At each corner of the grid, how many painted squares lie below and left of it. */
    private int[] sums() {
        int wide = columns + 1;
        int[] sums = new int[wide * (rows + 1)];
        for (int r = 0; r < rows; r++) {
            for (int c = 0; c < columns; c++) {
                sums[(r + 1) * wide + c + 1] = sums[(r + 1) * wide + c]
                        + sums[r * wide + c + 1]
                        - sums[r * wide + c]
                        + (part[r * columns + c] == PaintedParts.NOTHING ? 0 : 1);
            }
        }
        return sums;
    }

    /** Whether nothing is painted in a box of the page; what of it lies beyond the page is not asked. */
    boolean clear(Box box) {
        int c0 = column(box.x0());
        int c1 = column(box.x1()) + 1;
        int r0 = row(box.y0());
        int r1 = row(box.y1()) + 1;
        int wide = columns + 1;
        return painted[r1 * wide + c1] - painted[r0 * wide + c1] - painted[r1 * wide + c0] + painted[r0 * wide + c0]
                == 0;
    }

    private int column(double x) {
        return Math.max(0, Math.min(columns - 1, (int) ((x - view.page().x0()) / STEP)));
    }

    private int row(double y) {
        return Math.max(0, Math.min(rows - 1, (int) ((y - view.page().y0()) / STEP)));
    }

    int columns() {
        return columns;
    }

    int rows() {
        return rows;
    }

    /** The part in a square, or {@link PaintedParts#NOTHING}. */
    int part(int row, int column) {
        return part[row * columns + column];
    }

    /** The part at a place of the page; beyond it, {@link PaintedParts#NOTHING}. */
    int partAt(double x, double y) {
        return view.page().contains(x, y) ? part(row(y), column(x)) : PaintedParts.NOTHING;
    }

    /** The middle of a square. */
    Spot middle(int row, int column) {
        return new Spot(view.page().x0() + (column + 0.5) * STEP, y(row));
    }

    private double y(int row) {
        return view.page().y0() + (row + 0.5) * STEP;
    }

    /**
     * Points from each square to the nearest one with another label or the page's rim, by steps to the eight neighbours
     * (Borgefors 1986, from memory: at most 8 % too far).
     *
     * @param label of a part
     */
    double[] room(IntUnaryOperator label) {
        int[] labels = Arrays.stream(part).map(label).toArray();
        double[] room = new double[labels.length];
        for (int r = 0; r < rows; r++) {
            for (int c = 0; c < columns; c++) {
                room[r * columns + c] = Math.min(
                        Math.min(near(labels, room, r, c, 0, -1), near(labels, room, r, c, -1, 0)),
                        Math.min(near(labels, room, r, c, -1, -1), near(labels, room, r, c, -1, 1)));
            }
        }
        for (int r = rows - 1; r >= 0; r--) {
            for (int c = columns - 1; c >= 0; c--) {
                room[r * columns + c] = Math.min(
                        room[r * columns + c],
                        Math.min(
                                Math.min(near(labels, room, r, c, 0, 1), near(labels, room, r, c, 1, 0)),
                                Math.min(near(labels, room, r, c, 1, 1), near(labels, room, r, c, 1, -1))));
            }
        }
        return room;
    }

    private double near(int[] labels, double[] room, int r, int c, int dr, int dc) {
        int row = r + dr;
        int column = c + dc;
        double step = dr != 0 && dc != 0 ? Math.sqrt(2) * STEP : STEP;
        boolean same = row >= 0
                && column >= 0
                && row < rows
                && column < columns
                && labels[row * columns + column] == labels[r * columns + c];
        return same ? room[row * columns + column] + step : step;
    }
}
