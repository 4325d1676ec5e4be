/** Sections drawn by hand: their file, what is answered to it, and one used as a detail. */
package coldseam.junctions.hand;
