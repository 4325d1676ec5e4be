package coldseam.report.pdf;

import coldseam.junctions.Keeping;
import coldseam.report.drawing.Box;
import coldseam.report.drawing.Canvas;
import coldseam.report.drawing.Tag;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;

/** Sets blocks down the pages of a document, one after the other. */
public final class Flow implements AutoCloseable {

    /** Lines of a table's last row that take the row before along to the next page; a higher one fills enough of it. */
    private static final int MOST_ALONG = 8;

    /** Points. */
    private static final double OVER_HEADING = 9;

    /** Points, of a page that a heading takes with what follows, at the least. */
    private static final double LEAST_UNDER = 70;

    private static final Margins MARGINS = Margins.STANDARD;

    private final PdfDocument document;
    private final Paper paper;
    private Canvas canvas;
    private double top;
    private String title = "";
    private String group = "";
    private final List<Mark> marks = new ArrayList<>();

    /** Headings that wait for what follows them, each with the space left under it, points. */
    private final List<Heading> waiting = new ArrayList<>();

    private record Heading(Block text, double gap) {}

    /** A heading and the page it came to stand on. */
    public record Mark(String text, int page) {}

    /** Opens a document with its first page. */
    public Flow(Paper paper, DocumentInfo info) {
        this(paper, info, Keeping.NOTHING);
    }

    /**
     * Opens a document with its first page.
     *
     * @param keeping what earlier runs drew
     */
    public Flow(Paper paper, DocumentInfo info, Keeping keeping) {
        this.paper = paper;
        this.document = new PdfDocument(paper, info, keeping);
        newPage();
    }

    /**
     * Begins work on another core that needs nothing of the pages.
     *
     * @return waits for what it gives, and fails as it did
     */
    public <T> Supplier<T> beside(Callable<T> work) {
        return document.beside(work);
    }

    /** Reads the typeface and loads what writes pages, which the first document would wait for. */
    public static void prepare() {
        FontMetrics.shared();
        PdfDocument.prepare();
    }

    /** The width of the text column, points. */
    public double width() {
        return paper.width() - MARGINS.left() - MARGINS.right();
    }

    /** The height of the text column, points. */
    public double bodyHeight() {
        return paper.height() - MARGINS.top() - MARGINS.bottom();
    }

    /** What is left of the page, points, under headings that wait. */
    public double remaining() {
        double taken = atTop() && !waiting.isEmpty() ? -OVER_HEADING : 0;
        for (Heading heading : waiting) {
            taken += OVER_HEADING + heading.text().height(width()) + heading.gap();
        }
        return top - MARGINS.bottom() - taken;
    }

    private boolean atTop() {
        return top - MARGINS.bottom() > bodyHeight() - 0.01;
    }

    /** Begins a page. */
    public void newPage() {
        canvas = document.page(title);
        top = paper.height() - MARGINS.top();
    }

    /** Begins a page unless so much is left. */
    public void need(double height) {
        if (remaining() < height && !atTop()) {
            newPage();
        }
    }

    /** Begins a section on a page of its own. */
    public void section(String text) {
        begin(text);
        mark(text);
        add(Blocks.text(text, Style.SECTION));
        space(6);
    }

    /**
     * Begins a section on a page of its own, one of a group.
     *
     * @param text its heading, as contents name it too
     * @param bookmark how its bookmark names it
     * @param of the group, under whose bookmark it goes
     */
    public void section(String text, String bookmark, String of) {
        boolean first = !of.equals(group);
        begin(text);
        if (first) {
            document.bookmark(1, of, top);
        }
        group = of;
        document.bookmark(2, bookmark, top);
        marks.add(new Mark(text, document.pageCount()));
        add(Blocks.text(text, Style.SECTION));
        space(6);
    }

    private void begin(String text) {
        settle(0);
        title = text;
        if (!atTop()) {
            newPage();
        }
        document.title(text);
    }

    /** Begins a section below what is there, where at least so much is left. */
    public void sectionHere(String text, double height) {
        if (remaining() < height || atTop()) {
            section(text);
            return;
        }
        settle(0);
        space(20);
        title = text;
        mark(text);
        add(Blocks.text(text, Style.SECTION));
        space(6);
    }

