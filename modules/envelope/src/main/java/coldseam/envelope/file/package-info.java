/**
 * Reading and writing files, YAML and JSON by Jackson's streams, which live in no other package.
 *
 * <p>Only the streams: what binds a file must know line and column of every value, gather all faults, and read units; what
 * writes one must give the same bytes each time and refuse a number that is not finite. A general binder would have to be
 * taught each of these, and costs 1.7 MB of a jar of 23; it is left out.
 */
package coldseam.envelope.file;
