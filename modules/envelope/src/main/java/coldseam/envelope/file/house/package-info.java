/**
 * The house file: its records as they stand in the file, and the checked {@code House} they become.
 *
 * <p>The records named File… are the file's grammar: the binder and the JSON Schema both follow from them, so their
 * {@code @Doc} texts are what an editor shows.
 */
package coldseam.envelope.file.house;
