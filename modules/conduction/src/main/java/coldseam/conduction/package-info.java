/**
 * Steady heat conduction in 2D sections, planar and axisymmetric, and in bodies made of boxes, with a proven interval on every
 * thermal coupling coefficient.
 *
 * <p>A section is a set of painted regions of constant conductivity, environments of given temperature behind a surface
 * resistance, and the parts of its outline that face each environment; the rest is adiabatic. Lengths are metres,
 * conductivities W/(m·K), surface resistances m²·K/W, temperatures °C. Heat flows are positive from the environment into
 * the section. Nothing here knows of buildings.
 *
 * <p>This package is what is asked and answered of sections; {@link coldseam.conduction.solve.Conduction} answers. The packages
 * below it are the way there and promise nothing to others: {@code arrange}, {@code mesh}, {@code elements}, {@code solve},
 * {@code field}. Bodies are asked and answered in {@code solid}, by {@link coldseam.conduction.solid.BodySolver}.
 */
package coldseam.conduction;
