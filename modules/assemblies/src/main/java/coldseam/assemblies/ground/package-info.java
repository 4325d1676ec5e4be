/**
 * Heat loss through the ground, steady state, by ISO 13370:2017 (all formulas from memory; the checks name their sources).
 *
 * <p>B' is the characteristic dimension of a floor, its area over half its exposed perimeter (m); dt an equivalent thickness: the
 * metres of ground that resist as much as wall, surfaces and floor do. Couplings are in W/K between indoors and outdoors, without
 * the junction of wall and floor, which is added as psi times the perimeter. Horizontal heat exchange with the ground beside the
 * building is in the formulas; the yearly swing is not.
 */
package coldseam.assemblies.ground;
