package coldseam.report.solid;

import coldseam.conduction.solid.BodySolution;
import coldseam.conduction.solid.Cuboid;
import coldseam.conduction.solid.PaintedBox;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.UnitSystem;
import coldseam.report.drawing.Align;
import coldseam.report.drawing.Box;
import coldseam.report.drawing.Canvas;
import coldseam.report.drawing.Face;
import coldseam.report.drawing.Palette;
import coldseam.report.drawing.Type;
import org.eclipse.collections.api.list.ImmutableList;

/** Three cuts through the coldest place of the warmest environment's surface, and the whole from outside. */
public final class BodyPicture {

    /** Points. */
    public static final double WIDTH = 584;

    private static final double PANEL = 268;
    private static final double ROW = 15;
    private static final double TOP = 34;

    private final BodySolution solution;
    private final Cuboid shown;
    /** m, where the cut at right angles to each direction lies. */
    private final double[] planes;

    private final UnitSystem units;
    private final Palettes palettes;
    private final ImmutableList<Integer> keys;

    /** Of the whole body. */
    public BodyPicture(BodySolution solution, UnitSystem units) {
        this(solution, units, solution.body().extent());
    }

    /**
     * Of a part of a body.
     *
     * @param shown what cuts show, as far as the body reaches
     */
    public BodyPicture(BodySolution solution, UnitSystem units, Cuboid shown) {
        this(
                solution,
                units,
                shown,
                CutDrawing.at(solution, 0),
                CutDrawing.at(solution, 1),
                CutDrawing.at(solution, 2));
    }

    private BodyPicture(BodySolution solution, UnitSystem units, Cuboid shown, double... planes) {
        this.solution = solution;
        this.units = units;
        this.planes = planes;
        this.shown = common(shown, solution.body().extent());
        this.palettes = new Palettes(solution.body());
        this.keys = solution.field()
                .pieces()
                .distinctBy(piece ->
                        palettes.solid(piece).material() + palettes.solid(piece).conductivity());
    }

    private static Cuboid common(Cuboid one, Cuboid other) {
        double[] at = new double[6];
        for (int d = 0; d < 3; d++) {
            at[d] = Math.max(one.low(d), other.low(d));
            at[3 + d] = Math.min(one.high(d), other.high(d));
        }
        return Cuboid.of(at[0], at[1], at[2], at[3], at[4], at[5]);
    }

    /** Points it takes. */
    public double height() {
        return TOP + 2 * (PANEL + 12) + keysHeight(2) + 30;
    }

    /** Draws it, its lower left corner at the origin. */
    public void draw(Canvas canvas) {
        double top = height() - TOP;
        canvas.text(
                solution.body().name(),
                12,
                height() - 18,
                Type.of(12).with(Face.SEMIBOLD).with(Palette.DEEP),
                Align.LEFT);
        double left = 12;
        double right = WIDTH / 2 + 6;
        cut(2).draw(canvas, panel(left, top), palettes);
        cut(1).draw(canvas, panel(right, top), palettes);
        double below = top - PANEL - 12;
        cut(0).draw(canvas, panel(left, below), palettes);
        drawView(canvas, panel(right, below));
        drawKeys(canvas, new Box(12, 0, 12 + WIDTH, below - PANEL - 14), 2);
    }

    /**
     * Draws the whole from outside and one cut beside it, without keys, as large as a box allows; of a part two cuts, one
     * upright and one level.
     */
    public void drawBeside(Canvas canvas, Box box) {
        double middle = box.middleX();
        if (!shown.equals(solution.body().extent())) {
            cut(0).draw(canvas, new Box(box.x0(), box.y0(), middle - 6, box.y1()), palettes);
            cut(2).draw(canvas, new Box(middle + 6, box.y0(), box.x1(), box.y1()), palettes);
            return;
        }
        drawView(canvas, new Box(box.x0(), box.y0(), middle - 6, box.y1()));
        cut(0).draw(canvas, new Box(middle + 6, box.y0(), box.x1(), box.y1()), palettes);
    }

