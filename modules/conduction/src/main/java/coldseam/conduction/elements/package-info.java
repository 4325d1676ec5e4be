/**
 * The quadratic elements: what each gives to the temperature system, the stream system and both energies, planar and
 * axisymmetric.
 */
package coldseam.conduction.elements;
