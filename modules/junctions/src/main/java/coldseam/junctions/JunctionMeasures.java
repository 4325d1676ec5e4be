package coldseam.junctions;

import coldseam.conduction.Finite;
import coldseam.conduction.Interval;
import coldseam.conduction.Outcome;

/**
 * What a detail loses and lets through in a junction, without what is drawn of it.
 *
 * @param detail its id
 * @param psiExternal W/(m·K)
 * @param psiInternal W/(m·K)
 * @param temperatureFactor fRsi, an estimate
 * @param penLine inside the insulation
 * @param weakestPath through everything
 * @param outcome whether the interval is as narrow as asked, and if not, why
 */
public record JunctionMeasures(
        String detail,
        Interval psiExternal,
        Interval psiInternal,
        double temperatureFactor,
        PenLine penLine,
        WeakestPath weakestPath,
        Outcome outcome) {

    /** @throws IllegalStateException where a result is no number, naming the detail */
    public JunctionMeasures {
        Finite.bounds(psiExternal, "W/(m·K)", () -> "external psi of " + detail);
        Finite.bounds(psiInternal, "W/(m·K)", () -> "internal psi of " + detail);
        Finite.number(temperatureFactor, "", () -> "fRsi of " + detail);
    }
}
