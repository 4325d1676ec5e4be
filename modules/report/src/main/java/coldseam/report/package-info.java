/** To be described. */
package coldseam.report;
