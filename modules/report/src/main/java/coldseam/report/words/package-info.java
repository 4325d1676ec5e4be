/** What documents and the terminal say of an audit's values, in one place: the audit itself holds no sentences of them. */
package coldseam.report.words;