    /** A paragraph of what is told. */
    public void body(Rich text) {
        add(Blocks.text(text, Style.BODY));
    }

    /** A paragraph of what is told. */
    public void body(String text) {
        body(Rich.of(text));
    }

    /** A paragraph of what is remarked below. */
    public void small(Rich text) {
        add(Blocks.text(text, Style.SMALL));
    }

    /** A paragraph of what is remarked below. */
    public void small(String text) {
        small(Rich.of(text));
    }

    /** A heading within a section; it waits for what follows, so that it stands on the same page. */
    public void heading(String text) {
        waiting.add(new Heading(Blocks.text(text, Style.SUBSECTION), 3));
    }

    /** Sets the headings that wait, on a page that has room for so much under them. */
    private void settle(double height) {
        if (waiting.isEmpty()) {
            return;
        }
        need(Math.max(height, LEAST_UNDER - (top - MARGINS.bottom() - remaining())));
        List<Heading> headings = List.copyOf(waiting);
        waiting.clear();
        for (Heading heading : headings) {
            space(OVER_HEADING);
            place(heading.text(), heading.text().height(width()));
            space(heading.gap());
        }
    }

    /** Remembers a place for the list of contents and the bookmarks. */
    public void mark(String text) {
        settle(0);
        group = "";
        document.bookmark(1, text, top);
        marks.add(new Mark(text, document.pageCount()));
    }

    /** The headings so far. */
    public ImmutableList<Mark> marks() {
        return Lists.immutable.ofAll(marks);
    }

    /** Leaves space; none at the top of a page. */
    public void space(double height) {
        if (!waiting.isEmpty()) {
            Heading last = waiting.remove(waiting.size() - 1);
            waiting.add(new Heading(last.text(), last.gap() + height));
        } else if (!atTop()) {
            top -= height;
        }
    }

    /** Sets a block; on the next page where it does not fit; in its parts where it does not fit any page. */
    public void add(Block block) {
        settle(Math.min(least(block), bodyHeight() / 2));
        double height = block.height(width());
        if (height <= remaining() + 0.01) {
            place(block, height);
        } else if (block instanceof Blocks.Paragraph paragraph) {
            paragraph(paragraph);
        } else if (block instanceof TableSetter setter) {
            table(setter);
        } else if (height > bodyHeight() && block instanceof Blocks.Sequence sequence) {
            for (Block part : sequence.blocks()) {
                add(part);
                space(sequence.gap());
            }
        } else {
            need(height);
            place(block, height);
        }
    }

    /** Points, of the least of a block that may stand at a page's foot. */
    private double least(Block block) {
        double height = block.height(width());
        if (block instanceof Blocks.Paragraph paragraph) {
            return Math.min(height, 2 * paragraph.style().leading());
        }
        if (block instanceof TableSetter setter) {
            return least(setter);
        }
        return height > bodyHeight() && block instanceof Blocks.Sequence sequence
                ? least(sequence.blocks().getFirst())
                : height;
    }

    private double least(TableSetter setter) {
        return setter.table().rows().isEmpty()
                ? 0
                : setter.headHeight(width()) + setter.rowHeight(0, width()) + together(setter, 0, width());
    }

    private void place(Block block, double height) {
        block.draw(canvas, MARGINS.left(), top, width());
        top -= height;
    }

    private void paragraph(Blocks.Paragraph paragraph) {
        ImmutableList<Lines.Line> lines = paragraph.lines(width());
        double leading = paragraph.style().leading();
        int from = 0;
        while (from < lines.size()) {
            int fits = (int) Math.floor((remaining() + 0.01) / leading);
            int left = lines.size() - from;
            // At least two lines on either side of a break.
            int count = fits >= left ? left : left - fits == 1 ? fits - 1 : fits;
            if (count < Math.min(2, left) && !atTop()) {
                newPage();
                continue;
            }
            count = Math.max(1, count);
            paragraph.draw(canvas, MARGINS.left(), top, width(), part(lines, from, count), from == 0);
            top -= count * leading;
            from += count;
            if (from < lines.size()) {
                newPage();
            }
        }
    }

