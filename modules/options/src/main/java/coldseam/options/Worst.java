package coldseam.options;

import coldseam.audit.BridgeRow;
import coldseam.audit.BridgeSheet;
import coldseam.junctions.JunctionResult;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * The worst of some seams or points, value by value: each may be that of another of them.
 *
 * @param sheets how many different ones there are, at least one
 * @param leakiest the greatest psi or chi
 * @param coldest the least fRsi
 * @param narrowest the least neck, a broken pen line below all; empty of points
 * @param shortest the least share of resistance along its weakest path; empty of points
 */
public record Worst(
        int sheets,
        BridgeSheet<?> leakiest,
        BridgeSheet<?> coldest,
        Optional<BridgeSheet<?>> narrowest,
        Optional<BridgeSheet<?>> shortest) {

    /** Empty where none of them is computed. */
    static Optional<Worst> of(ImmutableList<? extends BridgeRow> rows) {
        ImmutableList<BridgeSheet<?>> sheets = BridgeRow.sheets(rows);
        if (sheets.isEmpty()) {
            return Optional.empty();
        }
        ImmutableList<BridgeSheet<?>> junctions =
                sheets.select(sheet -> sheet.junction().isPresent());
        return Optional.of(new Worst(
                sheets.size(),
                sheets.maxBy(sheet -> sheet.external().upper()),
                sheets.minBy(BridgeSheet::temperatureFactor),
                least(junctions, Worst::neck),
                least(junctions, result -> result.weakestPath().ratio())));
    }

    private static Optional<BridgeSheet<?>> least(
            ImmutableList<BridgeSheet<?>> junctions, ToDoubleFunction<JunctionResult> value) {
        return junctions.minByOptional(
                sheet -> value.applyAsDouble(sheet.junction().orElseThrow()));
    }

    private static double neck(JunctionResult result) {
        return result.penLine().unbroken() ? result.penLine().neck() : -1;
    }

    /** m, the least neck; zero where the insulation is broken; empty of points. */
    public Optional<Double> neck() {
        return narrowest.map(sheet -> Math.max(0, neck(sheet.junction().orElseThrow())));
    }

    /** The least share of resistance along a weakest path, 0 to 1; empty of points. */
    public Optional<Double> path() {
        return shortest.map(
                sheet -> sheet.junction().orElseThrow().weakestPath().ratio());
    }
}
