package coldseam.junctions.hand;

import coldseam.conduction.Coupling;
import coldseam.conduction.Environment;
import coldseam.conduction.GapPlaces;
import coldseam.conduction.Interval;
import coldseam.conduction.Outcome;
import coldseam.conduction.Point;
import coldseam.conduction.Solution;
import coldseam.conduction.Solved;
import coldseam.conduction.solid.BodyEnvironment;
import coldseam.conduction.solid.BodySolution;
import coldseam.files.JsonText;
import java.util.Optional;
import java.util.function.Function;
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

    private record PatchValue(String name, double lower, double upper, String unit, double area) {}

    private record TermValue(String what, double lower, double upper) {}

    private record ChiValue(double lower, double upper, String unit, ImmutableList<TermValue> sumOf) {}

    private record Document(
            String section,
            ImmutableList<CouplingValue> couplings,
            ImmutableList<FlowValue> heatFlows,
            ImmutableList<Surface> surfaces,
            ImmutableList<ProbeValue> probes,
            Optional<ImmutableList<PatchValue>> patches,
            Optional<ChiValue> chi,
            Width width,
            Optional<Gap> gap,
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
        return document(
                solution.section().name(),
                solution,
                solution.section().environments().collect(Environment::temperature),
                at -> place(at, unit),
                unit,
                Optional.empty(),
                Optional.empty(),
                Optional.of(gap(solution, unit)));
    }

    /**
     * The solution of a drawing in three dimensions: couplings W/K, flows W, temperatures °C, places of three numbers in the
     * file's unit, areas m².
     *
     * @param chi what the corner or the point adds
     */
    public static String write(BodySolution solution, double unit, Optional<DrawnChi.Sum> chi) {
        return document(
                solution.body().name(),
                solution,
                solution.body().environments().collect(BodyEnvironment::temperature),
                at -> Lists.immutable.of(rounded(at.x() / unit), rounded(at.y() / unit), rounded(at.z() / unit)),
                unit,
                Optional.of(solution.patches()
                        .collect(each -> new PatchValue(
                                each.name(), each.mean().lower(), each.mean().upper(), "°C", rounded(each.area())))),
                chi.map(each -> new ChiValue(
                        each.chi().lower(),
                        each.chi().upper(),
                        solution.couplingUnit(),
                        each.terms()
                                .collect(term -> new TermValue(
                                        term.what(),
                                        term.value().lower(),
                                        term.value().upper())))),
                Optional.empty());
    }

    private static <P> String document(
            String name,
            Solved<P> solution,
            ImmutableList<Double> temperatures,
            Function<P, ImmutableList<Double>> place,
            double unit,
            Optional<ImmutableList<PatchValue>> patches,
            Optional<ChiValue> chi,
            Optional<Gap> gap) {
        ImmutableList<Coupling> wide = solution.widerThanAsked();
        return JsonText.write(new Document(
                name,
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
                solution.surfaces()
                        .collect(each -> new Surface(
                                each.environment(),
                                each.lowest(),
                                place.apply(each.at()),
                                factor(each.lowest(), temperatures))),
                solution.probes().collect(each -> new ProbeValue(each.name(), each.temperature())),
                patches,
                chi,
                width(solution.outcome(), unit),
                gap,
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

    /** The temperature factor counts from the coldest environment to the warmest. */
    private static double factor(double lowest, ImmutableList<Double> temperatures) {
        double coldest = temperatures.min();
        double warmest = temperatures.max();
        return warmest > coldest ? (lowest - coldest) / (warmest - coldest) : 1;
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
