package coldseam.report.section;

import coldseam.conduction.Environment;
import coldseam.files.quantity.UnitSystem;
import coldseam.report.drawing.Align;
import coldseam.report.drawing.Box;
import coldseam.report.drawing.Canvas;
import coldseam.report.drawing.Look;
import coldseam.report.drawing.Palette;
import coldseam.report.drawing.Pen;
import coldseam.report.drawing.Spot;
import coldseam.report.drawing.Type;
import coldseam.report.section.SectionPicture.Key;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;

/** A section laid out for a given room on paper, ready to draw. */
public final class SectionDrawing {

    /** Room for numbers at the sides and dimensions above and below, points. */
    private static final double SIDE = 40;

    private static final double ENDS = 34;

    /** Likewise, where what is written across a chain has a fraction: "5 15/16". */
    private static final double ENDS_WITH_FRACTIONS = 44;

    /** m; what reaches no farther into the drawing is not seen. */
    private static final double HAIR = 1e-3;

    /** Points; the label of an isotherm is as tall. */
    private static final double SLENDER = 8;

    private static final Pen LINE = Pen.of(0.4, Palette.INK);
    private static final Pen FACE = Pen.of(0.9, Palette.INK);

    private final SectionPicture picture;
    private final PaintedParts parts;
    private final View view;
    private final double width;
    private final double height;
    private final ImmutableList<Key> keys;

    /**
     * Lays a section out.
     *
     * @param width points there are
     * @param height points there are
     */
    public SectionDrawing(SectionPicture picture, double width, double height) {
        this.picture = picture;
        this.parts = picture.painted();
        this.width = width;
        this.height = height;
        double ends = picture.system() == UnitSystem.US ? ENDS_WITH_FRACTIONS : ENDS;
        this.view = Crop.view(picture, parts, new Box(SIDE, ends, width - SIDE, height - ends));
        this.keys = visibleKeys();
    }

    /** Points. */
    public double width() {
        return width;
    }

    /** Points. */
    public double height() {
        return height;
    }

    /** The materials that are seen, with the numbers on the drawing. */
    public ImmutableList<Key> keys() {
        return keys;
    }

    /** The scale as written beside the drawing. */
    public String scale() {
        return view.scale().label();
    }

    /** Points on paper for a metre of the section. */
    double pointsPerMetre() {
        return view.scale().pointsPerMetre();
    }

    /** Draws it into a box of the size it was laid out for. */
    public void draw(Canvas canvas, Box box) {
        View placed = new View(
                view.window(),
                new Box(
                        box.x0() + view.page().x0(),
                        box.y0() + view.page().y0(),
                        box.x0() + view.page().x1(),
                        box.y0() + view.page().y1()),
                view.scale());
        Occupied occupied = new Occupied();
        ImmutableList<CutLines.Cut> cuts = new CutLines(parts, picture.ends(), placed.window()).all();
        PageGrid grid = new PageGrid(parts, placed);
        canvas.clipped(placed.page().corners(), () -> {
            paint(canvas, placed);
            lines(canvas, placed, cuts);
        });
        Isotherms isotherms = new Isotherms(picture, placed, occupied, slender(placed));
        Overlays overlays = new Overlays(picture, placed, occupied);
        overlays.reserve();
        canvas.clipped(placed.page().corners(), () -> {
            isotherms.drawLines(canvas);
            overlays.drawPaths(canvas);
        });
        new Breaks(placed, cuts).draw(canvas);
        new Dimensions(parts, placed, picture.system(), occupied).draw(canvas, cuts);
        new OwnSizes(picture, placed, occupied).draw(canvas);
        Numbers numbers = new Numbers(parts, grid, placed, occupied, keys, box);
        numbers.draw(canvas);
        environments(canvas, grid, placed, occupied);
        isotherms.drawLabels(canvas);
        overlays.drawMarks(canvas);
    }

