/** The sections of the audit report, each in a class of its own, in the order in which {@link coldseam.report.PdfReport} sets them. */
package coldseam.report.pages;
