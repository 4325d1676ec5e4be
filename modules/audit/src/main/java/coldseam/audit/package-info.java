/** To be described. */
package coldseam.audit;