    /** Metal that is thinner than the label of an isotherm: bolts, arms, tubes, plates. */
    private Occupied slender(View placed) {
        Occupied slender = new Occupied();
        parts.parts().select(part -> part.look() == Look.METAL).forEach(part -> {
            Box box = Box.around(placed.at(part.outline().corners()));
            if (Math.min(box.width(), box.height()) < SLENDER) {
                slender.take(box);
            }
        });
        return slender;
    }

    private void paint(Canvas canvas, View placed) {
        for (PaintedPart part : parts.parts()) {
            Box onWindow = PaintedParts.box(part).cutWith(placed.window());
            if (onWindow.x1() < onWindow.x0() || onWindow.y1() < onWindow.y0()) {
                continue;
            }
            ImmutableList<Spot> outline = placed.at(part.outline().corners());
            canvas.fill(outline, part.look().tint());
            part.look().hatch().draw(canvas, outline, placed.page());
            if (part.look() == Look.MEMBRANE) {
                canvas.outline(outline, Pen.of(0.8, Look.MEMBRANE.tint()));
            }
        }
    }

    private void lines(Canvas canvas, View placed, ImmutableList<CutLines.Cut> cuts) {
        List<ImmutableList<Spot>> inner = new ArrayList<>();
        List<ImmutableList<Spot>> outer = new ArrayList<>();
        for (PaintedParts.Seen edge : parts.seen(placed.window())) {
            boolean cut = cuts.anySatisfy(c -> c.layers().size() > 0
                    && Math.abs((edge.middle().x() - c.origin().x()) * c.outX()
                                    + (edge.middle().y() - c.origin().y()) * c.outY())
                            < 1e-3
                    && Math.abs((edge.to().x() - edge.from().x()) * c.outX()
                                    + (edge.to().y() - edge.from().y()) * c.outY())
                            < 1e-3);
            ImmutableList<Spot> line = Lists.immutable.of(placed.at(edge.from()), placed.at(edge.to()));
            if (!cut) {
                boolean face = open(edge.left()) || open(edge.right());
                (face ? outer : inner).add(line);
            }
        }
        canvas.strokes(Lists.immutable.ofAll(inner), LINE.rounded());
        canvas.strokes(Lists.immutable.ofAll(outer), FACE.rounded());
    }

    private boolean open(int part) {
        return part == PaintedParts.NOTHING || parts.parts().get(part).look() == Look.AIR;
    }

    private void environments(Canvas canvas, PageGrid grid, View placed, Occupied occupied) {
        Type name = Type.of(8.5).with(coldseam.report.drawing.Face.SEMIBOLD).with(Palette.SLATE);
        for (Environment environment : picture.section().environments()) {
            String first = environment.name();
            String second =
                    picture.system().format(environment.temperature(), coldseam.files.quantity.Dimension.TEMPERATURE);
            double w = Math.max(
                    canvas.metrics().width(first, name), canvas.metrics().width(second, name));
            FreeAir.place(grid, picture.section(), environment.name(), placed, occupied, w + 6, 24)
                    .ifPresent(spot -> {
                        occupied.take(new Box(spot.x() - w / 2, spot.y() - 12, spot.x() + w / 2, spot.y() + 12));
                        canvas.text(first, spot.x(), spot.y() + 2, name, Align.CENTRE);
                        canvas.text(
                                second,
                                spot.x(),
                                spot.y() - 9,
                                name.with(coldseam.report.drawing.Face.REGULAR),
                                Align.CENTRE);
                    });
        }
    }

    private ImmutableList<Key> visibleKeys() {
        ImmutableList<PaintedPart> seen =
                parts.visible(view.window().grown(-HAIR)).collect(parts.parts()::get);
        return seen.distinctBy(SectionDrawing::likeness)
                .collectWithIndex((part, i) -> new Key(
                        i + 1,
                        part.material(),
                        part.conductivity(),
                        part.look(),
                        seen.anySatisfy(p -> p.solved() && likeness(p).equals(likeness(part)))));
    }

    private static String likeness(PaintedPart part) {
        return part.material() + "\n" + part.look();
    }
}
