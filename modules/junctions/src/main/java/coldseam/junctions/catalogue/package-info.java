/** The options of each kind of junction: the built-in ones, a house's own files, and whether a choice of one fits. */
package coldseam.junctions.catalogue;
