/**
 * From painted regions to an arrangement of line segments on a lattice, and what can be wrong with a section. Lengths are
 * lattice steps once they are snapped, metres before.
 */
package coldseam.conduction.arrange;
