package coldseam.junctions.atlas;

import coldseam.files.Csv;
import coldseam.files.Words;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.Format;
import coldseam.files.quantity.UnitSystem;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;
import org.eclipse.collections.api.list.ImmutableList;

/** An atlas as comma-separated values: one row for each option and thickness, in the units of its head. */
public final class AtlasCsv {

    private AtlasCsv() {}

    private record Row(AtlasCurve curve, AtlasCurve.AtlasPoint point) {

        private String measured(Function<AtlasCurve.Measures, String> cell) {
            return point.measures().map(cell).orElse("");
        }
    }

    /** Of psi. */
    private static final int DECIMALS = 6;

    /** The table with its head. */
    public static String write(ImmutableList<AtlasCurve> curves, UnitSystem units) {
        String narrow = units == UnitSystem.US ? "%.2f" : "%.1f";
        Csv<Row> csv = Csv.in(units);
        return csv.with("kind", row -> row.curve.detail().kind().label())
                .with("option", row -> row.curve.detail().id())
                .with("rank", row -> Words.word(row.curve.detail().rank()))
                .with(
                        "cost",
                        row -> row.curve
                                .detail()
                                .cost()
                                .map(cost -> cost.sourced(units))
                                .orElse(""))
                .with("place", row -> row.curve.sweep().origin())
                .with(
                        "angle °",
                        row -> Format.of("%.1f", row.curve.sweep().setup().angle()))
                .with("surface that changes", row -> row.curve.sweep().surface())
                .with("its assembly", row -> row.curve.sweep().changed().name())
                .with("other assembly", row -> other(row.curve.sweep()))
                .with(
                        csv.head("insulation", Dimension.THICKNESS),
                        row -> Format.of("%.0f", units.value(row.point.thickness(), Dimension.THICKNESS)))
                .and(psi(
                        "psi external lower",
                        RoundingMode.FLOOR,
                        measures -> measures.psiExternal().lower()))
                .and(psi(
                        "psi external upper",
                        RoundingMode.CEILING,
                        measures -> measures.psiExternal().upper()))
                .and(psi(
                        "psi internal lower",
                        RoundingMode.FLOOR,
                        measures -> measures.psiInternal().lower()))
                .and(psi(
                        "psi internal upper",
                        RoundingMode.CEILING,
                        measures -> measures.psiInternal().upper()))
                .with("interval as narrow as asked", row -> row.measured(m -> m.met() ? "yes" : "no"))
                .with("fRsi", row -> row.measured(m -> Format.of("%.4f", m.temperatureFactor())))
                .with("pen line", row -> row.measured(m -> m.unbroken() ? "unbroken" : "broken"))
                .with(
                        csv.head("neck", Dimension.THICKNESS),
                        row -> row.measured(m -> Format.of(narrow, units.value(m.neck(), Dimension.THICKNESS))))
                .with("weakest path share", row -> row.measured(m -> Format.of("%.4f", m.ratio())))
                .with("fits", row -> row.point.measures().isPresent() ? "yes" : "no")
                .with("reason", row -> row.point.reasons().makeString(" "))
                .text(curves.flatCollect(curve -> curve.points().collect(point -> new Row(curve, point))));
    }

    /** Bounds are rounded outwards. */
    private static UnaryOperator<Csv<Row>> psi(
            String name, RoundingMode outwards, ToDoubleFunction<AtlasCurve.Measures> psi) {
        return csv -> csv.with(
                csv.head(name, Dimension.LINEAR_TRANSMITTANCE),
                row -> row.measured(measures -> new BigDecimal(
                                csv.units().value(psi.applyAsDouble(measures), Dimension.LINEAR_TRANSMITTANCE))
                        .setScale(DECIMALS, outwards)
                        .toPlainString()));
    }

    private static String other(Sweep sweep) {
        return switch (sweep.which()) {
            case FIRST -> sweep.setup().second().map(each -> each.name()).orElse("");
            case SECOND, BOTH -> sweep.setup().first().name();
        };
    }
}
