package coldseam.report.drawing;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;

/**
 * Patterns of lines, the same at every scale of a drawing. They hang on the page and not on the area, so that neighbouring
 * areas of one pattern join without a seam.
 */
public enum Hatch {
    NONE {
        @Override
        void draw(Canvas canvas, Box box) {}
    },
    DIAGONALS {
        @Override
        void draw(Canvas canvas, Box box) {
            canvas.strokes(slanted(box, 4.6, 1), THIN);
        }
    },
    STEEP_DIAGONALS {
        @Override
        void draw(Canvas canvas, Box box) {
            canvas.strokes(slanted(box, 4.6, -2), THIN);
        }
    },
    CROSSES {
        @Override
        void draw(Canvas canvas, Box box) {
            canvas.strokes(slanted(box, 8, 1), FAINT);
            canvas.strokes(slanted(box, 8, -1), FAINT);
        }
    },
    WAVES {
        @Override
        void draw(Canvas canvas, Box box) {
            List<ImmutableList<Spot>> lines = new ArrayList<>();
            for (double y = down(box.y0(), 7); y < box.y1() + 7; y += 7) {
                List<Spot> line = new ArrayList<>();
                for (double x = down(box.x0(), 1); x <= box.x1() + 1; x += 1) {
                    line.add(new Spot(x, y + 2.2 * Math.sin(x * 2 * Math.PI / 8)));
                }
                lines.add(Bends.of(Lists.immutable.ofAll(line)));
            }
            canvas.strokes(Lists.immutable.ofAll(lines), FAINT);
        }
    },
    AGGREGATE {
        @Override
        void draw(Canvas canvas, Box box) {
            List<ImmutableList<Spot>> stones = new ArrayList<>();
            cells(box, 7, (x, y, roll) -> {
                double dx = 5 * unit(roll, 1);
                double dy = 5 * unit(roll, 2);
                if (roll % 5 < 2) {
                    double r = 1 + unit(roll, 3);
                    double turn = 2 * Math.PI * unit(roll, 4);
                    List<Spot> stone = new ArrayList<>();
                    for (int i = 0; i <= 3; i++) {
                        double a = turn + i * 2 * Math.PI / 3;
                        stone.add(new Spot(x + dx + r * Math.cos(a), y + dy + r * Math.sin(a)));
                    }
                    stones.add(Lists.immutable.ofAll(stone));
                } else {
                    stones.add(Lists.immutable.of(new Spot(x + dx, y + dy), new Spot(x + dx + 0.5, y + dy)));
                }
            });
            canvas.strokes(Lists.immutable.ofAll(stones), THIN);
        }
    },
    GRAIN {
        @Override
        void draw(Canvas canvas, Box box) {
            grain(canvas, box, 3.2);
        }
    },
    FINE_GRAIN {
        @Override
        void draw(Canvas canvas, Box box) {
            grain(canvas, box, 2.2);
        }
    },
    DOTS {
        @Override
        void draw(Canvas canvas, Box box) {
            List<ImmutableList<Spot>> dots = new ArrayList<>();
            cells(box, 3.2, (x, y, roll) -> {
                double dx = 2.4 * unit(roll, 1);
                double dy = 2.4 * unit(roll, 2);
                dots.add(Lists.immutable.of(new Spot(x + dx, y + dy), new Spot(x + dx + 0.4, y + dy)));
            });
            canvas.strokes(Lists.immutable.ofAll(dots), THIN);
        }
    },
    STROKES {
        @Override
        void draw(Canvas canvas, Box box) {
            List<ImmutableList<Spot>> lines = new ArrayList<>();
            cells(
                    box,
                    9,
                    (x, y, roll) -> lines.add(Lists.immutable.of(new Spot(x + 1, y + 1), new Spot(x + 5, y + 5))));
            canvas.strokes(Lists.immutable.ofAll(lines), THIN);
        }
    },
    TICKS {
        @Override
        void draw(Canvas canvas, Box box) {
            List<ImmutableList<Spot>> lines = new ArrayList<>();
            cells(box, 17, (x, y, roll) -> {
                double dx = 6 * unit(roll, 1);
                double dy = 6 * unit(roll, 2);
                for (int i = 0; i < 3; i++) {
                    lines.add(Lists.immutable.of(
                            new Spot(x + dx + 2.4 * i, y + dy), new Spot(x + dx + 2.4 * i + 4, y + dy + 4)));
                }
            });
            canvas.strokes(Lists.immutable.ofAll(lines), FAINT);
        }
    };

    private static final Pen THIN = Pen.of(0.28, Palette.SLATE.tint(0.25));
    private static final Pen FAINT = Pen.of(0.28, Palette.SLATE.tint(0.45));

    abstract void draw(Canvas canvas, Box box);

    /**
     * Draws the pattern inside an outline.
     *
     * @param within nothing outside is drawn
     */
    public void draw(Canvas canvas, ImmutableList<Spot> outline, Box within) {
        Box box = Box.around(outline).cutWith(within);
        if (this != NONE && !box.empty()) {
            canvas.clipped(outline, () -> draw(canvas, box));
        }
    }

    private interface Cell {
        void at(double x, double y, int roll);
    }

    /** Calls for each cell of a fixed grid over the box, each with a number of its own that is the same every time. */
    private static void cells(Box box, double size, Cell cell) {
        for (double y = down(box.y0(), size); y < box.y1(); y += size) {
            for (double x = down(box.x0(), size); x < box.x1(); x += size) {
                cell.at(x, y, mixed((int) Math.round(x / size), (int) Math.round(y / size)));
            }
        }
    }

    private static int mixed(int i, int j) {
        int h = i * 0x9E3779B1 ^ j * 0x85EBCA6B;
        h ^= h >>> 15;
        h *= 0x2C1B3C6D;
        return (h ^ h >>> 13) & 0x7FFFFFFF;
    }

    private static double unit(int roll, int which) {
        return (mixed(roll, which) & 0xFFFF) / 65536.0;
    }

    private static double down(double value, double step) {
        return Math.floor(value / step) * step;
    }

    private static ImmutableList<ImmutableList<Spot>> slanted(Box box, double spacing, double slope) {
        // Lines y = slope·x + c; spacing is measured across them.
        double step = spacing * Math.hypot(1, slope);
        double low = slope > 0 ? box.y0() - slope * box.x1() : box.y0() - slope * box.x0();
        double high = slope > 0 ? box.y1() - slope * box.x0() : box.y1() - slope * box.x1();
        List<ImmutableList<Spot>> lines = new ArrayList<>();
        for (double c = down(low, step); c <= high; c += step) {
            lines.add(Lists.immutable.of(
                    new Spot(box.x0(), slope * box.x0() + c), new Spot(box.x1(), slope * box.x1() + c)));
        }
        return Lists.immutable.ofAll(lines);
    }

    private static void grain(Canvas canvas, Box box, double spacing) {
        boolean lying = box.width() > box.height();
        double from = lying ? box.y0() : box.x0();
        double to = lying ? box.y1() : box.x1();
        List<ImmutableList<Spot>> lines = new ArrayList<>();
        for (double at = down(from, spacing) + 0.6 * spacing; at < to; at += spacing) {
            lines.add(
                    lying
                            ? Lists.immutable.of(new Spot(box.x0(), at), new Spot(box.x1(), at))
                            : Lists.immutable.of(new Spot(at, box.y0()), new Spot(at, box.y1())));
        }
        canvas.strokes(Lists.immutable.ofAll(lines), FAINT);
    }
}
