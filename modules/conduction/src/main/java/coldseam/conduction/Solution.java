package coldseam.conduction;

import org.eclipse.collections.api.list.ImmutableList;

/**
 * A solved section and the evidence for it.
 *
 * @param section what was solved
 * @param couplings one for each pair of environments, in the section's order; W/(m·K), or W/K if axisymmetric
 * @param heatFlows one for each environment, positive into the section; W/m, or W if axisymmetric
 * @param surfaces one for each environment that faces a boundary
 * @param probes in the section's order
 * @param field the temperature field behind it
 * @param accuracy what was asked
 * @param outcome whether the interval is as narrow as asked, and if not, why
 * @param unknowns of both solved systems at the last refinement
 * @param seconds wall time
 * @param notes what was snapped, closed or given up, in plain words
 */
public record Solution(
        Section section,
        ImmutableList<Coupling> couplings,
        ImmutableList<NetHeatFlow> heatFlows,
        ImmutableList<SurfaceTemperature<Point>> surfaces,
        ImmutableList<ProbeTemperature> probes,
        TemperatureField field,
        Accuracy accuracy,
        Outcome outcome,
        int unknowns,
        double seconds,
        ImmutableList<String> notes)
        implements Solved<Point> {

    /** @throws IllegalStateException where a temperature is not a number: nothing that is leaves the solver unnoticed */
    public Solution {
        for (SurfaceTemperature<Point> each : surfaces) {
            Finite.number(each.lowest(), "°C", () -> "the lowest temperature facing " + each.environment());
        }
        for (ProbeTemperature each : probes) {
            Finite.number(each.temperature(), "°C", () -> "the temperature at " + each.name());
        }
    }

    /** The same, where the solution that its lowest temperature is read from may have it less well than asked, and then says so. */
    public Solution with(Outcome surface) {
        if (surface.unsure() == 0) {
            return this;
        }
        Outcome both = met() && surface instanceof Outcome.ColdestUnsure cold
                ? new Outcome.ColdestUnsure(outcome.asked(), outcome.got(), cold.kelvin(), cold.end())
                : outcome;
        return new Solution(
                section,
                couplings,
                heatFlows,
                surfaces,
                probes,
                field,
                accuracy,
                both,
                unknowns,
                seconds,
                notes.newWithAll(surface.note().stream().toList()));
    }

    @Override
    public String couplingUnit() {
        return section.symmetry() == Symmetry.PLANAR ? "W/(m·K)" : "W/K";
    }
}
