package coldseam.report.pdf;

import coldseam.report.drawing.Align;
import coldseam.report.drawing.Box;
import coldseam.report.drawing.Canvas;
import coldseam.report.drawing.Face;
import coldseam.report.drawing.Palette;
import coldseam.report.drawing.Pen;
import coldseam.report.drawing.Tag;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;

/** Measures and draws a table's rows in a column of a page. */
record TableSetter(Table table) implements Block {

    private static final double PAD_X = 4;
    private static final double PAD_Y = 2.6;

    /** A row ready to draw: its lines by column. */
    private record Set(Table.Row row, ImmutableList<ImmutableList<Lines.Line>> lines, double height) {}

    private double[] widths(double width) {
        double fixed = table.columns().select(Table.Column::fixed).sumOfDouble(Table.Column::width);
        double shares = table.columns().reject(Table.Column::fixed).sumOfDouble(Table.Column::width);
        double[] out = new double[table.columns().size()];
        for (int i = 0; i < out.length; i++) {
            Table.Column column = table.columns().get(i);
            out[i] = column.fixed()
                    ? (shares > 0 ? column.width() : column.width() * width / fixed)
                    : (width - fixed) * column.width() / shares;
        }
        return out;
    }

    private static Style style(Table.Kind kind, Align align) {
        return (kind == Table.Kind.PLAIN ? Style.CELL : Style.CELL.with(Face.SEMIBOLD)).aligned(align);
    }

    private Set set(Table.Row row, double width) {
        double[] widths = widths(width);
        double height = 0;
        ImmutableList<ImmutableList<Lines.Line>> lines = Lists.immutable.empty();
        for (int i = 0; i < row.cells().size(); i++) {
            Table.Cell cell = row.cells().get(i);
            double room = row.kind() == Table.Kind.GROUP ? width : widths[i];
            ImmutableList<Lines.Line> wrapped = cell.text().plain().isEmpty()
                    ? Lists.immutable.empty()
                    : Lines.wrap(cell.text(), style(row.kind(), Align.LEFT), room - 2 * PAD_X);
            lines = lines.newWith(wrapped);
            height = Math.max(height, Math.max(cell.height(), wrapped.size() * Style.CELL.leading()));
        }
        double above = row.kind() == Table.Kind.GROUP ? 5 : 0;
        return new Set(row, lines, height + 2 * PAD_Y + above);
    }

    private boolean headless() {
        return table.columns().allSatisfy(column -> column.head().plain().isBlank());
    }

    double headHeight(double width) {
        if (headless()) {
            return 1;
        }
        double[] widths = widths(width);
        int most = 0;
        for (int i = 0; i < widths.length; i++) {
            most = Math.max(
                    most,
                    Lines.wrap(table.columns().get(i).head(), Style.COLUMN, widths[i] - 2 * PAD_X)
                            .size());
        }
        return most * Style.COLUMN.leading() + 2 * PAD_Y;
    }

    double rowHeight(int row, double width) {
        return set(table.rows().get(row), width).height;
    }

    /**
     * Draws the head.
     *
     * @param first whether it is the table's first; one that is repeated on a page is decoration
     */
    void drawHead(Canvas canvas, double left, double top, double width, boolean first) {
        if (first && !headless()) {
            canvas.tagged(Tag.ROW, "", () -> head(canvas, left, top, width, true));
        } else {
            head(canvas, left, top, width, false);
        }
    }

    private void head(Canvas canvas, double left, double top, double width, boolean tagged) {
        double[] widths = widths(width);
        double height = headHeight(width);
        if (headless()) {
            canvas.line(left, top, left + width, top, Pen.of(0.3, Palette.RULE));
            return;
        }
        double x = left;
        for (int i = 0; i < widths.length; i++) {
            Table.Column column = table.columns().get(i);
            ImmutableList<Lines.Line> lines = Lines.wrap(column.head(), Style.COLUMN, widths[i] - 2 * PAD_X);
            double from = x;
            double room = widths[i];
            Runnable cell = () -> {
                double baseline =
                        top - height + PAD_Y + lines.size() * Style.COLUMN.leading() - Blocks.baselineOf(Style.COLUMN);
                for (Lines.Line line : lines) {
                    line.draw(
                            canvas,
                            from + PAD_X,
                            from + room - PAD_X,
                            baseline,
                            column.align(),
                            line != lines.getLast());
                    baseline -= Style.COLUMN.leading();
                }
            };
            if (tagged) {
                canvas.tagged(Tag.HEAD_CELL, "", cell);
            } else {
                cell.run();
            }
            x += widths[i];
        }
        canvas.line(left, top - height, left + width, top - height, Pen.of(0.9, Palette.DEEP));
    }

