/** The chart from the two lines of a detail file to the plane of a kind's section, and vectors in it. */
package coldseam.junctions.kind;
