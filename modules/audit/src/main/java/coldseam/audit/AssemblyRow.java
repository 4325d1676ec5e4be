package coldseam.audit;

import coldseam.envelope.Assembly;

/**
 * An assembly and its transmittance.
 *
 * @param assembly build-up
 * @param transmittance by ISO 6946, in the direction it is used, W/(m²·K)
 * @param area m² of the surfaces that have it
 */
public record AssemblyRow(Assembly assembly, double transmittance, double area) {}
