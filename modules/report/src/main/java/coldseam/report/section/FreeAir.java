package coldseam.report.section;

import coldseam.conduction.Boundary;
import coldseam.conduction.Point;
import coldseam.conduction.Section;
import coldseam.report.drawing.Box;
import coldseam.report.drawing.Spot;
import java.util.Optional;

/** Finds room in the air in front of a boundary. */
final class FreeAir {

    private static final double STEP = 6;

    private FreeAir() {}

    /** The place nearest to the environment's boundary where a box of that size covers nothing. */
    static Optional<Spot> place(
            PageGrid grid,
            Section section,
            String environment,
            View view,
            Occupied occupied,
            double width,
            double height) {
        Box page = view.page();
        Spot best = null;
        double least = Double.POSITIVE_INFINITY;
        for (double y = page.y0() + height / 2; y <= page.y1() - height / 2; y += STEP) {
            for (double x = page.x0() + width / 2; x <= page.x1() - width / 2; x += STEP) {
                Box box = new Box(x - width / 2, y - height / 2, x + width / 2, y + height / 2);
                if (!occupied.free(box) || !grid.clear(box)) {
                    continue;
                }
                Point p = view.under(x, y);
                String nearest = "";
                double distance = Double.POSITIVE_INFINITY;
                for (Boundary boundary : section.boundaries()) {
                    double d = boundary.distance(p);
                    if (d < distance) {
                        distance = d;
                        nearest = boundary.environment();
                    }
                }
                // Roomy places look calmer than those hard against the wall.
                double wish = Math.abs(distance * view.scale().pointsPerMetre() - 45);
                if (nearest.equals(environment) && wish < least) {
                    least = wish;
                    best = new Spot(x, y);
                }
            }
        }
        return Optional.ofNullable(best);
    }
}
