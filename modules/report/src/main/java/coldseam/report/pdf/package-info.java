/**
 * Setting of type and pages, and the only package that sees the PDF library.
 *
 * <p>Lengths are points, y upwards from the foot of the page. Blocks measure and draw themselves in a column; a flow sets
 * them down the pages.
 */
package coldseam.report.pdf;
