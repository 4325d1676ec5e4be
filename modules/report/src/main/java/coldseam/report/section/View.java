package coldseam.report.section;

import coldseam.conduction.Point;
import coldseam.report.drawing.Box;
import coldseam.report.drawing.Spot;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * Where a window of the section lies on the page.
 *
 * @param window of the section, m
 * @param page where it lies, points
 * @param scale of it
 */
record View(Box window, Box page, Scale scale) {

    Spot at(double x, double y) {
        double k = scale.pointsPerMetre();
        return new Spot(page.x0() + (x - window.x0()) * k, page.y0() + (y - window.y0()) * k);
    }

    Spot at(Point point) {
        return at(point.x(), point.y());
    }

    ImmutableList<Spot> at(ImmutableList<Point> points) {
        return points.collect(this::at);
    }

    /** The section's place under a place on the page. */
    Point under(double pageX, double pageY) {
        double k = scale.pointsPerMetre();
        return new Point(window.x0() + (pageX - page.x0()) / k, window.y0() + (pageY - page.y0()) / k);
    }
}
