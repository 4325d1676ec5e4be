package coldseam.report.pdf;

import coldseam.report.drawing.Box;
import coldseam.report.drawing.Canvas;
import coldseam.report.drawing.Ink;
import coldseam.report.drawing.Tag;
import java.util.function.BiConsumer;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;

/** The blocks pages are made of. */
public final class Blocks {

    private Blocks() {}

    /** Empty space. */
    public static Block space(double height) {
        return drawing(height, (canvas, box) -> {});
    }

    /** A paragraph. */
    public static Block text(Rich text, Style style) {
        return new Paragraph(text, style, 0, "");
    }

    /** A paragraph. */
    public static Block text(String text, Style style) {
        return text(Rich.of(text), style);
    }

    /** A paragraph hanging from a mark, such as "–" or "3.". */
    public static Block item(String mark, Rich text, Style style) {
        return new Paragraph(text, style, 1.5 * style.type().size(), mark);
    }

    /**
     * A drawing of a fixed height that says something.
     *
     * @param alternative what it shows, in words
     */
    public static Block drawing(double height, String alternative, BiConsumer<Canvas, Box> painter) {
        return drawing(
                height, (canvas, box) -> canvas.tagged(Tag.FIGURE, alternative, () -> painter.accept(canvas, box)));
    }

    /**
     * A drawing of a fixed height that depends on nothing drawn before and leaves nothing behind but itself.
     *
     * @param alternative what it shows, in words
     * @param question all that decides what the painter draws, beside the box
     * @param painter may draw while what follows is set, or not at all where an earlier run drew the same
     */
    public static Block figure(double height, String alternative, Record question, BiConsumer<Canvas, Box> painter) {
        return drawing(
                height,
                (canvas, box) -> canvas.figure(alternative, new InBox(question, box), own -> painter.accept(own, box)));
    }

    private record InBox(Record question, Box box) {}

    /** A decoration of a fixed height. */
    public static Block drawing(double height, BiConsumer<Canvas, Box> painter) {
        return new Block() {
            @Override
            public double height(double width) {
                return height;
            }

            @Override
            public void draw(Canvas canvas, double left, double top, double width) {
                painter.accept(canvas, new Box(left, top - height, left + width, top));
            }
        };
    }

    /** Blocks below one another. */
    public static Block stack(ImmutableList<Block> blocks, double gap) {
        return new Stack(blocks, gap);
    }

    /** Blocks below one another. */
    public static Block stack(double gap, Block... blocks) {
        return new Stack(Lists.immutable.of(blocks), gap);
    }

    /**
     * Blocks beside one another.
     *
     * @param shares of the width, one for each block
     */
    public static Block beside(double gap, ImmutableList<Double> shares, Block... blocks) {
        return new Beside(gap, shares, Lists.immutable.of(blocks));
    }

    /** A block on a tinted ground, with a bar at its left in the accent. */
    public static Block panel(Block inside, Ink ground, Ink accent) {
        return new Panel(inside, ground, accent);
    }

    /** Text that wraps; a mark hangs before it where there is an indent. */
    record Paragraph(Rich text, Style style, double indent, String mark) implements Block {

        ImmutableList<Lines.Line> lines(double width) {
            return Lines.wrap(text, style, width - indent);
        }

        @Override
        public double height(double width) {
            return lines(width).size() * style.leading();
        }

        @Override
        public void draw(Canvas canvas, double left, double top, double width) {
            draw(canvas, left, top, width, lines(width), true);
        }

        void draw(
                Canvas canvas,
                double left,
                double top,
                double width,
                ImmutableList<Lines.Line> lines,
                boolean withMark) {
            canvas.tagged(tag(style), "", () -> {
                double baseline = top - baselineOf(style);
                if (withMark && !mark.isEmpty()) {
                    canvas.text(mark, left, baseline, style.type(), coldseam.report.drawing.Align.LEFT);
                }
                for (Lines.Line line : lines) {
                    line.draw(canvas, left + indent, left + width, baseline, style.align(), line != lines.getLast());
                    baseline -= style.leading();
                }
            });
        }

        private static Tag tag(Style style) {
            if (style.equals(Style.TITLE)) {
                return Tag.TITLE;
            }
            if (style.equals(Style.SECTION)) {
                return Tag.HEADING;
            }
            return style.equals(Style.SUBSECTION) ? Tag.SUBHEADING : Tag.PARAGRAPH;
        }
    }

    /** From a line's top to its baseline: the leading shared out around capitals. */
    static double baselineOf(Style style) {
        return (style.leading() + 0.66 * style.type().size()) / 2;
    }

    private record Stack(ImmutableList<Block> blocks, double gap) implements Block, Sequence {
        @Override
        public double height(double width) {
            return blocks.sumOfDouble(block -> block.height(width)) + gap * Math.max(0, blocks.size() - 1);
        }

        @Override
        public void draw(Canvas canvas, double left, double top, double width) {
            double y = top;
            for (Block block : blocks) {
                block.draw(canvas, left, y, width);
                y -= block.height(width) + gap;
            }
        }
    }

    /** A block that may be set as its parts, one after the other, where it does not fit a page as a whole. */
    interface Sequence {
        ImmutableList<Block> blocks();

        /** Points between them. */
        double gap();
    }

    private record Beside(double gap, ImmutableList<Double> shares, ImmutableList<Block> blocks)
            implements Block, Sequence {
        private double column(double width, int i) {
            return (width - gap * (blocks.size() - 1)) * shares.get(i);
        }

        @Override
        public double height(double width) {
            double most = 0;
            for (int i = 0; i < blocks.size(); i++) {
                most = Math.max(most, blocks.get(i).height(column(width, i)));
            }
            return most;
        }

        @Override
        public void draw(Canvas canvas, double left, double top, double width) {
            double x = left;
            for (int i = 0; i < blocks.size(); i++) {
                blocks.get(i).draw(canvas, x, top, column(width, i));
                x += column(width, i) + gap;
            }
        }
    }

    private record Panel(Block inside, Ink ground, Ink accent) implements Block, Sequence {
        private static final double PADDING = 9;
        private static final double BAR = 3;

        @Override
        public ImmutableList<Block> blocks() {
            return Lists.immutable.of(inside);
        }

        @Override
        public double gap() {
            return 0;
        }

        @Override
        public double height(double width) {
            return inside.height(width - 2 * PADDING - BAR) + 2 * PADDING;
        }

        @Override
        public void draw(Canvas canvas, double left, double top, double width) {
            double bottom = top - height(width);
            canvas.fill(new Box(left, bottom, left + width, top).corners(), ground);
            canvas.fill(new Box(left, bottom, left + BAR, top).corners(), accent);
            inside.draw(canvas, left + BAR + PADDING, top - PADDING, width - 2 * PADDING - BAR);
        }
    }

    /** A table that is not to run over pages. */
    public static Block table(Table table) {
        return new TableSetter(table);
    }
}
