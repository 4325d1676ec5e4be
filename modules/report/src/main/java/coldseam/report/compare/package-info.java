/** A comparison as a document, a picture and data. */
package coldseam.report.compare;