    void drawRow(Canvas canvas, int index, double left, double top, double width) {
        Table.Row row = table.rows().get(index);
        drawLines(canvas, set(row, width), 0, Integer.MAX_VALUE, left, top, width);
    }

    /** How many lines of text its longest cell has. */
    int rowLines(int index, double width) {
        return set(table.rows().get(index), width)
                .lines
                .collectInt(ImmutableList::size)
                .maxIfEmpty(0);
    }

    /** Draws some lines of a row that is too high for a page. */
    double drawPart(Canvas canvas, int index, int from, int to, double left, double top, double width) {
        Set set = set(table.rows().get(index), width);
        double height = (to - from) * Style.CELL.leading() + 2 * PAD_Y;
        drawLines(canvas, new Set(set.row, set.lines, height), from, to, left, top, width);
        return height;
    }

    private void drawLines(Canvas canvas, Set set, int from, int to, double left, double top, double width) {
        canvas.tagged(Tag.ROW, "", () -> cells(canvas, set, from, to, left, top, width));
    }

    private void cells(Canvas canvas, Set set, int from, int to, double left, double top, double width) {
        double[] widths = widths(width);
        Table.Row row = set.row;
        double bottom = top - set.height;
        if (row.kind() == Table.Kind.TOTAL) {
            canvas.fill(new Box(left, bottom, left + width, top).corners(), Palette.FROST);
        }
        if (row.kind() == Table.Kind.SUBTOTAL || row.kind() == Table.Kind.TOTAL) {
            canvas.line(left, top, left + width, top, Pen.of(0.7, Palette.SLATE));
        }
        double above = row.kind() == Table.Kind.GROUP ? 5 : 0;
        double x = left;
        for (int i = 0; i < row.cells().size(); i++) {
            double room = row.kind() == Table.Kind.GROUP ? width : widths[i];
            Align align = row.kind() == Table.Kind.GROUP
                    ? Align.LEFT
                    : table.columns().get(i).align();
            Style style = style(row.kind(), align);
            if (row.kind() == Table.Kind.GROUP) {
                style = style.with(Palette.DEEP);
            }
            ImmutableList<Lines.Line> lines = set.lines.get(i);
            double at = x;
            double first = top - PAD_Y - above - Blocks.baselineOf(style);
            double leading = style.leading();
            Table.Cell cell = row.cells().get(i);
            canvas.tagged(Tag.CELL, "", () -> {
                for (int n = from; n < Math.min(to, lines.size()); n++) {
                    lines.get(n)
                            .draw(
                                    canvas,
                                    at + PAD_X,
                                    at + room - PAD_X,
                                    first - (n - from) * leading,
                                    align,
                                    n + 1 < lines.size());
                }
                if (from == 0) {
                    cell.painter().accept(canvas, new Box(at + PAD_X, bottom + PAD_Y, at + room - PAD_X, top - PAD_Y));
                }
            });
            x += widths[i];
        }
        canvas.line(
                left, bottom, left + width, bottom, Pen.of(row.kind() == Table.Kind.TOTAL ? 0.9 : 0.3, Palette.RULE));
    }

    @Override
    public double height(double width) {
        double height = headHeight(width);
        for (int i = 0; i < table.rows().size(); i++) {
            height += rowHeight(i, width);
        }
        return height;
    }

    @Override
    public void draw(Canvas canvas, double left, double top, double width) {
        canvas.tagged(Tag.TABLE, "", () -> whole(canvas, left, top, width));
    }

    private void whole(Canvas canvas, double left, double top, double width) {
        drawHead(canvas, left, top, width, true);
        double y = top - headHeight(width);
        for (int i = 0; i < table.rows().size(); i++) {
            drawRow(canvas, i, left, y, width);
            y -= rowHeight(i, width);
        }
    }
}
