/**
 * The catalogue of junction details, and a detail computed from the house's own layers: section, psi, fRsi, pen line and
 * weakest path.
 *
 * <p>psi = L2D − Σ U·l (ISO 10211), with the U of the very stacks that are drawn in the section; so psi inherits the
 * interval of L2D. Lengths are metres, psi W/(m·K).
 *
 * <p>This package is what is asked ({@code JunctionSetup}) and answered ({@code JunctionResult}). Below it, in the order in
 * which each may know those before it: {@code kind}, {@code plan}, {@code language}, {@code detail}, {@code atlas},
 * {@code section}, {@code path}, {@code hand}, {@code catalogue}, {@code pair}, {@code store}, {@code point}, {@code vertex},
 * {@code compute}.
 */
package coldseam.junctions;
