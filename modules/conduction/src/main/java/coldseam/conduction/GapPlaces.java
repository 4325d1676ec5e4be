package coldseam.conduction;

import java.util.Comparator;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

/**
 * Where the width of a solution's interval comes from: every triangle's share of the gap, gathered at the corner of the
 * drawing nearest to it.
 */
public final class GapPlaces {

    /** A gap this small beside the coupling is rounding alone, wherever it sits. */
    private static final double ROUNDING = 1e-12;

    /** A smaller share is not worth a line. */
    private static final double LEAST = 1e-3;

    private GapPlaces() {}

    /**
     * A corner of the drawing and the gap around it.
     *
     * @param at the corner, m
     * @param share of the gap that is nearer to it than to any other corner, 0 to 1
     * @param distance of that share from the corner on average, m
     */
    public record Place(Point at, double share, double distance) {}

    /** The sum over all triangles: the total coupling's width but for rounding; W/(m·K), or W/K if axisymmetric. */
    public static double total(TemperatureField field) {
        return field.cells().sumOfDouble(TemperatureField.Cell::error);
    }

    /**
     * The corners with the most of the gap around them, most first; none where the interval is as wide as rounding alone
     * makes it.
     *
     * @param most how many at most; corners with less than a thousandth of the gap are left out
     */
    public static ImmutableList<Place> of(Solution solution, int most) {
        double size = solution.couplings()
                .collectDouble(coupling -> coupling.value().lower())
                .sum();
        double total = total(solution.field());
        if (!(total > ROUNDING * size)) {
            return Lists.immutable.empty();
        }
        ImmutableList<Point> corners = corners(solution.section());
        double[] sum = new double[corners.size()];
        double[] away = new double[corners.size()];
        for (TemperatureField.Cell cell : solution.field().cells()) {
            double x = (cell.a().x() + cell.b().x() + cell.c().x()) / 3;
            double y = (cell.a().y() + cell.b().y() + cell.c().y()) / 3;
            int nearest = 0;
            double least = Double.POSITIVE_INFINITY;
            for (int i = 0; i < corners.size(); i++) {
                double distance =
                        Math.hypot(corners.get(i).x() - x, corners.get(i).y() - y);
                if (distance < least) {
                    least = distance;
                    nearest = i;
                }
            }
            sum[nearest] += cell.error();
            away[nearest] += cell.error() * least;
        }
        MutableList<Place> places = Lists.mutable.empty();
        for (int i = 0; i < sum.length; i++) {
            if (sum[i] >= LEAST * total) {
                places.add(new Place(corners.get(i), sum[i] / total, away[i] / sum[i]));
            }
        }
        return places.sortThis(Comparator.comparingDouble(place -> -place.share()))
                .take(most)
                .toImmutable();
    }

    private static ImmutableList<Point> corners(Section section) {
        MutableList<Point> all = Lists.mutable.empty();
        section.regions().forEach(region -> all.addAllIterable(region.outline().corners()));
        section.boundaries().forEach(boundary -> all.addAllIterable(boundary.path()));
        return all.distinct().toImmutable();
    }
}