    /** Draws the three cuts side by side, without keys, as large as a box allows. */
    public void drawCuts(Canvas canvas, Box box) {
        for (int i = 0; i < 3; i++) {
            double x = box.x0() + i * box.width() / 3;
            cut(2 - i).draw(canvas, new Box(x, box.y0(), x + box.width() / 3 - 10, box.y1()), palettes);
        }
    }

    /** Points that the key to its materials takes in so many columns. */
    public double keysHeight(int columns) {
        return rows(columns) * ROW;
    }

    private int rows(int columns) {
        return (keys.size() + columns - 1) / columns;
    }

    /** Draws the key to its materials in some columns. */
    public void drawKeys(Canvas canvas, Box box, int columns) {
        double column = box.width() / columns;
        keys.forEachWithIndex((piece, i) -> {
            double x = box.x0() + i / rows(columns) * column;
            double y = box.y1() - ROW * (i % rows(columns)) - 8;
            palettes.of(piece).sample(canvas, new Box(x, y - 5, x + 24, y + 5));
            canvas.text(palettes.solid(piece).material(), x + 30, y - 2.8, Type.of(8), Align.LEFT);
            canvas.text(
                    units.format(palettes.solid(piece).conductivity(), Dimension.CONDUCTIVITY),
                    x + column - 32,
                    y - 2.8,
                    Type.of(8).with(Palette.SLATE),
                    Align.RIGHT);
        });
    }

    /** m, of the surface shown beside what goes through it. */
    private static final double BESIDE = 0.12;

    /**
     * The picture of something that goes through a plane surface, cut off a little past it: along the layer in which most of it
     * is seen, through its middle, and through what stands beside that.
     *
     * @param solution of a body whose layers reach to its far ends sideways
     */
    public static BodyPicture through(BodySolution solution, UnitSystem units) {
        Cuboid whole = solution.body().extent();
        ImmutableList<Cuboid> solids = solution.body()
                .painted()
                .selectInstancesOf(PaintedBox.Solid.class)
                .collect(PaintedBox.Solid::box);
        ImmutableList<Cuboid> pieces = solids.select(each -> each.high(0) < whole.high(0));
        if (pieces.isEmpty()) {
            return new BodyPicture(solution, units);
        }
        double layer = solids.reject(pieces::contains)
                .toSortedListBy(each -> -each.size(2))
                .collect(each -> middle(each, 2))
                .maxBy(at -> CutDrawing.materials(solution, 2, at));
        return new BodyPicture(
                solution,
                units,
                Cuboid.of(
                        whole.low(0),
                        pieces.collectDouble(each -> each.low(1)).min() - BESIDE,
                        whole.low(2),
                        pieces.collectDouble(each -> each.high(0)).max() + BESIDE,
                        pieces.collectDouble(each -> each.high(1)).max() + BESIDE,
                        whole.high(2)),
                0,
                pieces.select(each -> each.low(0) > 0)
                        .collect(each -> middle(each, 1))
                        .maxOptional()
                        .orElse(0.0),
                layer);
    }

    private static double middle(Cuboid box, int direction) {
        return (box.low(direction) + box.high(direction)) / 2;
    }

    private CutDrawing cut(int direction) {
        return new CutDrawing(solution, units, direction, planes[direction], shown);
    }

    private static Box panel(double x, double top) {
        return new Box(x, top - PANEL, x + WIDTH / 2 - 18, top);
    }

    /** Draws the whole from outside with the temperatures of its surfaces, as large as a box allows. */
    public void drawView(Canvas canvas, Box box) {
        Axonometry view = new Axonometry(solution);
        Warmth warmth = view.warmth();
        CutDrawing.title(canvas, box, "temperature of the surfaces");
        view.draw(canvas, new Box(box.x0(), box.y0() + 26, box.x1(), box.y1() - 18), warmth, palettes);
        warmth.draw(canvas, box.x0() + 20, box.y0() + 10, box.width() - 60, units);
    }
}
