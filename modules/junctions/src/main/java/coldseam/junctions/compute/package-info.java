/** From a detail and a setup to its result: composed, solved, measured, and remembered. */
package coldseam.junctions.compute;
