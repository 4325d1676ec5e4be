/** Places where three or more edges of a shell meet. */
package coldseam.envelope.shell.corners;
