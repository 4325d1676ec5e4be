package coldseam.junctions.atlas;

import coldseam.junctions.Detail;
import java.util.Locale;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;

/** An atlas as comma-separated values (RFC 4180): one row for each option and thickness, SI units. */
public final class AtlasCsv {

    private static final String HEAD = "kind,option,rank,surface that changes,its assembly,other assembly,"
            + "insulation mm,psi external lower W/(m·K),psi external upper W/(m·K),psi internal lower W/(m·K),"
            + "psi internal upper W/(m·K),fRsi,pen line,neck mm,weakest path share,fits,reason";

    private AtlasCsv() {}

    /** The table with its head. */
    public static String write(ImmutableList<AtlasCurve> curves) {
        StringBuilder out = new StringBuilder(HEAD).append("\r\n");
        curves.forEach(curve -> curve.points()
                .forEach(point -> out.append(row(curve, point).makeString(",")).append("\r\n")));
        return out.toString();
    }

    private static ImmutableList<String> row(AtlasCurve curve, AtlasCurve.AtlasPoint point) {
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
                        sweep.surface(),
                        sweep.changed().name(),
                        other)
                .collect(AtlasCsv::quoted)
                .newWith(number("%.0f", 1000 * point.thickness()));
        return point.measures()
                .map(measures -> start.newWithAll(Lists.immutable.of(
                        number("%.6f", measures.psiExternal().lower()),
                        number("%.6f", measures.psiExternal().upper()),
                        number("%.6f", measures.psiInternal().lower()),
                        number("%.6f", measures.psiInternal().upper()),
                        number("%.4f", measures.temperatureFactor()),
                        measures.unbroken() ? "unbroken" : "broken",
                        number("%.1f", 1000 * measures.neck()),
                        number("%.4f", measures.ratio()),
                        "yes",
                        "")))
                .orElseGet(() -> start.newWithAll(Lists.immutable.of("", "", "", "", "", "", "", "", "no"))
                        .newWith(quoted(point.reasons().makeString(" "))));
    }

    private static String number(String format, double value) {
        return String.format(Locale.ROOT, format, value);
    }

    private static String quoted(String text) {
        return text.matches("[^\",\r\n]*") ? text : "\"" + text.replace("\"", "\"\"") + "\"";
    }
}
