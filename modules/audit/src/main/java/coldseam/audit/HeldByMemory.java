package coldseam.audit;

import coldseam.conduction.Interval;
import coldseam.conduction.Outcome;
import coldseam.envelope.DimensionSystem;
import coldseam.envelope.Limits;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * What of an audit is known less well than it would be with more memory.
 *
 * @param sheets of junctions, pairs of them, points and corners
 * @param undecided those of them of which it is open whether they keep a limit
 */
public record HeldByMemory(ImmutableList<Sheet> sheets, ImmutableList<Sheet> undecided) {

    /** Of an audit. */
    public static HeldByMemory of(Audit audit) {
        ImmutableList<Sheet> sheets = Lists.immutable
                .<Sheet>ofAll(audit.sheets())
                .newWithAll(audit.pairSheets())
                .newWithAll(audit.pointSheets())
                .newWithAll(audit.vertexSheets())
                .select(sheet -> outcomes(sheet).anySatisfy(Outcome::byMemory));
        return new HeldByMemory(sheets, sheets.select(sheet -> undecided(sheet, audit)));
    }

    private static ImmutableList<Outcome> outcomes(Sheet sheet) {
        if (sheet instanceof VertexSheet vertex) {
            Outcome surface = vertex.result().surface().outcome();
            return vertex.result()
                    .heat()
                    .map(heat -> Lists.immutable.of(surface, heat.solution().outcome()))
                    .orElse(Lists.immutable.of(surface));
        }
        if (sheet instanceof PairSheet pair) {
            return Lists.immutable.of(pair.result().solution().outcome());
        }
        return Lists.immutable.of(((BridgeSheet<?>) sheet).result().solution().outcome());
    }

    private static boolean undecided(Sheet sheet, Audit audit) {
        Limits limits = audit.house().limits();
        double difference =
                audit.house().site().indoorTemperature() - audit.house().site().outdoorTemperature();
        double unsure = outcomes(sheet).collectDouble(Outcome::unsure).max() / difference;
        boolean cold = unsure > 0 && Math.abs(sheet.temperatureFactor() - limits.temperatureFactor()) <= unsure;
        return cold
                || sheet instanceof BridgeSheet<?> bridge
                        && wide(bridge, limits, audit.heatLoss().system());
    }

    private static boolean wide(BridgeSheet<?> bridge, Limits limits, DimensionSystem system) {
        Interval value = bridge.result().psiOrChi(system);
        ImmutableList<Double> most = bridge.junction()
                .map(junction -> Lists.immutable.of(PsiLimit.of(junction, limits), limits.geometryPsi()))
                .orElse(Lists.immutable.of(limits.chi()));
        return most.anySatisfy(limit -> value.lower() <= limit && limit < value.upper());
    }
}
