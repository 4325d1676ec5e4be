package coldseam.conduction;

/**
 * The lowest surface temperature that faces an environment; an estimate, not proven.
 *
 * @param <P> a place: a point of a section or of a body
 * @param lowest °C
 * @param at where
 * @param change K, since the refinement before the last
 */
public record SurfaceTemperature<P>(String environment, double lowest, P at, double change) {}
