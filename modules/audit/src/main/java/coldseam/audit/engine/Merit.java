package coldseam.audit.engine;

import coldseam.audit.PsiLimit;
import coldseam.envelope.DimensionSystem;
import coldseam.envelope.House;
import coldseam.envelope.Limits;
import coldseam.junctions.BridgeResult;
import coldseam.junctions.JunctionResult;
import java.util.Comparator;

/** Which option closes a gap best: the one of which least would be found, then the one that loses least. */
final class Merit {

    private final Limits limits;
    private final DimensionSystem system;

    Merit(House house) {
        this.limits = house.limits();
        this.system = house.site().dimensions();
    }

    /**
     * From best to worst: unbroken insulation first, then the fewest broken lines of air, water and vapour control, then the fewest
     * limits missed, then the least psi or chi.
     */
    Comparator<BridgeResult> bestFirst() {
        return Comparator.comparing((BridgeResult result) -> result instanceof JunctionResult junction
                        && !junction.penLine().unbroken())
                .thenComparing(result -> result instanceof JunctionResult junction ? broken(junction) : 0)
                .thenComparing(this::missed)
                .thenComparing(
                        result -> result.psiOrChi(DimensionSystem.EXTERNAL).middle());
    }

    private static int broken(JunctionResult junction) {
        return junction.controls()
                .count(line -> line.match(continuous -> false, broken -> true, changes -> true, notShown -> false));
    }

    /** How many limits a result misses that rules would hold it to. */
    private int missed(BridgeResult result) {
        int missed = Limits.under(result.temperatureFactor(), limits.temperatureFactor()) ? 1 : 0;
        if (result instanceof JunctionResult junction) {
            missed += Limits.under(junction.penLine().share(), limits.neckShare()) ? 1 : 0;
            missed += Limits.under(junction.weakestPath().ratio(), limits.pathShare()) ? 1 : 0;
            missed += Limits.over(junction.psiOrChi(system).middle(), PsiLimit.of(junction, limits, system)) ? 1 : 0;
        }
        return missed;
    }
}
