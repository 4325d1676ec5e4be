package coldseam.junctions.section;

import coldseam.conduction.Point;
import coldseam.envelope.KindForm;
import coldseam.junctions.DetailDoesNotFit;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.detail.BandDrawing;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.kind.Chart;
import coldseam.junctions.plan.SectionPlan.Fill;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;

/**
 * What a detail paints where two bands cross at a right angle, on its own two lines instead of in a plane: s is the distance
 * outside the first band's inner face, t outside the second's (or from a thing's near face), m. So are bands that go straight on
 * from one another: t is then the way from the seam into the second one.
 *
 * @param second band; empty where the kind has one surface
 * @param thing m, thickness of a thing that crosses the first band; zero where two surfaces meet
 * @param convex whether the rooms fill less than half of it
 * @param pieces in painting order
 * @param ends where it is cut
 * @param notes what was simplified
 */
public record SectionLayout(
        Band first,
        Optional<Band> second,
        double thing,
        boolean convex,
        ImmutableList<Piece> pieces,
        ImmutableList<End> ends,
        ImmutableList<String> notes) {

    /** m; rounding of a place that lies on a side. */
    private static final double SLACK = 1e-7;

    /**
     * A painted rectangle.
     *
     * @param fill what it is
     * @param conductivity W/(m·K); 0 where it is air
     */
    public record Piece(Fill fill, double s0, double s1, double t0, double t1, double conductivity) {}

    /**
     * A side on which the section is cut and the house goes on.
     *
     * @param alongS whether it lies at a value of s
     * @param at that value of s or t, m
     */
    public record End(boolean alongS, double at) {

        /** Whether it lies on the side of growing values. */
        public boolean high() {
            return at > 0;
        }
    }

    /**
     * Lays a detail on the layers of a junction at a right angle.
     *
     * @throws DetailDoesNotFit where the setup lies outside the detail's valid range, the bands do not cross at a right
     *     angle, or something is drawn aslant
     */
    public static SectionLayout of(Detail detail, JunctionSetup setup) {
        if (!(detail.drawing() instanceof BandDrawing drawing)) {
            throw refused(detail, "is drawn by hand, not by bands");
        }
        Scene scene = Scene.of(detail, drawing, setup);
        boolean thing = scene.form().second() == KindForm.Second.THING;
        if (scene.form().framed()) {
            throw refused(detail, "draws no two bands that cross");
        }
        double cosine = scene.chart().firstNormal().dot(scene.chart().secondNormal());
        if (Math.abs(cosine - (scene.chart().crossing() ? 0 : 1)) > 1e-9) {
            throw refused(detail, "draws bands that meet aslant");
        }
        Painter.Picture picture = Painter.paint(scene);
        Composer composer = new Composer(detail, scene, picture);
        return new SectionLayout(
                scene.first(),
                scene.second(),
                thing ? scene.secondOutside() : 0,
                scene.chart().convex(),
                composer.pieces()
                        .reject(each ->
                                each.effect() == Painted.Effect.DRAWN || isAslantInTheAir(each, composer, scene))
                        .collect(each -> piece(detail, scene.chart(), each, composer.outline(each.solved(), 0))),
                Lists.immutable
                        .ofAll(composer.cutDistances().entrySet())
                        .collect(cut -> end(scene.chart(), cut.getKey(), cut.getValue())),
                picture.notes());
    }

    /** The same with its lines this much farther out, m. */
    public SectionLayout moved(double ds, double dt) {
        return new SectionLayout(
                first.moved(ds),
                second.map(each -> each.moved(dt)),
                thing,
                convex,
                pieces.collect(each -> new Piece(
                        each.fill(),
                        each.s0() + ds,
                        each.s1() + ds,
                        each.t0() + dt,
                        each.t1() + dt,
                        each.conductivity())),
                ends.collect(each -> new End(each.alongS(), each.at() + (each.alongS() ? ds : dt))),
                notes);
    }

    private static End end(Chart chart, Chart.Cut cut, double distance) {
        Point at = chart.beside(cut.ofFirst(), 0, cut.sign() * distance);
        if (!chart.crossing()) {
            return new End(false, chart.along(false, at));
        }
        // A band runs along the other's lines.
        return cut.ofFirst() ? new End(false, chart.across(false, at)) : new End(true, chart.across(true, at));
    }

    /** A capping's fall, a flashing: what is only drawn, and aslant, leaves the corner as it is where nothing beneath it conducts. */
    private static boolean isAslantInTheAir(Painted painted, Composer composer, Scene scene) {
        ImmutableList<Point> outline = composer.outline(painted.solved(), 0);
        return painted.effect() == Painted.Effect.REPLACES_BY_AIR
                && isAslant(scene.chart(), outline)
                && composer.pieces()
                        .select(each -> each.effect() == Painted.Effect.CONDUCTS)
                        .collect(each -> Shapes.of(composer.outline(each.solved(), 0)))
                        .noneSatisfy(each ->
                                Shapes.intersection(each, Shapes.of(outline)).getArea() > SLACK);
    }

    private static Piece piece(Detail detail, Chart chart, Painted painted, ImmutableList<Point> outline) {
        ImmutableList<Double> s = outline.collect(each -> chart.across(true, each));
        ImmutableList<Double> t =
                outline.collect(each -> chart.crossing() ? chart.across(false, each) : chart.along(false, each));
        if (isAslant(chart, outline)) {
            throw refused(detail, "draws \"" + painted.what() + "\" aslant");
        }
        return new Piece(
                painted.fill(),
                s.min(),
                s.max(),
                t.min(),
                t.max(),
                painted.effect() == Painted.Effect.CONDUCTS ? painted.conductivity() : 0);
    }

    private static boolean isAslant(Chart chart, ImmutableList<Point> outline) {
        ImmutableList<Double> t =
                outline.collect(each -> chart.crossing() ? chart.across(false, each) : chart.along(false, each));
        // What lies across a seam has corners there besides.
        return outline.size() != 4 && chart.crossing()
                || aslant(outline.collect(each -> chart.across(true, each)))
                || aslant(chart.crossing() ? t : t.reject(each -> Math.abs(each) < SLACK));
    }

    /** Whether the corners of a rectangle lie at more than its two sides. */
    private static boolean aslant(ImmutableList<Double> at) {
        return at.anySatisfy(each -> Math.min(each - at.min(), at.max() - each) > SLACK);
    }

    private static DetailDoesNotFit refused(Detail detail, String why) {
        return DetailDoesNotFit.of(detail.who() + " " + why);
    }
}
