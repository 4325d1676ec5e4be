/** A detail: what is said of it and how it is drawn, and the reading of its file. */
package coldseam.junctions.detail;
