/**
 * Drawing apart from any document format: a canvas with lines, areas, hatches and text.
 *
 * <p>Coordinates are points (1/72 in) with y upwards, in PDF and in SVG alike.
 */
package coldseam.report.drawing;
