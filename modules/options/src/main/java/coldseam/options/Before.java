package coldseam.options;

import coldseam.audit.AsFound;
import coldseam.audit.Audit;
import coldseam.audit.JunctionRow;
import coldseam.conduction.Interval;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * A house as it was found beside what is planned: surfaces, windows and the seams of which its file says what was there.
 *
 * <p>Seams that it does not say are in neither house; surfaces and windows that it does not say are as planned in both.
 *
 * @param more W/K that the house as found loses more than as described
 * @param unknown m of seams of which the file does not say what was found, in the site's dimension system
 */
public record Before(Interval more, double unknown) {

    /** Of a house whose file says what was found. */
    static Optional<Before> of(Audit described) {
        return described.found().map(found -> of(described, found));
    }

    private static Before of(Audit described, AsFound found) {
        ImmutableList<String> said = found.rows().collect(JunctionRow::name);
        ImmutableList<JunctionRow> planned = described.junctions().select(row -> said.contains(row.name()));
        Interval more = HeatSum.planes(found.heatLoss())
                .plus(HeatSum.bridges(described, found.rows()))
                .minus(HeatSum.planes(described.heatLoss()).plus(HeatSum.bridges(described, planned)))
                .value();
        return new Before(more, described.junctions().reject(planned::contains).sumOfDouble(JunctionRow::length));
    }
}
