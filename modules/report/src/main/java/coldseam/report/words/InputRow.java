package coldseam.report.words;

/**
 * A value that went in, and where it comes from.
 *
 * @param value with its unit
 * @param source in words
 */
public record InputRow(String what, String value, String source) {}
