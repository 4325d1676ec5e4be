package coldseam.report.section;

import coldseam.conduction.Point;
import coldseam.report.drawing.Box;
import coldseam.report.drawing.Look;
import coldseam.report.drawing.Spot;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;

/** Chooses which window of a section is shown, and at which scale. */
final class Crop {

    /** How far from the coldest point what must be seen may reach, m. */
    private static final double REACH = 0.9;

    /** How much of each surface must be seen beyond what must be seen, m. */
    private static final double BEYOND = 0.16;

    /** From where on a coldest point counts as lying in a plain surface, m from the nearest joint. */
    private static final double PLAIN = 0.35;

    /** How far from what is shown what a detail draws besides what conducts (cappings, trims, gutters) is to be seen, m. */
    private static final double TOLD = 1.1;

    /** How much of the page is left around that, m. */
    private static final double BESIDE = 0.06;

    /** Joints so near the focus, and what lies so near to what is wanted, are to be seen, m. */
    private static final double HEART = 0.3;

    /** A section's end that is longer lies in the ground and is no surface's, m. */
    private static final double THICK = 0.7;

    /** Ends as level or as upright as this are, m. */
    private static final double LEVEL = 1e-3;

    /** Air around the section, m. */
    private static final double AIR = 0.3;

    /** Points of the section that are rather shown than cut off. */
    private static final double SLIVER = 24;

    /** Where the surfaces' inner faces meet, from which a section counts. */
    private static final Point MEETING = new Point(0, 0);

    private Crop() {}

    /** The view of a picture in a room on paper. */
    static View view(SectionPicture picture, PaintedParts parts, Box room) {
        Box core = core(picture, parts);
        Scale scale = Scale.fitting(picture.system(), core.width(), core.height(), room.width(), room.height());
        Box solid = solid(parts);
        double k = scale.pointsPerMetre();
        double[] x = span(core.x0(), core.x1(), solid.x0(), solid.x1(), room.width() / k, SLIVER / k);
        double[] y = span(core.y0(), core.y1(), solid.y0(), solid.y1(), room.height() / k, SLIVER / k);
        Box window = new Box(x[0], y[0], x[1], y[1]);
        double w = window.width() * k;
        double h = window.height() * k;
        return new View(window, Box.about(new Spot(room.middleX(), room.middleY()), w / 2, h / 2), scale);
    }

    /** Moves a rim out to the section's own end where only a sliver would be left away. */
    private static double whole(double rim, double end, double sliver) {
        double left = (end - rim) * Math.signum(sliver);
        return left > 0 && left < Math.abs(sliver) ? end + sliver / 10 : rim;
    }

    /** The core grown to the length there is, but not beyond the section. */
    private static double[] span(
            double from, double to, double solidFrom, double solidTo, double length, double sliver) {
        double least = solidFrom - AIR;
        double most = solidTo + AIR;
        double a = Math.max(from, least);
        double b = Math.min(to, most);
        double spare = Math.max(0, length - (b - a));
        double below = Math.min(spare / 2, a - least);
        double above = Math.min(spare - below, most - b);
        below = Math.min(spare - above, a - least);
        return new double[] {whole(a - below, solidFrom, -sliver), whole(b + above, solidTo, sliver)};
    }

    private static Box core(SectionPicture picture, PaintedParts parts) {
        Box bounds = solid(parts).grown(0.04);
        if (picture.wanted().notEmpty()) {
            return picture.wanted()
                    .collect(place -> about(place, 0))
                    .reduce(Box::joinedWith)
                    .orElseThrow()
                    .grown(HEART)
                    .cutWith(bounds);
        }
        if (picture.penLine().isEmpty()) {
            return bounds;
        }
        ImmutableList<Point> joints = joints(picture, parts);
        Point focus = focus(picture.coldest().orElseThrow().at(), joints);
        ImmutableList<Point> wanted = Lists.immutable
                .of(focus)
                .newWithAll(joints.select(p -> p.distance(focus) < HEART))
                .newWithAll(picture.weakestPath().orElseThrow().path())
                .newWithAll(picture.penLine().orElseThrow().neckAt());
        Box near = about(focus, REACH);
        Box core = about(focus, 0);
        for (Point p : wanted.select(p -> near.contains(p.x(), p.y()))) {
            core = core.joinedWith(about(p, 0));
        }
        Box window = core.grown(BEYOND + 0.5 * Math.max(core.width(), core.height()));
        window = toldNear(focus, picture, parts, window);
        // A board that runs far along a surface takes the coldest point with it: what is built is where the surfaces
        // meet.
        Optional<Point> seam = joints.minByOptional(joint -> joint.distance(MEETING));
        if (seam.isPresent() && !window.contains(seam.get().x(), seam.get().y())) {
            for (Point p : joints.select(p -> p.distance(seam.get()) < HEART)) {
                window = window.joinedWith(about(p, BEYOND));
            }
            window = toldNear(seam.get(), picture, parts, window);
        }
        return surfaces(picture, ownNear(focus, picture, parts, window)).cutWith(bounds);
    }

