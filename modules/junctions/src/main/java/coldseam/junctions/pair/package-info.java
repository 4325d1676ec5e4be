/** Two seams that run beside each other on one surface, drawn in one section and solved as one. */
package coldseam.junctions.pair;
