/** To be described. */
package coldseam.cli;
