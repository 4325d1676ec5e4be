package coldseam.options;

import coldseam.audit.Audit;
import coldseam.audit.BridgeRow;
import coldseam.audit.BridgeSheet;
import coldseam.audit.HeatLoss;
import coldseam.conduction.Interval;
import coldseam.envelope.DimensionSystem;
import coldseam.files.quantity.Phrase;
import coldseam.junctions.BridgeSetup;
import coldseam.junctions.detail.Detail;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.eclipse.collections.api.RichIterable;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * A part of a house's heat loss as H = h0 + Σ t·w: what formulas of standards give counts as exact; each section's psi or chi
 * is one number t within its interval, wherever it occurs.
 *
 * <table>
 * <caption>Symbols</caption>
 * <tr><td>h0</td><td>exact part</td><td>W/K</td></tr>
 * <tr><td>t</td><td>psi or chi of a section in the site's dimension system</td><td>W/(m·K) or W/K</td></tr>
 * <tr><td>w</td><td>length or number times the temperature factor</td><td>m or 1</td></tr>
 * </table>
 */
public final class HeatSum {

    /** What makes two numbers one: they have one psi or chi, whatever it is within its interval. */
    private sealed interface Source {}

    private record Section(Detail detail, BridgeSetup setup, DimensionSystem system) implements Source {}

    /** Nobody knows which of its kind's other options it comes to; where nothing about it changes it stays the same one. */
    private record Unfitting(String place, Interval range, ImmutableList<Phrase> misfits) implements Source {}

    private record Term(Interval transmittance, double weight) {}

    /** W/K and m: places lie on a lattice of micrometres, and no sum of a house has a thousand times more terms. */
    private static final double ROUND_OFF = 1e-8;

    private final double exact;
    private final Map<Source, Term> terms;

    private HeatSum(double exact, Map<Source, Term> terms) {
        this.exact = exact;
        this.terms = terms;
    }

    /** No loss. */
    static final HeatSum NOTHING = new HeatSum(0, Map.of());

    /** A loss that formulas give, W/K. */
    static HeatSum exactly(double loss) {
        return new HeatSum(loss, Map.of());
    }

    /** Surfaces and openings of a house, as its table has them. */
    public static HeatSum planes(HeatLoss table) {
        double sum = table.lines()
                .select(line -> line.part() instanceof HeatLoss.Part.OfSurface
                        || line.part() instanceof HeatLoss.Part.OfOpening)
                .sumOfDouble(line -> line.loss().middle());
        return new HeatSum(sum, Map.of());
    }

    /** Some junctions and points of a house. */
    public static HeatSum bridges(Audit audit, RichIterable<? extends BridgeRow> rows) {
        DimensionSystem system = audit.house().site().dimensions();
        double exact = 0;
        Map<Source, Term> terms = new LinkedHashMap<>();
        for (BridgeRow row : rows) {
            double weight = row.size() * row.factor();
            Optional<Source> source = source(row, system);
            if (source.isPresent()) {
                terms.merge(
                        source.get(),
                        new Term(row.transmittance(), weight),
                        (a, b) -> new Term(a.transmittance(), a.weight() + b.weight()));
            } else {
                exact += row.transmittance().middle() * weight;
            }
        }
        return new HeatSum(exact, terms);
    }

    /** What is known of a row within an interval only; empty of a number that is given, and of what has none. */
    private static Optional<Source> source(BridgeRow row, DimensionSystem system) {
        if (row.source().computed() && row.sheet().isPresent()) {
            BridgeSheet<?> sheet = row.sheet().get();
            return Optional.of(
                    new Section(sheet.result().detail(), sheet.result().setup(), system));
        }
        return row.transmittance().width() > 0
                ? Optional.of(new Unfitting(row.name(), row.transmittance(), row.misfits()))
                : Optional.empty();
    }

    /** The whole house. */
    public static HeatSum of(Audit audit) {
        return planes(audit.heatLoss()).plus(bridges(audit, audit.bridges()));
    }

    /** Both parts together. */
    public HeatSum plus(HeatSum other) {
        return combined(other, 1);
    }

    /** This without the other, which may be a part of another house: what both have is gone. */
    public HeatSum minus(HeatSum other) {
        return combined(other, -1);
    }

    private HeatSum combined(HeatSum other, int sign) {
        Map<Source, Term> sum = new LinkedHashMap<>(terms);
        other.terms.forEach((source, term) -> sum.merge(
                source,
                new Term(term.transmittance(), sign * term.weight()),
                (a, b) -> new Term(a.transmittance(), a.weight() + b.weight())));
        return new HeatSum(exact + sign * other.exact, sum);
    }

    /** W/K; what is below the round-off of lengths and sums counts as nothing. */
    public Interval value() {
        Interval sum = Interval.of(Math.rint(exact / ROUND_OFF) * ROUND_OFF);
        for (Term term : terms.values()) {
            if (Math.abs(term.weight()) > ROUND_OFF) {
                sum = sum.plus(term.transmittance().times(term.weight()));
            }
        }
        return sum;
    }
}
