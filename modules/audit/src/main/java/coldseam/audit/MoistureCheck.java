package coldseam.audit;

import coldseam.assemblies.moisture.Condensation;
import coldseam.conduction.Finite;
import java.util.Optional;

/**
 * Whether an assembly gathers water over a year by diffusion (ISO 13788:2012 clause 6, from memory), or why nobody looked.
 *
 * @param year month by month; empty where it was not checked
 * @param unchecked why it was not checked, a sentence without its full stop; empty where it was
 */
public record MoistureCheck(Optional<Condensation> year, String unchecked) {

    /** A check that was made. */
    public static MoistureCheck of(Condensation year) {
        Finite.number(year.most(), "kg/m²", () -> "the water that condenses at " + year.wettestPlane());
        Finite.number(year.left(), "kg/m²", () -> "the water that is left after a year at " + year.wettestPlane());
        return new MoistureCheck(Optional.of(year), "");
    }

    /** A check that was not made. */
    public static MoistureCheck none(String why) {
        return new MoistureCheck(Optional.empty(), why);
    }
}