    private static ImmutableList<Lines.Line> part(ImmutableList<Lines.Line> lines, int from, int count) {
        return lines.drop(from).take(count);
    }

    /** Sets a table, over as many pages as it takes. */
    public void add(Table table) {
        TableSetter setter = new TableSetter(table);
        settle(Math.min(least(setter), bodyHeight() / 2));
        table(setter);
    }

    private void table(TableSetter setter) {
        // The canvas changes where the table runs over a page; the table stays open in the reading order.
        canvas.tagged(Tag.TABLE, "", () -> rows(setter));
    }

    private void rows(TableSetter setter) {
        double width = width();
        double head = setter.headHeight(width);
        int rows = setter.table().rows().size();
        boolean headed = false;
        for (int i = 0; i < rows; i++) {
            double height = setter.rowHeight(i, width);
            double wanted = height + (headed ? 0 : head) + together(setter, i, width);
            if (remaining() < wanted && !atTop() && !(headed && height > bodyHeight() - head)) {
                newPage();
                headed = false;
            }
            if (!headed) {
                setter.drawHead(canvas, MARGINS.left(), top, width, i == 0);
                top -= head;
                headed = true;
            }
            if (height > remaining()) {
                tallRow(setter, i, head);
            } else {
                setter.drawRow(canvas, i, MARGINS.left(), top, width);
                top -= height;
            }
        }
    }

    /** What must stand on the page with a row: the first row of its group, the sum after it, or the last row, never alone. */
    private static double together(TableSetter setter, int row, double width) {
        if (row + 1 >= setter.table().rows().size()) {
            return 0;
        }
        boolean opens = setter.table().rows().get(row).kind() == Table.Kind.GROUP;
        Table.Kind next = setter.table().rows().get(row + 1).kind();
        boolean closes = next == Table.Kind.SUBTOTAL || next == Table.Kind.TOTAL;
        double height = setter.rowHeight(row + 1, width);
        boolean last = row + 2 == setter.table().rows().size() && height < Style.CELL.leading() * MOST_ALONG;
        return opens || closes || last ? height : 0;
    }

    private void tallRow(TableSetter setter, int row, double head) {
        int lines = setter.rowLines(row, width());
        int from = 0;
        while (from < lines) {
            int fits = Math.max(1, (int) Math.floor((remaining() - 6) / Style.CELL.leading()));
            int to = Math.min(lines, from + fits);
            top -= setter.drawPart(canvas, row, from, to, MARGINS.left(), top, width());
            from = to;
            if (from < lines) {
                newPage();
                setter.drawHead(canvas, MARGINS.left(), top, width(), false);
                top -= head;
            }
        }
    }

    /** Keeps a place in the reading order for the list of contents, which is known last. */
    public void reserveContents() {
        document.reserveContents();
    }

    /** Draws the list of contents onto an earlier page, from 1. */
    public void contentsOnto(int page, Consumer<Canvas> drawing) {
        document.contentsOnto(page - 1, drawing);
    }

    /** Lets a box of a page lead to another page, both from 1. */
    public void link(int page, Box box, int target) {
        document.link(page - 1, box, target - 1);
    }

    /** Puts a JSON file inside the document, as the data of what it shows. */
    public void attach(String name, String says, String json) {
        document.attach(name, says, json);
    }

    /** Left edge of the text column, points. */
    public double left() {
        return MARGINS.left();
    }

    /** Where the next block's top will be, points. */
    public double top() {
        return top;
    }

    /** The page that is open, from 1. */
    public int page() {
        return document.pageCount();
    }

    /**
     * Sets heads and feet and gives the document's bytes.
     *
     * @param head on all pages but the first
     * @param foot on all
     */
    public byte[] finish(String head, String foot) {
        settle(0);
        return document.finish(MARGINS, head, foot);
    }

    @Override
    public void close() {
        document.close();
    }
}
