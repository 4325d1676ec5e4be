package coldseam.report.section;

import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.UnitSystem;
import coldseam.report.drawing.Align;
import coldseam.report.drawing.Box;
import coldseam.report.drawing.Canvas;
import coldseam.report.drawing.Look;
import coldseam.report.drawing.Palette;
import coldseam.report.drawing.Pen;
import coldseam.report.drawing.Spot;
import coldseam.report.drawing.Type;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;

/** Chains of layer thicknesses along the cuts. */
record Dimensions(PaintedParts parts, View view, UnitSystem system, Occupied occupied) {

    private static final double OFFSET = 9;
    private static final double LONGEST = 1.6;

    /** Layers thinner than this, m, have no dimension of their own. */
    private static final double FOIL = 0.0011;

    private static final Type TYPE = Type.of(6.4).with(Palette.SLATE);
    private static final Pen PEN = Pen.of(0.35, Palette.SLATE);

    void draw(Canvas canvas, ImmutableList<CutLines.Cut> cuts) {
        Set<String> drawn = new HashSet<>();
        for (CutLines.Cut cut : cuts) {
            ImmutableList<CutLines.Layer> layers = measured(cut);
            if (layers.isEmpty() || !cut.square()) {
                continue;
            }
            double total = layers.getLast().to() - layers.getFirst().from();
            String key =
                    layers.collect(l -> Math.round((l.to() - l.from()) * 1e4)).makeString();
            // The same chain backwards is the same chain.
            String back = layers.toReversed()
                    .collect(l -> Math.round((l.to() - l.from()) * 1e4))
                    .makeString();
            if (total < LONGEST && drawn.add(key) && (key.equals(back) || drawn.add(back))) {
                chain(canvas, cut, layers);
            }
        }
    }

    /** The layers that are cut whole, without ground; foils go with the layer they lie on. */
    private ImmutableList<CutLines.Layer> measured(CutLines.Cut cut) {
        List<CutLines.Layer> out = new ArrayList<>();
        for (CutLines.Layer layer : cut.layers()) {
            if (parts.parts().get(layer.part()).look() == Look.GROUND || !layer.whole()) {
                if (!out.isEmpty()) {
                    break;
                }
                continue;
            }
            CutLines.Layer last = out.isEmpty() ? null : out.get(out.size() - 1);
            if (last != null && (layer.thickness() < FOIL || last.thickness() < FOIL)) {
                out.set(
                        out.size() - 1,
                        new CutLines.Layer(
                                layer.thickness() < FOIL ? last.part() : layer.part(), last.from(), layer.to(), true));
            } else {
                out.add(layer);
            }
        }
        return Lists.immutable.ofAll(out);
    }

    private void chain(Canvas canvas, CutLines.Cut cut, ImmutableList<CutLines.Layer> layers) {
        double first = layers.getFirst().from();
        double last = layers.getLast().to();
        line(canvas, cut, first, last, OFFSET);
        tick(canvas, cut, first, OFFSET);
        double free = Double.NEGATIVE_INFINITY;
        double deepest = 0;
        for (CutLines.Layer layer : layers) {
            tick(canvas, cut, layer.to(), OFFSET);
            double k = view.scale().pointsPerMetre();
            String text = text(layer.to() - layer.from());
            double middle = (layer.from() + layer.to()) / 2 * k;
            double room = (layer.to() - layer.from()) * k;
            double need = canvas.metrics().width(text, TYPE) + 2;
            if (room >= need) {
                number(canvas, cut, middle, OFFSET, text, false);
                free = Math.max(free, middle + need / 2);
            } else {
                // Too narrow to write along it: write across it, pushed on where the neighbour is too close.
                double at = Math.max(middle, free + 4);
                number(canvas, cut, at, OFFSET, text, true);
                deepest = Math.max(deepest, canvas.metrics().width(text, TYPE));
                free = at + 3.6;
            }
        }
        if (layers.size() > 1) {
            double off = OFFSET + Math.max(13, deepest + 6);
            line(canvas, cut, first, last, off);
            tick(canvas, cut, first, off);
            tick(canvas, cut, last, off);
            number(canvas, cut, (first + last) / 2 * view.scale().pointsPerMetre(), off, text(last - first), false);
        }
    }

    private String text(double metres) {
        // On paper half a millimetre cannot be told apart; thin boards keep theirs. Tenths first: no rounding error
        // decides a half.
        long tenths = Math.round(metres * 10_000);
        int step = metres < 0.03 ? 5 : 10;
        double shown = system == UnitSystem.US ? metres : (tenths + step / 2) / step * step / 10_000.0;
        return system.format(shown, Dimension.THICKNESS).replace(" mm", "").replace(" in", "");
    }

    private Spot spot(CutLines.Cut cut, double points, double off) {
        return view.at(cut.origin()).plus(points * cut.dx() + off * cut.outX(), points * cut.dy() + off * cut.outY());
    }

    private void line(Canvas canvas, CutLines.Cut cut, double from, double to, double off) {
        double k = view.scale().pointsPerMetre();
        Spot a = spot(cut, from * k - 2, off);
        Spot b = spot(cut, to * k + 2, off);
        canvas.line(a, b, PEN);
        occupied.take(Box.around(Lists.immutable.of(a, b)).grown(2));
    }

    private void tick(Canvas canvas, CutLines.Cut cut, double at, double off) {
        Spot middle = spot(cut, at * view.scale().pointsPerMetre(), off);
        double tx = (cut.dx() + cut.outX()) * 1.8;
        double ty = (cut.dy() + cut.outY()) * 1.8;
        canvas.line(middle.plus(-tx, -ty), middle.plus(tx, ty), Pen.of(0.7, Palette.SLATE));
    }

    private void number(Canvas canvas, CutLines.Cut cut, double points, double off, String text, boolean across) {
        double angle = Math.toDegrees(Math.atan2(cut.dy(), cut.dx())) + (across ? 90 : 0);
        while (angle > 90 + 1e-9) {
            angle -= 180;
        }
        while (angle <= -90 + 1e-9) {
            angle += 180;
        }
        double radians = Math.toRadians(angle);
        double width = canvas.metrics().width(text, TYPE);
        // Along: just beyond the line. Across: starting beyond it.
        double beyond = across ? width / 2 + 2.5 : 1.6 + 0.33 * TYPE.size();
        Spot middle = spot(cut, points, off + beyond);
        Spot base = middle.plus(Math.sin(radians) * 0.33 * TYPE.size(), -Math.cos(radians) * 0.33 * TYPE.size());
        canvas.text(text, base, TYPE, Align.CENTRE, angle);
        double half = Math.max(3, width / 2);
        boolean level = Math.abs(Math.cos(radians)) > 0.5;
        occupied.take(Box.about(middle, level ? half : 3, level ? 3 : half));
    }
}
