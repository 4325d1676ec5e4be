/** A body by explicit surfaces, taken apart into facets. */
package coldseam.envelope.shell.surfaces;
