/**
 * Vertices: corners where three or more edges meet at right angles, composed from the edges' own details and solved in three
 * dimensions.
 *
 * <p>Each edge's section is laid on the lines of two surfaces, measured outwards from their inner faces; all lines together
 * cut a box into cells, and for each cell the three sections decide what fills it ({@code VertexCells} says how). Where they do
 * not, nothing is made up: the vertex is refused with the place. Lengths are metres, chi W/K.
 */
package coldseam.junctions.vertex;