    /** A window with the nearest of what a detail adds to the surfaces' layers, where none of it is in it: that is what it is about. */
    private static Box ownNear(Point place, SectionPicture picture, PaintedParts parts, Box window) {
        ImmutableList<ImmutableList<Point>> own = picture.own()
                .collect(parts.parts()::get)
                .reject(part -> part.look() == Look.AIR || part.look() == Look.GROUND)
                .collect(part -> part.outline().corners());
        if (own.anySatisfy(part -> part.anySatisfy(p -> window.contains(p.x(), p.y())))) {
            return window;
        }
        return own.minByOptional(
                        part -> part.collectDouble(p -> p.distance(place)).min())
                .map(part -> part.collect(p -> about(p, BEYOND)).injectInto(window, Box::joinedWith))
                .orElse(window);
    }

    /** A window with every upright or level surface across its thickness, and some of what runs away from either face. */
    private static Box surfaces(SectionPicture picture, Box window) {
        return picture.ends().select(end -> end.length() < THICK).injectInto(window, (shown, end) -> {
            Point a = end.from();
            Point b = end.to();
            if (Math.abs(a.y() - b.y()) < LEVEL) {
                return shown.joinedWith(new Box(
                        Math.min(a.x(), b.x()) - BEYOND, shown.y0(), Math.max(a.x(), b.x()) + BEYOND, shown.y1()));
            }
            return Math.abs(a.x() - b.x()) < LEVEL
                    ? shown.joinedWith(new Box(
                            shown.x0(), Math.min(a.y(), b.y()) - BEYOND, shown.x1(), Math.max(a.y(), b.y()) + BEYOND))
                    : shown;
        });
    }

    private static Box about(Point place, double reach) {
        return Box.about(new Spot(place.x(), place.y()), reach, reach);
    }

    /** A window with what a detail draws besides what conducts near a place. */
    private static Box toldNear(Point place, SectionPicture picture, PaintedParts parts, Box window) {
        return told(picture, parts)
                .select(p -> p.distance(place) < TOLD)
                .collect(p -> about(p, BESIDE))
                .injectInto(window, Box::joinedWith);
    }

    /** Corners of what a detail draws besides what conducts, but for the soil, which goes on. */
    private static ImmutableList<Point> told(SectionPicture picture, PaintedParts parts) {
        return picture.own()
                .collect(parts.parts()::get)
                .reject(part -> part.solved() || part.look() == Look.AIR || part.look() == Look.GROUND)
                .flatCollect(part -> part.outline().corners());
    }

    /**
     * The coldest point; where it lies in a plain surface, far from where the layers meet (the floor behind it may be what
     * keeps the junction warm), the joint nearest to the surfaces' meeting instead, so that the junction itself is what is seen.
     */
    private static Point focus(Point coldest, ImmutableList<Point> joints) {
        return joints.noneSatisfy(joint -> coldest.distance(joint) <= PLAIN)
                ? joints.minByOptional(joint -> joint.distance(MEETING)).orElse(coldest)
                : coldest;
    }

    /**
     * Corners of painted parts inside the section: where its layers change, which they do not at its ends. Soil has corners of
     * its own far out.
     */
    private static ImmutableList<Point> joints(SectionPicture picture, PaintedParts parts) {
        Box within = solid(parts).grown(-1e-3);
        return parts.parts()
                .reject(part -> part.look() == Look.AIR || part.look() == Look.GROUND)
                .flatCollect(part -> part.outline().corners())
                .select(corner -> within.contains(corner.x(), corner.y()))
                .reject(corner -> picture.ends().anySatisfy(end -> end.aligned(corner)));
    }

    /** Everything that is painted. */
    private static Box solid(PaintedParts parts) {
        ImmutableList<PaintedPart> solid = parts.parts().reject(part -> part.look() == Look.AIR);
        return (solid.isEmpty() ? parts.parts() : solid)
                .collect(PaintedParts::box)
                .reduce(Box::joinedWith)
                .orElseThrow();
    }
}
