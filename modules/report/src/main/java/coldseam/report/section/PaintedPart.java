package coldseam.report.section;

import coldseam.conduction.Polygon;
import coldseam.report.drawing.Look;

/**
 * A painted part of a section.
 *
 * @param outline m
 * @param material its name
 * @param conductivity W/(m·K)
 * @param look how it is drawn
 * @param solved whether heat flow was computed in it
 */
record PaintedPart(Polygon outline, String material, double conductivity, Look look, boolean solved) {}
