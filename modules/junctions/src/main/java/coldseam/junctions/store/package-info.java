/** Solutions kept in a folder between runs, found again by what was asked and by the solver's own classes. */
package coldseam.junctions.store;
