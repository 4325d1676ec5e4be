package coldseam.junctions.hand;

import coldseam.conduction.Coupling;
import coldseam.conduction.GapPlaces;
import coldseam.conduction.Interval;
import coldseam.conduction.Outcome;
import coldseam.conduction.Point;
import coldseam.conduction.Solution;
import coldseam.conduction.SurfaceTemperature;
import coldseam.files.JsonText;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;

/** A solved section as JSON. */
public final class SectionJson {

    private SectionJson() {}

    /** Bounds are null where the value is infinite, and the width says why. */
    private record CouplingValue(
            ImmutableList<String> between, Object lower, Object upper, String unit, boolean asNarrowAsAsked) {}

    private record FlowValue(String environment, Object lower, Object upper, String unit) {}

    private record Width(double asked, Object got, Optional<String> why, Optional<ImmutableList<Double>> at) {}

    private record Surface(
            String environment, double lowestTemperature, ImmutableList<Double> at, double temperatureFactor) {}

    private record ProbeValue(String name, double temperature) {}

    private record Gap(double total, String unit, ImmutableList<GapPlace> largestShares) {}

    private record GapPlace(double share, ImmutableList<Double> aroundCorner, double meanDistance) {}

    private record Document(
            String section,
            ImmutableList<CouplingValue> couplings,
            ImmutableList<FlowValue> heatFlows,
            ImmutableList<Surface> surfaces,
            ImmutableList<ProbeValue> probes,
            Width width,
            Gap gap,
            int unknowns,
            double seconds,
            ImmutableList<String> notes) {}

    private static final int MOST_PLACES = 10;

    /**
     * The solution of a section file: couplings W/(m·K) (axisymmetric: W/K), flows W/m (W), temperatures °C, places in the
     * file's unit. A coupling is as narrow as asked where its own interval is, not only the total's. The gap is the width of
     * the total coupling's interval, with the corners of the drawing that most of it lies around; no corners where it is
     * rounding alone. Where a coupling is infinite its bounds are null, and so are those of the flows it feeds; {@code width}
     * says why.
     *
     * @param unit m, of the file's coordinates
     */
    public static String write(Solution solution, double unit) {
        ImmutableList<Coupling> wide = solution.widerThanAsked();
        return JsonText.write(new Document(
                solution.section().name(),
                solution.couplings()
                        .collect(each -> new CouplingValue(
                                Lists.immutable.of(each.first(), each.second()),
                                lower(each.value()),
                                upper(each.value()),
                                solution.couplingUnit(),
                                !wide.contains(each))),
                solution.heatFlows()
                        .collect(each -> new FlowValue(
                                each.environment(), lower(each.value()), upper(each.value()), solution.flowUnit())),
                solution.surfaces().collect(each -> surface(solution, each, unit)),
                solution.probes().collect(each -> new ProbeValue(each.name(), each.temperature())),
                width(solution.outcome(), unit),
                gap(solution, unit),
                solution.unknowns(),
                solution.seconds(),
                solution.notes()));
    }

    private static Width width(Outcome outcome, double unit) {
        return new Width(
                outcome.asked(),
                JsonText.orNull(outcome.got()),
                outcome.why(),
                outcome.at().map(at -> place(at, unit)));
    }

    private static Object lower(Interval value) {
        return JsonText.orNull(Double.isFinite(value.upper()) ? value.lower() : Double.NaN);
    }

    private static Object upper(Interval value) {
        return JsonText.orNull(Double.isFinite(value.lower()) ? value.upper() : Double.NaN);
    }

    private static Gap gap(Solution solution, double unit) {
        return new Gap(
                GapPlaces.total(solution.field()),
                solution.couplingUnit(),
                GapPlaces.of(solution, MOST_PLACES)
                        .collect(each ->
                                new GapPlace(each.share(), place(each.at(), unit), rounded(each.distance() / unit))));
    }

    /** The temperature factor counts from the coldest environment to the one the surface faces. */
    private static Surface surface(Solution solution, SurfaceTemperature<Point> surface, double unit) {
        double coldest = solution.section()
                .environments()
                .collectDouble(each -> each.temperature())
                .min();
        double warmest = solution.section()
                .environments()
                .collectDouble(each -> each.temperature())
                .max();
        double factor = warmest > coldest ? (surface.lowest() - coldest) / (warmest - coldest) : 1;
        return new Surface(surface.environment(), surface.lowest(), place(surface.at(), unit), factor);
    }

    private static ImmutableList<Double> place(Point at, double unit) {
        // Twelve digits undo the rounding of the unit's conversion, so that 380 mm is not 379.99999999999994.
        return Lists.immutable.of(rounded(at.x() / unit), rounded(at.y() / unit));
    }

    private static double rounded(double value) {
        return new java.math.BigDecimal(value)
                .round(new java.math.MathContext(12))
                .doubleValue();
    }
}
