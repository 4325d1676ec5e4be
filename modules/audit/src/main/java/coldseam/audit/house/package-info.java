/**
 * The front door: from the path of a house file to its audit, with the same checks for every caller. Reading, checking and
 * computing are three steps, so that a caller may look at what is planned, hear how far it has come, and give up.
 */
package coldseam.audit.house;
