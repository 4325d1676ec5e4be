package coldseam.report.pdf;

import coldseam.report.drawing.Align;
import coldseam.report.drawing.Box;
import coldseam.report.drawing.Canvas;
import java.util.function.BiConsumer;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;

/**
 * A table that may run over pages, its head repeated.
 *
 * @param columns left to right
 * @param rows top to bottom
 */
public record Table(ImmutableList<Column> columns, ImmutableList<Row> rows) {

    /**
     * A column.
     *
     * @param head its title
     * @param width points where {@code fixed}, else a share of what the fixed ones leave
     * @param fixed how the width counts
     * @param align of its cells
     */
    public record Column(Rich head, double width, boolean fixed, Align align) {

        public static Column share(String head, double share) {
            return new Column(Rich.marked(head), share, false, Align.LEFT);
        }

        public static Column fixed(String head, double points) {
            return new Column(Rich.marked(head), points, true, Align.LEFT);
        }

        public static Column number(String head, double points) {
            return new Column(Rich.marked(head), points, true, Align.RIGHT);
        }
    }

    /** How a row is set. */
    public enum Kind {
        PLAIN,
        /** The title of a group of rows; its first cell runs across. */
        GROUP,
        /** The sum of a group. */
        SUBTOTAL,
        /** The sum of all. */
        TOTAL
    }

    public record Row(Kind kind, ImmutableList<Cell> cells) {}

    /**
     * A cell: text, or a small drawing.
     *
     * @param text may be empty
     * @param height points, of the drawing; zero for text
     * @param painter of the drawing
     */
    public record Cell(Rich text, double height, BiConsumer<Canvas, Box> painter) {
        public static Cell of(Rich text) {
            return new Cell(text, 0, (canvas, box) -> {});
        }

        public static Cell of(String text) {
            return of(Rich.of(text));
        }

        /** A small drawing. */
        public static Cell drawn(double height, BiConsumer<Canvas, Box> painter) {
            return new Cell(Rich.of(""), height, painter);
        }
    }

    /** A table without rows. */
    public static Table of(Column... columns) {
        return new Table(Lists.immutable.of(columns), Lists.immutable.empty());
    }

    /** With one more row. */
    public Table row(Kind kind, Cell... cells) {
        return with(new Row(kind, Lists.immutable.of(cells)));
    }

    /** With one more plain row of texts as they stand. */
    public Table row(String... texts) {
        return with(new Row(Kind.PLAIN, Lists.immutable.of(texts).collect(Cell::of)));
    }

    /** With one more row of a table of two columns: what, and its value. */
    public Table fact(Rich what, String value) {
        return row(Kind.PLAIN, Cell.of(what), Cell.of(value));
    }

    /** With one more row. */
    public Table with(Row row) {
        return new Table(columns, rows.newWith(row));
    }
}
