/**
 * From a detail and two assemblies to the section that is solved: bands of layers, the scene's lines, painted pieces, legs,
 * environments and the ends of the pen line.
 */
package coldseam.junctions.section;
