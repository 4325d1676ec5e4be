/**
 * The closed shell of a house, exactly: plane surfaces, their shared edges, and the edges that are not shared.
 *
 * <p>The shell exists twice: outside (the planes of the outer faces) and inside (the planes of the inner faces), with the
 * same surfaces and edges; an edge's set-backs say how far one lies from the other.
 *
 * <p>How it is made is in the packages below, which only this one uses: the body is taken apart into facets ({@code storeys},
 * which uses {@code plan} and {@code roof}, or {@code surfaces}), and the facets are joined ({@code mesh}). Faults are
 * collected in {@code fault}, corners found in {@code corners}.
 */
package coldseam.envelope.shell;
