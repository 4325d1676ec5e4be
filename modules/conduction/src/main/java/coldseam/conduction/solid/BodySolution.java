package coldseam.conduction.solid;

import coldseam.conduction.Accuracy;
import coldseam.conduction.Coupling;
import coldseam.conduction.Interval;
import coldseam.conduction.NetHeatFlow;
import coldseam.conduction.Outcome;
import coldseam.conduction.ProbeTemperature;
import coldseam.conduction.Solved;
import coldseam.conduction.SurfaceTemperature;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * A solved body and the evidence for it.
 *
 * @param body what was solved
 * @param couplings one for each pair of environments, in the body's order; W/K, of all that the multiplicity counts
 * @param heatFlows one for each environment, positive into the body; W
 * @param surfaces one for each environment
 * @param probes in the body's order
 * @param patches in the body's order
 * @param field the temperature behind it; of one asked for its heat alone there is none to ask
 * @param accuracy what was asked
 * @param outcome whether the interval is as narrow as asked, and if not, why
 * @param unknowns of both solved systems at the last refinement
 * @param seconds wall time
 * @param notes what was made one, left out or given up, in plain words
 */
public record BodySolution(
        SolidBody body,
        ImmutableList<Coupling> couplings,
        ImmutableList<NetHeatFlow> heatFlows,
        ImmutableList<SurfaceTemperature<Place>> surfaces,
        ImmutableList<ProbeTemperature> probes,
        ImmutableList<PatchTemperature> patches,
        BodyField field,
        Accuracy accuracy,
        Outcome outcome,
        int unknowns,
        double seconds,
        ImmutableList<String> notes)
        implements Solved<Place> {

    /**
     * The mean temperature of a patch of surface, proven.
     *
     * @param mean °C
     * @param area m², of what is drawn
     */
    public record PatchTemperature(String name, Interval mean, double area) {}

    @Override
    public String couplingUnit() {
        return "W/K";
    }
}
