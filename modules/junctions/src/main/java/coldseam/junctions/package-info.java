/** To be described. */
package coldseam.junctions;
