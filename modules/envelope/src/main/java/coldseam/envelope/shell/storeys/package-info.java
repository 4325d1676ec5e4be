/** A body by storeys, taken apart into facets. */
package coldseam.envelope.shell.storeys;
