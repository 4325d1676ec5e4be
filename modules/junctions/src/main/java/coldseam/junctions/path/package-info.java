/** The two lines through a composed section: the pen line inside the insulation and the weakest path through everything. */
package coldseam.junctions.path;
