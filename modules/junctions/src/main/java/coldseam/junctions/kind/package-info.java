/**
 * How the section of a kind of junction lies: whether its bands cross or go on end to end, which way is up, and the chart from
 * the two lines of a detail file to the plane.
 */
package coldseam.junctions.kind;
