/**
 * The front door, {@link coldseam.conduction.solve.Conduction}, and behind it the two linear systems, their factorisation by
 * fronts, and the refinement that narrows the interval, or a surface temperature's error by what is left of its equation. Numbering of unknowns and order of elimination follow the mesh, so
 * equal sections give equal digits.
 */
package coldseam.conduction.solve;
