/**
 * The catalogue of junction details, and a detail computed from the house's own layers: section, psi, fRsi, pen line and
 * weakest path.
 *
 * <p>psi = L2D − Σ U·l (ISO 10211), with the U of the very stacks that are drawn in the section; so psi inherits the
 * interval of L2D. Lengths are metres, psi W/(m·K).
 */
package coldseam.junctions;
