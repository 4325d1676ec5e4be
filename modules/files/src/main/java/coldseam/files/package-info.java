/**
 * Reading and writing files, whatever they describe: every fault at once, each with its line and column. Jackson is used here
 * and nowhere else.
 *
 * <p>A file is described by a record. Its components are the keys; what a key's value may be is said by annotations ({@link
 * coldseam.files.Unit}, {@link coldseam.files.Bounds}, {@link coldseam.files.Default}, {@link coldseam.files.Size}, …).
 * {@link coldseam.files.SourceDocument} reads text into a tree that keeps places, {@link coldseam.files.Binder} the tree into
 * the record, and {@link coldseam.files.SchemaWriter} writes the JSON Schema of the same record.
 */
package coldseam.files;
