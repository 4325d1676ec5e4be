/**
 * The closed shell of a house, exactly: plane surfaces, their shared edges, and the edges that are not shared.
 *
 * <p>The shell exists twice: outside (the planes of the outer faces) and inside (the planes of the inner faces), with the
 * same surfaces and edges; an edge's set-backs say how far one lies from the other.
 */
package coldseam.envelope.shell;
