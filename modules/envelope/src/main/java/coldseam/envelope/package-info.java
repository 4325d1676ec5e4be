/**
 * What a house is made of: materials, assemblies, its body, openings, neighbours and the choices made for its junctions.
 *
 * <p>SI throughout: metres, W/(m·K), m²·K/W, °C; units exist only at the border, in {@code coldseam.files.quantity}.
 * Layers run from inside to outside. An outline is counterclockwise seen from outdoors. x points east, y north, z up.
 */
package coldseam.envelope;
