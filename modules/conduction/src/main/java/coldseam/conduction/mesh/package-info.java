/**
 * From an arrangement to a graded triangular mesh, refined by bisection, and how its outline hangs together. Arrays of the
 * mesh are laid out by triangle and are read and written in place; nothing outside the solver uses them.
 */
package coldseam.conduction.mesh;
