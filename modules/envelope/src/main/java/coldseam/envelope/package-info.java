/** To be described. */
package coldseam.envelope;
