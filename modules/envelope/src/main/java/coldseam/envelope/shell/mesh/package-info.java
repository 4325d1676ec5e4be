/** Facets whose edges match: their inner planes, and the junctions between them. */
package coldseam.envelope.shell.mesh;
