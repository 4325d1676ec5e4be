package coldseam.envelope;

import java.util.OptionalDouble;

/**
 * A homogeneous material.
 *
 * @param name unique in its library
 * @param conductivity design thermal conductivity, W/(m·K), greater than zero
 * @param vapourResistanceFactor mu, 1 or more; infinite for metals and glass
 * @param density kg/m³
 * @param compressiveStrength Pa, at 10 % strain
 * @param insulates whether it counts as insulation for the pen line
 * @param provenance where the conductivity comes from
 */
public record Material(
        String name,
        double conductivity,
        OptionalDouble vapourResistanceFactor,
        OptionalDouble density,
        OptionalDouble compressiveStrength,
        boolean insulates,
        Provenance provenance) {

    /** The conductivity, W/(m·K), up to which a material insulates unless it says otherwise; our own definition. */
    public static final double INSULATES_UP_TO = 0.065;
}
