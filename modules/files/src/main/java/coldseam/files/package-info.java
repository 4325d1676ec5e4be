/**
 * Reading and writing files, whatever they describe: every fault at once, each with its line and column.
 *
 * <p>A file is described by a record. Its components are the keys; what a key's value may be is said by annotations ({@link
 * coldseam.files.Unit}, {@link coldseam.files.Bounds}, {@link coldseam.files.Default}, {@link coldseam.files.Size}, …).
 * {@link coldseam.files.SourceDocument} reads text into a tree that keeps places, {@link coldseam.files.Binder} the tree into
 * the record, and {@link coldseam.files.SchemaWriter} writes the JSON Schema of the same record.
 *
 * <p>YAML and JSON are taken apart by Jackson's streams, which live in no other package. Only the streams: what binds a file
 * must know line and column of every value, gather all faults, and read units; what writes one must give the same bytes each
 * time and refuse a number that is not finite. A general binder would have to be taught each of these, and costs
 * 1.7 MB; it is left out.
 */
package coldseam.files;
