/** Options of the catalogue swept over thicknesses of insulation. */
package coldseam.junctions.atlas;
