package coldseam.junctions.atlas;

import coldseam.envelope.quantity.Dimension;
import coldseam.envelope.quantity.UnitSystem;
import coldseam.junctions.detail.Detail;
import java.util.Locale;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;

/** An atlas as comma-separated values (RFC 4180): one row for each option and thickness, in the units of its head. */
public final class AtlasCsv {

    private static final int LAST_COLUMNS = 11;

    private final UnitSystem units;

    private AtlasCsv(UnitSystem units) {
        this.units = units;
    }

    /** The table with its head. */
    public static String write(ImmutableList<AtlasCurve> curves, UnitSystem units) {
        AtlasCsv csv = new AtlasCsv(units);
        StringBuilder out = new StringBuilder(csv.head().makeString(",")).append("\r\n");
        curves.forEach(curve -> curve.points()
                .forEach(point ->
                        out.append(csv.row(curve, point).makeString(",")).append("\r\n")));
        return out.toString();
    }

    private ImmutableList<String> head() {
        String length = units.label(Dimension.THICKNESS);
        String psi = units.label(Dimension.LINEAR_TRANSMITTANCE);
        return Lists.immutable.of(
                "kind",
                "option",
                "rank",
                "cost",
                "place",
                "angle °",
                "surface that changes",
                "its assembly",
                "other assembly",
                "insulation " + length,
                "psi external lower " + psi,
                "psi external upper " + psi,
                "psi internal lower " + psi,
                "psi internal upper " + psi,
                "interval as narrow as asked",
                "fRsi",
                "pen line",
                "neck " + length,
                "weakest path share",
                "fits",
                "reason");
    }

    private ImmutableList<String> row(AtlasCurve curve, AtlasCurve.AtlasPoint point) {
        Detail detail = curve.detail();
        Sweep sweep = curve.sweep();
        String other = switch (sweep.which()) {
            case FIRST -> sweep.setup().second().map(each -> each.name()).orElse("");
            case SECOND -> sweep.setup().first().name();
            case BOTH -> sweep.setup().first().name();
        };
        ImmutableList<String> start = Lists.immutable
                .of(
                        detail.kind().label(),
                        detail.id(),
                        detail.rank().name().toLowerCase(Locale.ROOT),
                        detail.cost().map(cost -> cost.sourced(units)).orElse(""),
                        sweep.origin(),
                        number("%.1f", sweep.setup().angle()),
                        sweep.surface(),
                        sweep.changed().name(),
                        other)
                .collect(AtlasCsv::quoted)
                .newWith(number("%.0f", units.value(point.thickness(), Dimension.THICKNESS)));
        return point.measures()
                .map(measures -> start.newWithAll(measured(measures)))
                .orElseGet(() -> start.newWithAll(
                                Lists.immutable.withAll(java.util.Collections.nCopies(LAST_COLUMNS - 2, "")))
                        .newWith("no")
                        .newWith(quoted(point.reasons().makeString(" "))));
    }

    private ImmutableList<String> measured(AtlasCurve.Measures measures) {
        return Lists.immutable.of(
                psi(measures.psiExternal().lower()),
                psi(measures.psiExternal().upper()),
                psi(measures.psiInternal().lower()),
                psi(measures.psiInternal().upper()),
                measures.met() ? "yes" : "no",
                number("%.4f", measures.temperatureFactor()),
                measures.unbroken() ? "unbroken" : "broken",
                number(units == UnitSystem.US ? "%.2f" : "%.1f", units.value(measures.neck(), Dimension.THICKNESS)),
                number("%.4f", measures.ratio()),
                "yes",
                "");
    }

    private String psi(double inside) {
        return number("%.6f", units.value(inside, Dimension.LINEAR_TRANSMITTANCE));
    }

    private static String number(String format, double value) {
        return String.format(Locale.ROOT, format, value);
    }

    private static String quoted(String text) {
        return text.matches("[^\",\r\n]*") ? text : "\"" + text.replace("\"", "\"\"") + "\"";
    }
}
