/** The atlas: options of the catalogue as curves over thicknesses of insulation. */
package coldseam.report.atlas;
