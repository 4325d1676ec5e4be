package coldseam.junctions;

import coldseam.conduction.Point;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * The way from indoors to outdoors with the least thermal resistance.
 *
 * @param path from the indoor surface to the outdoor surface
 * @param resistance m²·K/W, the integral of ds/lambda along it, without surface resistances
 * @param neighbour m²·K/W, the smaller of the two surfaces' resistances, likewise
 * @param ratio resistance over neighbour, at most 1
 */
public record WeakestPath(ImmutableList<Point> path, double resistance, double neighbour, double ratio) {}
