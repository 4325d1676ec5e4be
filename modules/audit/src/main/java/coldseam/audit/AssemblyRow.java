package coldseam.audit;

import coldseam.assemblies.Transmittance;
import coldseam.assemblies.moisture.Condensation;
import coldseam.envelope.Assembly;
import java.util.Optional;

/**
 * An assembly in one direction of heat flow and its transmittance.
 *
 * @param assembly build-up
 * @param build its transmittance by ISO 6946 with all that leads to it, in the direction and towards what it is used
 * @param area m² of the surfaces that have it, openings taken off
 * @param moisture whether it gathers water over a year
 */
public record AssemblyRow(Assembly assembly, Transmittance build, double area, MoistureCheck moisture) {

    /** By ISO 6946, with the corrections where they apply, W/(m²·K). */
    public double transmittance() {
        return build.corrected();
    }

    /** Its water month by month; empty where it was not checked. */
    public Optional<Condensation> year() {
        return moisture.year();
    }

    /** The same where water gathers in it; empty for others. */
    public Optional<Condensation> wet() {
        return year().filter(year -> year.verdict() != Condensation.Verdict.STAYS_DRY);
    }
}
